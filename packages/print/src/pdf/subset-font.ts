import { type FontTables, fontFile } from './font-file.js';

/**
 * A font with some glyphs alone, for embedding: outlines without their hinting programs (a printer needs none), widths
 * and the tables a PDF reader asks for. `glyphs` are the glyph ids in the order of their new ids; parts of composed
 * glyphs are added behind them. Source: OpenType 1.9, glyf, loca, hmtx, maxp.
 */
export function subsetFont(tables: FontTables, glyphs: readonly number[]): Uint8Array {
  const ids = [...glyphs];
  const known = new Map(ids.map((id, i) => [id, i]));
  const renumber = (id: number): number => {
    const have = known.get(id);
    if (have !== undefined) return have;
    ids.push(id);
    known.set(id, ids.length - 1);
    return ids.length - 1;
  };
  const glyphAt = glyphReader(tables);
  const outlines: Uint8Array[] = [];
  for (let i = 0; i < ids.length; i++) outlines.push(withoutHints(glyphAt(ids[i]!), renumber));
  const { glyf, loca, long } = stored(outlines);
  const head = tables.get('head')!.slice(0, 54),
    maxp = tables.get('maxp')!.slice(),
    hhea = tables.get('hhea')!.slice();
  viewOf(head).setUint32(8, 0); // the whole file's checksum, which no PDF reader looks at
  viewOf(head).setInt16(50, long ? 1 : 0);
  viewOf(maxp).setUint16(4, ids.length);
  // No programs: storage, functions, stack and instructions are none.
  if (maxp.length >= 32) for (const at of [18, 20, 22, 24, 26]) viewOf(maxp).setUint16(at, 0);
  viewOf(hhea).setUint16(34, ids.length);
  return fontFile(
    new Map([
      ['head', head],
      ['hhea', hhea],
      ['maxp', maxp],
      ['hmtx', metrics(tables, ids)],
      ['loca', loca],
      ['glyf', glyf],
    ]),
  );
}

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

function glyphReader(tables: FontTables): (id: number) => Uint8Array {
  const glyf = tables.get('glyf')!,
    loca = viewOf(tables.get('loca')!);
  const long = viewOf(tables.get('head')!).getInt16(50) === 1;
  const count = viewOf(tables.get('maxp')!).getUint16(4);
  const offset = (i: number) => (long ? loca.getUint32(4 * i) : 2 * loca.getUint16(2 * i));
  return id => (id < count ? glyf.subarray(offset(id), offset(id + 1)) : new Uint8Array(0));
}

/** A glyph's outline without instructions; parts of a composed glyph get their new ids. */
function withoutHints(glyph: Uint8Array, renumber: (id: number) => number): Uint8Array {
  if (glyph.length < 10) return new Uint8Array(0);
  const contours = viewOf(glyph).getInt16(0);
  return contours >= 0 ? simpleWithoutHints(glyph, contours) : composedWithoutHints(glyph, renumber);
}

function simpleWithoutHints(glyph: Uint8Array, contours: number): Uint8Array {
  const at = 10 + 2 * contours;
  const hints = viewOf(glyph).getUint16(at);
  const out = new Uint8Array(glyph.length - hints);
  out.set(glyph.subarray(0, at)); // the length that follows stays 0
  out.set(glyph.subarray(at + 2 + hints), at + 2);
  return out;
}

const part = {
  wordArguments: 0x0001,
  scale: 0x0008,
  more: 0x0020,
  twoScales: 0x0040,
  matrix: 0x0080,
  hints: 0x0100,
} as const;

function composedWithoutHints(glyph: Uint8Array, renumber: (id: number) => number): Uint8Array {
  const out = glyph.slice(),
    view = viewOf(out);
  for (let at = 10; ; ) {
    const flags = view.getUint16(at);
    view.setUint16(at, flags & ~part.hints);
    view.setUint16(at + 2, renumber(view.getUint16(at + 2)));
    at += 4 + (flags & part.wordArguments ? 4 : 2);
    at += flags & part.matrix ? 8 : flags & part.twoScales ? 4 : flags & part.scale ? 2 : 0;
    if (!(flags & part.more)) return out.subarray(0, at);
  }
}

function stored(outlines: readonly Uint8Array[]): {
  readonly glyf: Uint8Array;
  readonly loca: Uint8Array;
  readonly long: boolean;
} {
  // Short offsets count in pairs of bytes and reach 131 kB.
  const padded = (n: number) => (n + 1) & ~1;
  const glyf = new Uint8Array(outlines.reduce((n, o) => n + padded(o.length), 0));
  const long = glyf.length >= 2 * 0x10000;
  const loca = new Uint8Array((long ? 4 : 2) * (outlines.length + 1)),
    view = viewOf(loca);
  let offset = 0;
  for (const [i, outline] of outlines.entries()) {
    glyf.set(outline, offset);
    offset += padded(outline.length);
    if (long) view.setUint32(4 * (i + 1), offset);
    else view.setUint16(2 * (i + 1), offset / 2);
  }
  return { glyf, loca, long };
}

function metrics(tables: FontTables, ids: readonly number[]): Uint8Array {
  const hmtx = viewOf(tables.get('hmtx')!),
    full = viewOf(tables.get('hhea')!).getUint16(34);
  const out = new Uint8Array(4 * ids.length),
    view = viewOf(out);
  for (const [i, id] of ids.entries()) {
    // Beyond the last full entry all advance alike and only the bearing is stored.
    view.setUint16(4 * i, hmtx.getUint16(4 * Math.min(id, full - 1)));
    view.setInt16(
      4 * i + 2,
      id < full ? hmtx.getInt16(4 * id + 2) : hmtx.getInt16(4 * full + 2 * (id - full)),
    );
  }
  return out;
}
