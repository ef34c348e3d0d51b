import { formatLength, type LengthUnit, nearestEighth } from '@paperhinge/geometry';

/**
 * A length for the summary, in the maker's unit. In inches the exact millimetres stand first and beside them what a
 * ruler shows: the nearest eighth.
 */
export const shownLength = (mm: number, unit: LengthUnit): string =>
  unit === 'in' ? `${formatLength(mm, 'mm')} (${nearestEighth(mm).text})` : formatLength(mm, unit);

/** A difference with its sign. */
export const shownChange = (mm: number, unit: LengthUnit): string =>
  `${mm < 0 ? '−' : '+'}${shownLength(Math.abs(mm), unit)}`;

/** Columns padded to the widest of each, the last left ragged. */
export function aligned(rows: readonly (readonly string[])[], gap = 2): readonly string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map(row => (row[i] ?? '').length)));
  return rows.map(row =>
    row
      .map((cell, i) => (i === row.length - 1 ? cell : cell.padEnd(widths[i]! + gap)))
      .join('')
      .trimEnd(),
  );
}
