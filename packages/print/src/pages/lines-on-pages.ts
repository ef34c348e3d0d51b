import type { Point } from '@paperhinge/geometry';
import { meetsRectangle } from '../drawing/room.js';
import type { Rectangle } from '../place/parts.js';
import type { Page } from './plan.js';

export type Chord = readonly [Point, Point];

/** What is drawn on the sheet, by the page that shows it: what pages are joined by keeps clear of it where it can. */
export interface LinesOnPages {
  /** Whether a rectangle of the sheet, on this page or just beside it, has no line through it. */
  isClear(page: Page, rectangle: Rectangle): boolean;
}

/** mm beyond a page's window that its marks reach. */
const beyond = 12;

export function linesOnPages(pages: readonly Page[], lines: readonly Chord[]): LinesOnPages {
  const byPage = new Map(
    pages.map(({ label, window: [x, y, w, h] }) => [
      label,
      lines.filter(([a, b]) => meets(a, b, [x - beyond, y - beyond, x + w + beyond, y + h + beyond])),
    ]),
  );
  return {
    isClear: (page, rectangle) => !(byPage.get(page.label) ?? []).some(([a, b]) => meets(a, b, rectangle)),
  };
}

const meets = (a: Point, b: Point, [x0, y0, x1, y1]: Rectangle): boolean =>
  meetsRectangle(a.x, a.y, b.x, b.y, x0, y0, x1, y1);
