import type { LengthUnit } from '@paperhinge/geometry';
import type { Handle } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { inUnit, lengthText, millimetres } from '../sheet/figures.js';
import { valueAt } from '../sheet/sentence.js';

const degrees = (rad: number): number => Number(((rad * 180) / Math.PI).toFixed(2));
const perCent = (share: number): number => Number((share * 100).toFixed(2));

/** A handle's figure as it is read beside it. */
export const figureText = ({ kind }: Handle, figure: number, unit: LengthUnit): string =>
  kind === 'length'
    ? lengthText(figure, unit)
    : kind === 'share'
      ? `${perCent(figure)} %`
      : `${degrees(figure)}°`;

/** ... and as the sheet writes it: a bare length in the sheet's own unit, a place with what it is counted from. */
export function figureInSheet({ kind, from, inMm }: Handle, figure: number, written: LengthUnit): unknown {
  const counted = from === undefined ? '' : ` from ${from}`;
  if (inMm) return `${Number(figure.toFixed(1))} mm${counted}`;
  if (kind === 'share') return `${perCent(figure)} %${counted}`;
  return kind === 'length' ? inUnit(figure, written) : degrees(figure);
}

/** The figure that a sheet's text gives, if it is one: the drawing may not have answered to it yet. */
export function figureFrom({ kind, inMm }: Handle, given: unknown, written: LengthUnit): number | undefined {
  const text = String(given ?? '').split(' from ')[0]!;
  if (kind === 'length') return millimetres(inMm || typeof given === 'string' ? text : given, written);
  if (kind === 'angle') return (Number.parseFloat(text) * Math.PI) / 180 || undefined;
  const [, above, below] = /^(\d+)\s*\/\s*(\d+)$/.exec(text.trim()) ?? [];
  const share = above === undefined ? Number.parseFloat(text) / 100 : Number(above) / Number(below);
  return Number.isFinite(share) ? share : undefined;
}

/** A handle's figure as the sheet says it, else as the drawing does. */
export function figureGiven(garment: Garment, handle: Handle): number {
  const fields = garment.steps()[handle.step]?.fields ?? {};
  const given = valueAt(fields, handle.way.join('.'));
  return figureFrom(handle, given, garment.unitWritten()) ?? handle.value;
}

/** Writes a handle's figure into its step; until it is settled, as part of one change. */
export function writeFigure(garment: Garment, handle: Handle, figure: number, settled: boolean): void {
  const verb = garment.steps()[handle.step]?.verb;
  if (verb === undefined) return;
  const written = figureInSheet(handle, figure, garment.unitWritten());
  garment.set(['steps', handle.step, verb, ...handle.way], written, settled);
}
