import type { PieceRole } from '../types.js';
import type { RoleWords } from './name-words.js';

/**
 * What pieces are called in English, German, French, Spanish, Italian, Dutch and Portuguese. What a piece is made for
 * stands after what it is: a `neck facing` is a facing, a `trouser waistband` a band, a `sleeve lining` a lining.
 */
export const pieceWords: RoleWords<PieceRole> = [
  [
    'facing',
    '-facing-, -beleg, beleg-, besatz, parementure, enforme, vista, paramontura, ripiego, beleg, revel',
  ],
  ['stay', 'stay, stay tape, nahtband, formband, bandfix'],
  ['binding', 'binding, bias tape, -einfass-, schrägband, biais, bies, sbieco, viés, vivo'],
  ['interfacing', 'interfacing, fusible, -einlage, vlieseline, entoilage, entretela, teletta'],
  ['lining', '-lining, -futter, futter-, doublure, forro, fodera, voering'],
  ['cuff', 'cuff-, -manschette-, ärmelbündchen, poignet, puño, polsino, manchet, punho'],
  [
    'placket',
    'placket-, -schlitzleiste, knopfleiste, patte, tapeta, cannoncino, abbottonatura, knoopsluiting',
  ],
  ['gusset', 'gusset, zwickel, spickel, soufflet, gousset, nesga, tassello, inzet'],
  ['pocket', 'pocket-, -tasche, taschen-, poche, bolsillo, tasca, zak, bolso'],
  ['hood', 'hood-, kapuze-, capuche, capucha, cappuccio, capuchon, capuz'],
  [
    'band',
    'band, -band, -bündchen, waistband-, neckband-, -bund, ceinture, bande, pretina, cinturilla, cinturino, fascia, tailleband, cós',
  ],
  ['collar', 'collar-, -kragen, kragen-, col, cuello, collo, colletto, kraag, gola, lapel, revers'],
  ['strip', 'strip, streifen, bandeau, tira, striscia, strook, casing, tunnel'],
  ['yoke', 'yoke-, passe, rückenpasse, sattel, koller, empiècement, canesú, sprone, schouderpas'],
  ['sleeve', 'sleeve-, -sleeve, -ärmel, ärmel-, manche, manga, manica, mouw-'],
  [
    'trouser',
    'trouser-, pants, pant, leg, shorts, leggings, hose, hosen-, -hose, hosenbein, bein, pantalon, pantalón, pantalone, jambe, pierna, gamba, broek, broekspijp, calça',
  ],
  ['skirt', 'skirt-, -skirt, rock, rock-, -rock, jupe, falda, gonna, rok, saia, gore, godet'],
  [
    'bodice',
    'bodice-, shirt, blouse, oberteil, mieder, leibchen, corsage, corpiño, corpetto, corpino, lijfje, corpo, waistcoat, vest, jacket, coat',
  ],
];
