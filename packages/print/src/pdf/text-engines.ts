import type { Bidi } from 'bidi-js';
import { fontFile } from './font-file.js';
import type { FontProgram, Glyph } from './font-program.js';

/** Shapes a text of one font and one direction: its glyphs in the order they stand on the line. */
export type Shape = (program: FontProgram, text: string, rightToLeft: boolean) => readonly Glyph[];

/** What some scripts need beyond a glyph a character; absent where no text asked for it. */
export interface TextEngines {
  readonly shape?: Shape;
  readonly bidi?: Bidi;
}

/** Alphabets and signs that need no shaping, a glyph a character: Latin, Greek, Cyrillic, Chinese, Japanese, Korean. */
const unshaped =
  /^[\u0020-\u024f\u0370-\u0482\u048a-\u052f\u1e00-\u1fff\u2000-\u200b\u2010-\u22ff\u2500-\u27bf\u2c60-\u2c7f\u2e80-\u3029\u3030-\u3096\u309b-\ua4cf\uac00-\ud7a3\uf900-\ufaff\uff00-\uffef]*$/;
const rightToLeftLetters =
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefe]|[\ud802\ud803\ud83a\ud83b][\udc00-\udfff]/;

export const needsShaping = (text: string): boolean => !unshaped.test(text);
export const readsRightToLeft = (text: string): boolean => rightToLeftLetters.test(text);

/** Loads what a set of texts asks for: most patterns need neither, and loading costs more than setting them. */
export async function enginesFor(texts: readonly string[]): Promise<TextEngines> {
  const [shape, bidi] = await Promise.all([
    texts.some(needsShaping) ? loadShape() : undefined,
    texts.some(readsRightToLeft) ? loadBidi() : undefined,
  ]);
  return { ...(shape ? { shape } : {}), ...(bidi ? { bidi } : {}) };
}

const loadBidi = async (): Promise<Bidi> => (await import('bidi-js')).default();

/** The part of the shaping library that is used. */
interface ShapingFont {
  layout(
    text: string,
    features: undefined,
    script: undefined,
    language: undefined,
    direction: 'ltr' | 'rtl',
  ): { readonly glyphs: readonly Glyph[] };
}

async function loadShape(): Promise<Shape> {
  const { default: fontkit } = await import('@pdf-lib/fontkit');
  const fonts = new Map<FontProgram, ShapingFont>();
  // The tables unpacked: from a WOFF the library would unpack all outlines again for every single glyph.
  const fontOf = (program: FontProgram): ShapingFont => {
    const font = fonts.get(program) ?? (fontkit.create(fontFile(program.tables)) as unknown as ShapingFont);
    fonts.set(program, font);
    return font;
  };
  return (program, text, rightToLeft) => {
    try {
      const direction = rightToLeft ? 'rtl' : 'ltr';
      const { glyphs } = fontOf(program).layout(text, undefined, undefined, undefined, direction);
      return glyphs.map(({ id, advanceWidth, codePoints }) => ({ id, advanceWidth, codePoints }));
    } catch {
      // A font's own shaping tables may be broken for a hostile sequence; the letters unshaped are better than no page.
      return plainGlyphs(program, text, rightToLeft);
    }
  };
}

/** A glyph a character. */
export function plainGlyphs(program: FontProgram, text: string, rightToLeft: boolean): readonly Glyph[] {
  const glyphs = [...text].map(letter => program.glyph(letter.codePointAt(0)!));
  return rightToLeft ? glyphs.reverse() : glyphs;
}
