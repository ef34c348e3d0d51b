// Printing beside its peers: 576 curved paths on 24 A4 tiles, written by this library's form shown through each page's
// window, and by pdf-lib, its fork and pdfkit drawing everything again on each page. Bytes and processor time, as ratios.
import { PDFDocument as ForkedDocument } from '@cantoo/pdf-lib';
import { PDFDocument } from 'pdf-lib';
import PDFKit from 'pdfkit';
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

const format = pageFormat(paperOf('a4'), 'portrait');
const paths = Array.from({ length: 576 }, (_, i) => {
  const x = 20 + (i % 24) * 28,
    y = 20 + Math.floor(i / 24) * 65;
  const wave = (i * 7) % 19;
  return { x, y, wave };
});

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

export async function tiledByForm(typefaces) {
  const matrix = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
  const piece = { piece: 'sheet', copy: 1, matrix, polygons: [], tiles };
  const { pages } = planPages({ format, pieces: [piece], blocks: [] }, 0);
  const joins = joinsOf(pages, format);
  const furnishing = { format, joins, measure: typefaces, words: english.page };
  return pdfDocument(
    {
      title: 'Bench',
      subject: 'Bench',
      language: 'en',
      format,
      sheet: movedDrawing(drawing, matrix),
      pages: pages.map(page => ({
        window: page.window,
        own: pageFurniture(page, `Bench · page ${page.number} of ${pages.length}`, furnishing),
      })),
    },
    typefaces,
  );
}

const k = 72 / 25.4;

/** What one writes without thinking: every path on every page. */
export async function redrawnByPdfLib(Document = PDFDocument) {
  const doc = await Document.create();
  for (let row = 0; row < 6; row++)
    for (let column = 0; column < 4; column++) {
      const page = doc.addPage([210 * k, 297 * k]);
      for (const { x, y, wave } of paths)
        page.drawSvgPath(
          `M${x} ${y} C${x + 8 + wave} ${y + 12} ${x + 4} ${y + 30 + wave} ${x + 20} ${y + 50}`,
          {
            x: (10 - column * 180) * k,
            y: (287 + row * 267) * k,
            scale: k,
            borderWidth: 0.7,
          },
        );
    }
  return doc.save();
}

/** The same with pdfkit, which writes path operators itself. */
export function redrawnByPdfkit() {
  const doc = new PDFKit({ autoFirstPage: false, size: [210 * k, 297 * k] });
  const chunks = [];
  const whole = new Promise(resolve => doc.on('end', () => resolve(Buffer.concat(chunks))));
  doc.on('data', chunk => chunks.push(chunk));
  for (let row = 0; row < 6; row++)
    for (let column = 0; column < 4; column++) {
      doc.addPage({ size: [210 * k, 297 * k], margin: 0 });
      doc
        .scale(k)
        .translate(10 - column * 180, 10 - row * 267)
        .lineWidth(0.25);
      for (const { x, y, wave } of paths)
        doc
          .moveTo(x, y)
          .bezierCurveTo(x + 8 + wave, y + 12, x + 4, y + 30 + wave, x + 20, y + 50)
          .stroke();
    }
  doc.end();
  return whole;
}

const processorMs = async work => {
  let best = Number.POSITIVE_INFINITY,
    bytes = 0;
  for (let i = 0; i < 12; i++) {
    const before = process.cpuUsage();
    bytes = (await work()).length;
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / 1000);
  }
  return { ms: best, kB: bytes / 1000 };
};

/** One line a way: name, kB, processor time in ms, and both as ratios to this library's. */
export async function bench() {
  const typefaces = await loadTypefaces(fonts);
  const ours = await processorMs(() => tiledByForm(typefaces));
  const beside = { timesOurBytes: 1, timesOurTime: 1 };
  const rows = [{ name: 'one form, 24 windows (this library)', ...ours, ...beside }];
  for (const [name, work] of [
    ['pdf-lib drawSvgPath on every page', () => redrawnByPdfLib()],
    ['@cantoo/pdf-lib drawSvgPath on every page', () => redrawnByPdfLib(ForkedDocument)],
    ['pdfkit on every page', redrawnByPdfkit],
  ]) {
    const peer = await processorMs(work);
    rows.push({ name, ...peer, timesOurBytes: peer.kB / ours.kB, timesOurTime: peer.ms / ours.ms });
  }
  return {
    title: 'PDF: 576 paths on 24 A4 tiles, page labels, strips and match marks included in ours',
    rows,
  };
}

if (process.argv[1]?.endsWith('bench/print.js')) console.log(JSON.stringify(await bench(), null, 2));
