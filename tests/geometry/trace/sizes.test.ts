import { blendSizes, edgeNames, edgePath, pathLength, readPattern } from '@paperhinge/geometry';
import { writeSizes } from '@paperhinge/geometry/svg';
import { drawingOfSvg, proposeNames, sizesOfDrawing } from '@paperhinge/geometry/trace';
import { expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';

/** A skirt's front and back half, so much wider at the waist and the hem; the back begins at another corner. */
const half = (x: number, more: number, from: number): string => {
  const corners = [
    [x, 100],
    [x + 180 + more, 90],
    [x + 290 + more, 600],
    [x, 610],
  ];
  const ring = [...corners.slice(from), ...corners.slice(0, from)];
  return `M ${ring.map(([a, b]) => `${a} ${b}`).join(' L ')} Z`;
};
const colours = ['red', 'green', 'blue'];
const nest = `<svg xmlns="http://www.w3.org/2000/svg" width="900mm" height="700mm" viewBox="0 0 900 700">
${colours.map((colour, i) => `<path stroke="${colour}" d="${half(50, 12 * i, i)}"/><path stroke="${colour}" d="${half(450, 12 * i, 3 - i)}"/>`).join('\n')}
<path stroke="black" d="M 120 200 V 500"/><path stroke="black" d="M 520 200 V 500"/>
</svg>`;
const sizes = colours.map((layer, i) => ({ size: String(36 + 2 * i), layer }));
const { drawing } = drawingOfSvg(nest);
const traced = () => sizesOfDrawing('skirt', drawing, { gap: 0.2, sizes });

test('each size of a nest is a pattern, its pieces and edges called as in the first', () => {
  const { patterns, findings } = traced();
  expect(findings.filter(found => found.severity === 'fault')).toEqual([]);
  expect(patterns.map(pattern => pattern.size)).toEqual(['36', '38', '40']);
  patterns.forEach((pattern, i) => {
    expect(pattern.pieces.map(piece => piece.name)).toEqual(['piece-1', 'piece-2']);
    for (const piece of pattern.pieces) {
      // The upright centre stays as long in every size; top and hem grow by as much as the sides lie farther out.
      const lengths = (of: typeof piece) => edgeNames(of).map(name => pathLength(edgePath(of, name)));
      const first = patterns[0]!.pieces.find(one => one.name === piece.name)!;
      lengths(piece).forEach((length, k) => {
        const grown = length - lengths(first)[k]!;
        expect(grown < 0.001 || Math.abs(grown - 12 * i) < 0.1).toBe(true);
      });
      expect(Math.max(...lengths(piece)) - Math.min(...lengths(piece))).toBeGreaterThan(100);
      // What is drawn in no size belongs to all.
      expect(piece.lines.map(line => line.kind)).toEqual(['grain']);
    }
  });
});

test('written in one drawing it is read in every size, and between two of them', () => {
  const svg = writeSizes(traced().patterns);
  const read = (size: string) => readPattern(svg, { size });
  expect(read('38').sizes).toEqual(['36', '38', '40']);
  const width = (pattern: ReturnType<typeof read>['pattern']): number =>
    pathLength(edgePath(pattern.pieces[0]!, 'edge-1'));
  expect(width(read('40').pattern)).toBeCloseTo(Math.hypot(204, 10), 6);
  const between = blendSizes(read('36').pattern, read('40').pattern, 0.5);
  expect(width(between)).toBeCloseTo(Math.hypot(192, 10), 6);
  // The sides match in every size, and in what lies between.
  for (const pattern of [read('36').pattern, read('40').pattern, between])
    expect(proposeNames(pattern).seams.map(({ seam }) => seam.name)).toContain('side');
});

test('one size alone is no nest, and a layer that is not there is told', () => {
  expect(refusalOf(() => sizesOfDrawing('s', drawing, { gap: 0.2, sizes: sizes.slice(0, 1) })).code).toBe(
    'sizes-too-few',
  );
  const wrong = [sizes[0]!, { size: '38', layer: 'grean' }];
  expect(refusalOf(() => sizesOfDrawing('s', drawing, { gap: 0.2, sizes: wrong })).code).toBe(
    'layer-not-there',
  );
});
