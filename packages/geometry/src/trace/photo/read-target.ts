import { distance, type Point } from '../../vector.js';
import { carried, homographyFrom } from './homography.js';
import { brightnessAt, type Grey } from './picture.js';
import type { Quad } from './quad.js';
import { crossing, edgePoints, lineThrough } from './side-line.js';
import { codeSide, readCode } from './target-code.js';

/** A target found in a picture. */
export interface SeenTarget {
  readonly index: number;
  /** Cells that were read wrong and put right. */
  readonly wrong: number;
  /** Clockwise from the corner that is the upper left of the printed target, in dots of the picture. */
  readonly corners: Quad;
  /** Points on the four sides' edges, each side from its corner to the next. */
  readonly sides: readonly (readonly Point[])[];
}

/** A shape as a target, its sides found to a part of a dot, if its cells make a code. */
export function readTarget(grey: Grey, rough: Quad): SeenTarget | undefined {
  const found = sidesFound(grey, rough, 1);
  if (!found) return undefined;
  const { corners, sides } = found;
  const cells = cellsOf(grey, corners);
  const read = cells && readCode(cells);
  if (!read) return undefined;
  // Turned so that the first corner is the printed upper left.
  const turned = <T>(list: readonly T[]) => list.map((_, i) => list[(i + read.turns) % 4]!);
  return {
    index: read.index,
    wrong: read.wrong,
    corners: turned(corners) as unknown as Quad,
    sides: turned(sides),
  };
}

/** The same target with its sides found in a picture whose tone is known; as it was where they are not found again. */
export const inTone = (grey: Grey, target: SeenTarget, tone: number): SeenTarget => ({
  ...target,
  ...sidesFound(grey, target.corners, tone),
});

function sidesFound(
  grey: Grey,
  rough: Quad,
  tone: number,
): Pick<SeenTarget, 'corners' | 'sides'> | undefined {
  let corners = rough;
  let sides: readonly (readonly Point[])[] = [];
  for (let round = 0; round < rounds; round++) {
    const at = corners;
    const reach = reachFor(Math.min(...at.map((p, i) => distance(p, at[(i + 1) % 4]!))));
    sides = at.map((p, i) => edgePoints(grey, p, at[(i + 1) % 4]!, reach, tone));
    const lines = sides.map(lineThrough);
    const crossings = lines.map((line, i) => {
      const before = lines[(i + 3) % 4];
      return line && before && crossing(before, line);
    });
    if (!crossings.every(p => p !== undefined)) return undefined;
    corners = crossings as unknown as Quad;
  }
  return { corners, sides };
}

/** Each looks for the edge about where the last found it. */
const rounds = 3;

/** Dots to each side of the edge of a target of this size, in which nothing else lies. */
const reachFor = (side: number): number =>
  Math.min(widest, Math.max(narrowest, (side / (codeSide + 2)) * ofCell));

/** Dots to each side of a target's edge that are looked at: most of a cell, the border being one cell of black. */
const narrowest = 2,
  widest = 7,
  ofCell = 0.6;

/** Which cells are white, by brightness between the border's black and the paper's white beside each. */
function cellsOf(grey: Grey, corners: Quad): readonly boolean[] | undefined {
  const width = codeSide + 2;
  const square = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: width },
    { x: 0, y: width },
  ];
  const map = homographyFrom(square, corners);
  if (!map) return undefined;
  const level = (x: number, y: number) => {
    const p = carried(map, { x, y });
    return brightnessAt(grey, p.x, p.y);
  };
  const mean = (points: readonly (readonly [number, number])[]) =>
    points.reduce((sum, [x, y]) => sum + level(x, y), 0) / points.length;
  const along = Array.from({ length: width }, (_, i) => i + 0.5);
  const ring = (inset: number) =>
    along.flatMap(
      a =>
        [
          [a, inset],
          [width - inset, a],
          [a, width - inset],
          [inset, a],
        ] as const,
    );
  const black = mean(ring(0.5)),
    white = mean(ring(-0.7));
  if (white - black < leastContrast) return undefined;
  const between = (black + white) / 2;
  return Array.from({ length: codeSide ** 2 }, (_, i) => {
    const column = (i % codeSide) + 1,
      row = Math.floor(i / codeSide) + 1;
    const spots = [0.3, 0.5, 0.7].flatMap(u => [0.3, 0.5, 0.7].map(v => [column + u, row + v] as const));
    return mean(spots) > between;
  });
}

/** Of 255, between black and white: less is no print on paper in any light that shows a pattern. */
const leastContrast = 25;
