import { translation } from '@paperhinge/geometry/plane';
import type { PiecePlace } from '../drawing/draw-piece.js';
import { type Drawing, movedDrawing } from '../drawing/ink.js';
import type { PieceShape, PieceStyle } from '../drawing/piece-shape.js';
import { grainOffJoins } from '../pages/grain-off-joins.js';
import { type LayoutOptions, layoutFor, type SheetLayout, type SheetPiece } from '../pages/layout.js';
import { chordsOnSheet, markedBlank } from '../pages/lines-on-pages.js';
import { isLarge, type Paper } from '../pages/papers.js';
import { labelsOf, type Page, type PagePlan, planPages } from '../pages/plan.js';
import type { Typefaces } from '../pdf/typefaces.js';
import { stepX, stepY } from '../place/field.js';
import { type Chord, polygonArea } from '../plane/polygon.js';
import type { ReportSource } from '../report/source.js';
import { readerFor } from '../report/written.js';
import type { Reader } from '../words/reader.js';
import { coverPages } from './cover.js';

export interface Covered {
  readonly layout: SheetLayout;
  readonly pieces: readonly SheetPiece[];
  readonly pages: readonly Page[];
  /** The pieces as they were given, but for grain lines that would have lain on a join. */
  readonly shapes: readonly PieceShape[];
  /** The pieces' lines on the large sheet. */
  readonly lines: readonly Chord[];
  /** Drawings of the cover pages, in window coordinates; none where the cover lies on the sheet. */
  readonly covers: readonly Drawing[];
  /** What of the cover lies on the large sheet. */
  readonly onSheet: Drawing;
}

/** mm: the cover on a large sheet is a block of this size, that of an A4 page's window. */
const block = [190, 277] as const;
/**
 * Lays out pieces and cover together. The cover names pages, and how many there are depends on the cover's own length:
 * it is set again until both agree. On a large sheet it lies beside the pieces; else it has pages of its own, first.
 * @throws PatternError what `layoutFor` refuses
 */
export function withCovers(
  source: ReportSource,
  shapes: readonly PieceShape[],
  paper: Paper,
  options: LayoutOptions & PieceStyle,
  typefaces: Typefaces,
): Covered {
  const large = isLarge(paper);
  const paged = large ? undefined : layoutFor(shapes, paper, options);
  for (let count = 1; ; ) {
    const blocks = Array.from({ length: count }, () => block);
    const layout = paged ?? layoutFor(shapes, paper, { ...options, blocks });
    const plan = planPages(layout, large ? 0 : count);
    const { pieces } = plan;
    const lying = grainOffJoins(shapes, pieces, plan.pages, layout.format, options);
    const lines = chordsOnSheet(lying, pieces);
    const pages = large ? plan.pages : markedBlank(plan.pages, lines);
    const room = large ? { width: block[0], height: block[1] } : layout.format.field;
    const set = coverSet(source, shapes, { layout, pages, pieces, room }, typefaces);
    if (set.length > count) {
      count = set.length;
      continue;
    }
    const covers = [...set, ...Array.from({ length: count - set.length }, (): Drawing => ({ inks: [] }))];
    if (!large) return { layout, shapes: lying, pieces, pages, covers, lines, onSheet: { inks: [] } };
    const inks = covers.flatMap((c, i) => movedDrawing(c, translation(layout.blocks[i]!.corner)).inks);
    return { layout, shapes: lying, pieces, pages, covers: [], lines, onSheet: { inks } };
  }
}

interface CoverTask extends PagePlan {
  readonly layout: SheetLayout;
  readonly room: { readonly width: number; readonly height: number };
}

function coverSet(
  source: ReportSource,
  drawings: readonly PiecePlace[],
  { layout: { format }, pages, pieces, room }: CoverTask,
  typefaces: Typefaces,
): readonly Drawing[] {
  const reader = readerFor(source);
  const numberOf = new Map(pages.map(p => [p.label, p.number]));
  return coverPages(
    {
      source,
      format,
      room,
      pages,
      leastPages: leastPages(pieces, format),
      pieces: pieces.map((p, i) => ({
        ...p,
        title: source.pattern.pieces[i]!.title || p.piece,
        cutting: drawings[i]!.cutting,
        sheet: p.tiles[0]!.sheet,
      })),
      sheetName: sheet => sheetName(sheet, drawings, pieces, reader),
      reader,
      pagesOf: name => {
        const piece = pieces.find(p => p.piece === name);
        return piece ? pageWords(labelsOf(piece).map(l => numberOf.get(l)!)) : '';
      },
    },
    typefaces,
  );
}

/** "Sheet 2: lining" */
function sheetName(
  sheet: number,
  drawings: readonly PiecePlace[],
  pieces: readonly SheetPiece[],
  reader: Reader,
): string {
  const cloths = new Set(drawings.filter((_, i) => pieces[i]!.tiles[0]!.sheet === sheet).map(d => d.cloth));
  return reader.words.page.sheet(sheet + 1, [...cloths].filter(Boolean).join(', '));
}

/** The pages that the pieces would fill if they could be cut up and poured into them. */
function leastPages(pieces: readonly SheetPiece[], { field }: SheetLayout['format']): number {
  const area = pieces.reduce((sum, p) => sum + polygonArea(p.polygons[0]!), 0);
  return Math.max(Math.ceil(area / (stepX(field) * stepY(field))), 1);
}

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
