import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { printPattern } from '@paperhinge/print';
import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { shiftPattern } from '../../support/shift.js';
import { has, inFolder, type Pixels, rendered } from '../rendered.js';

const print = async (showBefore = false) =>
  (
    await printPattern(shiftPattern({ length: 700 }), {
      paper: 'a4',
      fonts,
      before: shiftPattern(),
      showBefore,
    })
  ).pdf;

async function layersOf(pdf: Uint8Array) {
  const doc = await PDFDocument.load(pdf, { updateMetadata: false });
  const properties = doc.catalog.lookup(PDFName.of('OCProperties'), PDFDict);
  const refs = properties.lookup(PDFName.of('OCGs'), PDFArray).asArray();
  const names = refs.map(ref =>
    doc.context.lookup(ref, PDFDict).lookup(PDFName.of('Name'), PDFHexString).decodeText(),
  );
  return { doc, properties, refs, names };
}

test('layers are named as a maker would ask for them, and all are on', async () => {
  const { names, properties } = await layersOf(await print());
  expect(names).toEqual([
    'Cutting lines',
    'Stitching lines and darts',
    'Grain, levels and marks',
    'Names and notes',
    'Joining the pages',
    'Cover',
  ]);
  const config = properties.lookup(PDFName.of('D'), PDFDict);
  expect(config.lookup(PDFName.of('ON'), PDFArray).size()).toBe(6);
});

test('the outline before the alteration is a layer of its own, when it is asked for', async () => {
  expect((await layersOf(await print(true))).names).toContain('Before the alteration');
});

const ink = ({ grey }: Pixels) => grey.reduce((sum, g) => sum + (g < 128 ? 1 : 0), 0);

describe.skipIf(!has('pdftoppm'))('a layer switched off (needs pdftoppm)', () => {
  test('is not shown, and the others are', async () => {
    const pdf = await print();
    const { doc, properties, refs, names } = await layersOf(pdf);
    const off = doc.context.obj([refs[names.indexOf('Cutting lines')]!]);
    properties.lookup(PDFName.of('D'), PDFDict).set(PDFName.of('OFF'), off);
    properties.lookup(PDFName.of('D'), PDFDict).delete(PDFName.of('ON'));
    const [before] = rendered(pdf, 4, 4, 100),
      [after] = rendered(await doc.save(), 4, 4, 100);
    expect(ink(after!)).toBeLessThan(ink(before!) * 0.85);
    expect(ink(after!)).toBeGreaterThan(100);
  });
});

describe.skipIf(!['qpdf', 'fix-qdf', 'pdftoppm', 'mutool'].every(has))(
  'all layers switched off by an outside tool (needs qpdf, pdftoppm and mutool)',
  () => {
    test('leave a blank page in two readers, and a sound file', async () => {
      const off = inFolder(await print(true), (folder, file) => {
        const plain = join(folder, 'plain.pdf');
        execFileSync('qpdf', ['--qdf', '--object-streams=disable', file, plain]);
        const text = readFileSync(plain, 'latin1')
          .replace('/BaseState /ON', '/BaseState /OFF')
          .replace(/\/ON \[[^\]]*\]/, '/ON [ ]');
        writeFileSync(plain, text, 'latin1');
        return new Uint8Array(execFileSync('fix-qdf', [plain], { maxBuffer: 1e8 }));
      });
      const [page] = rendered(off, 4, 4, 50);
      expect(ink(page!)).toBe(0);
      inFolder(off, (folder, file) => {
        execFileSync('qpdf', ['--check', file], { stdio: 'pipe' });
        const out = join(folder, 'm.pgm');
        execFileSync('mutool', ['draw', '-q', '-c', 'gray', '-r', '50', '-o', out, file, '4'], {
          stdio: 'pipe',
        });
        const bytes = readFileSync(out);
        expect(bytes.subarray(60).every(g => g === 255)).toBe(true);
      });
    });
  },
);
