import type { EdgeRole } from '../types.js';
import type { RoleWords } from './name-words.js';

/**
 * What edges are called in English, German, French, Spanish, Italian, Dutch and Portuguese. The order decides where a
 * name holds words of two roles: a `side neck` is a neck, a `side slit` an opening, a `centre back hem` a hem.
 */
export const edgeWords: RoleWords<EdgeRole> = [
  [
    'armhole',
    'armhole-, armscye, armseye, scye, arm hole, arm opening, -armloch-, -ärmelloch-, -armausschnitt-, emmanchure, entournure, sisa, giromanica, giro manica, scalfo, armsgat, mouwgat, cava',
  ],
  [
    'cap',
    'cap, sleevecap, sleeve head, sleevehead, crown, -ärmelkugel-, -armkugel-, kugel, tête, copa, cabeza, colmo, mouwkop, cabeça',
  ],
  [
    'neck',
    '-neck-, collar-, -hals-, -ausschnitt-, kragen-, encolure, col, cou, décolleté, escote, cuello, scollo, scollatura, collo, girocollo, decote, gola',
  ],
  ['shoulder', 'shoulder-, -schulter-, épaule, hombro, spalla, schouder-, ombro'],
  [
    'inseam',
    'inseam-, inside leg, inner leg, inleg, innenbein-, innere beinnaht, beinnaht innen, entrejambe, entrepierna, interno gamba, binnenbeen-, entreperna',
  ],
  [
    'outseam',
    'outseam-, outside leg, outer leg, outleg, aussenbein-, äussere beinnaht, beinnaht aussen, côté jambe, buitenbeen-, esterno gamba',
  ],
  [
    'crotch',
    'crotch-, rise, seat, -schritt-, -gesässnaht-, fourche, enfourchure, tiro, cavallo, kruis, kruisnaad, gancho',
  ],
  ['wrist', 'wrist-, handgelenk-, poignet, polso, pols, puño, punho'],
  ['hem', 'hem, hemline, bottom, -saum, saum-, ourlet, bas, dobladillo, bajo, orlo, fondo, zoom, bainha'],
  ['waist', 'waist-, taille-, bund-, ceinture, cintura, talle, vita, middel'],
  ['inset', 'inset, einsatz-'],
  [
    'opening',
    'opening, placket, slit, vent, zip, zipper, fly, -schlitz-, öffnung-, -verschluss-, fente, ouverture, fermeture, braguette, abertura, cremallera, bragueta, apertura, spacco, cerniera, split, rits, gulp, ziper',
  ],
  [
    'panel',
    'panel-, princess-, -teilung-, wiener, prinzess-, découpe, costadillo, princesa, deelnaad, prinsessen-',
  ],
  ['yoke', 'yoke-, passe, passen-, sattel-, koller-, empiècement, canesú, sprone, schouderpas'],
  [
    'underarm',
    'underarm-, under arm, sleeve seam, -unterarm-, -ärmelnaht, dessous de bras, couture de manche, costura de manga, sottomanica, sottobraccio, sotto braccio, onderarm-, mouwnaad',
  ],
  [
    'side',
    'side, sideseam, seite, seiten-, -seitennaht, côté, lado, lateral, laterale, costado, fianco, lato, zij, zijde, zijnaad, zijkant',
  ],
  [
    'centre',
    'centre, center, cf, cb, middle, -mitte, milieu, centro, medio, mezzo, midden-, meio, fold, bruch, stoffbruch, pliure',
  ],
];
