import type { Finding, Pattern } from '@paperhinge/geometry';
import type { Box } from '@paperhinge/geometry/curves';
import { requireWhole } from '@paperhinge/geometry/internal';
import { translation } from '@paperhinge/geometry/plane';
import { type Covered, withCovers } from './cover/with-covers.js';
import { drawingSvg } from './drawing/as-svg.js';
import { pieceShapes } from './drawing/draw-pattern.js';
import { type Drawing, type Ink, movedDrawing, type TypeMeasure } from './drawing/ink.js';
import { fitted, plainLine } from './drawing/lettering.js';
import { inkChords, type PieceStyle } from './drawing/piece-shape.js';
import type { Layer } from './layers.js';
import { requireWords } from './option-words.js';
import { pageFindings } from './pages/findings.js';
import { fineGrid } from './pages/fine-grid.js';
import type { PageFormat } from './pages/format.js';
import { footInk, footRoom, footSize, pageFurniture } from './pages/furniture.js';
import { joinStrips, joinsOf } from './pages/joins.js';
import type { LayoutOptions } from './pages/layout.js';
import { linesOnPages } from './pages/lines-on-pages.js';
import { type PagesJson, pagesJson } from './pages/pages-json.js';
import { paperName, paperOf } from './pages/papers.js';
import { labelsOf, type Page } from './pages/plan.js';
import { wordedForSheet } from './pages/words-off-joins.js';
import { type FontFiles, type Typefaces, typefacesOf } from './pdf/typefaces.js';
import type { ReportSource } from './report/source.js';
import { readerFor, titleOf, writtenReport } from './report/written.js';
import type { Reader } from './words/reader.js';

