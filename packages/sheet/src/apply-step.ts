import { type Alteration, perform, verbs } from '@paperhinge/alter';
import type { Pattern } from '@paperhinge/geometry';
import type { SheetStep } from './sheet.js';

/** Does one step to a pattern: the verb's own operation. @throws PatternError whatever the operation refuses */
export function applyStep(pattern: Pattern, { verb, parameters }: SheetStep): Alteration {
  return perform(verbs.find(v => v.verb === verb)!, pattern, parameters);
}
