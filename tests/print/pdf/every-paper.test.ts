import { at, type Edge, line, type Pattern, type Point, pathOf, type Segment } from '@paperhinge/geometry';
import {
  loadTypefaces,
  type PagesJson,
  type PrintOptions,
  papers,
  printPattern,
  type Typefaces,
} from '@paperhinge/print';
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { onPage, runAcross } from '../rejoining.js';
import { has, type Pixels, rendered, renderedPart } from '../rendered.js';

/** A blade 1.5 m long with slanting ends and swung sides: as drawn here, with nothing of the library's drawing. */
const [a, b, c, d] = [at(0, 40), at(100, 0), at(100, 1500), at(0, 1460)] as const;
const sides: readonly Segment[] = [
  line(a, b),
  [b, at(60, 500), at(140, 1000), c],
  line(c, d),
  [d, at(40, 960), at(-30, 500), a],
];
const blade: Pattern = {
  name: 'Blade',
  unit: 'mm',
  seams: [],
  fabrics: [{ name: 'main', role: 'main' }],
  pieces: [
    {
      name: 'blade',
      title: 'Blade',
      outline: {
        parts: sides.map(
          (segment, i): Edge => ({
            type: 'edge',
            name: `side-${i + 1}`,
            path: pathOf(segment),
            kind: 'raw',
            allowance: 0,
            corners: {},
          }),
        ),
      },
      notches: [],
      lines: [{ kind: 'grain', name: 'grain', path: pathOf(line(at(50, 300), at(50, 500))) }],
      marks: [],
      cutting: { count: 1, mirrored: false, fabric: 'main' },
    },
  ],
};

/** A point of a side and the normal there, by Bernstein's polynomials written out. */
function onSide(side: Segment, t: number): { readonly p: Point; readonly normal: Point } {
  const s = 1 - t;
  const [from, to] = [side[0], side.at(-1)!];
  const [c1, c2] =
    side.length === 4 ? [side[1], side[2]] : [between(from, to, 1 / 3), between(from, to, 2 / 3)];
  const value = (k: 'x' | 'y') =>
    s ** 3 * from[k] + 3 * s * s * t * c1[k] + 3 * s * t * t * c2[k] + t ** 3 * to[k];
  const slope = (k: 'x' | 'y') =>
    s * s * (c1[k] - from[k]) + 2 * s * t * (c2[k] - c1[k]) + t * t * (to[k] - c2[k]);
  const length = Math.hypot(slope('x'), slope('y'));
  return { p: at(value('x'), value('y')), normal: at(-slope('y') / length, slope('x') / length) };
}
const between = (p: Point, q: Point, t: number) => at(p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t);

/** Places along the sides about 7 mm apart, clear of the corners. */
const places = sides.flatMap(side => {
  const count = side.length === 4 ? 214 : 15;
  return Array.from({ length: count - 1 }, (_, i) => onSide(side, (i + 1) / count));
});
const ring = sides.flatMap(side => Array.from({ length: 400 }, (_, i) => onSide(side, i / 400).p));

type Matrix = PagesJson['pieces'][number]['matrix'];
const moved = ([ma, mb, mc, md, me, mf]: Matrix, { x, y }: Point) =>
  at(ma * x + mc * y + me, mb * x + md * y + mf);
const turned = ([ma, mb, mc, md]: Matrix, { x, y }: Point) => at(ma * x + mc * y, mb * x + md * y);

const corrections = [
  ['a true printer', undefined],
  ['a printer that is corrected', { across: 49.5, down: 50.4 }],
] as const;
const styles = [
  ['glued under', 10],
  ['edge to edge', 0],
] as const;
const sheets: readonly (readonly [string, PrintOptions['paper'], boolean])[] = [
  ...Object.values(papers).map(p => [p.name, p.name, p.roll ?? false] as const),
  ['500 × 400 mm', { width: 500, height: 400 }, false],
];

describe.skipIf(!has('pdftoppm'))(
  'a blade of 1.5 m, rendered by poppler and put together by the record (needs pdftoppm)',
  () => {
    let typefaces: Typefaces;
    beforeAll(async () => {
      typefaces = await loadTypefaces(fonts);
    });
    // Rendering blocks: between tests the runner must get a turn to hear how far they are.
    afterEach(() => new Promise<void>(turn => setImmediate(turn)));

    // A roll has one way round: it comes out as long as it must.
    for (const [name, paper, roll] of sheets)
      for (const orientation of roll ? (['portrait'] as const) : (['portrait', 'landscape'] as const))
        for (const [styleName, overlap] of styles)
          for (const [printerName, printed] of corrections)
            test(`${name} ${orientation}, ${styleName}, ${printerName}: its line is where it should be, and no ink anywhere else`, async () => {
              const options = { paper, orientation, overlap, ...(printed ? { printed } : {}) };
              const { pdf, pages } = await printPattern(blade, { ...options, fonts: typefaces });
              const [across, down] = printed ? [50 / printed.across, 50 / printed.down] : [1, 1];
              const whole = rendered(pdf, 1, 999, coarse * 25.4);
              expect(whole.map(p => [p.width, p.height])).toEqual(
                pages.pages.map(() => pages.paperMm.map(mm => expect.closeTo(mm * coarse, -0.5))),
              );
              const line = lineOn(pages, pdf, across, down);
              expect(line).toMatchObject({ hidden: 0, missing: 0 });
              expect(line.measured).toBeGreaterThan(0.9 * places.length);
              expect(line.worst).toBeLessThan(0.1);
              expect(strayInk(pages, whole, across, down)).toBe(0);
            });
  },
);

