import type { OutlinePart } from '@paperhinge/geometry';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { expect, test } from 'vitest';
import { at, cornersOf, polygon, straightEdge } from './pieces.js';

// Ends that come to lie all but together are one point, but for a real corner there, which says just where.

test('the corners of an L with 0.02 mm included are found where its sides cross', () => {
  const ell = [at(0, 0), at(60, 0), at(60, 40), at(140, 40), at(140, 120), at(0, 120)];
  const { parts } = stitchingLine(polygon(ell).outline.parts, () => 0.02);
  const found = cornersOf(outlinePath({ parts }));
  expect(found).toHaveLength(6);
  for (const p of [
    at(0.02, 0.02),
    at(59.98, 0.02),
    at(59.98, 40.02),
    at(139.98, 40.02),
    at(139.98, 119.98),
    at(0.02, 119.98),
  ])
    expect(Math.min(...found.map(q => Math.hypot(p.x - q.x, p.y - q.y)))).toBeLessThan(1e-9);
});

test.each([
  [0.04, []],
  [0.06, ['corner-not-recovered']],
] as const)('two edges in one line, one drawn %d mm farther out: told %j', (more, codes) => {
  const parts: readonly OutlinePart[] = [
    straightEdge('first', at(0, 0), at(100, 0)),
    straightEdge('second', at(100, 0), at(200, 0)),
    straightEdge('right', at(200, 0), at(200, 150)),
    straightEdge('foot', at(200, 150), at(0, 150)),
    straightEdge('left', at(0, 150), at(0, 0)),
  ];
  const back = stitchingLine(parts, e => (e.name === 'second' ? 10 + more : 10));
  expect(back.findings.map(f => f.code)).toEqual(codes);
  const [first, second] = back.parts.map(p => (p.type === 'edge' ? p.path.segments : []));
  // They meet half way, or each ends where it was drawn, moved in.
  const ends = codes.length === 0 ? [10 + more / 2, 10 + more / 2] : [10, 10 + more];
  for (const [i, p] of [first!.at(-1)!.at(-1)!, second![0]![0]].entries()) {
    expect(p.x).toBeCloseTo(100, 9);
    expect(p.y).toBeCloseTo(ends[i]!, 9);
  }
  expect(first).toHaveLength(1);
  expect(second).toHaveLength(1);
});
