import type { OutlinePart } from '@paperhinge/geometry';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { expect, test } from 'vitest';
import { arc, at, cornersOf, edge, polygon, straightEdge } from './pieces.js';

// Where neighbours, moved in, meet: ends all but together are one point, but for a real corner there, which says just where.

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

test('a line that runs on into a bend, drawn 0.04 mm farther out, meets it half way as well', () => {
  const bend = arc(at(100, 200), 200, -90, -60);
  const end = bend.at(-1)![3];
  const parts: readonly OutlinePart[] = [
    straightEdge('first', at(0, 0), at(100, 0)),
    edge('bend', bend),
    straightEdge('right', end, at(end.x, 250)),
    straightEdge('foot', at(end.x, 250), at(0, 250)),
    straightEdge('left', at(0, 250), at(0, 0)),
  ];
  for (const wider of ['first', 'bend']) {
    const back = stitchingLine(parts, e => (e.name === wider ? 10.04 : 10));
    expect(back.findings).toEqual([]);
    const [first, second] = back.parts.map(p => outlinePath({ parts: [p] }).segments);
    for (const p of [first!.at(-1)!.at(-1)!, second![0]![0]])
      expect(Math.hypot(p.x - 100, p.y - 10.02)).toBeLessThan(1e-6);
  }
});

// Parallels of lines that turn by an angle cross 10 / sin of it from where the wider begins. They are sought for 20 times
// the wider allowance: 400 mm.
test.each([
  [1.45, true],
  [1.42, false],
] as const)('two edges of 10 and 20 mm that turn by %d° cross within reach: %s', (degrees, isFound) => {
  for (const turn of [degrees, -degrees].map(d => (d * Math.PI) / 180))
    for (const [a, b] of [
      [10, 20],
      [20, 10],
    ] as const) {
      const far = at(1000 + 1000 * Math.cos(turn), 1000 * Math.sin(turn));
      const parts: readonly OutlinePart[] = [
        straightEdge('one', at(0, 0), at(1000, 0), { allowance: a }),
        straightEdge('two', at(1000, 0), far, { allowance: b }),
        straightEdge('right', far, at(2000, 2000)),
        straightEdge('foot', at(2000, 2000), at(0, 2000)),
        straightEdge('left', at(0, 2000), at(0, 0)),
      ];
      const back = stitchingLine(parts, e => e.allowance);
      expect(back.findings.map(f => f.code)).toEqual(isFound ? [] : ['corner-not-recovered']);
      // Where the level line of the one, a below it, meets that of the other.
      const x = 1000 + (isFound ? (a * Math.cos(turn) - b) / Math.sin(turn) : 0);
      const end = outlinePath({ parts: back.parts.slice(0, 1) })
        .segments.at(-1)!
        .at(-1)!;
      expect(end.x).toBeCloseTo(x, 6);
      expect(end.y).toBeCloseTo(a, 9);
    }
});
