import { draftBandVerb } from './derive/draft-band.js';
import { draftFacingVerb } from './derive/draft-facing.js';
import { draftStayVerb } from './derive/draft-stay.js';
import { draftBindingVerb, draftStripVerb } from './derive/draft-strip.js';
import { addNotchesVerb } from './operations/add-notches.js';
import { changeDartVerb } from './operations/change-dart.js';
import { closeDartVerb } from './operations/close-dart.js';
import { joinDartsVerb } from './operations/join-darts.js';
import { moveDartVerb } from './operations/move-dart.js';
import { moveDartPointVerb } from './operations/move-dart-point.js';
import { openDartVerb } from './operations/open-dart.js';
import { recutNecklineVerb } from './operations/recut-neckline.js';
import { removePieceVerb } from './operations/remove-piece.js';
import { resizeDartVerb } from './operations/resize-dart.js';
import { setAllowanceVerb } from './operations/set-allowance.js';
import { setSeamVerb } from './operations/set-seam.js';
import { lengthenVerb, shortenVerb } from './operations/shorten.js';
import { spreadVerb } from './operations/spread.js';
import { letOutVerb, takeInVerb } from './operations/take-in.js';
import { trueVerb } from './operations/true-edges.js';
import { unfoldVerb } from './operations/unfold.js';
import type { AnyVerb } from './verb/verb.js';

const all = [
  shortenVerb,
  lengthenVerb,
  closeDartVerb,
  moveDartVerb,
  joinDartsVerb,
  openDartVerb,
  resizeDartVerb,
  moveDartPointVerb,
  changeDartVerb,
  spreadVerb,
  takeInVerb,
  letOutVerb,
  recutNecklineVerb,
  trueVerb,
  setAllowanceVerb,
  setSeamVerb,
  addNotchesVerb,
  unfoldVerb,
  removePieceVerb,
  draftBandVerb,
  draftStripVerb,
  draftBindingVerb,
  draftFacingVerb,
  draftStayVerb,
] as const;

/** The trade verbs by name. */
export type VerbName = (typeof all)[number]['verb'];

/** Every trade verb, in the order in which a reference lists them. To add one: its file, its test, and its line here. */
export const verbs: readonly AnyVerb[] = all;
