import type { Field } from '@paperhinge/alter/verb';
import { formatLength, type LengthUnit, nearestEighth, parseLength } from '@paperhinge/geometry';

/** How far one step of a key, or about eight pixels of a drag, changes a figure. */
const lengthStep: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 1, in: 25.4 / 8 };

export const isFigure = ({ kind }: Field): boolean => ['length', 'share', 'angle', 'count'].includes(kind);

/** ... and its value is a figure, and not a goal that is to be met by one. */
export const hasFigure = (field: Field, value: unknown): boolean =>
  isFigure(field) && (typeof value !== 'object' || value === null);

/** Whole steps by which a key moves a figure. */
export const stepsByKey: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 10,
  PageDown: -10,
};

/** A field as its value is: where one length is given for several, it is a length; ease is a share or a length. */
export function asGiven(field: Field, value: unknown): Field {
  if (field.kind === 'ease') return { ...field, kind: /%\s*$/.test(String(value)) ? 'share' : 'length' };
  return field.kind === 'lengths' && !Array.isArray(value) ? { ...field, kind: 'length' } : field;
}

/** A length in the reader's unit; in inches the nearest eighth. */
export const lengthText = (mm: number, unit: LengthUnit): string =>
  unit === 'in' ? nearestEighth(mm).text : formatLength(mm, unit);

/** A figure as it is shown: a length in the reader's unit, whatever unit it was written in. */
export function shownFigure(field: Field, value: unknown, written: LengthUnit, unit: LengthUnit): string {
  if (field.kind === 'length') {
    const mm = millimetres(value, written);
    return mm === undefined ? String(value) : lengthText(mm, unit);
  }
  if (field.kind === 'angle' && typeof value === 'number') return `${value}°`;
  return String(value);
}

/** mm of a length as the sheet writes it. */
export function millimetres(value: unknown, unit: LengthUnit): number | undefined {
  try {
    return typeof value === 'number' || typeof value === 'string' ? parseLength(value, unit) : undefined;
  } catch {
    return undefined;
  }
}

/** What is typed, as the sheet writes it: a bare number in the sheet's own unit, anything else as it stands. */
export function writtenFigure(field: Field, typed: string, written: LengthUnit, unit: LengthUnit): unknown {
  const text = typed.trim().replace(',', '.');
  if (field.kind === 'length') {
    const mm = millimetres(text, unit);
    return mm === undefined ? text : inUnit(mm, written);
  }
  if (field.kind === 'share') return /%$/.test(text) || text === '' ? text : `${text} %`;
  const bare = Number(text);
  return text !== '' && Number.isFinite(bare) ? bare : text;
}

export const inUnit = (mm: number, unit: LengthUnit): number =>
  Number((unit === 'in' ? mm / 25.4 : unit === 'cm' ? mm / 10 : mm).toFixed(4));

/** The figure some steps on, within the field's bounds. */
export function stepped(
  field: Field,
  value: unknown,
  by: number,
  written: LengthUnit,
  unit: LengthUnit,
): unknown {
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = field;
  const held = (n: number) => Math.min(Math.max(n, least), most);
  if (field.kind === 'length') {
    const mm = millimetres(value ?? 0, written);
    // A sum of names, a goal: it is not stepped away.
    if (mm === undefined) return value;
    const step = lengthStep[unit];
    return inUnit(held(Math.round(mm / step + by) * step), written);
  }
  if (field.kind === 'share') {
    const percent = Number.parseFloat(
      String(value ?? (field.usual === undefined ? 0 : Number(field.usual) * 100)),
    );
    return Number.isNaN(percent) ? value : `${Math.round(held((percent + by) / 100) * 100)} %`;
  }
  const size = Number.parseFloat(String(value ?? field.usual ?? 0));
  if (Number.isNaN(size)) return value;
  return field.kind === 'count' ? Math.round(held(size + by)) : size + by;
}
