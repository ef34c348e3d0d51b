import fontkit from '@pdf-lib/fontkit';
import type { TypeMeasure, Weight } from '../drawing/ink.js';
import { type FontTables, fontTables } from './font-file.js';

/** Bytes of a TrueType or WOFF font, or what fetches them; a fallback is fetched only once a text needs it. */
export type FontSource = Uint8Array | (() => Uint8Array | Promise<Uint8Array>);

/** The fonts to set with. Any character that `regular` and `bold` lack is looked for in the fallbacks, in order. */
export interface FontFiles {
  readonly regular: FontSource;
  readonly bold?: FontSource;
  readonly fallbacks?: readonly FontSource[];
}

export interface Glyph {
  readonly id: number;
  readonly advanceWidth: number;
  readonly codePoints: readonly number[];
}

/** The part of the shaping engine that is used. */
interface Shaper {
  readonly postscriptName: string | null;
  readonly unitsPerEm: number;
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight?: number;
  readonly bbox: {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
  };
  hasGlyphForCodePoint(codePoint: number): boolean;
  glyphForCodePoint(codePoint: number): Glyph;
  layout(text: string): { readonly glyphs: readonly Glyph[] };
}

/** A font: what shapes text with it, and its tables. */
export interface FontProgram {
  readonly shaper: Shaper;
  readonly tables: FontTables;
}

/** Fonts ready to measure and set with; may be kept and used for many files. */
export interface Typefaces extends TypeMeasure {
  /** 0 regular, 1 bold, then fallbacks. */
  readonly programs: readonly FontProgram[];
  runs(text: string, weight: Weight): readonly TextRun[];
}

/** A stretch of text in one font, its glyphs in the order they stand on the line. */
export interface TextRun {
  readonly face: number;
  readonly glyphs: readonly Glyph[];
}

/**
 * Reads the fonts that a set of texts needs.
 * @param texts everything that will be set; later texts fall back on a plain box where a character is missing
 */
export async function loadTypefaces(files: FontFiles, texts: Iterable<string> = []): Promise<Typefaces> {
  const regular = await read(files.regular);
  const programs = [regular, files.bold ? await read(files.bold) : regular];
  let missing = new Set([...codePointsIn(texts)].filter(c => !regular.shaper.hasGlyphForCodePoint(c)));
  for (const source of files.fallbacks ?? []) {
    if (missing.size === 0) break;
    const program = await read(source);
    programs.push(program);
    missing = new Set([...missing].filter(c => !program.shaper.hasGlyphForCodePoint(c)));
  }
  return typefaces(programs);
}

async function read(source: FontSource): Promise<FontProgram> {
  const bytes = typeof source === 'function' ? await source() : source;
  const tables = await fontTables(bytes);
  return { tables, shaper: fontkit.create(bytes as Uint8Array) as unknown as Shaper };
}

function* codePointsIn(texts: Iterable<string>): Generator<number> {
  for (const text of texts) for (const letter of text) if (!joins(letter)) yield letter.codePointAt(0)!;
}

function typefaces(programs: readonly FontProgram[]): Typefaces {
  const widths = [new Map<string, number>(), new Map<string, number>()];
  const runs = (text: string, weight: Weight) => runsIn(programs, text, weight === 'bold' ? 1 : 0);
  return {
    programs,
    runs,
    width(text, size, weight) {
      const known = widths[weight === 'bold' ? 1 : 0]!;
      let width = known.get(text);
      if (width === undefined) {
        width = runs(text, weight).reduce((sum, run) => sum + runWidth(programs[run.face]!, run), 0);
        known.set(text, width);
      }
      return width * size;
    },
  };
}

/** Share of the em. */
export const runWidth = (program: FontProgram, run: TextRun): number =>
  run.glyphs.reduce((sum, g) => sum + g.advanceWidth, 0) / program.shaper.unitsPerEm;

/** Splits a line into runs of one font and one direction, in the order they stand from left to right. */
function runsIn(programs: readonly FontProgram[], text: string, own: number): readonly TextRun[] {
  const pieces: { face: number; rightToLeft: boolean; text: string }[] = [];
  for (const letter of text) {
    const last = pieces.at(-1);
    if (last && joins(letter)) {
      last.text += letter;
      continue;
    }
    const face = faceFor(programs, letter, own);
    const rightToLeft = isRightToLeft(letter) || (last?.rightToLeft === true && isNeutral(letter));
    if (last && last.face === face && last.rightToLeft === rightToLeft) last.text += letter;
    else pieces.push({ face, rightToLeft, text: letter });
  }
  return inOrder(pieces).map(({ face, text: part }) => ({ face, glyphs: shaped(programs[face]!, part) }));
}

/** Runs in the order they stand: of neighbours that read right to left the last comes first; so does all, if the line starts so. */
function inOrder<T extends { readonly rightToLeft: boolean }>(runs: readonly T[]): readonly T[] {
  if (!runs.some(r => r.rightToLeft)) return runs;
  const groups: T[][] = [];
  for (const run of runs) {
    const last = groups.at(-1);
    if (last && run.rightToLeft && last[0]!.rightToLeft) last.unshift(run);
    else groups.push([run]);
  }
  return (runs[0]!.rightToLeft ? groups.reverse() : groups).flat();
}

const faceFor = (programs: readonly FontProgram[], letter: string, own: number): number => {
  const code = letter.codePointAt(0)!;
  if (programs[own]!.shaper.hasGlyphForCodePoint(code)) return own;
  const found = programs.findIndex((p, i) => i > 1 && p.shaper.hasGlyphForCodePoint(code));
  return found < 0 ? own : found;
};

/** Plain alphabets need no shaping: a glyph a character, which is far quicker. */
const plain = /^[\u0020-\u024f\u0370-\u052f\u1e00-\u1fff\u2000-\u22ff\u2c60-\u2c7f]*$/u;

function shaped(program: FontProgram, text: string): readonly Glyph[] {
  const one = () => [...text].map(letter => program.shaper.glyphForCodePoint(letter.codePointAt(0)!));
  if (plain.test(text)) return one();
  try {
    return program.shaper.layout(text).glyphs;
  } catch {
    // A font's own shaping tables may be broken for a hostile sequence; the letters unshaped are better than no page.
    return one();
  }
}

const joins = (letter: string): boolean =>
  /\p{Mn}|\p{Me}|\u200c|\u200d|\ufe0e|\ufe0f|[\u{1f3fb}-\u{1f3ff}]/u.test(letter);
const isRightToLeft = (letter: string): boolean =>
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]|[\u{10800}-\u{10fff}]|[\u{1e800}-\u{1efff}]/u.test(letter);
const isNeutral = (letter: string): boolean => /[\s\p{P}]/u.test(letter);
