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
