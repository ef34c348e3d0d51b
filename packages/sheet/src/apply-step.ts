import type { Alteration } from '@paperhinge/alter';
import {
  closeDart,
  draftBand,
  draftFacing,
  draftStrip,
  lengthen,
  moveDart,
  recutNeckline,
  removePiece,
  setAllowance,
  shorten,
  spread,
  takeIn,
  trueEdges,
  unfold,
} from '@paperhinge/alter';
import type { Pattern } from '@paperhinge/geometry';
import type { SheetStep } from './sheet.js';

/** Does one step to a pattern: the verb's own operation. @throws PatternError whatever the operation refuses */
export function applyStep(pattern: Pattern, step: SheetStep): Alteration {
  switch (step.verb) {
    case 'shorten':
      return shorten(pattern, step.parameters);
    case 'lengthen':
      return lengthen(pattern, step.parameters);
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
