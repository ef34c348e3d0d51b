import { pathLength, readShapes } from '@paperhinge/geometry';
import { parsePathData } from '@paperhinge/geometry/svg';
import { describe, expect, test } from 'vitest';
import { icons, pathDataOf } from './icons.js';
import { curvesOf, measureCurves } from './path-reference.js';

const all = [...icons()];
const mmPerPixel = 25.4 / 96;
/** Every so manieth is held against the reference, which samples densely and is slow. */
const sampled = 25;

describe.skipIf(all.length === 0)(
  `icon packages${all.length === 0 ? ' (skipped: they are not installed)' : ''}`,
  () => {
    test('are there by the thousand', () => {
      expect(all.length).toBeGreaterThan(15_000);
    });

    test('every icon is read whole: shapes found, figures finite, nothing broken', () => {
      for (const { name, source } of all) {
        const { shapes, findings } = readShapes(source, { file: name });
        const broken = findings.filter(f => f.severity !== 'note').map(f => `${name}: ${f.code}`);
        expect(broken).toEqual([]);
        expect(shapes.length, name).toBeGreaterThan(0);
        for (const { lengthMm, areaMm2, boxMm } of shapes)
          expect([lengthMm, areaMm2, ...boxMm].every(Number.isFinite), name).toBe(true);
      }
    });

    test('lengths and boxes of a sample are those of an independent reader', () => {
      let compared = 0;
      for (const { name, source } of all.filter((_, i) => i % sampled === 0)) {
        // Drawings of plain paths in a viewBox only: the reference knows path data and nothing else.
        const data = pathDataOf(source);
        if (data.length === 0 || /<(g|circle|rect|ellipse|line|poly|use)|transform=/.test(source)) continue;
        const scale = framed(source);
        const { shapes } = readShapes(source, { file: name });
        expect(shapes.length, name).toBe(data.length);
        data.forEach((d, k) => {
          const wanted = measureCurves(curvesOf(d, scale));
          const { lengthMm, boxMm } = shapes[k]!;
          const [x, y, width, height] = boxMm;
          // Chords of cusped curves and of the smallest arcs are good to about this.
          const near = 1e-6 * (1 + wanted.length);
          expect(Math.abs(lengthMm - wanted.length), `length in ${name}`).toBeLessThan(20 * near);
          [x, y, x + width, y + height].forEach((side, i) => {
            expect(Math.abs(side - wanted.box[i]!), `box in ${name}`).toBeLessThan(near);
          });
          compared++;
        });
      }
      expect(compared).toBeGreaterThan(500);
    });

    test('no damage to data makes a figure that is not finite, or a crash', () => {
      // Each with one character lost, doubled or changed, at a place that depends on its number alone.
      const data = all.filter((_, i) => i % 10 === 0).flatMap(({ source }) => pathDataOf(source));
      data.forEach((d, i) => {
        const at = (i * 7919) % d.length;
        const broken = [
          d.slice(0, at) + d.slice(at + 1),
          d.slice(0, at + 1) + d.slice(at),
          `${d.slice(0, at)}${'#-.e9aZM'[i % 8]}${d.slice(at + 1)}`,
        ];
        for (const text of broken) {
          const { subpaths, fault } = parsePathData(text);
          if (fault) expect(fault.index).toBeLessThanOrEqual(text.length);
          if (i % 10 === 0)
            for (const stroke of subpaths.filter(({ segments }) => segments.length > 0))
              expect(Number.isFinite(pathLength(stroke)), text).toBe(true);
        }
      });
    });
  },
);

/** Icons have a size in px, or only a viewBox: then one of its units is one px. */
function framed(source: string): readonly number[] {
  const [x, y, width] = /viewBox="([^"]+)"/
    .exec(source)![1]!
    .split(/[\s,]+/)
    .map(Number) as [number, number, number];
  const shown = /<svg[^>]*\swidth="([\d.]+)"/.exec(source)?.[1];
  const k = (mmPerPixel * (shown === undefined ? width : Number(shown))) / width;
  return [k, 0, 0, k, -k * x, -k * y];
}
