import { type EdgeRef, PatternError, parseLength } from '@paperhinge/geometry';
import { tolerances } from '@paperhinge/geometry/internal';
import { type EdgePosition, parsePercent, parsePosition } from '@paperhinge/geometry/pattern';
import type { Tree } from '../document.js';
import { longestLength } from '../limits.js';
import { type At, type Kind, tell } from './kind.js';

// The kinds of value a field takes. Each reads what the maker wrote and tells what is wrong with it.

const numberOrText = { type: ['number', 'string'] };

/** Words or a figure as written; undefined for anything else. */
const written = (tree: Tree): string | number | undefined =>
  tree.kind === 'scalar' && (typeof tree.value === 'string' || typeof tree.value === 'number')
    ? tree.value
    : undefined;

/** Bounds of a length in mm; `over`: more than the least. */
export interface LengthBounds {
  readonly least?: number;
  readonly most?: number;
  readonly over?: boolean;
}

/** A length in mm, from 0 unless the bounds say otherwise. */
export const length = ({
  least = 0,
  most = longestLength,
  over = false,
}: LengthBounds = {}): Kind<number> => ({
  schema: {
    ...numberOrText,
    description: `A length: 12, 12 mm, 1.2 cm, 3/8 in, 2 7/8". A bare number is in the sheet's unit.`,
  },
  read: (tree, at) => {
    const given = written(tree);
    if (given === undefined) return tell(at, 'length-not-understood', {});
    const mm = attempt(
      () => parseLength(given, at.reading.unit),
      ({ code }) =>
        code === 'length-out-of-range'
          ? tell(at, 'length-out-of-range', {})
          : tell(at, 'length-not-understood', withPoint(given)),
    );
    if (mm === undefined || (mm <= most && (over ? mm > least : mm >= least))) return mm;
    const opposite = mm < 0 && at.opposite !== undefined ? { opposite: at.opposite } : {};
    return tell(at, 'length-out-of-range', { givenMm: mm, leastMm: least, mostMm: most, over, ...opposite });
  },
});
/** `2,5 cm`: a point was meant. */
const withPoint = (given: string | number): { readonly write?: string } => {
  const text = String(given).trim();
  return /^-?\d+,\d+\s*(mm|cm|in|")?$/.test(text) ? { write: text.replace(',', '.') } : {};
};

/** More than 0 mm. */
export const size = length({ over: true });
/** Either way. */
export const signedLength = length({ least: -longestLength });
/** The width of a seam or hem allowance. */
export const allowance = length({ most: tolerances.largestAllowance });

/** A share, 0.8 for `80 %`, between bounds in per cent; `over`: more than the least. */
export const percent = (least: number, most: number, over = false): Kind<number> => ({
  schema: { ...numberOrText, description: `A percentage with its sign, such as 80 %; at most ${most} %.` },
  read: (tree, at) => {
    const given = written(tree);
    if (given === undefined) return tell(at, 'percent-not-understood', { lacksSign: false });
    const share = attempt(
      () => parsePercent(given),
      ({ facts }) =>
        tell(at, 'percent-not-understood', {
          lacksSign: facts.lacksSign === true,
          ...(typeof facts.write === 'string' ? { write: facts.write } : {}),
        }),
    );
    if (share === undefined) return undefined;
    const inPerCent = perCent(share);
    if (inPerCent <= most && (over ? inPerCent > least : inPerCent >= least)) return share;
    const bounds = { leastPercent: least, mostPercent: most, over };
    return tell(at, 'percent-out-of-range', { givenPercent: inPerCent, ...bounds });
  },
});

/** Rounded: 300 % may come out an ulp beyond 3, and 7 % read as 0.07 comes back an ulp off. */
export const perCent = (share: number): number => Number((share * 100).toPrecision(12));

/** A place on an edge. */
export const position: Kind<EdgePosition> = {
  schema: {
    ...numberOrText,
    description: 'A place on an edge: 1/3, 40 %, 1/3 from EDGE, 60 mm from EDGE, start, end.',
  },
  read: (tree, at) => {
    const given = written(tree);
    if (given === undefined) return tell(at, 'position-not-understood', { form: 'any' });
    if (given === 'start' || given === 'end') return { share: given === 'start' ? 0 : 1 };
    return attempt(
      () => parsePosition(given, at.reading.unit),
      ({ code, facts }) =>
        code === 'position-off-edge'
          ? tell(at, 'position-off-edge', {})
          : tell(at, 'position-not-understood', { form: (facts.form ?? 'any') as 'any' }),
    );
  },
};

/** A name of the maker's. */
export const name: Kind<string> = {
  schema: { type: 'string' },
  read: ({ kind, ...tree }, at) => {
    const text = 'value' in tree && typeof tree.value === 'string' ? tree.value : undefined;
    if (kind !== 'scalar' || text === undefined || text.trim() === '')
      return tell(at, 'name-not-understood', {});
    return isPrintable(text) ? text : tell(at, 'name-not-printable', {});
  },
};
const longestName = 100;
export const isPrintable = (text: string): boolean =>
  text.length <= longestName && !/[\p{C}\p{Zl}\p{Zp}]/u.test(text);

/** Where a file lies. */
export const filePath: Kind<string> = {
  schema: { type: 'string' },
  read: (tree, at) => {
    const text = written(tree);
    return typeof text === 'string' && text.trim() !== '' && !text.includes('\0')
      ? text
      : tell(at, 'name-not-understood', {});
  },
};

/** `piece.edge`; the piece's name ends at the first full stop. */
export const edgeRef: Kind<EdgeRef> = {
  schema: { type: 'string', description: 'PIECE.EDGE, such as front.neck.' },
  read: (tree, at) => {
    const text = name.read(tree, at);
    return text === undefined ? undefined : (edgeRefOf(text) ?? tell(at, 'edge-not-understood', {}));
  },
};

/** The piece and the edge of `front.neck`; undefined if it is not written so. */
export function edgeRefOf(text: string): EdgeRef | undefined {
  const stop = text.indexOf('.');
  const piece = text.slice(0, Math.max(stop, 0)).trim(),
    edge = text.slice(stop + 1).trim();
  return piece !== '' && edge !== '' ? { piece, edge } : undefined;
}

/** rad, from degrees written as `12`, `12°` or `12 deg`; less than half a turn. */
export const angle: Kind<number> = {
  schema: { ...numberOrText, description: 'Degrees: 12, 12° or 12 deg.' },
  read: (tree, at) => {
    const given = written(tree);
    const digits =
      typeof given === 'number'
        ? given
        : /^([+-]?\d{1,9}(?:\.\d{1,15})?)\s*(?:°|deg|degrees)?$/.exec(given?.trim() ?? '')?.[1];
    if (digits === undefined || Number.isNaN(Number(digits))) return tell(at, 'angle-not-understood', {});
    const degrees = Number(digits);
    return Math.abs(degrees) < 180 ? (degrees * Math.PI) / 180 : tell(at, 'angle-out-of-range', {});
  },
};

/** A whole number from 1. */
export const count = (most: number): Kind<number> => ({
  schema: { type: 'integer', minimum: 1, maximum: most },
  read: (tree, at) => {
    const given = written(tree);
    if (typeof given !== 'number' || !Number.isInteger(given)) return tell(at, 'count-not-understood', {});
    return given >= 1 && given <= most ? given : tell(at, 'count-out-of-range', { least: 1, most });
  },
});

export const yesOrNo: Kind<boolean> = {
  schema: { anyOf: [{ type: 'boolean' }, { enum: ['yes', 'no'] }] },
  read: (tree, at) => {
    const given = tree.kind === 'scalar' ? tree.value : undefined;
    if (given === true || given === 'yes') return true;
    if (given === false || given === 'no') return false;
    return tell(at, 'choice-not-understood', { given: String(given ?? ''), words: ['yes', 'no'] });
  },
};

/** One of these words. */
export const choice = <const W extends string>(words: readonly W[]): Kind<W> => ({
  schema: { type: 'string', enum: words },
  read: (tree, at) => {
    const given = tree.kind === 'scalar' ? tree.value : undefined;
    const word = words.find(w => w === given);
    return word ?? tell(at, 'choice-not-understood', { given: String(given ?? ''), words });
  },
});

/** What `read` gives; undefined with what it refused told. */
function attempt<T>(read: () => T, told: (error: PatternError) => undefined): T | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof PatternError) return told(error);
    throw error;
  }
}

/** Words that stand beside another kind of value. */
export const orWords = <T, const W extends string>(words: readonly W[], kind: Kind<T>): Kind<T | W> => ({
  schema: { anyOf: [{ type: 'string', enum: words }, kind.schema] },
  read: (tree, at: At) => words.find(w => tree.kind === 'scalar' && w === tree.value) ?? kind.read(tree, at),
});
