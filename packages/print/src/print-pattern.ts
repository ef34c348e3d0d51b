import type { Pattern } from '@paperhinge/geometry';
import { drawPattern } from './drawing/draw-pattern.js';
import { type Drawing, movedDrawing } from './drawing/ink.js';
import type { FormatOptions, Orientation } from './pages/format.js';
import { commonFurniture, pageFurniture } from './pages/furniture.js';
import { joinsOf } from './pages/joins.js';
import { layoutFor } from './pages/layout.js';
import { type PagesJson, pagesJson } from './pages/pages-json.js';
import { paperOf } from './pages/papers.js';
import { type Page, planPages } from './pages/plan.js';
import { pdfDocument } from './pdf/document.js';
import { type FontFiles, loadTypefaces, type Typefaces } from './pdf/typefaces.js';

export interface PrintOptions extends FormatOptions {
  /** "a4", "letter" …, or a size in mm. */
  readonly paper: string | { readonly width: number; readonly height: number };
  readonly fonts: FontFiles | Typefaces;
  /** Default: whichever needs fewer pages. */
  readonly orientation?: Orientation | 'auto';
}

export interface Printed {
  readonly pdf: Uint8Array;
  readonly pages: PagesJson;
}

export async function printPattern(pattern: Pattern, options: PrintOptions): Promise<Printed> {
  const paper = paperOf(options.paper);
  const typefaces = 'programs' in options.fonts ? options.fonts : await loadTypefaces(options.fonts, textsOf(pattern));
  const drawings = drawPattern(pattern, typefaces);
  const layout = layoutFor(drawings, paper, options.orientation ?? 'auto', options);
  const { format } = layout;
  const covers = 0;
  const pieces = layout.place(covers);
  const pages = planPages(format, covers, pieces);
  const joins = joinsOf(pages);
  const sheet: Drawing = { inks: pieces.flatMap((p, i) => movedDrawing(drawings[i]!.drawing, p.matrix).inks) };
  const footer = (page: Page) => `${pattern.name} · ${page.number}/${pages.length}`;
  const pdf = await pdfDocument(
    {
      title: pattern.name, subject: 'Sewing pattern', language: 'en', format, sheet, common: commonFurniture(format),
      pages: pages.map(page => ({ window: page.window, common: true, own: pageFurniture(page, format, joins, footer(page), typefaces) })),
    },
    typefaces,
  );
  return { pdf, pages: pagesJson(format, pages, pieces) };
}

function* textsOf(pattern: Pattern): Generator<string> {
  yield pattern.name;
  for (const p of pattern.pieces) {
    yield p.title;
    yield p.name;
    yield p.cutting.fabric;
  }
}
