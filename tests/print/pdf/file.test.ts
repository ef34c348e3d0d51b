import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { printPattern } from '@paperhinge/print';
import { PDFArray, PDFDocument, PDFName, type PDFRawStream } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { shiftPattern } from '../../support/shift.js';
import { has, inFolder, type Pixels, pixelsOf, rendered, wordsOf } from '../rendered.js';
import { patternOf, rectangle } from '../simple-pieces.js';

const print = (pattern: Parameters<typeof printPattern>[0], paper = 'a4') =>
  printPattern(pattern, { paper, fonts });

test('the same pattern gives the same bytes', async () => {
  const [once, again] = [await print(shiftPattern()), await print(shiftPattern())];
  expect(Buffer.from(once.pdf).equals(Buffer.from(again.pdf))).toBe(true);
  expect(again.pages).toEqual(once.pages);
});

test('a page more costs less than 1 kB: the drawing is stored once', async () => {
  const of = async (pieces: number) => {
    const made = Array.from({ length: pieces }, (_, i) => rectangle(`panel ${i + 1}`, 400, 560, 12));
    const { pdf, pages } = await print(patternOf(...made));
    return { bytes: pdf.length, pages: pages.pages.length };
  };
  const few = await of(2),
    many = await of(12);
  expect(many.pages - few.pages).toBeGreaterThan(40);
  // Ten more pieces and their place in the cutting list are counted in.
  expect((many.bytes - few.bytes) / (many.pages - few.pages)).toBeLessThan(1000);
});

test('no drawing is repeated on a page: its own content is under 1 kB', async () => {
  const doc = await PDFDocument.load((await print(shiftPattern())).pdf, { updateMetadata: false });
  const own = doc
    .getPages()
    .slice(1)
    .map(page => {
      const parts = page.node.lookup(PDFName.of('Contents'), PDFArray);
      return parts
        .asArray()
        .reduce((sum, p) => sum + (doc.context.lookup(p) as PDFRawStream).contents.length, 0);
    });
  expect(Math.max(...own)).toBeLessThan(1000);
});

describe.skipIf(!has('qpdf'))('qpdf (needs qpdf)', () => {
  test('finds no fault in the file', async () => {
    const { pdf } = await print(shiftPattern());
    const said = inFolder(pdf, (_, file) => execFileSync('qpdf', ['--check', file], { encoding: 'utf8' }));
    expect(said).toContain('No syntax or stream encoding errors found');
  });
});

describe.skipIf(!['pdftoppm', 'mutool', 'gs'].every(has))(
  'three readers (needs pdftoppm, mutool and gs)',
  () => {
    test('show the same pages', async () => {
      const { pdf } = await print(shiftPattern());
      const dpi = 100;
      const poppler = rendered(pdf, 3, 3, dpi)[0]!;
      const others = inFolder(pdf, (folder, file) => {
        execFileSync(
          'mutool',
          ['draw', '-q', '-c', 'gray', '-r', String(dpi), '-o', join(folder, 'm.pgm'), file, '3'],
          { stdio: 'pipe' },
        );
        execFileSync(
          'gs',
          [
            '-q',
            '-dBATCH',
            '-dNOPAUSE',
            '-sDEVICE=pgmraw',
            `-r${dpi}`,
            '-dGraphicsAlphaBits=4',
            '-dTextAlphaBits=4',
            '-dFirstPage=3',
            '-dLastPage=3',
            `-sOutputFile=${join(folder, 'g.pgm')}`,
            file,
          ],
          { stdio: 'pipe' },
        );
        return ['m.pgm', 'g.pgm'].map(f => pixelsOf(withoutComment(readFileSync(join(folder, f)))));
      });
      for (const other of others) {
        expect(Math.abs(other.width - poppler.width)).toBeLessThanOrEqual(1);
        expect(inkApart(poppler, other)).toBeLessThan(0.02);
      }
    });
  },
);

/** A comment line in the head of a grey map, which one of the programs writes. */
function withoutComment(bytes: Uint8Array): Uint8Array {
  const text = Buffer.from(bytes.subarray(0, 200)).toString('latin1');
  const comment = /\n(#[^\n]*\n)/.exec(text);
  if (!comment) return bytes;
  const at = comment.index + 1;
  return new Uint8Array(Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + comment[1]!.length)]));
}

/** The share of the dark dots of either page that have no ink within two dots on the other. */
function inkApart(a: Pixels, b: Pixels): number {
  const lone = (p: Pixels, q: Pixels) => {
    let dark = 0,
      alone = 0;
    for (let y = 2; y < Math.min(p.height, q.height) - 2; y++)
      for (let x = 2; x < Math.min(p.width, q.width) - 2; x++) {
        if (p.grey[y * p.width + x]! > 90) continue;
        dark++;
        let found = false;
        for (let dy = -2; dy <= 2 && !found; dy++)
          for (let dx = -2; dx <= 2 && !found; dx++) found = q.grey[(y + dy) * q.width + x + dx]! < 200;
        if (!found) alone++;
      }
    return alone / Math.max(dark, 1);
  };
  return Math.max(lone(a, b), lone(b, a));
}

describe.skipIf(!has('pdftotext'))('text (needs pdftotext)', () => {
  test('can be searched and copied, in every script', async () => {
    const titles = ['Größe ½ čšž', 'Ποδόγυρος', 'Рукав', 'كم طويل', 'שרוול', '袖ぐり見返し', '🧵 thread'];
    const pieces = titles.map((title, i) => rectangle(`piece-${i}`, 120, 160, 10, { title }));
    const words = wordsOf((await print(patternOf(...pieces))).pdf);
    for (const title of [
      'Größe',
      'čšž',
      'Ποδόγυρος',
      'Рукав',
      '袖ぐり見返し',
      '🧵',
      'thread',
      '50 mm',
      'Cutting list',
    ])
      expect(words).toContain(title);
    // Letters of scripts that join or run from right to left are found as letters, in whatever order a reader gives them.
    const letters = new Set([...words.normalize('NFKC')]);
    for (const letter of 'كمطويلשרוול') expect(letters.has(letter)).toBe(true);
  });
});
