import type { Pattern } from '@paperhinge/geometry';
import { coverPages, paperName } from './cover/cover.js';
import { drawPattern } from './drawing/draw-pattern.js';
import type { PieceDrawing } from './drawing/draw-piece.js';
import { type Drawing, movedDrawing } from './drawing/ink.js';
import { fitted } from './drawing/lettering.js';
import { tidy } from './drawing/widths.js';
import type { FormatOptions, Orientation, PageFormat } from './pages/format.js';
import { footSize, pageFurniture } from './pages/furniture.js';
import { joinsOf } from './pages/joins.js';
import { layoutFor, type SheetLayout, type SheetPiece } from './pages/layout.js';
import { type PagesJson, pagesJson } from './pages/pages-json.js';
import { paperOf } from './pages/papers.js';
import { labelsOf, type Page, planPages } from './pages/plan.js';
import { pdfDocument } from './pdf/document.js';
import { type FontFiles, loadTypefaces, type Typefaces } from './pdf/typefaces.js';
import type { ReportSource } from './report/source.js';
import { titleOf, writtenReport } from './report/written.js';

/** What the cover tells beside the pattern (record, cautions …) is given as for the report. */
export interface PrintOptions extends FormatOptions, Omit<ReportSource, 'pattern'> {
  /** "a4", "letter" …, or a size in mm. */
  readonly paper: string | { readonly width: number; readonly height: number };
  readonly fonts: FontFiles | Typefaces;
  /** Default: whichever needs fewer pages. */
  readonly orientation?: Orientation | 'auto';
  /** Ghosts each piece as it was under the piece as it is; needs `before`. */
  readonly showBefore?: boolean;
}

export interface Printed {
  readonly pdf: Uint8Array;
  readonly pages: PagesJson;
}

/**
 * A pattern as a PDF at true scale, tiled to a paper, and where everything lies in it.
 *
 * The first page is the cover with the test squares and the page map; cover pages are windows of the large sheet like
 * any other (row 0, above the pieces), so that every page of the file stands in `pages`. Same input, same bytes.
 * @throws PatternError `unknown-paper`, `paper-size`, `margins-too-wide`, `overlap-out-of-range`,
 *   `correction-out-of-range`, `font-not-usable`; what a piece's cutting line refuses
 */
export async function printPattern(pattern: Pattern, options: PrintOptions): Promise<Printed> {
  const paper = paperOf(options.paper);
  const source = sourceOf(pattern, options);
  const typefaces =
    'programs' in options.fonts ? options.fonts : await loadTypefaces(options.fonts, textsOf(source));
  const drawings = drawPattern(pattern, typefaces, options.showBefore ? source.before : undefined);
  const layout = layoutFor(drawings, paper, options.orientation ?? 'auto', options);
  const { format } = layout;
  const { covers, pieces, pages } = withCovers(source, drawings, layout, typefaces);
  const joins = joinsOf(pages);
  const sheet: Drawing = {
    inks: pieces.flatMap((p, i) => movedDrawing(drawings[i]!.drawing, p.matrix).inks),
  };
  const title = titleOf(source);
  const labels = pieces.map(p => labelsOf(format, covers.length, p));
  const footer = (page: Page) => {
    const shown = pattern.pieces
      .filter((_, i) => labels[i]!.includes(page.label))
      .map(p => p.title || p.name);
    return footLine([title, `page ${page.number} of ${pages.length}`, shown.join(', ')], format, typefaces);
  };
  const pdf = await pdfDocument(
    {
      title: `${title} (${paperName(paper.name)})`,
      subject: `Sewing pattern at true scale: ${pattern.pieces.map(p => p.title || p.name).join(', ')}`.slice(
        0,
        400,
      ),
      language: 'en',
      format,
      sheet,
      pages: pages.map((page, i) =>
        page.kind === 'cover'
          ? { own: covers[i]! }
          : {
              window: page.window,
              own: pageFurniture(page, format, joins, footer(page), typefaces),
            },
      ),
    },
    typefaces,
  );
  return { pdf, pages: pagesJson(format, pages, pieces) };
}

function sourceOf(pattern: Pattern, { before, record, cautions, wearer, date }: PrintOptions): ReportSource {
  const given = Object.entries({ before, record, cautions, wearer, date }).filter(
    ([, value]) => value !== undefined,
  );
  return { pattern, ...Object.fromEntries(given) };
}

interface Covered {
  readonly covers: readonly Drawing[];
  readonly pieces: readonly SheetPiece[];
  readonly pages: readonly Page[];
}

/** The cover names page numbers, which depend on how many pages it fills itself: set again until both agree. */
function withCovers(
  source: ReportSource,
  drawings: readonly PieceDrawing[],
  layout: SheetLayout,
  typefaces: Typefaces,
): Covered {
  const { format } = layout;
  for (let count = 1; ; count++) {
    const pieces = layout.place(count);
    const pages = planPages(format, count, pieces);
    const numberOf = new Map(pages.map(p => [p.label, p.number]));
    const covers = coverPages(
      {
        source,
        format,
        pages,
        pieces: pieces.map((p, i) => ({
          ...p,
          title: source.pattern.pieces[i]!.title || p.piece,
          cutting: drawings[i]!.cutting,
        })),
        pagesOf: name => {
          const piece = pieces.find(p => p.piece === name);
          return piece ? pageWords(labelsOf(format, count, piece).map(l => numberOf.get(l)!)) : '';
        },
      },
      typefaces,
    );
    if (covers.length <= count)
      return { covers: [...covers, ...blank(count - covers.length)], pieces, pages };
    count = Math.max(covers.length - 1, count);
  }
}

const blank = (count: number): readonly Drawing[] => Array.from({ length: count }, () => ({ inks: [] }));

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

/** What stands under a page, so that one that fell on the floor is known: whose it is, which, what is on it, its scale. */
function footLine(said: readonly string[], format: PageFormat, typefaces: Typefaces): string {
  const { paper, stretch, field } = format;
  const corrected = stretch.across !== 1 || stretch.down !== 1;
  const scale = corrected
    ? `corrected ${tidy(stretch.across * 100, 2)} % across, ${tidy(stretch.down * 100, 2)} % down`
    : 'at 100 %, not fitted to the page';
  const parts = said.map(part => fitted(typefaces, part, footSize, 'regular', field.width * 0.3));
  const line = [...parts, `${paperName(paper.name)}, print ${scale}`].join(' · ');
  return fitted(typefaces, line, footSize, 'regular', field.width);
}

/** Everything that will be set, so that fonts for it are at hand. */
function* textsOf(source: ReportSource): Generator<string> {
  const written = writtenReport(source);
  yield JSON.stringify(written);
  const { pattern } = source;
  yield JSON.stringify([
    pattern.name,
    pattern.seams.map(s => s.name),
    pattern.pieces.map(p => [
      p.name,
      p.title,
      p.cutting,
      p.lines.map(l => l.name),
      p.marks.map(m => m.name),
      p.outline.parts.map(e => e.name),
    ]),
  ]);
}
