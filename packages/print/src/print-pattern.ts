import type { Finding, Pattern } from '@paperhinge/geometry';
import type { Box } from '@paperhinge/geometry/curves';
import { translation } from '@paperhinge/geometry/plane';
import { withCovers } from './cover/with-covers.js';
import { drawingSvg } from './drawing/as-svg.js';
import { pieceShapes } from './drawing/draw-pattern.js';
import { type Drawing, type Ink, movedDrawing } from './drawing/ink.js';
import { fitted, plainLine } from './drawing/lettering.js';
import type { Layer } from './drawing/pens.js';
import { inkChords, type LookOptions } from './drawing/piece-shape.js';
import { tidy } from './drawing/widths.js';
import { pageFindings } from './pages/findings.js';
import { fineGrid } from './pages/fine-grid.js';
import type { PageFormat } from './pages/format.js';
import { footInk, footSize, pageFurniture } from './pages/furniture.js';
import { joinStrips, joinsOf } from './pages/joins.js';
import type { LayoutOptions } from './pages/layout.js';
import { linesOnPages } from './pages/lines-on-pages.js';
import { type PagesJson, pagesJson } from './pages/pages-json.js';
import { paperName, paperOf } from './pages/papers.js';
import { labelsOf, type Page } from './pages/plan.js';
import { wordedForSheet } from './pages/words-off-joins.js';
import { pdfDocument } from './pdf/document.js';
import { type FontFiles, type Typefaces, typefacesOf } from './pdf/typefaces.js';
import type { ReportSource } from './report/source.js';
import { titleOf, writtenReport } from './report/written.js';

/** What the cover tells beside the pattern (record, cautions …) is given as for the report. */
export interface PrintOptions
  extends Omit<LayoutOptions, 'blocks'>,
    Omit<ReportSource, 'pattern'>,
    LookOptions {
  /** "a4", "letter" …, or a size in mm. */
  readonly paper: string | { readonly width: number; readonly height: number };
  /** Without, a carried font that has the Latin letters. */
  readonly fonts?: FontFiles | Typefaces;
  /** Ghosts each piece as it was under the piece as it is; needs `before`. */
  readonly showBefore?: boolean;
  /** A fine grid over all pages. Default no. */
  readonly grid?: boolean;
  /** Layers that are off when the file is opened; a reader can switch them on. */
  readonly hidden?: readonly Layer[];
}

/** The pages as a file, and what stands on them. */
export interface Printed {
  readonly pdf: Uint8Array;
  readonly pages: PagesJson;
  /** What the pages cannot show as a maker needs it. */
  readonly findings: readonly Finding[];
  /** The large sheet itself as an SVG drawing, for a copy shop or an editor. */
  readonly sheetSvg: () => string;
}

/**
 * A pattern as a PDF at true scale, tiled to a paper, and where everything lies in it.
 *
 * The first page holds the test squares and the page map. On papers for a home printer they are the cover, whose pages
 * are windows of the large sheet like any other (row 0, above the pieces); on papers for a copy shop the cover lies on
 * the sheet beside the pieces. So every page of the file stands in `pages`. Same input, same bytes.
 * @throws PatternError `nothing-to-print`, `too-many-pages`, `unknown-paper`, `paper-size`, `margins-too-wide`, `overlap-out-of-range`,
 *   `correction-out-of-range`, `font-not-usable`; what a piece's cutting line refuses
 */
export async function printPattern(pattern: Pattern, options: PrintOptions): Promise<Printed> {
  const paper = paperOf(options.paper);
  const source = sourceOf(pattern, options);
  const typefaces = await typefacesOf(options.fonts, () => textsOf(source));
  const shapes = pieceShapes(pattern, typefaces, options);
  const { layout, pieces, pages, covers, lines, onSheet } = withCovers(
    source,
    shapes,
    paper,
    options,
    typefaces,
  );
  const { format } = layout;
  const title = plainLine(titleOf(source));

  // Marks clear of lines, words clear of marks and joins, and what is said about joining clear of both.
  const joins = joinsOf(pages, format, linesOnPages(pages, lines));
  const strips = joinStrips(pages, format, joins);
  const before = (name: string) =>
    options.showBefore ? source.before?.pieces.find(p => p.name === name) : undefined;
  const drawings = wordedForSheet(shapes, pieces, pages, strips, before, typefaces);
  const drawn = pieces.flatMap((p, i) => movedDrawing(drawings[i]!.drawing, p.matrix).inks);
  const taken = linesOnPages(pages, drawn.filter(ink => ink.role !== 'tint').flatMap(inkChords));

  const whole = boxOf(pages.map(p => p.window));
  const tiles = boxOf(pages.filter(p => p.kind === 'tile').map(p => p.window));
  const tints = drawn.filter(ink => ink.role === 'tint');
  const grid = options.grid ? fineGrid(tiles) : [];
  const sheet: Drawing = {
    inks: [...tints, ...grid, ...onSheet.inks, ...drawn.filter(ink => ink.role !== 'tint')],
  };
  const labels = pieces.map(p => labelsOf(p));
  const footer = (page: Page) => {
    const shown = pattern.pieces
      .filter((_, i) => labels[i]!.includes(page.label))
      .map(p => p.title || p.name);
    const said = [
      title,
      `page ${page.number} of ${pages.length}`,
      ...(shown.length > 0 ? [shown.join(', ')] : []),
    ];
    return footLine(said, format, typefaces);
  };
  const pdf = await pdfDocument(
    {
      title: `${title} (${paperName(paper.name)})`,
      subject:
        `Sewing pattern at true scale: ${plainLine(pattern.pieces.map(p => p.title || p.name).join(', '))}`.slice(
          0,
          400,
        ),
      language: 'en',
      format,
      sheet,
      hidden: options.hidden ?? [],
      pages: pages.map((page, i) =>
        page.kind === 'cover'
          ? { own: { inks: [...covers[i]!.inks, footInk(footer(page), format, typefaces)] } }
          : {
              window: page.window,
              own: pageFurniture(page, format, joins, footer(page), typefaces, taken),
            },
      ),
    },
    typefaces,
  );
  const sheetSvg = () => drawingSvg({ inks: [...coverInks(covers, pages), ...sheet.inks] }, whole, title);
  const findings = pageFindings(pattern, layout.arrangement, paperName(paper.name));
  return { pdf, pages: pagesJson(format, pages, pieces), findings, sheetSvg };
}

/** The cover pages where they lie on the large sheet. */
const coverInks = (covers: readonly Drawing[], pages: readonly Page[]): readonly Ink[] =>
  covers.flatMap(
    (cover, i) => movedDrawing(cover, translation({ x: pages[i]!.window[0], y: pages[i]!.window[1] })).inks,
  );

/** What all windows show together. */
function boxOf(windows: readonly Page['window'][]): Box {
  return {
    min: { x: Math.min(...windows.map(w => w[0])), y: Math.min(...windows.map(w => w[1])) },
    max: { x: Math.max(...windows.map(w => w[0] + w[2])), y: Math.max(...windows.map(w => w[1] + w[3])) },
  };
}

function sourceOf(pattern: Pattern, { before, record, cautions, wearer, date }: PrintOptions): ReportSource {
  const given = Object.entries({ before, record, cautions, wearer, date }).filter(
    ([, value]) => value !== undefined,
  );
  return { pattern, ...Object.fromEntries(given) };
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
