import type { TypeMeasure, Weight } from '../drawing/ink.js';
import { type FontProgram, fontProgram } from './font-program.js';
import { enginesFor, type TextEngines } from './text-engines.js';
import { joinsToLast, type TextRun, textRuns } from './text-runs.js';

/** Bytes of a TrueType or WOFF font, or what fetches them; a fallback is fetched only once a text needs it. */
export type FontSource = Uint8Array | (() => Uint8Array | Promise<Uint8Array>);

/**
 * The fonts to set with. Without `regular` it is the one that is carried along: a clear sans for the languages written
 * in Latin letters. Any character that `regular` and `bold` lack is looked for in the fallbacks, in order.
 */
export interface FontFiles {
  readonly regular?: FontSource;
  readonly bold?: FontSource;
  readonly fallbacks?: readonly FontSource[];
}

/** Fonts ready to measure and set with; may be kept and used for many files. */
export interface Typefaces extends TypeMeasure {
  /** 0 regular, 1 bold, then fallbacks. */
  readonly programs: readonly FontProgram[];
  runs(text: string, weight: Weight): readonly TextRun[];
}

/**
 * Reads the fonts that a set of texts needs, and loads what shapes them if one asks for shaping.
 * @param texts everything that will be set; later texts fall back on a plain box where a character is missing
 * @throws PatternError `font-not-usable`
 */
export async function loadTypefaces(files: FontFiles = {}, texts: Iterable<string> = []): Promise<Typefaces> {
  const [first, second] = files.regular ? [files.regular, files.bold] : await carried();
  const regular = await read(first);
  const programs = [regular, second ? await read(second) : regular];
  const all = [...texts];
  let missing = new Set([...codePointsIn(all)].filter(c => !regular.has(c)));
  for (const source of files.fallbacks ?? []) {
    if (missing.size === 0) break;
    const program = await read(source);
    programs.push(program);
    missing = new Set([...missing].filter(c => !program.has(c)));
  }
  return typefaces(programs, await enginesFor(all));
}

/** Fonts as a caller gave them: files, fonts read before, or none. */
export const typefacesOf = (
  fonts: FontFiles | Typefaces | undefined,
  texts: () => Iterable<string>,
): Typefaces | Promise<Typefaces> => (fonts && 'programs' in fonts ? fonts : loadTypefaces(fonts, texts()));

async function carried(): Promise<readonly [FontSource, FontSource]> {
  const { carriedFonts } = await import('./carried-fonts.js');
  return [bytesOf(carriedFonts.regular), bytesOf(carriedFonts.bold)];
}

/** Base64 as the web platform reads it, in browsers and in Node alike. */
declare const atob: (text: string) => string;
const bytesOf = (base64: string): Uint8Array => Uint8Array.from(atob(base64), c => c.charCodeAt(0));

const read = async (source: FontSource): Promise<FontProgram> =>
  fontProgram(typeof source === 'function' ? await source() : source);

function* codePointsIn(texts: Iterable<string>): Generator<number> {
  for (const text of texts) for (const letter of text) if (!joinsToLast(letter)) yield letter.codePointAt(0)!;
}

function typefaces(programs: readonly FontProgram[], engines: TextEngines): Typefaces {
  const known = [new Map<string, number>(), new Map<string, number>()] as const;
  const runs = (text: string, weight: Weight) => textRuns(programs, engines, text, weight === 'bold' ? 1 : 0);
  return {
    programs,
    runs,
    width(text, size, weight) {
      const widths = known[weight === 'bold' ? 1 : 0];
      let width = widths.get(text);
      if (width === undefined) {
        width = runs(text, weight).reduce((sum, run) => sum + runWidth(programs[run.face]!, run), 0);
        widths.set(text, width);
      }
      return width * size;
    },
  };
}

/** Share of the em. */
export const runWidth = (program: FontProgram, run: TextRun): number =>
  run.glyphs.reduce((sum, g) => sum + g.advanceWidth, 0) / program.unitsPerEm;
