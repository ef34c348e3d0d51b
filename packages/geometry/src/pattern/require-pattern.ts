import { oncePer } from '../once-per.js';
import { faultIn, type Kind } from './fault-in.js';
import { refusal } from './tellings.js';
import type { OutlinePart, Pattern } from './types.js';

/** A list of a kind that has no fewer than two. */
const twoOrMore =
  (kind: Kind): Kind =>
  list =>
    (list as readonly unknown[]).length > 1 ? faultIn(list, [kind]) : '';

const point: Kind = { x: 'number', y: 'number' };
const path: Kind = { segments: [twoOrMore(point)] };
const runs: Kind = [{ piece: 'string', edge: 'string' }];
const parts: Readonly<Record<string, Kind>> = {
  edge: { name: 'string', path, allowance: 'number', corners: {} },
  dart: { name: 'string', legs: twoOrMore(path), apex: point },
  pleat: { name: 'string', mouth: path, stitched: 'number' },
};
const piece: Kind = {
  name: 'string',
  outline: { parts: [part => faultIn(part, parts[(part as OutlinePart).type] ?? { type: 'string' })] },
  notches: [{ edge: 'string', at: 'number' }],
  lines: [{ name: 'string', path }],
  marks: [{ name: 'string', at: point }],
  cutting: {},
};
const pattern: Kind = {
  pieces: [/* @__PURE__ */ oncePer(value => faultIn(value, piece))],
  seams: [{ name: 'string', a: runs, b: runs }],
  fabrics: [{ name: 'string' }],
};

/**
 * Refuses what is no pattern before any work is done to it, as plain JavaScript may hand over: what every verb reads
 * must be there, and every number in it must be finite, also in what this verb does not touch. What the numbers and
 * names say together is left to `validatePattern`; all the rest that a pattern holds, to `requireWhole`, as a page of
 * one operation has no room for it. Asked once of a pattern and of each piece: a step asks it only of what the step
 * before made new.
 * @throws PatternError `pattern-not-usable` with the place of the first fault
 */
export const requirePattern: (given: Pattern) => void = /* @__PURE__ */ oncePer((given: Pattern): void => {
  const fault = faultIn(given, pattern);
  if (fault !== undefined) throw refusal('pattern-not-usable', { at: `pattern${fault}` });
});
