import { PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { pdfFile } from '../../../packages/print/src/pdf/file.js';
import { characters, words, written } from '../../../packages/print/src/pdf/objects.js';

describe('an object as a PDF writes it', () => {
  test.each([
    [3, '3'],
    [-0.5, '-0.5'],
    [1e-9, '0'],
    [-1e-9, '0'],
    [120, '120'],
    [-11000000, '-11000000'],
    [2.8346456692913384, '2.834646'],
    [true, 'true'],
    ['Type', '/Type'],
    ['A B#(é)', '/A#20B#23#28#e9#29'],
    [[1, 'Two', [3]], '[1 /Two [3]]'],
    [{ Kept: 1, Left: undefined }, '<</Kept 1>>'],
    [characters('a(b)\\'), '(a\\(b\\)\\\\)'],
    [words('Ä🧵'), '<FEFF00C4D83EDDF5>'],
    [{ number: 7 }, '7 0 R'],
  ] as const)('%j', (value, text) => {
    expect(written(value)).toBe(text);
  });
});

test('another reader finds every object, and every stream as it was given', async () => {
  const file = pdfFile();
  const later = file.next();
  const many = Array.from({ length: 900 }, (_, i) => file.add({ Count: i, Next: later }));
  const plain = file.plain('q Q\n');
  const packed = file.packed('0 0 m '.repeat(500), { Kind: 'Content' });
  file.assign(later, { Many: many, Plain: plain, Packed: packed });
  const tree = file.add({ Type: 'Pages', Kids: [], Count: 0 });
  const catalog = file.add({ Type: 'Catalog', Pages: tree, Later: later });
  const bytes = file.bytes(catalog, file.add({ Title: words('Größe') }));

  const doc = await PDFDocument.load(bytes, { updateMetadata: false });
  expect(doc.getTitle()).toBe('Größe');
  const found = doc.catalog.lookup(PDFName.of('Later'))!;
  expect(String(found)).toContain(`/Plain ${plain.number} 0 R`);
  const all = doc.context.enumerateIndirectObjects().map(([, object]) => String(object));
  for (let i = 0; i < many.length; i++)
    expect(all).toContain(`<<\n/Count ${i}\n/Next ${later.number} 0 R\n>>`);
  expect(bytes.length).toBeLessThan(20_000);
});
