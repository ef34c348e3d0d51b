import { refusal } from '../tellings.js';
import { characterMap } from './character-map.js';
import { type FontTables, fontTables } from './font-file.js';

export interface Glyph {
  readonly id: number;
  /** In the font's own units. */
  readonly advanceWidth: number;
  /** What it stands for, so that text can be searched. */
  readonly codePoints: readonly number[];
}

/** A font as it is measured and embedded: its tables, and what of them setting a line asks for. In the font's own units. */
export interface FontProgram {
  readonly tables: FontTables;
  readonly name: string;
  readonly unitsPerEm: number;
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  /** x and y of the lower left and upper right corner round all glyphs. */
  readonly box: readonly [number, number, number, number];
  has(codePoint: number): boolean;
  /** The glyph of a character by itself, unshaped; the font's box for a missing one. */
  glyph(codePoint: number): Glyph;
}

/**
 * Reads a font file. Source: OpenType 1.9, head, hhea, hmtx, OS/2, name.
 * @throws PatternError `font-not-usable`: no TrueType outlines, broken, or not a font at all
 */
export async function fontProgram(file: Uint8Array): Promise<FontProgram> {
  const tables = await fontTables(file);
  try {
    return programOf(tables);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw refusal('font-not-usable', { broken: true });
  }
}

function programOf(tables: FontTables): FontProgram {
  const head = viewOf(tables.get('head')!),
    hhea = viewOf(tables.get('hhea')!);
  const glyphOf = characterMap(tables);
  const advanceOf = advances(tables);
  const ascent = hhea.getInt16(4);
  return {
    tables,
    name: postScriptName(tables.get('name')),
    unitsPerEm: head.getUint16(18),
    ascent,
    descent: hhea.getInt16(6),
    capHeight: capHeightIn(tables.get('OS/2')) || ascent,
    box: [head.getInt16(36), head.getInt16(38), head.getInt16(40), head.getInt16(42)],
    has: codePoint => glyphOf(codePoint) !== 0,
    glyph(codePoint) {
      const id = glyphOf(codePoint);
      return { id, advanceWidth: advanceOf(id), codePoints: [codePoint] };
    },
  };
}

/** Beyond the last full entry all glyphs advance alike. */
function advances(tables: FontTables): (glyph: number) => number {
  const hmtx = viewOf(tables.get('hmtx')!),
    full = viewOf(tables.get('hhea')!).getUint16(34);
  return glyph => hmtx.getUint16(4 * Math.min(glyph, full - 1));
}

/** Height of capitals, which the OS/2 table has from its version 2. */
function capHeightIn(os2: Uint8Array | undefined): number {
  return os2 && os2.length >= 90 && viewOf(os2).getUint16(0) >= 2 ? viewOf(os2).getInt16(88) : 0;
}

const postScriptId = 6;

/** The name that a PDF knows the font by: letters, figures and hyphens. */
function postScriptName(name: Uint8Array | undefined): string {
  if (!name || name.length < 6) return 'Font';
  const view = viewOf(name);
  const strings = view.getUint16(4);
  for (let i = 0; i < view.getUint16(2); i++) {
    const at = 6 + 12 * i;
    if (view.getUint16(at + 6) !== postScriptId) continue;
    const start = strings + view.getUint16(at + 10);
    const bytes = name.subarray(start, start + view.getUint16(at + 8));
    // One byte a letter or two: the name is ASCII either way.
    const plain = String.fromCharCode(...bytes).replace(/[^A-Za-z0-9-]/g, '');
    if (plain) return plain;
  }
  return 'Font';
}

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
