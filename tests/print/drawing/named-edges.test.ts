import { edgePath, readPattern } from '@paperhinge/geometry';
import { pathStart } from '@paperhinge/geometry/paths';
import { namedEdgesSvg } from '@paperhinge/print/drawing';
import { expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';

test('every edge and dart is named as a sheet writes it, with an arrow at its start', () => {
  const pattern = shiftPattern();
  const svg = namedEdgesSvg(pattern);
  const names = [...svg.matchAll(/<text class="edge"[^>]*>([^<]*)</g)].map(m => m[1]);
  for (const piece of pattern.pieces)
    for (const part of piece.outline.parts) expect(names).toContain(part.name);
  expect([...svg.matchAll(/class="start"/g)]).toHaveLength(
    pattern.pieces.reduce(
      (sum, p) => sum + new Set(p.outline.parts.filter(e => e.type === 'edge').map(e => e.name)).size,
      0,
    ),
  );
});

test('the arrow lies within 27 px of the start of its edge, at half a px to a mm', () => {
  const pattern = shiftPattern();
  const piece = pattern.pieces[0]!;
  const svg = namedEdgesSvg({ ...pattern, pieces: [piece] });
  const first = /class="start" d="M(\S+) (\S+) /.exec(svg)!;
  const start = pathStart(edgePath(piece, piece.outline.parts.find(p => p.type === 'edge')!.name));
  const off = Math.hypot(Number(first[1]) - start.x / 2, Number(first[2]) - start.y / 2);
  expect(off).toBeGreaterThan(5);
  expect(off).toBeLessThan(29);
});

test('names are escaped', () => {
  const pattern = shiftPattern();
  const named = {
    ...pattern,
    name: '<b>"',
    pieces: pattern.pieces.map(p => ({ ...p, name: `<i>${p.name}` })),
  };
  const svg = namedEdgesSvg(named);
  expect(svg).not.toMatch(/<b>|<i>/);
  expect(() => readPattern(svg)).toThrow();
});
