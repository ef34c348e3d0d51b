import { type LengthUnit, type Point, polyline } from '@paperhinge/geometry';
import type { Ink, TypeMeasure } from '../drawing/ink.js';
import { fitted, setLine, wrapped } from '../drawing/lettering.js';
import { closedStroke, straight } from '../drawing/shapes.js';
import type { Reader } from '../words/reader.js';

/** The grid's squares and the large square that is measured, mm; what a number along the edge counts, and in what. */
export interface Scale {
  readonly step: number;
  readonly square: number;
  /** Between numbered lines, in the unit of the numbers. */
  readonly count: number;
  readonly unit: 'cm' | 'in';
}

/** Squares as cutting mats have them. */
export const scaleIn = (unit: LengthUnit): Scale =>
  unit === 'in'
    ? { step: 50.8, square: 254, count: 10, unit: 'in' }
    : { step: 50, square: 250, count: 25, unit: 'cm' };

/** mm: the text beside the square. */
const textWidth = 330;
const gap = 20;

/** Width and height of the corner of the sheet that the square and its words take. */
export const calibrationBlock = ({ square }: Scale): readonly [number, number] => [
  square + gap + textWidth,
  square + gap,
];

/** What is said beside the square. */
export interface Calibration {
  readonly title: string;
  /** Of the whole sheet, mm. */
  readonly size: readonly [number, number];
  readonly reader: Reader;
}

/** The square to measure, its diagonals, and how to set the projector by it; its corner is given. */
export function calibrationSquare(
  { square, step }: Scale,
  corner: Point,
  { title, size, reader }: Calibration,
  measure: TypeMeasure,
): readonly Ink[] {
  const on = (x: number, y: number): Point => ({ x: corner.x + x, y: corner.y + y });
  const corners = [on(0, 0), on(square, 0), on(square, square), on(0, square)] as const;
  const { setUp, thisSheet } = reader.words.projector;
  const [side, diagonal, mesh, width, height] = [square, square * Math.SQRT2, step, ...size].map(
    reader.length,
  ) as [string, string, string, string, string];
  const heading = {
    text: fitted(measure, title, headingSize, 'bold', textWidth),
    size: headingSize,
    weight: 'bold',
  } as const;
  const said = [
    ...wrapped(measure, setUp(side, diagonal, mesh), { size: textSize, room: textWidth }),
    thisSheet(`${width} × ${height}`),
  ].map(text => ({ text, size: textSize, weight: 'regular' }) as const);
  let down = 0;
  const words = [heading, ...said].map(({ text, size: em, weight }) => {
    down += em * 1.25;
    return setLine(measure, text, { role: 'text', size: em, weight }, on(square + gap, down));
  });
  return [
    closedStroke('test-square', polyline(...corners, corners[0])),
    straight('test-square', corners[0], corners[2]),
    straight('test-square', corners[1], corners[3]),
    ...words,
  ];
}

/** mm: em sizes beside the square. */
const headingSize = 24;
const textSize = 13;

/** The grid over a whole sheet, lines through `origin`; every fifth is heavier and numbered along the top and the left. */
export function grid(
  scale: Scale,
  origin: Point,
  [width, height]: readonly [number, number],
  measure: TypeMeasure,
): readonly Ink[] {
  const inks = [...lineIndices(origin.x, width, scale.step)].map(i => {
    const x = origin.x + i * scale.step;
    return straight(roleOf(i), { x, y: 0 }, { x, y: height });
  });
  const across = [...lineIndices(origin.y, height, scale.step)].map(i => {
    const y = origin.y + i * scale.step;
    return straight(roleOf(i), { x: 0, y }, { x: width, y });
  });
  const number = (i: number, at: Point) =>
    setLine(measure, `${(i / 5) * scale.count} ${scale.unit}`, { role: 'text', size: 9 }, at);
  const numbers = [
    ...numbered(origin.x, width, scale.step).map(i => number(i, { x: origin.x + i * scale.step + 2, y: 10 })),
    ...numbered(origin.y, height, scale.step).map(i =>
      number(i, { x: 2, y: origin.y + i * scale.step - 2.5 }),
    ),
  ];
  return [...inks, ...across, ...numbers];
}

const roleOf = (index: number) => (index % 5 === 0 ? 'rule' : 'guide');

/** The lines `origin` + i × `step` that lie within a side. */
function lineIndices(origin: number, side: number, step: number): readonly number[] {
  const first = Math.ceil(-origin / step),
    last = Math.floor((side - origin) / step);
  return Array.from({ length: last - first + 1 }, (_, k) => first + k);
}

const numbered = (origin: number, side: number, step: number): readonly number[] =>
  lineIndices(origin, side - 2 * step, step).filter(i => i >= 0 && i % 5 === 0);
