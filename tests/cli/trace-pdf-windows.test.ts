// Pages that another program writes as windows onto a drawing, and what she types of them.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import PDFDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { command } from './command.js';
import { folder } from './folders.js';

const mm = 72 / 25.4;
/** The sides of a piece, mm: it lies on two by two pages. */
const corners = [
  [30, 40],
  [330, 40],
  [340, 420],
  [60, 430],
] as const;
const sides = corners.map(([x, y], i) => {
  const [u, v] = corners[(i + 1) % 4]!;
  return Math.hypot(u - x, v - y);
});

type Page = (pdf: PDFDocument) => void;
const a4 = [595.28, 841.89] as const;
const written = (file: string, pages: readonly Page[]): Promise<void> =>
  new Promise(resolve => {
    const pdf = new PDFDocument({ autoFirstPage: false });
    const parts: Uint8Array[] = [];
    pdf.on('data', part => void parts.push(part));
    pdf.on('end', () => {
      writeFileSync(file, Buffer.concat(parts));
      resolve();
    });
    for (const draw of pages) {
      pdf.addPage({ size: a4, margin: 0 });
      draw(pdf);
    }
    pdf.end();
  });

const drawPiece: Page = pdf => {
  corners.forEach(([x, y], i) => void (i === 0 ? pdf.moveTo(x * mm, y * mm) : pdf.lineTo(x * mm, y * mm)));
  pdf.closePath().stroke();
};

/** Two by two windows of 190 × 277 mm onto the piece, overlapping by so much. */
const windows = (overlap: number): readonly Page[] =>
  [0, 1, 2, 3].map(i => pdf => {
    pdf
      .save()
      .rect(10 * mm, 10 * mm, 190 * mm, 277 * mm)
      .clip();
    pdf.translate((10 - (i % 2) * (190 - overlap)) * mm, (10 - Math.floor(i / 2) * (277 - overlap)) * mm);
    drawPiece(pdf);
    pdf.restore();
  });

async function traced(pages: readonly Page[], ...how: readonly string[]) {
  const dir = folder();
  const file = join(dir, 'tiles.pdf');
  await written(file, pages);
  const { code, stdout, stderr } = await command('trace', file, '-o', join(dir, 'p.svg'), '--json', ...how);
  const pieces: readonly { edges: Record<string, { lengthMm: number }> }[] =
    code === 0 ? JSON.parse(stdout).pieces : [];
  return { code, stderr, lengths: pieces.map(p => Object.values(p.edges).map(e => e.lengthMm)) };
}

test.each([
  ['by themselves', 0, []],
  ['by themselves, overlapping', 10, []],
  ['in the columns that are typed', 0, ['--columns', '2']],
  ['with the overlap that is typed', 10, ['--columns', '2', '--overlap', '1 cm']],
] as const)('windows with nothing beside one piece are laid %s at true length', async (_, overlap, how) => {
  const { code, lengths } = await traced(windows(overlap), ...how);
  expect(code).toBe(0);
  expect(lengths).toHaveLength(1);
  lengths[0]!.forEach((length, i) => void expect(length).toBeCloseTo(sides[i]!, 2));
});

test('what the clip of a small thing cuts off is no window of the page', async () => {
  const logo: Page = pdf => {
    pdf.save().rect(20, 20, 40, 40).clip().moveTo(0, 30).lineTo(90, 50).stroke().restore();
    drawPiece(pdf);
  };
  const { lengths } = await traced([logo]);
  expect(lengths[0]!.map(length => Math.round(length))).toEqual(sides.map(side => Math.round(side)));
});

test.each([
  [['--columns', '2', '--overlap', '-4'], 'overlap of 0 to 100 mm'],
  [['--columns', '2', '--overlap', '50 cm'], 'overlap of 0 to 100 mm'],
  [['--overlap', '10'], '--columns 4 --overlap "10 mm"'],
] as const)('%j is refused with what to give', async (how, words) => {
  const { code, stderr } = await traced(windows(10), ...how);
  expect(code).toBe(2);
  expect(stderr).toContain(words);
});
