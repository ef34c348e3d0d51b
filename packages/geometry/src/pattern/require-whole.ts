import { locating } from '../errors.js';
import { oncePer } from '../once-per.js';
import { requirePath } from '../path/sound.js';
import { faultIn, type Kind } from './fault-in.js';
import { requireParts } from './sound.js';
import { refusal } from './tellings.js';
import type { OutlinePart, Pattern, Piece, Seam } from './types.js';
import { refuseBadFacts, refuseBadPatternFacts } from './validate-facts.js';

// All that the model holds, thing by thing: what must be there, and what may be.

type Kinds = Readonly<Record<string, Kind>>;

/** An object with these things in it, and with those where they are given. */
const holding =
  (needed: Kinds, maybe: Kinds): Kind =>
  value => {
    const given = Object.entries(maybe).filter(([name]) => (value as Kinds)[name] !== undefined);
    return faultIn(value, { ...needed, ...Object.fromEntries(given) });
  };

/** The two legs of a dart. */
const twoOf =
  (kind: Kind): Kind =>
  list =>
    (list as readonly unknown[]).length === 2 ? faultIn(list, [kind]) : '';

const point: Kind = { x: 'number', y: 'number' };
const path: Kind = { segments: [[point]] };
const guessed: Kinds = { role: 'string', roleGuessed: 'boolean' };
const edgeRef: Kinds = { piece: 'string', edge: 'string' };
const run: Kind = holding({ ...edgeRef, reversed: 'boolean' }, { part: { from: 'number', to: 'number' } });
const cutting: Kind = holding(
  { count: 'number', mirrored: 'boolean', fabric: 'string' },
  { layers: 'number', rightSideUp: 'boolean', note: 'string' },
);
const parts = new Map<string, Kind>([
  [
    'edge',
    holding(
      {
        name: 'string',
        path,
        kind: 'string',
        allowance: 'number',
        corners: holding({}, { start: 'string', end: 'string' }),
      },
      { ...guessed, opening: 'number', finish: 'string', topstitch: 'number', interfacing: 'number' },
    ),
  ],
  ['dart', holding({ name: 'string', legs: twoOf(path), apex: point }, { pressed: 'string' })],
  ['pleat', { name: 'string', kind: 'string', mouth: path, towards: 'string', stitched: 'number' }],
]);
const piece: Kind = holding(
  {
    name: 'string',
    title: 'string',
    outline: { parts: [part => faultIn(part, parts.get((part as OutlinePart).type) ?? { type: () => '' })] },
    notches: [holding({ edge: 'string', at: 'number', style: 'string' }, { name: 'string' })],
    lines: [holding({ kind: 'string', name: 'string', path }, guessed)],
    marks: [holding({ kind: 'string', name: 'string', at: point }, guessed)],
    cutting,
  },
  {
    ...guessed,
    alsoCut: [cutting],
    greatestStretch: 'string',
    madeFor: [edgeRef],
    recipe: { verb: 'string', parameters: {} },
  },
);
const seam: Kind = holding(
  {
    name: 'string',
    a: [run],
    b: [run],
    ease: ease => faultIn(ease, 'percent' in ease ? { percent: 'number' } : { mm: 'number' }),
  },
  { takenUp: 'string', tolerance: 'number' },
);
const fastening: Kind = holding(
  { name: 'string', kind: 'string', along: run },
  {
    length: 'number',
    count: 'number',
    spacing: 'number',
    size: 'number',
    relaxed: 'number',
    sort: 'string',
    overlap: 'number',
    underlap: 'number',
  },
);
const fabric: Kind = holding(
  { name: 'string', role: 'string' },
  {
    width: 'number',
    stretch: holding({ across: 'number' }, { along: 'number' }),
    recovery: 'number',
    nap: 'boolean',
    repeat: 'number',
  },
);
const faultInPiece = /* @__PURE__ */ oncePer((value: object) => faultIn(value, piece));
const faultInSeam = /* @__PURE__ */ oncePer((value: object) => faultIn(value, seam));
const pattern: Kind = holding(
  { name: 'string', unit: 'string', pieces: [faultInPiece], seams: [faultInSeam], fabrics: [fabric] },
  {
    fastenings: [fastening],
    tolerance: 'number',
    leftToTrue: [{ ...edgeRef, at: 'number' }],
    size: 'string',
  },
);

/**
 * Refuses what is no pattern before it is measured, checked, cut, laid or written: all that the model holds must be
 * there in its form, every number finite, every word known. Names that nothing has and outlines that do not close are
 * left to those who meet them, and to `validatePattern`. Asked once of a pattern, of each of its pieces and its seams.
 * @throws PatternError `pattern-not-usable` with the place of the first fault; `piece-without-outline`,
 *   `coordinate-out-of-range`, `word-not-understood`, `length-not-positive`, `cut-count`, `stretch-out-of-range`
 */
export const requireWhole: (given: Pattern) => void = /* @__PURE__ */ oncePer((given: Pattern): void =>
  requireForm('pattern', given, pattern, () => {
    given.pieces.forEach(requireWords);
    refuseBadPatternFacts(given);
  }),
);

/** {@link requireWhole} of one piece. @throws the same, what concerns pieces */
export const requireWholePiece: (given: Piece) => void = /* @__PURE__ */ oncePer((given: Piece): void =>
  requireForm('piece', given, piece, () => requireWords(given)),
);

/** {@link requireWhole} of one seam. @throws PatternError `pattern-not-usable` with the place of the fault */
export const requireWholeSeam: (given: Seam) => void = /* @__PURE__ */ oncePer((given: Seam): void =>
  requireForm('seam', given, seam, () => undefined),
);

/** Of a number that is none, and of no other fault, those who know what it is of tell more, if they ask for it. */
function requireForm(what: string, given: object, kind: Kind, askFurther: () => void): void {
  const fault = faultIn(given, kind);
  if (fault === undefined || faultIn(allFinite(given), kind) === undefined) askFurther();
  if (fault !== undefined) throw refusal('pattern-not-usable', { at: `${what}${fault}` });
}

/** A value with 0 in the place of each number in it that is not finite. */
function allFinite(value: unknown): unknown {
  if (typeof value === 'number') return Number.isFinite(value) ? value : 0;
  if (typeof value !== 'object' || value === null) return value;
  return Array.isArray(value)
    ? Array.from(value, allFinite)
    : Object.fromEntries(Object.entries(value).map(([name, held]) => [name, allFinite(held)]));
}

/** Of a piece whose form is sound. */
const requireWords = /* @__PURE__ */ oncePer((given: Piece): void =>
  locating({ piece: given.name }, () => {
    requireParts(given.outline.parts);
    refuseBadFacts(given);
    for (const { path: drawn } of given.lines) requirePath(drawn);
  }),
);