/** Dots to a mm at which whole pages are looked at for ink in wrong places; the line is measured at ten. */
const coarse = 5;

/** The line of the blade over all pages: places that no page shows, or shows without ink, and how far it lies off, mm. */
function lineOn(pages: PagesJson, pdf: Uint8Array, across: number, down: number) {
  const { matrix } = pages.pieces[0]!;
  const placed = places.map(({ p, normal }) => ({ p: moved(matrix, p), normal: turned(matrix, normal) }));
  const shown = placed.flatMap(({ p, normal }) =>
    pages.pages.flatMap(page => {
      const dot = onPage(page, p.x, p.y, 1.5, across, down);
      return dot ? [{ page, dot, normal }] : [];
    }),
  );
  // Of large sheets most is blank: only the part of the pages where the line is needs to be rendered finely.
  const reach = 30;
  const [xs, ys] = [shown.map(s => s.dot.x), shown.map(s => s.dot.y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)].map(v => Math.max(Math.floor(v) - reach, 0)) as [
    number,
    number,
  ];
  const [right, below] = [Math.max(...xs), Math.max(...ys)].map(v => Math.ceil(v) + reach) as [
    number,
    number,
  ];
  const pixels = renderedPart(pdf, left, top, right - left, below - top);
  let missing = 0,
    measured = 0,
    worst = 0;
  for (const { page, dot, normal } of shown) {
    const run = runAcross(pixels[page.number - 1]!, dot.x - left, dot.y - top, normal);
    if (!run) missing++;
    // Where a match mark or a strip's line touches the line, its run is no measure of the line's place.
    else if (run.width < 0.8) {
      measured++;
      worst = Math.max(worst, run.offset);
    }
  }
  const hidden = placed.filter(({ p }) => !pages.pages.some(page => onPage(page, p.x, p.y, 0))).length;
  return { hidden, missing, measured, worst };
}

/** mm from a window's sides that joining marks and labels keep to, and the size of the cover on a copy shop's sheet. */
const edge = 20;
/** Half the width of its frame's line included. */
const cover = { width: 190.5, height: 277.5 };

/** Dots of ink off the blade and off what is printed for joining: every dot is looked at. */
function strayInk(pages: PagesJson, pixels: readonly Pixels[], across: number, down: number): number {
  const { matrix } = pages.pieces[0]!;
  const isBlade = maskOf(ring.map(p => moved(matrix, p)));
  // On a copy shop's paper the first page shows the blade beside the cover; on others it is the cover alone.
  const coverAlone = pages.pages[0]!.row < pages.pages.at(-1)!.row && !showsBlade(pages);
  let stray = 0;
  for (const page of pages.pages) {
    if (page.number === 1 && coverAlone) continue;
    const { grey, width } = pixels[page.number - 1]!;
    const [wx, wy, w, h] = page.windowMm;
    const [left, top] = page.contentAtMm;
    const isStray = (px: number, py: number) => {
      const x = wx + (px / coarse - left) / across,
        y = wy + (py / coarse - top) / down;
      return !(page.number === 1 && x < cover.width && y < cover.height) && !isBlade(x, y);
    };
    const [x0, x1] = [edge, w - edge].map(x => Math.round((left + x * across) * coarse)) as [number, number];
    const [y0, y1] = [edge, h - edge].map(y => Math.round((top + y * down) * coarse)) as [number, number];
    for (let py = y0; py < y1; py++)
      for (let px = x0; px < x1; px++) if (grey[py * width + px]! < 200 && isStray(px, py)) stray++;
  }
  return stray;
}

function showsBlade({ pages, pieces }: PagesJson): boolean {
  return ring.some(p => {
    const { x, y } = moved(pieces[0]!.matrix, p);
    return onPage(pages[0]!, x, y, 0) !== undefined;
  });
}

/** Whether a place of the sheet is inside the ring or within 3 mm of it, in cells of a mm: inside by the crossings of each row. */
function maskOf(points: readonly Point[]): (x: number, y: number) => boolean {
  const reach = 3;
  const [xs, ys] = [points.map(p => p.x), points.map(p => p.y)];
  const [left, top] = [Math.min(...xs) - 2 * reach, Math.min(...ys) - 2 * reach];
  const width = Math.ceil(Math.max(...xs) + 2 * reach - left),
    height = Math.ceil(Math.max(...ys) + 2 * reach - top);
  const cells = new Uint8Array(width * height);
  const mark = (row: number, from: number, to: number) => cells.fill(1, row * width + from, row * width + to);
  for (const { x, y } of points)
    for (let dy = -reach; dy <= reach; dy++)
      mark(Math.floor(y - top) + dy, Math.floor(x - left) - reach, Math.floor(x - left) + reach + 1);
  const crossings = Array.from({ length: height }, (): number[] => []);
  for (const [i, p] of points.entries()) {
    const q = points[(i + 1) % points.length]!;
    const [upper, lower] = p.y < q.y ? [p, q] : [q, p];
    // Rows whose middle lies between the two ends.
    for (let row = Math.ceil(upper.y - top - 0.5); row + 0.5 < lower.y - top; row++)
      crossings[row]!.push(p.x + ((top + row + 0.5 - p.y) / (q.y - p.y)) * (q.x - p.x) - left);
  }
  for (const [row, found] of crossings.entries()) {
    found.sort((one, other) => one - other);
    for (let i = 0; i + 1 < found.length; i += 2) mark(row, Math.floor(found[i]!), Math.ceil(found[i + 1]!));
  }
  return (x, y) => {
    const [column, row] = [Math.floor(x - left), Math.floor(y - top)];
    return column >= 0 && row >= 0 && column < width && row < height && cells[row * width + column]! === 1;
  };
}
