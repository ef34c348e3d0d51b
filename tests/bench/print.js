// Printing beside its peers: 576 curved paths on 24 A4 tiles, written by this library's form shown through each page's
// window, and by pdf-lib, its fork and pdfkit: at their best and everything again on each page. Bytes and processor
// time, as ratios. Ours once with all that a page carries, once with the paths alone, which is what the peers write.
import * as forked from '@cantoo/pdf-lib';
import * as pdfLib from 'pdf-lib';
import { fonts } from '../../packages/cli/dist/fonts.js';
import { movedDrawing } from '../../packages/print/dist/drawing/index.js';
import { loadTypefaces } from '../../packages/print/dist/index.js';
import { pageFormat } from '../../packages/print/dist/pages/format.js';
import { pageFurniture } from '../../packages/print/dist/pages/furniture.js';
import { joinsOf } from '../../packages/print/dist/pages/joins.js';
import { paperOf } from '../../packages/print/dist/pages/papers.js';
import { planPages } from '../../packages/print/dist/pages/plan.js';
import { pdfDocument } from '../../packages/print/dist/pdf/document.js';
import { english } from '../../packages/print/dist/words/english.js';
import { table } from './clock.js';
import { formByPdfkit, formByPdfLib, paths, redrawnByPdfkit, redrawnByPdfLib } from './print-peers.js';

const format = pageFormat(paperOf('a4'), 'portrait');
/** The drawing as this library keeps it. */
const drawing = {
  inks: paths.map(({ x, y, wave }) => ({
    kind: 'stroke',
    role: 'cut',
    path: {
      segments: [
        [
          { x, y },
          { x: x + 8 + wave, y: y + 12 },
          { x: x + 4, y: y + 30 + wave },
          { x: x + 20, y: y + 50 },
        ],
      ],
    },
  })),
};
const tiles = Array.from({ length: 24 }, (_, i) => {
  const own = { row: Math.floor(i / 4), column: i % 4 };
  return { ...own, own, sheet: 0, corner: { x: own.column * 180, y: own.row * 267 } };
});

/** `furnished`: with page labels, strips and match marks. */
export async function tiledByForm(typefaces, furnished = true) {
  const matrix = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
  const piece = { piece: 'sheet', copy: 1, matrix, polygons: [], tiles };
  const { pages } = planPages({ format, pieces: [piece], blocks: [] }, 0);
  const furnishing = furnished
    ? { format, joins: joinsOf(pages, format), measure: typefaces, words: english.page }
    : undefined;
  return pdfDocument(
    {
      title: 'Bench',
      subject: 'Bench',
      language: 'en',
      format,
      sheet: movedDrawing(drawing, matrix),
      pages: pages.map(page => ({
        window: page.window,
        own: furnishing
          ? pageFurniture(page, `Bench · page ${page.number} of ${pages.length}`, furnishing)
          : { inks: [] },
      })),
    },
    typefaces,
  );
}

/** The best of as many rounds as take a second of processor time together, five at least. */
const processorMs = async work => {
  let best = Number.POSITIVE_INFINITY,
    bytes = 0,
    spent = 0;
  for (let i = 0; i < 5 || (spent < 1000 && i < 40); i++) {
    const before = process.cpuUsage();
    bytes = (await work()).length;
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / 1000);
    spent += (user + system) / 1000;
  }
  return { ms: best, kB: bytes / 1000 };
};

const title =
  'PDF: 576 paths on 24 A4 tiles; ratios to ours with the paths alone, which is what the peers write';

/** One line a way: name, kB, processor time in ms, and both as ratios to this library's with the paths alone. */
export async function bench() {
  const typefaces = await loadTypefaces(fonts);
  const ways = [
    ['this library, the paths alone', () => tiledByForm(typefaces, false)],
    ['this library, labels, strips and match marks too', () => tiledByForm(typefaces)],
    ['pdf-lib, one form XObject', () => formByPdfLib(pdfLib)],
    ['@cantoo/pdf-lib, one form XObject', () => formByPdfLib(forked)],
    ['pdfkit, one form XObject', formByPdfkit],
    ['pdf-lib, drawSvgPath on every page', () => redrawnByPdfLib(pdfLib.PDFDocument)],
    ['@cantoo/pdf-lib, drawSvgPath on every page', () => redrawnByPdfLib(forked.PDFDocument)],
    ['pdfkit, drawn on every page', redrawnByPdfkit],
  ];
  const rows = [];
  for (const [name, work] of ways) rows.push({ name, ...(await processorMs(work)) });
  const [ours] = rows;
  return {
    title,
    rows: rows.map(row => ({ ...row, timesOurBytes: row.kB / ours.kB, timesOurTime: row.ms / ours.ms })),
  };
}

if (process.argv[1]?.endsWith('bench/print.js')) {
  const { rows } = await bench();
  console.log(
    table(
      title,
      Object.keys(rows[0]),
      rows.map(row => Object.values(row).map(v => (typeof v === 'number' ? v.toFixed(2) : v))),
    ),
  );
}
