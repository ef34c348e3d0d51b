import { type LengthUnit, millimetresPer, PatternError, parseLength } from '@paperhinge/geometry';
import { parsePercent } from '@paperhinge/geometry/pattern';

/** A figure that a sheet keeps under a name: mm, a share from 0 to 1, degrees, or a bare number. */
export interface Value {
  readonly kind: ValueKind;
  readonly amount: number;
  /** Of a bare number: what it is counted in where it is to be a length. */
  readonly unit?: LengthUnit;
}
export type ValueKind = 'length' | 'share' | 'angle' | 'number';

/** Figures by their names. */
export type Values = ReadonlyMap<string, Value>;

/** Why a sum is no value: a name that nothing is kept under, or figures that do not go together. */
export type SumFault =
  | { readonly fault: 'unknown'; readonly name: string }
  | { readonly fault: 'together'; readonly one: ValueKind; readonly sign: string; readonly other: ValueKind };

/** Signs stand between spaces, as names may have hyphens and lengths a stroke: `hem drop / 2 + 3/8 in`. */
const signs = /\s+([-+−*×/÷])\s+/u;

/** Whether a text is a name that something is kept under, or a sum; `3 / 8 in` is a figure. */
export function isSum(text: string, values: Values, unit: LengthUnit): boolean {
  const plain = text.trim();
  return values.has(plain) || (signs.test(plain) && figureOf(plain, unit) === undefined);
}

/**
 * A sum of names and figures: `hem drop`, `hip girth / 4 + 1 cm`, `side ease * 2`. Products and quotients come before
 * sums and differences. A bare number beside a length is counted in `unit`.
 */
export function valueOfSum(
  text: string,
  values: (name: string) => Value | undefined,
  unit: LengthUnit,
): Value | SumFault {
  const [first = '', ...rest] = text.trim().split(signs);
  let total: Value = { kind: 'number', amount: 0 };
  let term = singleValue(first, values, unit);
  if ('fault' in term) return term;
  let waiting = '+';
  let begun = false;
  for (let i = 0; i < rest.length; i += 2) {
    const sign = plainSign(rest[i]!);
    const next = singleValue(rest[i + 1]!, values, unit);
    if ('fault' in next) return next;
    if (sign === '*' || sign === '/') {
      const product: Value | SumFault = multiplied(term, sign, next);
      if ('fault' in product) return product;
      term = product;
      continue;
    }
    const sum: Value | SumFault = begun ? added(total, waiting, term, unit) : term;
    if ('fault' in sum) return sum;
    [total, begun, waiting, term] = [sum, true, sign, next];
  }
  return begun ? added(total, waiting, term, unit) : term;
}

const plainSign = (sign: string): string => ({ '−': '-', '×': '*', '÷': '/' })[sign] ?? sign;

/** A single name or figure. */
function singleValue(
  text: string,
  values: (name: string) => Value | undefined,
  unit: LengthUnit,
): Value | SumFault {
  const named = values(text.trim());
  return named ?? figureOf(text, unit) ?? { fault: 'unknown', name: text.trim() };
}

/** A figure by what it is written with; undefined for what is none. */
function figureOf(text: string | number, unit: LengthUnit): Value | undefined {
  if (typeof text === 'number') return { kind: 'number', amount: text, unit };
  const plain = text.trim();
  const degrees = /^([+-]?\d{1,9}(?:\.\d{1,15})?)\s*(?:°|deg|degrees)$/.exec(plain)?.[1];
  if (degrees !== undefined) return { kind: 'angle', amount: Number(degrees) };
  try {
    if (plain.endsWith('%')) return { kind: 'share', amount: parsePercent(plain) };
    const bare = /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain);
    return bare
      ? { kind: 'number', amount: Number(plain), unit }
      : { kind: 'length', amount: parseLength(plain, unit) };
  } catch (error) {
    if (error instanceof PatternError) return undefined;
    throw error;
  }
}

function added(one: Value, sign: string, other: Value, unit: LengthUnit): Value | SumFault {
  const kind = one.kind === 'number' ? other.kind : one.kind;
  const [a, b] = [inKind(one, kind, unit), inKind(other, kind, unit)];
  if (a === undefined || b === undefined)
    return { fault: 'together', one: one.kind, sign, other: other.kind };
  return {
    kind,
    amount: sign === '+' ? a + b : a - b,
    ...(kind === 'number' ? { unit: one.unit ?? unit } : {}),
  };
}

/** A bare number counts as a length in the sheet's unit and as degrees; a percentage needs its sign. */
export function inKind(
  { kind, amount, unit: own }: Value,
  wanted: ValueKind,
  unit: LengthUnit,
): number | undefined {
  if (kind === wanted) return amount;
  if (kind !== 'number' || wanted === 'share') return undefined;
  return wanted === 'length' ? amount * millimetresPer[own ?? unit] : amount;
}

function multiplied(one: Value, sign: string, other: Value): Value | SumFault {
  const refused = { fault: 'together', one: one.kind, sign, other: other.kind } as const;
  const plain = (value: Value) => value.kind === 'number' || value.kind === 'share';
  if (sign === '/') {
    if (other.amount === 0) return refused;
    if (one.kind === other.kind) return { kind: 'number', amount: one.amount / other.amount };
    return plain(other) ? { ...one, amount: one.amount / other.amount } : refused;
  }
  if (!plain(one) && !plain(other)) return refused;
  // A share of a figure is such a figure.
  const kept = plain(one) && (one.kind === 'share' || !plain(other)) ? other : one;
  return { ...kept, amount: one.amount * other.amount };
}
