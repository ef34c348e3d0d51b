import { cuttingLine, type Piece, type Point } from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { at, polygon } from './pieces.js';

// A notch with a flat floor between walls that lean alike: its parallels in closed form, on either side of where the floor
// is just wide enough.

interface Notch {
  /** mm, half of the floor. */
  readonly half: number;
  /** From the floor to either wall. */
  readonly degrees: number;
  readonly allowance: number;
  /** Which of the edges the outline is begun with. */
  readonly first: number;
}
const depth = 60,
  middle = 200;
const radians = Math.PI / 180;

function notched({ half, degrees, allowance, first }: Notch): Piece {
  const run = depth / Math.tan(degrees * radians);
  const corners = [
    at(0, 0),
    at(middle - half - run, 0),
    at(middle - half, depth),
    at(middle + half, depth),
    at(middle + half + run, 0),
    at(2 * middle, 0),
    at(2 * middle, 200),
    at(0, 200),
  ];
  return polygon([...corners.slice(first), ...corners.slice(0, first)], () => ({ allowance }));
}
/** mm of the floor, at each of its ends, that the corner there takes of its parallel. */
const cornerShare = ({ degrees, allowance }: Notch): number => allowance * Math.tan((degrees / 2) * radians);

const inNotch = (piece: Piece): readonly Point[] =>
  cuttingLine(piece)
    .path.segments.map(s => s[0])
    .filter(p => p.y > 1e-6 && p.y < depth + 1)
    .sort((p, q) => p.x - q.x);
const near = ({ x, y }: Point) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });

const notch = (least: number, most: number) =>
  fc
    .record({
      share: fc.double({ min: least, max: most, noNaN: true }),
      degrees: fc.double({ min: 25, max: 70, noNaN: true }),
      allowance: fc.constantFrom(6.35, 10, 15),
      first: fc.nat(7),
    })
    .map(({ share, ...rest }): Notch => ({ ...rest, half: share * cornerShare({ ...rest, half: 0 }) }));

describe('a notch whose walls lean', () => {
  test('with a floor wide enough is cut parallel to all three sides, and snipped to both corners', () => {
    fc.assert(
      fc.property(notch(1.02, 3), figures => {
        const piece = notched(figures);
        const { half, allowance } = figures;
        const reach = half - cornerShare(figures);
        const turns = [at(middle - reach, depth - allowance), at(middle + reach, depth - allowance)];
        expect(inNotch(piece)).toEqual(turns.map(near));
        const { snips, findings } = cuttingLine(piece);
        expect(findings).toEqual([]);
        const both = [...snips].sort((p, q) => p.segments[0]![1]!.x - q.segments[0]![1]!.x);
        expect(both.map(s => s.segments)).toEqual(
          turns.map((from, i) => [[near(from), at(middle + (2 * i - 1) * half, depth)]]),
        );
      }),
      { numRuns: 40 },
    );
  });
  test('with a narrower floor comes to a point where the walls’ parallels cross, and loses the floor', () => {
    fc.assert(
      fc.property(notch(0.1, 0.95), figures => {
        const piece = notched(figures);
        const { half, degrees, allowance, first } = figures;
        const [cos, sin] = [Math.cos(degrees * radians), Math.sin(degrees * radians)];
        // In the middle, so far from either wall's line; square to it lies its foot on the wall.
        const tip = at(middle, depth - (allowance - half * sin) / cos);
        const wall = depth - tip.y <= 0 ? Number.NaN : (depth - tip.y) * sin - half * cos;
        expect(inNotch(piece)).toEqual([near(tip)]);
        const { snips, findings } = cuttingLine(piece);
        expect(snips.map(s => s.segments[0]![0])).toEqual([near(tip), near(tip)]);
        const name = (corner: number): string => `e${(corner + 8 - first) % 8}`;
        const told = new Map(findings.map(f => [f.where.edge, f.figures!.lostMm as number]));
        // What no maker could see is not told.
        for (const [edge, lost] of [
          [name(1), wall],
          [name(2), 2 * half],
          [name(3), wall],
        ] as const)
          if (Math.abs(lost - 0.1) > 1e-3)
            expect(told.get(edge)).toEqual(lost > 0.1 ? expect.closeTo(lost, 5) : undefined);
      }),
      { numRuns: 40 },
    );
  });
});
