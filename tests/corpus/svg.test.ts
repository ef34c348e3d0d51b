import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type ForeignShape, PatternError, readShapes } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';

// 124 small files about geometry in SVG, from the tests of a renderer; see SOURCE.md beside them. Apache-2.0 or MIT.
const folder = fileURLToPath(new URL('../../../shared/corpus/svg', import.meta.url));
const files = existsSync(folder)
  ? readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter(name => name.endsWith('.svg'))
      .sort()
  : [];
const mmPerPixel = 25.4 / 96;

function read(name: string): { readonly shapes: readonly ForeignShape[]; readonly code?: string } {
  try {
    return readShapes(readFileSync(`${folder}/${name}`), { file: name });
  } catch (error) {
    if (error instanceof PatternError) return { shapes: [], code: error.code };
    throw error;
  }
}

/** Refused, and why that is right. */
const refused: Readonly<Record<string, string>> = {
  // Windows-1251: UTF-8, UTF-16 and Latin-1 are read.
  'structure/svg/not-UTF-8-encoding.svg': 'encoding-unknown',
};

/** Files whose frame is another one (pixels), or that have none, by their own viewBox. */
const otherFrame: Readonly<Record<string, readonly number[] | 'none'>> = {
  'extra/horizontal-line-no-stroke.svg': 'none',
  'extra/horizontal-line.svg': 'none',
  'extra/miter-join-with-acute-angle.svg': 'none',
  'structure/style/universal-selector.svg': 'none',
  'shapes/line/percent-units.svg': [1, 1, 198, 98],
  'shapes/rect/percentage-values-2.svg': [1, 1, 198, 98],
  'structure/svg/preserveAspectRatio=xMidYMid-slice.svg': [1, -49, 198, 98],
  'structure/svg/preserveAspectRatio=xMidYMid.svg': [50.5, 0.5, 99, 49],
  'structure/svg/preserveAspectRatio=xMinYMin-slice.svg': [1, 1, 198, 98],
};

describe.skipIf(files.length === 0)(
  'the corpus of SVG files (skipped: ../shared/corpus/svg is not there)',
  () => {
    test('is whole', () => {
      expect(files).toHaveLength(124);
    });

    test.each(files)(
      '%s is read, or refused for a known reason, and its frame is where it should be',
      name => {
        const { shapes, code } = read(name);
        expect(code).toBe(refused[name]);
        if (code !== undefined) return;
        const box = otherFrame[name] ?? [1, 1, 198, 198];
        const frame = shapes.find(s => s.id === 'frame')?.boxMm.map(v => Number((v / mmPerPixel).toFixed(6)));
        expect(frame ?? 'none').toEqual(box);
        for (const shape of shapes)
          for (const figure of [shape.lengthMm, shape.areaMm2, ...shape.boxMm])
            expect(Number.isFinite(figure)).toBe(true);
      },
    );

    // In these files the red shape is what a right reader covers with the green one: both have one outline.
    test.each([
      'shapes/circle/simple-case.svg',
      'shapes/ellipse/simple-case.svg',
      'shapes/line/no-x2-coordinate.svg',
      'shapes/path/invalid-data-in-L.svg',
      'shapes/polygon/simple-case.svg',
      'shapes/polyline/simple-case.svg',
      'shapes/rect/rx-attribute-resolving.svg',
      'structure/transform/matrix.svg',
      'structure/transform/skewX.svg',
      'structure/transform/transform-list.svg',
      'structure/transform-origin/length-percent.svg',
    ])('%s: the shape and the one that stands for it have the same box', name => {
      const [a, b] = read(name).shapes;
      a!.boxMm.forEach((v, i) => {
        expect(v).toBeCloseTo(b!.boxMm[i]!, 3);
      });
    });
  },
);
