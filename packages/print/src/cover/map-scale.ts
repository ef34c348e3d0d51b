import type { Affine } from '@paperhinge/geometry/plane';
import type { Page } from '../pages/plan.js';

/** A sheet on the map: its pages, and what carries it there from the large sheet. */
export interface MapSheet {
  readonly pages: readonly Page[];
  readonly onto: Affine;
  /** Where its name stands, if it has one: mm above its top left corner. */
  readonly caption: number;
}

/** All sheets in small, side by side as far as they go, then below one another. */
export interface MapScale {
  readonly sheets: readonly MapSheet[];
  /** mm on paper for a mm of the sheet. */
  readonly scale: number;
  readonly width: number;
  readonly height: number;
}

/** A map is never larger than a quarter: it shows an order, not shapes. */
const largestScale = 0.25;
/** mm between sheets on the map, and kept above each for its name where there are several. */
const apart = 4;
const captionRoom = 4;

/**
 * The largest scale at which all sheets find room in width × height.
 * @param nameWidth mm that the name of a sheet takes; names are set where there are several sheets
 */
export function mapScale(
  pages: readonly Page[],
  width: number,
  height: number,
  nameWidth: (sheet: number) => number,
): MapScale {
  const tiles = pages.filter(p => p.kind === 'tile');
  const sheets = [...new Set(tiles.map(p => p.sheet ?? 0))].map(n => tiles.filter(p => (p.sheet ?? 0) === n));
  const several = sheets.length > 1;
  const caption = several ? captionRoom : 0;
  const boxes = sheets.map((own, n) => ({ ...boxRound(own), least: several ? nameWidth(n) : 0 }));
  let [low, high] = [0, largestScale];
  for (let i = 0; i < halvings; i++) {
    const middle = (low + high) / 2;
    const { width: w, height: h } = inRows(boxes, middle, width, caption);
    if (w <= width && h <= height) low = middle;
    else high = middle;
  }
  const scale = low || largestScale / 2 ** halvings;
  const rows = inRows(boxes, scale, width, caption);
  return {
    scale,
    width: rows.width,
    height: rows.height,
    sheets: sheets.map((own, i) => {
      const { x, y } = rows.corners[i]!;
      const box = boxes[i]!;
      const onto = { a: scale, b: 0, c: 0, d: scale, e: x - box.x * scale, f: y - box.y * scale };
      return { pages: own, onto, caption };
    }),
  };
}

/** Halvings of the scale: to a thousandth of what a pen draws. */
const halvings = 16;

interface SheetBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** mm on the map that it takes at least. */
  readonly least: number;
}

function boxRound(pages: readonly Page[]): Omit<SheetBox, 'least'> {
  const windows = pages.map(p => p.window);
  const x = Math.min(...windows.map(w => w[0])),
    y = Math.min(...windows.map(w => w[1]));
  const right = Math.max(...windows.map(w => w[0] + w[2])),
    below = Math.max(...windows.map(w => w[1] + w[3]));
  return { x, y, width: right - x, height: below - y };
}

/** Boxes in rows from left to right at a scale, and how large all of them are. */
function inRows(boxes: readonly SheetBox[], scale: number, width: number, caption: number) {
  let [x, y, below, right] = [0, 0, 0, 0];
  const corners = boxes.map(box => {
    const w = Math.max(box.width * scale, box.least),
      h = box.height * scale + caption;
    if (x > 0 && x + w > width) [x, y] = [0, below + apart];
    const corner = { x, y: y + caption };
    right = Math.max(right, x + w);
    below = Math.max(below, y + h);
    x += w + apart;
    return corner;
  });
  return { corners, width: right, height: below };
}
