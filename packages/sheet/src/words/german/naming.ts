import type { NamingSentences } from '../../naming-sayings.js';
import type { Sentences } from '../catalogue.js';
import { roles } from './roles.js';

const signs = {
  'deeper-neck': { front: 'Halsloch tiefer als beim anderen', back: 'Halsloch flacher als beim anderen' },
  'shorter-crotch': {
    front: 'Schrittnaht kürzer als beim anderen',
    back: 'Schrittnaht länger als beim anderen',
  },
  'more-darts': { front: 'Abnäher nehmen mehr weg', back: 'Abnäher nehmen weniger weg' },
  'fewer-darts': { front: 'Abnäher nehmen weniger weg', back: 'Abnäher nehmen mehr weg' },
  'open-down-front': {
    front: 'eines von zweien, die vorn offen sind',
    back: 'liegt im Bruch, das andere ist vorn offen',
  },
  'drawn-first': { front: 'nur weil es zuerst gezeichnet ist', back: 'nur weil es zuletzt gezeichnet ist' },
} as const;

/** Was ein Blatt mit vorgeschlagenen Namen sagt. */
export const namingSentences: Sentences<NamingSentences> = {
  'names-proposed': () =>
    'Allein nach der Zeichnung vorgeschlagen: Streichen oder ändern Sie, was nicht stimmt; die Kanten zeichnet: paperhinge check SCHNITT --sheet DIESES --picture P.svg',
  'piece-seems': ({ role, front, sign, surePercent }, say) => {
    const what = (roles as Readonly<Record<string, string>>)[role] ?? role;
    const sure = `zu ${say.percent(surePercent)} sicher: ${what}, nach dem Umriss`;
    if (front === undefined) return sure;
    return `${sure}; ${front ? 'vorn' : 'hinten'}: ${signs[sign!][front ? 'front' : 'back']}`;
  },
  'piece-not-known': () => 'gleicht keinem bekannten Teil',
  'seam-seems': ({ surePercent, aMm, bMm }, say) =>
    `zu ${say.percent(surePercent)} sicher: ${say.length(aMm)} an ${say.length(bMm)}`,
  'seam-perhaps': ({ surePercent, aMm, bMm }, say) =>
    `vielleicht, zu ${say.percent(surePercent)} sicher: ${say.length(aMm)} an ${say.length(bMm)}`,
  'centre-on-fold': () => 'wenn die Mitte im Stoffbruch liegt',
  'names-written': ({ pieces, named, seams }) =>
    `${named} von ${pieces} Teilen benannt, ${seams === 1 ? '1 Naht' : `${seams} Nähte`} vorgeschlagen`,
};