/** What the cover tells beside the pattern (record, cautions …) is given as for the report. */
export interface PrintOptions
  extends Omit<LayoutOptions, 'blocks'>,
    Omit<ReportSource, 'pattern'>,
    PieceStyle {
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
 *   `correction-out-of-range`, `font-not-usable`, `word-not-understood`; what a piece's cutting line refuses
 */
export async function printPattern(pattern: Pattern, options: PrintOptions): Promise<Printed> {
  requireWords(options);
  requireWhole(pattern);
  if (options.before !== undefined) requireWhole(options.before);
  const paper = paperOf(options.paper);
  const source = sourceOf(pattern, options);
  const typefaces = await typefacesOf(options.fonts, () => textsOf(source));
  const shapes = pieceShapes(pattern, typefaces, options);
  const covered = withCovers(source, shapes, paper, options, typefaces);
  const { layout, pieces, pages, covers } = covered;
  const reader = readerFor(source);
  const name = paperName(paper.name, reader.words.paper);
  const title = plainLine(titleOf(source));
  const { sheet, furniture } = sheetAndFurniture(covered, options, typefaces);
  const footer = (page: Page) =>
    footLine(saidAtFoot(title, page, covered, pattern, reader), layout.format, reader, typefaces);
  // Loaded once pages are made: whoever only asks for a paper or writes a report does not wait for it.
  const { pdfDocument } = await import('./pdf/document.js');
  const pdf = pdfDocument(
    {
      title: `${title} (${name})`,
      subject: reader.words.page
        .subject(plainLine(pattern.pieces.map(p => p.title || p.name).join(', ')))
        .slice(0, longestSubject),
      language: reader.words.language,
      layerNames: reader.words.layers,
      format: layout.format,
      sheet,
      hidden: options.hidden ?? [],
      pages: pages.map((page, i) =>
        page.kind === 'cover'
          ? { own: { inks: [...covers[i]!.inks, footInk(footer(page), layout.format, typefaces)] } }
          : { window: page.window, own: furniture(page, footer(page)) },
      ),
    },
    typefaces,
  );
  const whole = boxOf(pages.map(p => p.window));
  return {
    pdf,
    pages: pagesJson(layout.format, pages, pieces),
    findings: pageFindings(pattern, layout.arrangement, name),
    sheetSvg: () => drawingSvg({ inks: [...coverInks(covers, pages), ...sheet.inks] }, whole, title),
  };
}

/** Characters of what a PDF says it is about. */
const longestSubject = 400;

/** The large sheet, and what a page has of its own: marks clear of lines, words clear of marks and joins, and what is said about joining clear of both. */
function sheetAndFurniture(
  { layout, shapes, pieces, pages, onSheet, lines }: Covered,
  options: PrintOptions,
  measure: TypeMeasure,
): { readonly sheet: Drawing; readonly furniture: (page: Page, footer: string) => Drawing } {
  const { format } = layout;
  const joins = joinsOf(pages, format, linesOnPages(pages, lines));
  const before = (name: string) =>
    options.showBefore ? options.before?.pieces.find(p => p.name === name) : undefined;
  const drawings = wordedForSheet(shapes, pieces, pages, joinStrips(pages, format, joins), before);
  const drawn = pieces.flatMap((p, i) => movedDrawing(drawings[i]!.drawing, p.matrix).inks);
  const [tints, solid] = [drawn.filter(i => i.role === 'tint'), drawn.filter(i => i.role !== 'tint')];
  const grid = options.grid ? fineGrid(boxOf(pages.filter(p => p.kind === 'tile').map(p => p.window))) : [];
  const { words } = shapes[0]!.setting.reader;
  const furnishing = {
    format,
    joins,
    measure,
    words: words.page,
    lines: linesOnPages(pages, solid.flatMap(inkChords)),
  };
  return {
    sheet: { inks: [...tints, ...grid, ...onSheet.inks, ...solid] },
    furniture: (page, footer) => pageFurniture(page, footer, furnishing),
  };
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

function sourceOf(
  pattern: Pattern,
  { before, record, cautions, wearer, date, language, unit }: PrintOptions,
): ReportSource {
  const given = Object.entries({ before, record, cautions, wearer, date, language, unit }).filter(
    ([, value]) => value !== undefined,
  );
  return { pattern, ...Object.fromEntries(given) };
}

/** Whose a page is that fell on the floor, which one, and what is on it. */
function saidAtFoot(
  title: string,
  page: Page,
  { pages, pieces }: Covered,
  pattern: Pattern,
  { words }: Reader,
): readonly string[] {
  const shown = pattern.pieces.filter((_, i) => labelsOf(pieces[i]!).includes(page.label));
  return [
    page.blank ? words.page.blank : '',
    title,
    words.page.numbered(page.number, pages.length),
    shown.map(p => p.title || p.name).join(', '),
  ].filter(Boolean);
}

/** The line under a page; at its end how to print it. */
function footLine(said: readonly string[], format: PageFormat, reader: Reader, typefaces: Typefaces): string {
  const { words, percent } = reader;
  const { paper, stretch } = format;
  const scale =
    stretch.across !== 1 || stretch.down !== 1
      ? words.page.corrected(percent(stretch.across), percent(stretch.down))
      : words.page.atFullSize;
  const print = words.page.printOn(paperName(paper.name, words.paper), scale);
  const whole = footRoom(format);
  const room = Math.max(whole - typefaces.width(print, footSize, 'regular') - 4, whole * 0.3);
  const parts = said.map(part => fitted(typefaces, part, footSize, 'regular', whole * 0.3));
  const first = fitted(typefaces, parts.join(' · '), footSize, 'regular', room);
  return fitted(typefaces, `${first} · ${print}`, footSize, 'regular', whole);
}

/** Everything that will be set, so that fonts for it are at hand. */
function* textsOf(source: ReportSource): Generator<string> {
  yield JSON.stringify(writtenReport(source));
  const { pattern } = source;
  yield JSON.stringify([
    pattern.name,
    pattern.size,
    pattern.fastenings,
    pattern.seams.map(s => s.name),
    pattern.pieces.map(p => [
      p.name,
      p.title,
      p.cutting,
      p.alsoCut,
      p.lines.map(l => l.name),
      p.marks.map(m => m.name),
      p.notches.map(n => n.name),
      p.outline.parts.map(e => e.name),
    ]),
  ]);
}
