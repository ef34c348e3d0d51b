import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { loadTypefaces, printPattern, type Typefaces } from '@paperhinge/print';
import { beforeAll, describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { fontProgram } from '../../../packages/print/src/pdf/font-program.js';
import { enginesFor } from '../../../packages/print/src/pdf/text-engines.js';
import { refusedWith } from '../refused.js';
import { wordsOf } from '../rendered.js';
import { patternOf, rectangle } from '../simple-pieces.js';

const resolve = createRequire(new URL('../../../packages/cli/package.json', import.meta.url)).resolve;
const { default: fontkit } = await import(
  createRequire(new URL('../../../packages/print/package.json', import.meta.url)).resolve('@pdf-lib/fontkit')
);
const fontFile = (name: string) => new Uint8Array(readFileSync(resolve(name)));

test('pages are printed without any font of the caller’s, German and Polish letters among them', async () => {
  const title = 'Rückenteil für Größe Ł – ½ Naht';
  const { pdf } = await printPattern(patternOf(rectangle('back', 150, 220, 10, { title })), { paper: 'a4' });
  expect(wordsOf(pdf)).toContain(title);
});

test('a font of the caller’s that is no font is refused with what to give', async () => {
  const printed = printPattern(patternOf(rectangle('back', 150, 220, 10)), {
    paper: 'a4',
    fonts: { regular: new Uint8Array([1, 2, 3]) },
  });
  expect(await refusedWith(printed)).toMatchObject({
    code: 'font-not-usable',
    remedy: expect.stringContaining('.ttf'),
  });
});

describe('Oracle: another reader of fonts', () => {
  const files = [
    '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
    'dejavu-fonts-ttf/ttf/DejaVuSans.ttf',
  ];
  test.each(files)('gives the same glyphs and widths: %s', async file => {
    const bytes = fontFile(file);
    const program = await fontProgram(bytes);
    const other = fontkit.create(bytes) as {
      readonly unitsPerEm: number;
      readonly ascent: number;
      readonly capHeight: number;
      hasGlyphForCodePoint(code: number): boolean;
      glyphForCodePoint(code: number): { readonly id: number; readonly advanceWidth: number };
    };
    expect([program.unitsPerEm, program.ascent]).toEqual([other.unitsPerEm, other.ascent]);
    for (let code = 0x20; code < 0x11000; code += code < 0x600 ? 1 : 37) {
      expect([code, program.has(code)]).toEqual([code, other.hasGlyphForCodePoint(code)]);
      if (!program.has(code)) continue;
      const { id, advanceWidth } = other.glyphForCodePoint(code);
      expect(program.glyph(code)).toEqual({ id, advanceWidth, codePoints: [code] });
    }
  });
});

test('what shapes and orders letters is loaded only for letters that ask for it', async () => {
  expect(await enginesFor(['Größe 38 → ½', 'Рукав', '袖ぐり', '소매'])).toEqual({});
  expect(Object.keys(await enginesFor(['आस्तीन']))).toEqual(['shape']);
  expect(Object.keys(await enginesFor(['שרוול'])).sort()).toEqual(['bidi', 'shape']);
});

describe('writing from right to left', () => {
  let typefaces: Typefaces;
  const shown = (text: string) =>
    typefaces
      .runs(text, 'regular')
      .flatMap(run => run.glyphs.flatMap(g => g.codePoints))
      .map(code => String.fromCodePoint(code))
      .join('');
  beforeAll(async () => {
    typefaces = await loadTypefaces(fonts, ['שרוול כם']);
  });

  // The Unicode Bidirectional Algorithm, UAX #9: figures keep their order within Hebrew, brackets turn round.
  test.each([
    ['abc אבג def', 'abc גבא def'],
    ['אבג abc', 'abc גבא'],
    ['אב 12 גד', 'דג 12 בא'],
    ['אב (גד)', '(דג) בא'],
    ['cut 2 אב, 3 גד', 'cut 2 דג 3 ,בא'],
  ])('%s', (text, expected) => expect(shown(text)).toBe(expected));
});

test('every letter of a script of many letters is printed, and the same bytes come out twice', async () => {
  const scripts = ['อกเสื้อแขนเสื้อ', 'आस्तीन बाजू गला', '袖身頃衿一万与丕东丣', '소매 몸판'];
  const pattern = patternOf(...scripts.map((title, i) => rectangle(`p${i}`, 150, 120, 10, { title })));
  const [once, again] = [
    await printPattern(pattern, { paper: 'a4', fonts }),
    await printPattern(pattern, { paper: 'a4', fonts }),
  ];
  expect(Buffer.from(once.pdf).equals(Buffer.from(again.pdf))).toBe(true);
  const words = wordsOf(once.pdf);
  for (const title of ['袖身頃衿一万与丕东丣', '소매 몸판']) expect(words).toContain(title);
});
