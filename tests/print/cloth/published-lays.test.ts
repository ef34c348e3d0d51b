import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { arrange, type Shape } from '@paperhinge/print/place';
import { describe, expect, test } from 'vitest';
import { placed } from '../../../packages/print/src/place/arrangement.js';
import { areaOf, overlapArea } from './polygon-judge.js';

// Four garment instances of the irregular strip-packing literature (public collection of the EURO working group on
// cutting and packing, as redistributed by the sparrow project, MIT) [read]. Best known densities: shared/data/layout.
const folder = fileURLToPath(new URL('../../../../shared/data/layout/', import.meta.url));
const instances = [
  { name: 'shirts', best: 0.9092 },
  { name: 'albano', best: 0.8982 },
  { name: 'dagli', best: 0.9017 },
  { name: 'marques', best: 0.9201 },
];

interface Instance {
  readonly strip_height: number;
  readonly items: readonly {
    readonly demand: number;
    readonly allowed_orientations: readonly number[];
    readonly shape: { readonly data: readonly (readonly [number, number])[] };
  }[];
}

describe.skipIf(!existsSync(folder))('published lays (skipped: ../shared/data/layout is not there)', () => {
  test.each(instances)(
    '$name: every piece once, none over another, none beyond the cloth',
    ({ name, best }) => {
      const { items, strip_height: strip } = JSON.parse(
        readFileSync(`${folder}${name}.json`, 'utf8'),
      ) as Instance;
      // Taken as cloth 1.5 m wide; there the strip runs to the right, here down.
      const mm = 1500 / strip;
      const shapes = items.flatMap(({ demand, shape }): Shape[] => {
        const polygon = shape.data.map(([x, y]) => ({ x: y * mm, y: x * mm }));
        return Array.from({ length: demand }, () => ({ polygons: [polygon] }));
      });
      const quarters = items.some(i => i.allowed_orientations.includes(90));
      const { placings, length } = arrange(
        shapes,
        { width: 1500, height: 1e5, overlap: 0 },
        { shortest: true, tries: 60, turning: quarters ? 'quarter' : 'half' },
      );
      const laid = shapes.map((s, i) => placed(s.polygons[0]!, placings[i]!));
      expect(laid.length).toBe(items.reduce((sum, i) => sum + i.demand, 0));
      for (const p of laid.flat()) {
        expect(p.x).toBeGreaterThanOrEqual(0);
        expect(p.x).toBeLessThanOrEqual(1500);
        expect(p.y).toBeLessThanOrEqual(length + 1e-9);
      }
      expect(overlapArea(laid)).toBeLessThan(1);
      const density = laid.reduce((sum, p) => sum + areaOf(p), 0) / (1500 * length);
      process.stdout.write(
        `${name}: ${(100 * density).toFixed(1)} % of the cloth used; best known ${(100 * best).toFixed(2)} %\n`,
      );
      // With room for the scissors between pieces, laid in a second: no more than a fifth of the cloth from the best known.
      expect(density).toBeLessThan(best);
      expect(density).toBeGreaterThan(best - 0.2);
    },
  );
});
