// Other libraries' ways to print 576 curved paths on 24 A4 tiles: everything again on each page, as one writes without
// thinking, and at their best: one form XObject drawn once and shown through each page's window, clipped to it.
import PDFKit from 'pdfkit';

const k = 72 / 25.4;
const paper = [210 * k, 297 * k];

/** The paths, in mm of the large sheet. */
export const paths = Array.from({ length: 576 }, (_, i) => ({
  x: 20 + (i % 24) * 28,
  y: 20 + Math.floor(i / 24) * 65,
  wave: (i * 7) % 19,
}));
const curveOf = ({ x, y, wave }) => [x + 8 + wave, y + 12, x + 4, y + 30 + wave, x + 20, y + 50];

/** The large sheet's places at the page's corner, in mm. */
const tiles = Array.from({ length: 24 }, (_, i) => ({ left: (i % 4) * 180, top: Math.floor(i / 4) * 267 }));

/** pdf-lib or its fork: every path on every page. */
export async function redrawnByPdfLib(Document) {
  const doc = await Document.create();
  for (const { left, top } of tiles) {
    const page = doc.addPage(paper);
    for (const path of paths)
      page.drawSvgPath(`M${path.x} ${path.y} C${curveOf(path).join(' ')}`, {
        x: (10 - left) * k,
        y: (287 + top) * k,
        scale: k,
        borderWidth: 0.7,
      });
  }
  return doc.save();
}

/** The paths as operators of a content stream in mm, y down. */
const content = () =>
  `0.25 w\n${paths.map(path => `${path.x} ${path.y} m ${curveOf(path).join(' ')} c S`).join('\n')}\n`;
const box = [0, 0, 1000, 2000];
/** What shows the form on a page: clipped to what can be printed, y turned, moved to the tile. */
const shown = ({ left, top }, name) =>
  `q ${10 * k} ${10 * k} ${190 * k} ${277 * k} re W n ${k} 0 0 ${-k} ${(10 - left) * k} ${(287 + top) * k} cm /${name} Do Q\n`;

/** pdf-lib or its fork at its best. */
export async function formByPdfLib({ PDFDocument, PDFName }) {
  const doc = await PDFDocument.create();
  const { context } = doc;
  const form = context.register(
    context.flateStream(content(), { Type: 'XObject', Subtype: 'Form', BBox: box, Resources: {} }),
  );
  for (const tile of tiles) {
    const page = doc.addPage(paper);
    page.node.setXObject(PDFName.of('Sheet'), form);
    page.node.addContentStream(context.register(context.stream(shown(tile, 'Sheet'))));
  }
  return doc.save();
}

/** The whole of what a pdfkit document writes. */
const wholeOf = doc => {
  const chunks = [];
  const whole = new Promise(resolve => doc.on('end', () => resolve(Buffer.concat(chunks))));
  doc.on('data', chunk => chunks.push(chunk));
  return whole;
};

/** pdfkit, which writes path operators itself: every path on every page. */
export function redrawnByPdfkit() {
  const doc = new PDFKit({ autoFirstPage: false, size: paper });
  const whole = wholeOf(doc);
  for (const { left, top } of tiles) {
    doc.addPage({ size: paper, margin: 0 });
    doc
      .scale(k)
      .translate(10 - left, 10 - top)
      .lineWidth(0.25);
    for (const path of paths)
      doc
        .moveTo(path.x, path.y)
        .bezierCurveTo(...curveOf(path))
        .stroke();
  }
  doc.end();
  return whole;
}

/** pdfkit at its best. */
export function formByPdfkit() {
  const doc = new PDFKit({ autoFirstPage: false, size: paper });
  const whole = wholeOf(doc);
  const form = doc.ref({ Type: 'XObject', Subtype: 'Form', BBox: box, Resources: {} });
  form.end(content());
  for (const { left, top } of tiles) {
    doc.addPage({ size: paper, margin: 0 });
    doc.page.xobjects.Sheet = form;
    // pdfkit has turned y on each page already.
    doc.addContent(
      `q ${k} 0 0 ${k} 0 0 cm 10 10 190 277 re W n 1 0 0 1 ${10 - left} ${10 - top} cm /Sheet Do Q`,
    );
  }
  doc.end();
  return whole;
}
