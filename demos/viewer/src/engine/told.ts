import { PatternError } from '@paperhinge/geometry';
import { faultsIn, type Words } from '@paperhinge/sheet/words';
import type { Fault } from './view.js';
import { engineWords } from './words.js';

/** An error in a maker's words, each fault with its line; a fault of ours keeps its own words. */
export function faultsTold(error: unknown, words: Words): readonly Fault[] {
  if (!(error instanceof PatternError))
    return [{ text: error instanceof Error ? error.message : String(error) }];
  return faultsIn(error).map(fault => {
    const { message, remedy } = words.error(fault);
    const { line } = fault.where;
    return { text: `${message} ${remedy}`, ...(line === undefined ? {} : { line }) };
  });
}

/** ... as one text, a line for each fault. */
export const told = (error: unknown, words: Words): string =>
  faultsTold(error, words)
    .map(({ line, text }) =>
      line === undefined ? text : `${engineWords(words.language).line} ${line}: ${text}`,
    )
    .join('\n');
