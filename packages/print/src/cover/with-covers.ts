import { translation } from '@paperhinge/geometry';
import type { PiecePlace } from '../drawing/draw-piece.js';
import { type Drawing, movedDrawing } from '../drawing/ink.js';
import { type LayoutOptions, layoutFor, type SheetLayout, type SheetPiece } from '../pages/layout.js';
import type { Paper } from '../pages/papers.js';
import { labelsOf, type Page, planPages } from '../pages/plan.js';
import type { Typefaces } from '../pdf/typefaces.js';
import { stepX, stepY } from '../place/field.js';
import type { ReportSource } from '../report/source.js';
import { coverPages } from './cover.js';

export interface Covered {
  readonly layout: SheetLayout;
  readonly pieces: readonly SheetPiece[];
  readonly pages: readonly Page[];
  /** Drawings of the cover pages, in window coordinates; none where the cover lies on the sheet. */
  readonly covers: readonly Drawing[];
  /** What of the cover lies on the large sheet. */
  readonly onSheet: Drawing;
}

/** mm: the cover on a large sheet is a block of this size, that of an A4 page's window. */
const block = [190, 277] as const;
/** mm: papers at least this wide and high are sheets for a copy shop; a whole one for the cover would be wasted. */
const largeSheet = 500;

/**
 * Lays out pieces and cover together. The cover names pages, and how many there are depends on the cover's own length:
 * it is set again until both agree. On a large sheet it lies beside the pieces; else it has pages of its own, first.
 * @throws PatternError what `layoutFor` refuses
 */
export function withCovers(
  source: ReportSource,
  drawings: readonly PiecePlace[],
  paper: Paper,
  options: LayoutOptions,
  typefaces: Typefaces,
): Covered {
  const large = Math.min(paper.width, paper.height) >= largeSheet;
  const paged = large ? undefined : layoutFor(drawings, paper, options);
  for (let count = 1; ; ) {
    const blocks = Array.from({ length: count }, () => block);
    const layout = paged ?? layoutFor(drawings, paper, { ...options, blocks });
    const before = large ? 0 : count;
    const pieces = layout.place(before);
    const boxes = layout.blocks.map(({ x, y }) => ({ polygons: [cornersOf(x, y)] }));
    const pages = planPages(layout.format, before, [...pieces, ...boxes]);
    const set = coverSet(source, drawings, layout, pieces, pages, before, large, typefaces);
    if (set.length > count) {
      count = set.length;
      continue;
    }
    const covers = [...set, ...Array.from({ length: count - set.length }, (): Drawing => ({ inks: [] }))];
    if (!large) return { layout, pieces, pages, covers, onSheet: { inks: [] } };
    const inks = covers.flatMap((c, i) => movedDrawing(c, translation(layout.blocks[i]!)).inks);
    return { layout, pieces, pages, covers: [], onSheet: { inks } };
  }
}

function coverSet(
  source: ReportSource,
  drawings: readonly PiecePlace[],
  { format }: SheetLayout,
  pieces: readonly SheetPiece[],
  pages: readonly Page[],
  before: number,
  large: boolean,
  typefaces: Typefaces,
): readonly Drawing[] {
  const numberOf = new Map(pages.map(p => [p.label, p.number]));
  return coverPages(
    {
      source,
      format,
      room: large ? { width: block[0], height: block[1] } : format.field,
      pages,
      leastPages: leastPages(pieces, format),
      pieces: pieces.map((p, i) => ({
        ...p,
        title: source.pattern.pieces[i]!.title || p.piece,
        cutting: drawings[i]!.cutting,
      })),
      pagesOf: name => {
        const piece = pieces.find(p => p.piece === name);
        return piece ? pageWords(labelsOf(format, before, piece).map(l => numberOf.get(l)!)) : '';
      },
    },
    typefaces,
  );
}

const cornersOf = (x: number, y: number) => [
  { x, y },
  { x: x + block[0], y },
  { x: x + block[0], y: y + block[1] },
  { x, y: y + block[1] },
];

/** The pages that the pieces would fill if they could be cut up and poured into them. */
function leastPages(pieces: readonly SheetPiece[], { field }: SheetLayout['format']): number {
  const area = pieces.reduce((sum, p) => sum + Math.abs(polygonArea(p.polygons[0]!)), 0);
  return Math.max(Math.ceil(area / (stepX(field) * stepY(field))), 1);
}

const polygonArea = (polygon: SheetPiece['polygons'][number]): number =>
  polygon.reduce((sum, p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);

/** Page numbers as a printer's dialogue takes them: "2-4, 7". */
export function pageWords(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const n of [...numbers].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && n <= last[1] + 1) last[1] = n;
    else runs.push([n, n]);
  }
  return runs.map(([a, b]) => (a === b ? String(a) : `${a}-${b}`)).join(', ');
}
