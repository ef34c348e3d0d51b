import { boundsOfPath } from '../../path/bounds.js';
import { signedArea } from '../../region/area.js';
import { distance } from '../../vector.js';
import type { DrawnPage } from './page.js';

/** A square to measure the print by, as drawn, and what is written beside it. */
export interface TestSquare {
  readonly acrossMm: number;
  readonly downMm: number;
  readonly saidMm: number;
}

/** mm: words this near to a square speak of it. */
const beside = 40;

/** The first square on the pages beside which a length is written that it may be meant to have, within a tenth. */
export function testSquareOf(pages: readonly DrawnPage[]): TestSquare | undefined {
  for (const { drawing } of pages)
    for (const { path } of drawing.lines) {
      const { min, max } = boundsOfPath(path);
      const [across, down] = [max.x - min.x, max.y - min.y];
      if (path.segments.length < 4 || path.segments.length > 5 || across < 15 || across > 160) continue;
      if (
        Math.abs(across / down - 1) > 0.1 ||
        Math.abs(Math.abs(signedArea(path)) / (across * down) - 1) > 0.02
      )
        continue;
      const near = drawing.words.filter(
        ({ at }) =>
          distance(at, {
            x: Math.min(Math.max(at.x, min.x), max.x),
            y: Math.min(Math.max(at.y, min.y), max.y),
          }) <= beside,
      );
      const said = near.flatMap(({ text }) => lengthsIn(text)).find(mm => Math.abs(mm / across - 1) < 0.1);
      if (said !== undefined) return { acrossMm: across, downMm: down, saidMm: said };
    }
  return undefined;
}

const units: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4, inch: 25.4, '"': 25.4 };

/** Lengths that a line of writing names. */
function lengthsIn(text: string): readonly number[] {
  return [...text.matchAll(/(\d+(?:[.,]\d+)?)\s*(mm|cm|inch|in|")/gi)].map(
    ([, digits, unit]) => Number(digits!.replace(',', '.')) * units[unit!.toLowerCase()]!,
  );
}
