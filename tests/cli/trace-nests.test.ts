// Sizes drawn in one another in one colour, told apart by their dashes alone: in SVG, DXF and PDF files of others' making.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { edgeNames, edgePath, pathLength, readPattern } from '@paperhinge/geometry';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { command } from './command.js';
import { folder } from './folders.js';

type Pair = readonly [number, number];

/** Half a skirt, so much wider and longer in each size. mm. */
const corners = (grown: number): readonly Pair[] => [
  [60, 60],
  [150 + grown, 52],
  [176 + grown, 240 + grown],
  [60, 250 + grown],
];
const areaOf = (ring: readonly Pair[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length]!;
      return sum + x * v - u * y;
    }, 0),
  ) / 2;

const sizes = [
  { size: 'S', grown: 0, dash: [] },
  { size: 'M', grown: 7, dash: [6, 2] },
  { size: 'L', grown: 14, dash: [1, 1.5] },
] as const;

const svg = (): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="300mm" height="320mm" viewBox="0 0 300 320">${sizes
    .map(
      ({ grown, dash }) =>
        `<path fill="none" stroke="black" ${dash.length > 0 ? `stroke-dasharray="${dash.join(' ')}"` : ''} d="M ${corners(
          grown,
        )
          .map(p => p.join(' '))
          .join(' L ')} Z"/>`,
    )
    .join('')}<path stroke="black" d="M 90 100 V 200"/></svg>`;

/** An R12 file: closed polylines on one layer, each of its own kind of line. */
function dxf(): string {
  const kinds = ['CONTINUOUS', 'DASHED', 'DOT'];
  const polyline = (ring: readonly Pair[], kind: string): readonly (string | number)[] => [
    ...[0, 'POLYLINE', 8, 'SIZES', 6, kind, 66, 1, 70, 1],
    ...ring.flatMap(([x, y]) => [0, 'VERTEX', 8, 'SIZES', 10, x, 20, -y]),
    ...[0, 'SEQEND', 8, 'SIZES'],
  ];
  return [
    ...[0, 'SECTION', 2, 'HEADER', 9, '$INSUNITS', 70, 4, 0, 'ENDSEC', 0, 'SECTION', 2, 'ENTITIES'],
    ...sizes.flatMap(({ grown }, i) => polyline(corners(grown), kinds[i]!)),
    ...[0, 'ENDSEC', 0, 'EOF'],
  ].join('\n');
}

async function pdf(): Promise<Uint8Array> {
  const file = await PDFDocument.create();
  const points = 72 / 25.4;
  const page = file.addPage([300 * points, 320 * points]);
  for (const { grown, dash } of sizes) {
    const ring = corners(grown)
      .map(p => p.map(mm => mm * points).join(' '))
      .join(' L ');
    page.drawSvgPath(`M ${ring} Z`, {
      x: 0,
      y: 320 * points,
      borderWidth: 0.8,
      ...(dash.length > 0 ? { borderDashArray: dash.map(mm => mm * points) } : {}),
    });
  }
  return file.save();
}

test.each([
  ['nest.svg', async () => svg(), 'S=solid, M=dashed 6-2, L=dashed 1-1.5'],
  ['nest.dxf', async () => dxf(), 'S=solid, M=dashed, L=dot'],
  ['nest.pdf', pdf, 'S=solid, M=dashed 6-2, L=dashed 1-1.5'],
] as const)('the sizes of %s are told apart by their dashes', async (name, drawn, by) => {
  const dir = folder();
  const [file, pattern] = [join(dir, name), join(dir, 'pattern.svg')];
  writeFileSync(file, await drawn());
  // Without a choice the hands are told as they must be typed.
  const asked = await command('trace', file, '-o', pattern);
  expect(asked.code).toBe(2);
  for (const hand of by.split(', ').map(one => one.split('=')[1]!)) expect(asked.stderr).toContain(hand);
  const { code, stderr } = await command('trace', file, '-o', pattern, '--sizes', by);
  expect(stderr).not.toContain('fault');
  expect(code).toBeLessThan(2);
  for (const { size, grown } of sizes) {
    const read = readPattern(readFileSync(pattern), { size });
    expect(read.sizes).toEqual(['S', 'M', 'L']);
    const [piece] = read.pattern.pieces;
    expect(Math.abs(signedArea(outlinePath(piece!.outline)))).toBeCloseTo(areaOf(corners(grown)), 1);
    expect(edgeNames(piece!)).toHaveLength(4);
    const first = readPattern(readFileSync(pattern), { size: 'S' }).pattern.pieces[0]!;
    const longer = (edge: string): number =>
      pathLength(edgePath(piece!, edge)) - pathLength(edgePath(first, edge));
    // Top and hem grow by about as much as the sides; the edge of one name is the same edge in every size.
    for (const edge of edgeNames(piece!)) expect(Math.abs(longer(edge) - grown)).toBeLessThan(1.1);
  }
  // One alone, by its name among all or by what it is drawn in.
  const middle = by.split(', ')[1]!.split('=')[1]!;
  for (const how of [
    ['--sizes', by, '--size', 'M'],
    ['--size', middle],
    ['--layer', middle],
  ]) {
    const one = await command('trace', file, '-o', pattern, ...how, '--json');
    expect(one.code).toBeLessThan(2);
    const { pieces, sizes: none } = JSON.parse(one.stdout);
    expect([pieces.length, none]).toEqual([1, undefined]);
    expect(pieces[0].areaMm2).toBeCloseTo(areaOf(corners(sizes[1].grown)), 1);
  }
  const wrong = await command('trace', file, '-o', pattern, '--sizes', 'S=solid, M=dashed 9-9');
  expect(wrong.code).toBe(2);
  expect(wrong.stderr).toContain('dashed 9-9');
});
