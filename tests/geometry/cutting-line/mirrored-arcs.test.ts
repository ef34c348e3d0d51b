import { cuttingLine, type Edge, type Piece } from '@paperhinge/geometry';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { describe, expect, test } from 'vitest';
import { arc, at, cornersOf, edge, pieceOf, straightEdge } from './pieces.js';

const degrees = Math.PI / 180;
/** A level edge of 25 mm pressed open at its corner with an arc of 40 mm and 10 mm, which begins square to it. */
const rounded = (sweep: number): Piece => {
  const bend = arc(at(-40, 0), 40, 0, sweep);
  const end = bend.at(-1)![3];
  return pieceOf([
    straightEdge('top', at(-300, 0), at(0, 0), { allowance: 25, end: 'pressed-open' }),
    edge('bend', bend, { allowance: 10 }),
    straightEdge('under', end, at(-300, 300)),
    straightEdge('left', at(-300, 300), at(-300, 0)),
  ]);
};
const mirrored = (piece: Piece): Piece =>
  pieceOf(
    (piece.outline.parts as readonly Edge[])
      .map(part => ({
        ...part,
        path: reversedPath(transformedPath(part.path, { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 })),
        corners: part.corners.end ? { start: part.corners.end } : {},
      }))
      .reverse(),
  );

// The arc's line is one of 50 mm about its centre; its image in the level edge rises to that edge's line, 25 above.
describe.each([1, -1])('the end of an allowance that is the image of an arc, in sense %d', sense => {
  const tips = (sweep: number) => {
    const { path, findings } = cuttingLine(sense === 1 ? rounded(sweep) : mirrored(rounded(sweep)));
    expect(findings.filter(f => f.severity !== 'note')).toEqual([]);
    return cornersOf(path).map(p => at(sense * p.x, p.y));
  };
  const nearest = (sweep: number, x: number): number =>
    Math.min(...tips(sweep).map(p => Math.hypot(p.x - x, p.y + 25)));
  test('where the arc is too short, runs on straight', () => {
    for (const sweep of [12, 20, 25]) {
      const [rise, along] = [50 * Math.sin(sweep * degrees), 50 * Math.cos(sweep * degrees)];
      expect(nearest(sweep, -40 + along - (25 - rise) * Math.tan(sweep * degrees))).toBeLessThan(0.01);
    }
  });
  test('where it would come back to the line, goes no further than to where it first meets it', () => {
    for (const sweep of [60, 120, 135])
      expect(nearest(sweep, -40 + 50 * Math.cos(30 * degrees))).toBeLessThan(0.01);
  });
});
