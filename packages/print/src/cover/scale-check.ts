import { at, type Point, polyline } from '@paperhinge/geometry';
import type { Ink, TypeMeasure } from '../drawing/ink.js';
import { setCentred, setLine } from '../drawing/lettering.js';
import { straight, stroke } from '../drawing/shapes.js';
import { testSquare } from '../pages/pages-json.js';
import type { CoverWords } from '../words/page-words.js';
import type { Slab } from './stack.js';

/** mm: two inches, the square for those who measure in inches. */
const inchSquare = 50.8;

/** The two test squares side by side, sizes within. Their sides are drawn on the true line. */
export const squaresSlab = (measure: TypeMeasure, words: CoverWords): Slab => ({
  height: inchSquare + 1,
  draw: (x, y) => [
    ...square(measure, at(x + 0.2, y), testSquare, '50 mm', words.thisSquare('50 mm')),
    ...square(measure, at(x + testSquare + 5, y), inchSquare, '2 in', words.thisSquare(words.twoInches)),
  ],
});

export const squaresWidth = testSquare + 5 + inchSquare;

function square(
  measure: TypeMeasure,
  corner: Point,
  side: number,
  size: string,
  words: string,
): readonly Ink[] {
  const to = (u: number, v: number) => at(corner.x + u * side, corner.y + v * side);
  return [
    stroke('test-square', polyline(to(0, 0), to(1, 0), to(1, 1), to(0, 1), to(0, 0))),
    setCentred(measure, size, { role: 'text', size: 7, weight: 'bold' }, to(0.5, 0.46), at(1, 0)),
    setCentred(measure, words, { role: 'text', size: 2.6 }, to(0.5, 0.6), at(1, 0)),
  ];
}

/**
 * A ruler along a line, millimetres on its one side and eighths of an inch on the other; 200 mm and 8 in if there is
 * room, else as much as there is.
 */
export function rulerInks(measure: TypeMeasure, from: Point, direction: Point, room: number): readonly Ink[] {
  const side = at(-direction.y, direction.x);
  const on = (along: number, off: number) =>
    at(from.x + direction.x * along + side.x * off, from.y + direction.y * along + side.y * off);
  const millimetres = Math.min(Math.floor(room / 10) * 10, 200),
    inches = Math.min(Math.floor(room / 25.4), 8);
  const end = Math.max(millimetres, inches * 25.4);
  const inks: Ink[] = [straight('rule', on(0, 0), on(end, 0))];
  for (let mm = 0; mm <= millimetres; mm += 5)
    inks.push(straight('rule', on(mm, 0), on(mm, mm % 50 === 0 ? -2.6 : mm % 10 === 0 ? -1.8 : -1)));
  for (let n = 0; n <= inches * 4; n++)
    inks.push(
      straight(
        'rule',
        on((n * 25.4) / 4, 0),
        on((n * 25.4) / 4, n % 4 === 0 ? 2.6 : n % 2 === 0 ? 1.6 : 0.9),
      ),
    );
  for (let mm = 50; mm <= millimetres; mm += 50)
    inks.push(centred(measure, String(mm), on(mm, -3.9), direction));
  for (let n = 2; n <= inches; n += 2) inks.push(centred(measure, `${n} in`, on(n * 25.4, 3.9), direction));
  inks.push(setLine(measure, 'mm', { role: 'text', size: 2.5 }, on(1, -3.1), direction));
  return inks;
}

const centred = (measure: TypeMeasure, text: string, middle: Point, direction: Point) =>
  setCentred(measure, text, { role: 'text', size: 2.5 }, middle, direction);
