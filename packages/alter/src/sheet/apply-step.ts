import type { Pattern } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { draftBand } from '../derive/draft-band.js';
import { draftFacing } from '../derive/draft-facing.js';
import { draftStrip } from '../derive/draft-strip.js';
import { closeDart } from '../operations/close-dart.js';
import { moveDart } from '../operations/move-dart.js';
import { recutNeckline } from '../operations/recut-neckline.js';
import { removePiece } from '../operations/remove-piece.js';
import { setAllowance } from '../operations/set-allowance.js';
import { shorten } from '../operations/shorten.js';
import { spread } from '../operations/spread.js';
import { takeIn } from '../operations/take-in.js';
import { trueEdges } from '../operations/true-edges.js';
import { unfold } from '../operations/unfold.js';
import type { SheetStep } from './sheet.js';

/** Does one step to a pattern: the verb's own operation. @throws PatternError whatever the operation refuses */
export function applyStep(pattern: Pattern, step: SheetStep): Alteration {
  switch (step.verb) {
    case 'shorten':
    case 'lengthen':
      return shorten(pattern, step.parameters);
    case 'close dart':
      return closeDart(pattern, step.parameters);
    case 'move dart':
      return moveDart(pattern, step.parameters);
    case 'spread':
      return spread(pattern, step.parameters);
    case 'take in':
    case 'let out':
      return takeIn(pattern, step.parameters);
    case 'recut neckline':
      return recutNeckline(pattern, step.parameters);
    case 'set allowance':
      return setAllowance(pattern, step.parameters);
    case 'true':
      return trueEdges(pattern, step.parameters);
    case 'unfold':
      return unfold(pattern, step.parameters);
    case 'remove piece':
      return removePiece(pattern, step.parameters);
    case 'draft band':
      return draftBand(pattern, step.parameters);
    case 'draft strip':
    case 'draft binding':
      return draftStrip(pattern, step.parameters);
    case 'draft facing':
    case 'draft stay':
      return draftFacing(pattern, step.parameters);
  }
}
