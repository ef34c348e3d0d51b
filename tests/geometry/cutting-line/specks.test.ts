// Spurs, hooks, loops and steps that an editor's rounding leaves within an edge: no cutting line shows them.
import { shorten } from '@paperhinge/alter/length';
import {
  cuttingLine,
  definePattern,
  type Edge,
  type Path,
  type Segment,
  validatePiece,
} from '@paperhinge/geometry';
import { pointAt } from '@paperhinge/geometry/curves';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { selfCrossings } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { at, edge, pieceOf, straightEdge } from './pieces.js';

/** A vest front whose neck runs straight to (40, 80) and on in a curve; `between` is what lies at that place. */
const vest = (...between: readonly Segment[]) =>
  pieceOf([
    edge('neck', [
      [at(0, 90), at(40, 80)],
      ...between,
      [between.length > 0 ? between.at(-1)!.at(-1)! : at(40, 80), at(60, 75), at(68, 40), at(70, 0)],
    ]),
    straightEdge('shoulder', at(70, 0), at(190, 40)),
    straightEdge('side', at(190, 40), at(210, 400)),
    straightEdge('hem', at(210, 400), at(0, 400), { kind: 'hem', allowance: 20 }),
    straightEdge('centre-front', at(0, 400), at(0, 90), { kind: 'fold' }),
  ]);

// By hand: a polygon through 40 points of each segment, without the project's own areas.
function areaOf({ segments }: Path): number {
  const points = segments.flatMap(segment => Array.from({ length: 40 }, (_, i) => pointAt(segment, i / 40)));
  return points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);
}
const clean = areaOf(cuttingLine(vest()).path);

const here = at(40, 80);
const shapes: Readonly<Record<string, (x: number, y: number) => readonly Segment[]>> = {
  'a spur': (x, y) => [
    [here, at(40 + x, 80 + y)],
    [at(40 + x, 80 + y), here],
  ],
  'a loop of one curve': (x, y) => [[here, at(40 + x, 80 + y), at(40 - y, 80 + x), here]],
  'a triangle': (x, y) => [
    [here, at(40 + x, 80 + y)],
    [at(40 + x, 80 + y), at(40 - y, 80 + x)],
    [at(40 - y, 80 + x), here],
  ],
};
/** mm, from below the coincidence tolerance to below a joining gap: what files of two to six decimals round to. */
const sizes = [1e-8, 1.1e-6, 1e-5, 1e-4, 1e-3, 4e-3, 0.01, 0.04];

describe.each(Object.keys(shapes))('%s', shape => {
  test.each(sizes)('of %s mm within an edge is nothing, whichever way it points', size => {
    for (let turn = 0; turn < 12; turn++) {
      const angle = (turn * Math.PI) / 6 + 0.1;
      const { path, findings } = cuttingLine(
        vest(...shapes[shape]!(size * Math.cos(angle), size * Math.sin(angle))),
      );
      expect(findings).toEqual([]);
      expect(selfCrossings(path)).toEqual([]);
      // Once a spike of 400 mm².
      expect(Math.abs(areaOf(path) - clean)).toBeLessThan(0.05);
    }
  });
});

test.each([1e-5, 0.001, 0.0099])('a hook of %s mm at the end of an edge turns no corner', size => {
  for (let turn = 0; turn < 12; turn++) {
    const [x, y] = [size * Math.cos(turn / 2), size * Math.sin(turn / 2)];
    const { outline, ...piece } = vest();
    const [neck, shoulder, ...rest] = outline.parts as readonly Edge[];
    const hooked = pieceOf([
      { ...neck!, path: { segments: [...neck!.path.segments, [at(70, 0), at(70 + x, y)]] } },
      { ...shoulder!, path: { segments: [[at(70 + x, y), at(190, 40)]] } },
      ...rest,
    ]);
    // Once up to 350 mm² more or less at the corner.
    expect(Math.abs(areaOf(cuttingLine({ ...piece, outline: hooked.outline }).path) - clean)).toBeLessThan(1);
  }
});

test('a step to one side of 0.004 mm moves the line by no more', () => {
  for (const step of [0.004, -0.004]) {
    const { path } = cuttingLine(vest([here, at(40 + step / 4, 80 + step)]));
    expect(Math.abs(areaOf(path) - clean)).toBeLessThan(0.004 * 120);
  }
});

test('a spur as long as a pen line is drawn is drawn', () => {
  const { path } = cuttingLine(vest([here, at(41, 78)], [at(41, 78), here]));
  expect(areaOf(path) - clean).toBeGreaterThan(10);
});

test('a loop that rounding left is read, and the piece altered as if it were not there', () => {
  for (const size of [1e-5, 1e-4, 1e-3])
    for (const shape of Object.values(shapes)) {
      const drawn = { ...vest(...shape(size, size / 2)), name: 'vest' };
      expect(() => validatePiece(drawn)).not.toThrow();
      const pattern = definePattern({ name: 't', pieces: [drawn] });
      const { pieces } = shorten(pattern, { pieces: ['vest'], at: 'hem', by: 30 }).pattern;
      const cut = areaOf(outlinePath(drawn.outline)) - areaOf(outlinePath(pieces[0]!.outline));
      // The side leans: 20 mm over 360 mm of height, to 210 mm at the hem.
      expect(cut).toBeCloseTo(30 * (210 - (30 / 2) * (20 / 360)), 3);
    }
});

test('a loop larger than that is none of rounding', () => {
  const loop = shapes['a loop of one curve']!(1.2, 0.4);
  expect(() => validatePiece(vest(...loop))).toThrow(expect.objectContaining({ code: 'self-crossing' }));
});

test.each(sizes)('a spur of %s mm in a line that was drawn to be cut along loses no edge', size => {
  // Drawn on the cutting line, 15 mm outside 300 × 400: once refused as wider than the edge.
  for (let turn = 0; turn < 6; turn++) {
    const tip = at(150 + size * Math.cos(turn), -15 + size * Math.sin(turn));
    const middle = at(150, -15);
    const { parts, findings } = stitchingLine(
      [
        edge('top', [
          [at(-15, -15), middle],
          [middle, tip],
          [tip, middle],
          [middle, at(315, -15)],
        ]),
        straightEdge('right', at(315, -15), at(315, 415)),
        straightEdge('bottom', at(315, 415), at(-15, 415)),
        straightEdge('left', at(-15, 415), at(-15, -15)),
      ],
      () => 15,
    );
    expect(findings).toEqual([]);
    const corners = (parts as readonly Edge[]).map(part => part.path.segments[0]![0]);
    const wanted = [at(0, 0), at(300, 0), at(300, 400), at(0, 400)];
    for (const [i, p] of corners.entries())
      expect(Math.hypot(p.x - wanted[i]!.x, p.y - wanted[i]!.y)).toBeLessThan(0.01);
  }
});
