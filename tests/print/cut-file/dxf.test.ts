import { createRequire } from 'node:module';
import { cuttingLine, nearestOnPath, pathLength } from '@paperhinge/geometry';
import { dxfLayers, patternDxf } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { patternOf, rectangle } from '../simple-pieces.js';

interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly { readonly x: number; readonly y: number }[];
  readonly position?: { readonly x: number; readonly y: number };
  readonly shape?: boolean;
  readonly text?: string;
}
// Its type declarations do not match what Node loads of it, so it is loaded by hand.
const DxfParser = createRequire(import.meta.url)('dxf-parser') as new () => {
  parseSync(text: string): {
    readonly blocks: Readonly<Record<string, { readonly entities: readonly Entity[] }>>;
  };
};
const pattern = shiftPattern();
const blocksOf = (dxf: string) => new DxfParser().parseSync(dxf).blocks;
const on = (block: { readonly entities: readonly Entity[] }, layer: number) =>
  block.entities.filter(e => e.layer === String(layer));

describe('an independent reader of DXF', () => {
  const blocks = blocksOf(patternDxf(pattern));

  test('finds a block for each piece', () => {
    expect(Object.keys(blocks)).toEqual(['FRONT', 'BACK', 'SLEEVE', 'NECKBAND']);
  });

  test('reads each cutting line back in its place and as long as it is', () => {
    for (const piece of pattern.pieces) {
      const { path } = cuttingLine(piece, pattern);
      const [boundary] = on(blocks[piece.name.toUpperCase()]!, dxfLayers.boundary).filter(
        e => e.type === 'POLYLINE',
      );
      const points = boundary!.vertices!.map(v => ({ x: v.x, y: -v.y }));
      expect(boundary!.shape).toBe(true);
      // Figures are written to 1e-4 mm.
      for (const p of points) expect(nearestOnPath(path, p).distance).toBeLessThan(0.001);
      const length = points.reduce(
        (sum, p, i) => sum + Math.hypot(p.x - points.at(i - 1)!.x, p.y - points.at(i - 1)!.y),
        0,
      );
      expect(Math.abs(length - pathLength(path)) / length).toBeLessThan(1e-4);
    }
  });

  test('finds grain, notches, fold, stitching lines, corners and drill points on their layers', () => {
    const front = blocks.FRONT!;
    expect(on(front, dxfLayers.grain)).toHaveLength(1);
    expect(on(front, dxfLayers.notch)).toHaveLength(2);
    expect(on(front, dxfLayers.mirror)).toHaveLength(1);
    expect(on(front, dxfLayers.sew).length).toBeGreaterThanOrEqual(6);
    expect(on(front, dxfLayers.turn).length).toBeGreaterThanOrEqual(7);
    expect(on(front, dxfLayers.drill)).toHaveLength(1);
    expect(front.entities.some(e => e.text === 'Annotation: cut 1 on fold')).toBe(true);
  });
});

test('names cannot break out of the file', () => {
  const evil = 'a\n0\nEOF\nü縫';
  const blocks = blocksOf(
    patternDxf(patternOf(rectangle(evil, 50, 50, 5, { title: evil }), rectangle('a 0 EOF', 50, 50))),
  );
  expect(Object.keys(blocks)).toHaveLength(2);
  expect(patternDxf(patternOf(rectangle('x', 50, 50, 5, { title: 'ü縫' })))).toContain(
    'Piece Name: \\U+00FC\\U+7E2B',
  );
});
