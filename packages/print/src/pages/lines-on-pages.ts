import type { Affine } from '@paperhinge/geometry/plane';
import { movedDrawing } from '../drawing/ink.js';
import { inkChords, type PieceShape } from '../drawing/piece-shape.js';
import { type Nearby, nearby } from '../plane/nearby.js';
import type { Chord } from '../plane/polygon.js';
import { meetsRectangle, type Rectangle } from '../plane/rectangle.js';
import type { Page } from './plan.js';

/** What is drawn on the sheet, by the page that shows it: what pages are joined by keeps clear of it where it can. */
export interface LinesOnPages {
  /** Whether a rectangle of the sheet, on this page or just beside it, has no line through it. */
  isClear(page: Page, rectangle: Rectangle): boolean;
}

/** mm beyond a page's window that its marks reach. */
const beyond = 12;

/** mm: side of the squares by which lines near a place are found. */
const bucket = 200;

export function linesOnPages(pages: readonly Page[], lines: readonly Chord[]): LinesOnPages {
  const all = nearby(lines, bucket);
  const byPage = new Map(pages.map(page => [page.label, linesIn(all, page, beyond)]));
  return {
    isClear: (page, rectangle) =>
      !(byPage.get(page.label) ?? []).some(([a, b]) => meetsRectangle(a, b, rectangle)),
  };
}

function linesIn(all: Nearby, { window: [x, y, w, h] }: Page, beyond: number): readonly Chord[] {
  const round: Rectangle = [x - beyond, y - beyond, x + w + beyond, y + h + beyond];
  return all.within(round).filter(([a, b]) => meetsRectangle(a, b, round));
}

/** The pages, those marked that no line comes within a mm of: any blank sheet can take their place. */
export function markedBlank(pages: readonly Page[], lines: readonly Chord[]): readonly Page[] {
  const all = nearby(lines, bucket);
  return pages.map(page =>
    page.kind === 'tile' && linesIn(all, page, 1).length === 0 ? { ...page, blank: true } : page,
  );
}

/** The lines of all pieces where these lie, as chords. */
export const chordsOnSheet = (
  shapes: readonly PieceShape[],
  pieces: readonly { readonly matrix: Affine }[],
): readonly Chord[] =>
  shapes.flatMap((shape, i) => {
    const inks = shape.lines.filter(ink => ink.role !== 'tint');
    return movedDrawing({ inks }, pieces[i]!.matrix).inks.flatMap(inkChords);
  });
