import type { OutlinePart } from '@paperhinge/geometry';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { expect, test } from 'vitest';
import { at, cornersOf, polygon, rectangle, straightEdge } from './pieces.js';

// Ends that come to lie all but together are one point, but for a real corner there, which says just where.

test('the corners of a rectangle with 0.02 mm included are found where its sides cross', () => {
  const { parts } = stitchingLine(polygon(rectangle(120, 80)).outline.parts, () => 0.02);
  const found = cornersOf(outlinePath({ parts }));
  expect(found).toHaveLength(4);
  for (const p of [at(0.02, 0.02), at(119.98, 0.02), at(119.98, 79.98), at(0.02, 79.98)])
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
  if (codes.length > 0) return;
  // They meet half way.
  const [first, second] = back.parts;
  const ends = [first, second].map(p => (p?.type === 'edge' ? p.path.segments[0]! : []));
  for (const p of [ends[0]!.at(-1)!, ends[1]![0]!]) {
    expect(p.x).toBeCloseTo(100, 9);
    expect(p.y).toBeCloseTo(10 + more / 2, 9);
  }
});
