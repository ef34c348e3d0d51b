import type { FontTables } from './font-file.js';

/** The glyph for a character by its code point; 0 where the font has none. Source: OpenType 1.9, cmap. */
export type CharacterMap = (codePoint: number) => number;

/**
 * The map of a font's `cmap` table: its fullest Unicode one (formats 12 and 4, which every font of this century has).
 * A font without either has no characters.
 */
export function characterMap(tables: FontTables): CharacterMap {
  const table = tables.get('cmap');
  if (!table || table.length < 4) return () => 0;
  const view = new DataView(table.buffer, table.byteOffset, table.byteLength);
  const offsets = Array.from({ length: view.getUint16(2) }, (_, i) => ({
    platform: view.getUint16(4 + 8 * i),
    encoding: view.getUint16(6 + 8 * i),
    at: view.getUint32(8 + 8 * i),
  })).filter(
    ({ platform, encoding }) => platform === 0 || (platform === 3 && (encoding === 1 || encoding === 10)),
  );
  const ofFormat = (format: number) => offsets.find(({ at }) => view.getUint16(at) === format);
  const full = ofFormat(12);
  if (full) return grouped(view, full.at);
  const plain = ofFormat(4);
  return plain ? segmented(view, plain.at) : () => 0;
}

/** Format 12: runs of code points whose glyphs follow one another. */
function grouped(view: DataView, at: number): CharacterMap {
  const count = view.getUint32(at + 12);
  const start = (i: number) => at + 16 + 12 * i;
  return codePoint => {
    const i = firstEndingAt(count, i => view.getUint32(start(i) + 4), codePoint);
    if (i === count) return 0;
    const from = view.getUint32(start(i));
    return codePoint < from ? 0 : view.getUint32(start(i) + 8) + codePoint - from;
  };
}

/** Format 4: runs within the first plane, each with a shift or a list of glyphs. */
function segmented(view: DataView, at: number): CharacterMap {
  const count = view.getUint16(at + 6) / 2;
  const ends = at + 14,
    starts = ends + 2 * count + 2,
    deltas = starts + 2 * count,
    ranges = deltas + 2 * count;
  return codePoint => {
    const i = firstEndingAt(count, i => view.getUint16(ends + 2 * i), codePoint);
    if (i === count || codePoint > 0xffff) return 0;
    const from = view.getUint16(starts + 2 * i);
    if (codePoint < from) return 0;
    const delta = view.getUint16(deltas + 2 * i),
      range = view.getUint16(ranges + 2 * i);
    if (range === 0) return (codePoint + delta) & 0xffff;
    const glyph = view.getUint16(ranges + 2 * i + range + 2 * (codePoint - from));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  };
}

/** The first of `count` runs, in ascending order, that ends at or after a code point; `count` if none does. */
function firstEndingAt(count: number, end: (i: number) => number, codePoint: number): number {
  let low = 0,
    high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (end(middle) < codePoint) low = middle + 1;
    else high = middle;
  }
  return low;
}
