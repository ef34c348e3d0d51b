import type { Point } from '@paperhinge/geometry';
import { add, scale } from '@paperhinge/geometry/plane';
import { capShare, type Lettering, type Role, type TypeMeasure, tailShare, type Weight } from './ink.js';

export interface TypeStyle {
  readonly role: Role;
  readonly size: number;
  readonly weight?: Weight;
}

/** A line of text starting at the left end of its baseline. */
export function setLine(
  measure: TypeMeasure,
  text: string,
  style: TypeStyle,
  at: Point,
  direction: Point = { x: 1, y: 0 },
): Lettering {
  const { role, size, weight = 'regular' } = style;
  return { kind: 'text', role, text, weight, size, at, direction, width: measure.width(text, size, weight) };
}

/** A line of text whose box (tails to capitals) has its middle at a point. */
export function setCentred(
  measure: TypeMeasure,
  text: string,
  style: TypeStyle,
  middle: Point,
  direction: Point,
): Lettering {
  const width = measure.width(text, style.size, style.weight ?? 'regular');
  const down = { x: -direction.y, y: direction.x };
  const drop = ((capShare - tailShare) / 2) * style.size;
  return setLine(
    measure,
    text,
    style,
    add(add(middle, scale(direction, -width / 2)), scale(down, drop)),
    direction,
  );
}

/** Height of the box round a line of text of this em size. */
export const lineHeight = (size: number): number => size * (capShare + tailShare);

/**
 * Text without what cannot be set in one line: controls and line breaks become spaces, the marks that turn the
 * direction of writing around go (a title must not be able to reorder its neighbours), runs of spaces become one.
 */
export function plainLine(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ')
    .replace(/[\u200b-\u200f\u202a-\u202e\u2066-\u2069\ufeff\p{Cs}]/gu, '')
    .trim();
}

/** What text is broken into: em size, width and, if there is one, the most lines. Lengths in mm. */
export interface Column {
  readonly size: number;
  readonly weight?: Weight;
  readonly room: number;
  readonly most?: number;
}

/** Text broken at spaces (a word longer than a line within it) into lines no wider than `room` mm; the last ends in … if cut. */
export function wrapped(
  measure: TypeMeasure,
  text: string,
  { size, weight = 'regular', room, most = Number.POSITIVE_INFINITY }: Column,
): readonly string[] {
  const fits = (line: string) => measure.width(line, size, weight) <= room;
  const lines: string[] = [];
  let line = '';
  for (const word of plainLine(text)
    .split(' ')
    .flatMap(w => brokenWord(w, fits))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && !fits(longer)) {
      lines.push(line);
      line = word;
      if (lines.length > most) break;
    } else line = longer;
  }
  if (line !== '') lines.push(line);
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), shortened(lines[most - 1]!, fits)];
}

/** As much of a line as fits with an ellipsis after it. */
function shortened(line: string, fits: (line: string) => boolean): string {
  const letters = [...line];
  while (letters.length > 1 && !fits(`${letters.join('')}…`)) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

/** A text cut to a width, with an ellipsis where it was cut. */
export function fitted(
  measure: TypeMeasure,
  text: string,
  size: number,
  weight: Weight,
  room: number,
): string {
  const line = plainLine(text);
  const fits = (l: string) => measure.width(l, size, weight) <= room;
  return fits(line) ? line : shortened(longestPrefix(line, fits), fits);
}

/** The longest head of a text that fits, found by halving; text of any length costs a few measurements. */
function longestPrefix(text: string, fits: (line: string) => boolean): string {
  const letters = [...text];
  let low = 1,
    high = letters.length;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(letters.slice(0, middle).join(''))) low = middle;
    else high = middle - 1;
  }
  return letters.slice(0, low).join('');
}

function brokenWord(word: string, fits: (line: string) => boolean): readonly string[] {
  if (fits(word)) return [word];
  const parts: string[] = [];
  let rest = word;
  while (rest !== '' && !fits(rest) && parts.length < 40) {
    const head = longestPrefix(rest, fits);
    parts.push(head);
    rest = rest.slice(head.length);
  }
  return rest === '' ? parts : [...parts, rest];
}
