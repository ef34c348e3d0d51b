import {
  type EdgeRef,
  type LengthUnit,
  PatternError,
  parseLength,
  parsePercent,
  parsePosition,
  tolerances,
} from '@paperhinge/geometry';
import { z } from 'zod';
import { longestLength, mostSlashes } from './limits.js';
import { type WordingCode, type Words, wording } from './wording.js';
import { english } from './words/english/index.js';
import { wordsOf } from './words/words.js';

// The kinds of value a sheet's fields take. Each reads what the maker wrote into mm, shares, rad, places and names.
// The message of an issue is a code of `wording`; its params may say it better.

interface LengthBounds {
  /** mm. */
  readonly least?: number;
  readonly most?: number;
  /** The remedy where it is less than the least. */
  readonly remedy?: string;
}

/** A length in mm, from 0 unless the bounds say otherwise; bare numbers are counted in `unit`. */
export const length = (
  unit: LengthUnit,
  { least = 0, most = longestLength, remedy = rangeRemedy(least, most) }: LengthBounds = {},
) =>
  z
    .union([z.number(), z.string()], { error: code('length-not-understood') })
    .meta({
      description: `A length: 12, 12 mm, 1.2 cm, 3/8 in, 2 7/8". A bare number is in the sheet's unit.`,
    })
    .transform((text, context): number => {
      const mm = attempt(context, () => parseLength(text, unit));
      if (mm === undefined) return z.NEVER;
      if (mm < least)
        return tell(context, 'length-out-of-range', {
          what: mm < 0 ? 'is negative' : `is under ${shown(least)}`,
          remedy,
        });
      if (mm > most)
        return tell(context, 'length-out-of-range', {
          what: `is over ${shown(most)}`,
          remedy: `Give at most ${shown(most)}; check its unit.`,
        });
      return mm;
    });
const rangeRemedy = (least: number, most: number) =>
  least === 0 ? 'Give 0 or more.' : `Give ${shown(least)} to ${shown(most)}.`;
const shown = (mm: number) => (Math.abs(mm) >= 1000 ? `${mm / 1000} m` : `${mm} mm`);

/** More than 0 mm. */
export const size = (unit: LengthUnit) =>
  length(unit).refine(mm => mm > 0, {
    error: code('length-out-of-range'),
    params: { what: 'is nothing', remedy: 'Give a length over 0.' },
  });
/** Either way. */
export const signedLength = (unit: LengthUnit) => length(unit, { least: -longestLength });
/** The width of a seam or hem allowance. */
export const allowance = (unit: LengthUnit) => length(unit, { most: tolerances.largestAllowance });

/** A share, 0.8 for `80 %`, between bounds in per cent; `over`: more than the least. */
export const percent = (least: number, most: number, over = false) =>
  z
    .union([z.number(), z.string()], { error: code('percent-not-understood') })
    .meta({ description: `A percentage with its sign, such as 80 %; at most ${most} %.` })
    .transform((text, context): number => {
      const share = attempt(context, () => parsePercent(text), { ownRemedy: true });
      if (share === undefined) return z.NEVER;
      // Compared in per cent, rounded: 300 % may come out an ulp beyond 3.
      const given = Number((share * 100).toPrecision(12));
      const remedy = over ? `Give more than ${least} %, up to ${most} %.` : `Give ${least} % to ${most} %.`;
      if (given > most) return tell(context, 'percent-out-of-range', { what: `is over ${most} %`, remedy });
      if (given < least) return tell(context, 'percent-out-of-range', { what: 'is negative', remedy });
      if (over && given === least)
        return tell(context, 'percent-out-of-range', { what: `is ${least} %`, remedy });
      return share;
    });

/** A place on an edge. */
export const position = (unit: LengthUnit) =>
  z
    .union([z.number(), z.string()], { error: code('position-not-understood') })
    .meta({ description: 'A place on an edge: 1/3, 40 %, 1/3 from EDGE, 60 mm from EDGE.' })
    .transform(
      (text, context) => attempt(context, () => parsePosition(text, unit), { ownRemedy: true }) ?? z.NEVER,
    );

export const name = z
  .string({ error: code('name-not-understood') })
  .refine(text => text.trim() !== '', { error: code('name-not-understood'), abort: true })
  .refine(text => text.length <= longestName && !/[\p{C}\p{Zl}\p{Zp}]/u.test(text), {
    error: code('name-not-printable'),
  });
const longestName = 100;

/** `piece.edge`; the piece's name ends at the first full stop. */
export const edgeRef = name
  .meta({ description: 'PIECE.EDGE, such as front.neck.' })
  .transform((text, context): EdgeRef => edgeRefOf(text) ?? tell(context, 'edge-not-understood'));

