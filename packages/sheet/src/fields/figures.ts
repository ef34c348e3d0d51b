import { parseLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { parsePercent } from '@paperhinge/geometry/pattern';
import { longestLength } from '../limits.js';
import { type Kind, tell } from './kind.js';
import { namedFigure } from './named-figure.js';
import { attempt, numberOrText, written } from './written.js';

// Figures: lengths, percentages, angles and counts, each read from what the maker wrote.

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
    const named = namedFigure(tree, at, 'length');
    const mm =
      named !== 'none'
        ? named
        : attempt(
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
    const named = namedFigure(tree, at, 'share');
    const share =
      named !== 'none'
        ? named
        : attempt(
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

/** rad, from degrees written as `12`, `12°` or `12 deg`; less than half a turn. */
export const angle: Kind<number> = {
  schema: { ...numberOrText, description: 'Degrees: 12, 12° or 12 deg.' },
  read: (tree, at) => {
    const given = written(tree);
    const named = namedFigure(tree, at, 'angle');
    if (named === undefined) return undefined;
    const digits =
      named !== 'none'
        ? named
        : typeof given === 'number'
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
