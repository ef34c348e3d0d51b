import type { LineRole, MarkRole } from '../types.js';
import type { RoleWords } from './name-words.js';

/** What levels and other lines within a piece are called, in the languages of `edgeWords`. */
export const lineWords: RoleWords<LineRole> = [
  ['centre', 'centre-, center-, cf, cb, -mitte, milieu, centro, mezzo, midden-, meio'],
  ['underbust', 'underbust, under bust, unterbrust-, sous poitrine, bajo busto, sottoseno, onderbuste'],
  ['bust', 'bust, bustline, chest-, brust-, poitrine, busto, pecho, seno, petto, buste, borst-, peito'],
  ['abdomen', 'abdomen, tummy, high hip, bauch-, ventre, abdómen, buik, pancia'],
  ['waist', 'waist-, taille-, cintura, talle, vita, middel'],
  ['hip', 'hip-, seat, hüft-, -hüfte, hanche, bassin, cadera, fianchi, heup-, quadril, gesäss'],
  ['thigh', 'thigh-, oberschenkel-, cuisse, muslo, coscia, dijbeen, coxa'],
  ['knee', 'knee-, knie-, genou, rodilla, ginocchio, joelho'],
  ['calf', 'calf, wade, waden-, mollet, pantorrilla, polpaccio, kuit'],
  ['ankle', 'ankle-, knöchel-, cheville, tobillo, caviglia, enkel-, tornozelo'],
  ['upper arm', 'upper arm, upperarm, biceps, bicep, oberarm-, bras, brazo, braccio, bovenarm-'],
  ['elbow', 'elbow-, ellbogen-, ellenbogen-, coude, codo, gomito, elleboog, cotovelo'],
  ['wrist', 'wrist-, handgelenk-, poignet, muñeca, polso, pols, pulso'],
  ['neck', 'neck-, hals-, cou, cuello, collo, pescoço'],
];

/** What spots are called. A button stands before its hole's word, which holds it. */
export const markWords: RoleWords<MarkRole> = [
  ['buttonhole', 'buttonhole, button hole, knopfloch, boutonnière, ojal, asola, knoopsgat, casa'],
  ['button', 'button, knopf, knöpfe, bouton, botón, bottone, knoop, botão, snap, popper'],
  [
    'bust point',
    'bust point, bustpoint, bp, apex, brustpunkt, brustspitze, pointe de poitrine, punto busto, bustepunt',
  ],
  ['pocket', 'pocket, -tasche, taschen-, poche, bolsillo, tasca, zak'],
];
