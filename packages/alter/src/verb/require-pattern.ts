import type { OutlinePart, Pattern } from '@paperhinge/geometry';
import { oncePer } from '@paperhinge/geometry/internal';
import { refusal } from './tellings.js';

/** What a value must be: of a type, a list of a kind, or an object with these things in it; or what finds its fault. */
type Kind =
  | 'string'
  | 'number'
  | readonly [Kind]
  | { readonly [name: string]: Kind }
  | ((value: object) => string | undefined);

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
 * names say together is left to `validatePattern`. Asked once of a pattern and of each piece: a step asks it only of
 * what the step before made new.
 * @throws PatternError `pattern-not-usable` with the place of the first fault
 */
export const requirePattern: (given: Pattern) => void = /* @__PURE__ */ oncePer((given: Pattern): void => {
  const fault = faultIn(given, pattern);
  if (fault !== undefined) throw refusal('pattern-not-usable', { at: `pattern${fault}` });
});

/** Where in a value the first fault is: empty where it is the value itself, nothing where there is none. */
function faultIn(value: unknown, kind?: Kind): string | undefined {
  if (typeof value !== 'object' || value === null) {
    const isSound = typeof value !== 'number' || Number.isFinite(value);
    return isSound && (kind === undefined || typeof value === kind) ? undefined : '';
  }
  if (typeof kind === 'function') return kind(value);
  const isList = Array.isArray(value);
  if (isList !== Array.isArray(kind ?? value)) return '';
  const within = value as Readonly<Record<string, unknown>>,
    kinds = kind as Readonly<Record<string, Kind>> | undefined;
  for (const key of isList ? value.keys() : Object.keys({ ...kinds, ...within })) {
    const fault = faultIn(within[key], kinds?.[isList ? 0 : key]);
    if (fault !== undefined) return `.${key}${fault}`;
  }
  return undefined;
}
