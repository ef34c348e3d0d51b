import type { PatternError } from '@paperhinge/geometry';
import { abs, infinite } from '@paperhinge/geometry/internal';
import type { Check, FieldAt } from './field.js';

import { refusal } from './tellings.js';

/** mm: longer than any garment needs, so that a wrong unit is told and not sewn. */
export const longestLength = 5000;
/** Per cent: gathers take two or three times the length, never eleven. */
const mostEase = 1000;

export function notUsable({ verb, name, field: { kind, words = [] } }: FieldAt): PatternError {
  return refusal('field-not-usable', { verb, field: name, kind, ...(words.length > 0 ? { words } : {}) });
}

function taken(holds: boolean, value: unknown, at: FieldAt): unknown {
  if (!holds) throw notUsable(at);
  return value;
}

/** A finite number within the bounds of its field. */
export const figure: Check = (value, at) => {
  if (!isFigure(value)) throw notUsable(at);
  const { verb, name, field } = at;
  const { least = -infinite, most = infinite, over = false, kind } = field;
  if ((over ? value > least : value >= least) && value <= most) return value;
  throw refusal('field-out-of-range', { verb, field: name, kind, value, least, most, over });
};

export const wholeFigure: Check = (value, at) => figure(Number.isInteger(value) ? value : undefined, at);

/** One for the whole, or one at either end. */
export const figures: Check = (value, at) => {
  const each = { ...at, field: { ...at.field, kind: 'length' as const } };
  if (!Array.isArray(value)) figure(value, each);
  else if (value.length !== 2) throw notUsable(at);
  else for (const one of value) figure(one, each);
  return value;
};

export const name: Check = (value, at) => taken(isName(value), value, at);
export const names: Check = (value, at) => taken(isListOf(value, isName), value, at);

/** A name that is given: it must fit on a piece and in a sentence. */
export const newName: Check = (value, at) =>
  taken(isName(value) && value.length <= longestName && !unprintable.test(value), value, at);

export const yesOrNo: Check = (value, at) => taken(typeof value === 'boolean', value, at);

export const oneOfItsWords: Check = (value, at) => {
  if (typeof value !== 'string') throw notUsable(at);
  const {
    verb,
    name: field,
    field: { words = [] },
  } = at;
  if (words.includes(value)) return value;
  throw refusal('choice-unknown', { verb, field, given: value, words });
};

export const edgeRef: Check = (value, at) => taken(isEdgeRef(value), value, at);
export const edgeRefs: Check = (value, at) =>
  taken(at.field.words?.includes(value as string) || isListOf(value, isEdgeRef), value, at);

export const place: Check = (value, at) => taken(isPlace(value), value, at);
export const twoPlaces: Check = (value, at) => taken(areTwoPlaces(value), value, at);
export const places: Check = (value, at) => taken(isPlace(value) || areTwoPlaces(value), value, at);

/** Millimetres or per cent, one of them. */
export const ease: Check = (value, at) => {
  const { mm, percent } = isObject(value, 'mm', 'percent') ? value : {};
  const most = mm === undefined ? mostEase : longestLength;
  return taken(isEitherFigure(mm, percent) && abs((mm ?? percent) as number) <= most, value, at);
};

/** Characters a name may have, so that it fits on a piece and in a sentence. */
const longestName = 100;
const unprintable = /[\p{C}\p{Zl}\p{Zp}]/u;

const isFigure = (value: unknown): value is number => Number.isFinite(value);

const isName = (value: unknown): value is string => typeof value === 'string' && value.trim() !== '';

const isListOf = (value: unknown, each: (one: unknown) => boolean): boolean =>
  Array.isArray(value) && value.length > 0 && value.every(each);

function isEdgeRef(value: unknown): boolean {
  const { piece, edge } = (value ?? {}) as Readonly<Record<string, unknown>>;
  return isName(piece) && isName(edge);
}

/** Whether a value has no other keys than these. */
function isObject(value: unknown, ...keys: readonly string[]): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && Object.keys(value).every(key => keys.includes(key));
}

const isEitherFigure = (a: unknown, b: unknown): boolean =>
  isFigure(a ?? b) && (a === undefined) !== (b === undefined);

/** A share or a length, neither absurd; `resolvePosition` asks whether it lies on the edge. */
const isPlace = (value: unknown): boolean =>
  isObject(value, 'share', 'mm', 'from') &&
  isEitherFigure(value.share, value.mm) &&
  (value.from === undefined || isName(value.from));

const areTwoPlaces = (value: unknown): boolean =>
  isListOf(value, isPlace) && (value as unknown[]).length === 2;
