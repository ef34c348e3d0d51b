import type { FontProgram, Glyph } from './font-program.js';
import { needsShaping, plainGlyphs, readsRightToLeft, type TextEngines } from './text-engines.js';

/** A stretch of text in one font, its glyphs in the order they stand on the line. */
export interface TextRun {
  readonly face: number;
  readonly glyphs: readonly Glyph[];
}

/** Letters of one font and one direction, in the order they are read. */
interface Stretch {
  readonly face: number;
  readonly rightToLeft: boolean;
  readonly text: string;
  /** UTF-16 units before it. */
  readonly start: number;
}

/**
 * A line as runs of one font and one direction, in the order they stand from left to right.
 * @param own the font to set in; what it lacks is looked for in those from the third on
 */
export function textRuns(
  programs: readonly FontProgram[],
  engines: TextEngines,
  text: string,
  own: number,
): readonly TextRun[] {
  return inOrder(text, stretchesOf(programs, engines, text, own), engines).map(
    ({ face, rightToLeft, text: letters }) => ({
      face,
      glyphs:
        engines.shape && needsShaping(letters)
          ? engines.shape(programs[face]!, letters, rightToLeft)
          : plainGlyphs(programs[face]!, letters, rightToLeft),
    }),
  );
}

function stretchesOf(
  programs: readonly FontProgram[],
  { bidi }: TextEngines,
  text: string,
  own: number,
): readonly Stretch[] {
  const ordered = bidi && readsRightToLeft(text) ? bidi : undefined;
  const levels = ordered?.getEmbeddingLevels(text);
  // A bracket that reads from right to left opens to the left.
  const mirrored = ordered && levels ? ordered.getMirroredCharactersMap(text, levels.levels) : undefined;
  const stretches: Stretch[] = [];
  let start = 0;
  for (const letter of text) {
    const last = stretches.at(-1);
    const rightToLeft = ((levels?.levels[start] ?? 0) & 1) === 1;
    const shown = mirrored?.get(start) ?? letter;
    const joined = last !== undefined && joinsToLast(letter);
    const face = joined ? last.face : faceFor(programs, shown, own);
    if (last && (joined || (last.face === face && last.rightToLeft === rightToLeft)))
      stretches[stretches.length - 1] = { ...last, text: last.text + shown };
    else stretches.push({ face, rightToLeft, text: shown, start });
    start += letter.length;
  }
  return stretches;
}

/** As they stand from left to right (UAX #9, L2): each goes where the first of its letters does. */
function inOrder(text: string, stretches: readonly Stretch[], { bidi }: TextEngines): readonly Stretch[] {
  if (!bidi || !readsRightToLeft(text)) return stretches;
  const places = new Map(
    bidi.getReorderedIndices(text, bidi.getEmbeddingLevels(text)).map((at, place) => [at, place]),
  );
  return [...stretches].sort((a, b) => places.get(a.start)! - places.get(b.start)!);
}

function faceFor(programs: readonly FontProgram[], letter: string, own: number): number {
  const code = letter.codePointAt(0)!;
  if (programs[own]!.has(code)) return own;
  const found = programs.findIndex((p, i) => i > 1 && p.has(code));
  return found < 0 ? own : found;
}

/** Accents, joiners and selectors belong to the letter before them. */
export const joinsToLast = (letter: string): boolean =>
  /\p{Mn}|\p{Me}|\u200c|\u200d|\ufe0e|\ufe0f|[\u{1f3fb}-\u{1f3ff}]/u.test(letter);