/** The piece and the edge of `front.neck`; undefined if it is not written so. */
export function edgeRefOf(text: string): EdgeRef | undefined {
  const stop = text.indexOf('.');
  const piece = text.slice(0, Math.max(stop, 0)).trim(),
    edge = text.slice(stop + 1).trim();
  return piece !== '' && edge !== '' ? { piece, edge } : undefined;
}

/** One name, or a list of them; always read as a list. */
export const names = oneOrMore(name);
/** One `piece.edge`, or a list of them; always read as a list. */
export const edgeRefs = oneOrMore(edgeRef);

/** rad, from degrees written as `12`, `12°` or `12 deg`. */
export const angle = z
  .union([z.number(), z.string()], { error: code('angle-not-understood') })
  .meta({ description: 'Degrees: 12, 12° or 12 deg.' })
  .transform((text, context): number => {
    const digits =
      typeof text === 'number'
        ? text
        : /^([+-]?\d{1,9}(?:\.\d{1,15})?)\s*(?:°|deg|degrees)?$/.exec(text.trim())?.[1];
    if (digits === undefined) return tell(context, 'angle-not-understood');
    const degrees = Number(digits);
    if (Math.abs(degrees) >= 180) return tell(context, 'angle-out-of-range');
    return (degrees * Math.PI) / 180;
  });

/** How many slashes. */
export const count = z
  .int({ error: code('count-not-understood') })
  .min(1, { error: code('count-out-of-range') })
  .max(mostSlashes, { error: code('count-out-of-range') });

export const yesOrNo = z
  .union([z.boolean(), z.enum(['yes', 'no'])], { error: code('choice-not-understood') })
  .transform(value => value === true || value === 'yes');

/** Values under names of the maker's choice. */
export const named = <T extends z.ZodType>(kind: T) =>
  z.record(name, kind, { error: code('mapping-expected') });

/** Where the pattern lies. */
export const filePath = z
  .string({ error: code('name-not-understood') })
  .refine(text => text.trim() !== '' && !text.includes('\0'), { error: code('name-not-understood') });

/** One value, or a list of at least one; always read as a list. What it is used for is written as text. */
export function oneOrMore<T extends z.ZodType>(kind: T) {
  const text = { type: 'string' };
  return z
    .unknown()
    .meta({ anyOf: [text, { type: 'array', items: text, minItems: 1 }] })
    .transform((value): unknown[] => (Array.isArray(value) ? value : [value]))
    .pipe(z.array(kind).min(1, { error: code('list-empty') }));
}

/** A value read by the schema that suits its form, so that its own faults are told and not only "neither of two". */
export function byForm<A extends z.ZodType, B extends z.ZodType>(
  isFirst: (value: unknown) => boolean,
  first: A,
  second: B,
  json: Readonly<Record<string, unknown>>,
) {
  return z
    .unknown()
    .meta(json)
    .transform((value, context): z.output<A> | z.output<B> => {
      const read = (isFirst(value) ? first : second).safeParse(value);
      if (read.success) return read.data as z.output<A> | z.output<B>;
      for (const issue of read.error.issues)
        context.issues.push({ ...issue, input: value } as z.core.$ZodRawIssue);
      return z.NEVER;
    });
}

/** A mapping of these fields and no others. */
export function mapping<T extends z.core.$ZodLooseShape>(shape: T) {
  const known = Object.keys(shape).join('\n');
  return z.strictObject(shape, {
    error: issue => (issue.code === 'unrecognized_keys' ? known : code('mapping-expected')),
  });
}
/** The fields there are, from the message of an issue about one that there is not. */
export const knownFields = (message: string): readonly string[] => message.split('\n');

/** Holds a wording code to those there are. */
export function code<const C extends WordingCode>(of: C): C {
  return of;
}

const inEnglish = wordsOf(english, 'mm');

type Context = z.core.$RefinementCtx;

/** Adds an issue, in words of its own where given. */
export function tell(context: Context, of: WordingCode, words: Partial<Words> = {}): never {
  context.addIssue({ code: 'custom', message: of, params: words });
  return z.NEVER;
}

/**
 * The value, or undefined with the issue told. The reader's own message is left out, since it does not go on from
 * the field's name; its remedy is kept where it speaks of the value itself.
 */
function attempt<T>(context: Context, read: () => T, { ownRemedy = false } = {}): T | undefined {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof PatternError) || !(error.code in wording)) throw error;
    tell(context, error.code as WordingCode, ownRemedy ? { remedy: inEnglish.error(error).remedy } : {});
    return undefined;
  }
}
