import type { NamingSentences } from '../../naming-sayings.js';
import type { Sentences } from '../catalogue.js';
import { roles } from './roles.js';

const signs = {
  'deeper-neck': { front: 'its neck is the deeper of the two', back: 'its neck is the shallower of the two' },
  'shorter-crotch': {
    front: 'its crotch is the shorter of the two',
    back: 'its crotch is the longer of the two',
  },
  'more-darts': { front: 'its darts take up more', back: 'its darts take up less' },
  'fewer-darts': { front: 'its darts take up less', back: 'its darts take up more' },
  'open-down-front': {
    front: 'it is one of two that open down the front',
    back: 'it lies on a fold, and the other opens in front',
  },
  'drawn-first': { front: 'only because it is drawn first', back: 'only because it is drawn last' },
} as const;

/** What a sheet of proposed names says. */
export const namingSentences: Sentences<NamingSentences> = {
  'names-proposed': () =>
    'Proposed from the drawing alone: strike out or change what is not so, and draw the edges with: paperhinge check PATTERN --sheet THIS --picture P.svg',
  'piece-seems': ({ role, front, sign, surePercent }, say) => {
    const what = (roles as Readonly<Record<string, string>>)[role] ?? role;
    if (front === undefined) return `${say.percent(surePercent)} sure: ${what}, by its outline`;
    const side = front ? 'front' : 'back';
    return `${say.percent(surePercent)} sure: ${what}, by its outline; the ${side}, as ${signs[sign!][side]}`;
  },
  'piece-not-known': () => 'like no kind of piece that is known',
  'seam-seems': ({ surePercent, aMm, bMm }, say) =>
    `${say.percent(surePercent)} sure: ${say.length(aMm)} to ${say.length(bMm)}`,
  'seam-perhaps': ({ surePercent, aMm, bMm }, say) =>
    `perhaps, ${say.percent(surePercent)} sure: ${say.length(aMm)} to ${say.length(bMm)}`,
  'centre-on-fold': () => 'if its centre is laid on the fold',
  'names-written': ({ pieces, named, seams }) =>
    `${named} of ${pieces} pieces named, ${seams === 1 ? '1 seam' : `${seams} seams`} proposed`,
};
