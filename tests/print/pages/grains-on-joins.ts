import type { Printed } from '@paperhinge/print';
import { curvesOf } from '../../corpus/path-reference.js';

interface Strip {
  readonly box: readonly [x0: number, y0: number, x1: number, y1: number];
  readonly upright: boolean;
}

/** The strips that two pages of one sheet both show, by their windows alone. */
export function gluedStrips({ pages }: Printed['pages']): readonly Strip[] {
  const tiles = pages.filter(p => p.kind === 'tile');
  return tiles.flatMap(a =>
    tiles.flatMap((b): readonly Strip[] => {
      if (a === b || a.sheet !== b.sheet) return [];
      const [ax, ay, w, h] = a.windowMm,
        [bx, by] = b.windowMm;
      const beside = Math.abs(ay - by) < 1e-6 && bx > ax && bx <= ax + w + 1e-6;
      const below = Math.abs(ax - bx) < 1e-6 && by > ay && by <= ay + h + 1e-6;
      if (beside) return [{ box: [bx, ay, ax + w, ay + h], upright: true }];
      return below ? [{ box: [ax, by, ax + w, ay + h], upright: false }] : [];
    }),
  );
}

/**
 * How many grain lines run along a strip that takes glue, within so many mm of it: by sampling each line as the sheet
 * draws it.
 */
export function grainsOnJoins(printed: Pick<Printed, 'pages' | 'sheetSvg'>, within: number): number {
  const strips = gluedStrips(printed.pages);
  const shafts = [...printed.sheetSvg().matchAll(/<path class="grain" fill="none"[^>]* d="([^"]+)"/g)].map(
    ([, data]) => {
      const curves = curvesOf(data!);
      return [curves[0]!(0), curves.at(-1)!(1)] as const;
    },
  );
  return shafts.filter(([a, b]) =>
    strips.some(({ upright, box }) => {
      const across = Math.abs(upright ? b[0] - a[0] : b[1] - a[1]);
      if (across > 0.25 * Math.hypot(b[0] - a[0], b[1] - a[1])) return false;
      const grown = upright ? [box[0] - within, box[2] + within] : [box[1] - within, box[3] + within];
      return Array.from({ length: 201 }, (_, i) => i / 200).some(t => {
        const [x, y] = [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
        const [off, along] = upright ? [x, y] : [y, x];
        const [from, to] = upright ? [box[1], box[3]] : [box[0], box[2]];
        return off > grown[0]! && off < grown[1]! && along > from && along < to;
      });
    }),
  ).length;
}
