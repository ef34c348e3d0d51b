import type { DrawnLine } from './drawing.js';

/**
 * The hand that each line is drawn in: its layer or colour, and its dashes where others of that layer are dashed
 * otherwise: "black solid", "black dashed 6-2", or "black dashed" where there is one kind of dashes alone; a kind
 * that has a name by that.
 */
export function handsOf(lines: readonly DrawnLine[]): (line: DrawnLine) => string {
  const kinds = new Map<string, Set<string>>();
  for (const line of lines) kinds.set(line.layer, (kinds.get(line.layer) ?? new Set()).add(kindOf(line)));
  return line => {
    const own = kinds.get(line.layer)!;
    if (own.size === 1) return line.layer;
    const dashes = [...own].filter(kind => kind !== drawn);
    const kind = kindOf(line);
    const isNamed = /^\p{L}/u.test(kind);
    return `${line.layer} ${isNamed ? kind : dashes.length === 1 ? dashed : `${dashed} ${kind}`}`;
  };
}
const drawn = 'solid',
  dashed = 'dashed';
const kindOf = ({ dashed: isDashed, dash }: DrawnLine): string =>
  !isDashed ? drawn : dash === undefined ? dashed : typeof dash === 'string' ? dash : dashWord(dash);

/** Whether a line is what is asked for: its layer, its hand, or its hand where the layer is left out. */
export const answersTo = (line: DrawnLine, hand: string, wanted: string): boolean =>
  wanted === line.layer || wanted === hand || (hand !== line.layer && hand === `${line.layer} ${wanted}`);

/** Lengths of dashes and gaps in mm as a word: "6-2". */
const dashWord = (lengths: readonly number[]): string =>
  lengths.map(mm => String(Math.round(mm * 10) / 10)).join('-');
