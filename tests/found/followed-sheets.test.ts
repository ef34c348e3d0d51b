// What a sheet is refused for: written as its remedy says, it is refused for that no longer.
import { PatternError } from '@paperhinge/geometry';
import { readSheet, type Sheet } from '@paperhinge/sheet';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { expect, test } from 'vitest';
import { faultsIn } from '../../packages/sheet/src/faults.js';
import { sheetFields } from '../../packages/sheet/src/words/english/sheet-fields.js';
import { sheetText } from '../../packages/sheet/src/words/english/sheet-text.js';
import { sheetValues } from '../../packages/sheet/src/words/english/sheet-values.js';

const words = wordsOf(english, 'mm');

/** What a sheet is refused for: codes and remedies; nothing where it is read. */
function told(text: string): readonly { readonly code: string; readonly remedy: string }[] {
  try {
    const sheet: Sheet = readSheet(text, { file: 'sheet.yaml' });
    expect(sheet.pattern).toBeDefined();
    return [];
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    return faultsIn(error).map(fault => ({ code: fault.code, remedy: words.error(fault).remedy }));
  }
}

const head = 'pattern: p.svg\n';
const steps = (...lines: readonly string[]): string =>
  `${head}steps:\n${lines.map(line => `  - ${line}\n`).join('')}`;
const shorter = (by: string): string => steps(`shorten: { pieces: front, at: hem, by: ${by} }`);
const kept = (lets: string, by: string): string =>
  `${head}let: { ${lets} }\n${shorter(by).slice(head.length)}`;
const spread = (fields: string): string =>
  steps(`spread: { piece: back, from: { edge: hem }, to: { edge: neck }, ${fields} }`);
const neck = (fields: string): string => steps(`recut neckline: { piece: front, shape: round, ${fields} }`);

/** A sheet, the same written as the remedy says, and a word that the remedy says it with. */
type Case = readonly [text: string, mended: string, word: string];
const cases: Readonly<Record<string, Case>> = {
  'length-not-understood': [shorter('2 hands'), shorter('1.2 cm'), '1.2 cm'],
  'length-out-of-range': [neck('depth: -3, half width: 95'), neck('depth: 3, half width: 95'), '0'],
  'percent-not-understood': [
    steps('draft band: { name: band, along: front.neck, ratio: 0.8, width: 60, join: 10 }'),
    steps('draft band: { name: band, along: front.neck, ratio: 80 %, width: 60, join: 10 }'),
    '80 %',
  ],
  'percent-out-of-range': [
    steps('draft band: { name: band, along: front.neck, ratio: 900 %, width: 60, join: 10 }'),
    steps('draft band: { name: band, along: front.neck, ratio: 100 %, width: 60, join: 10 }'),
    'up to',
  ],
  'scale-not-understood': [`${head}scale: small\n`, `${head}scale: 1/4\n`, '1/4'],
  'position-not-understood': [
    steps('close dart: { piece: front, dart: bust, into: hem, at: middle }'),
    steps('close dart: { piece: front, dart: bust, into: hem, at: 1/3 }'),
    '1/3',
  ],
  'position-off-edge': [
    steps('close dart: { piece: front, dart: bust, into: hem, at: 140 % }'),
    steps('close dart: { piece: front, dart: bust, into: hem, at: 100 % }'),
    '100 %',
  ],
  'edge-not-understood': [
    steps('true: { edges: [hem] }'),
    steps('true: { edges: [front.neck] }'),
    'front.neck',
  ],
  'choice-not-understood': [
    steps('recut neckline: { piece: front, shape: rond, depth: 3, half width: 95 }'),
    neck('depth: 3, half width: 95'),
    '"round"',
  ],
  'name-not-understood': [
    steps('remove piece: { piece: 12 }'),
    steps('remove piece: { piece: "12" }'),
    'quotes',
  ],
  'one-name-expected': [
    steps('close dart: { piece: front, dart: bust, into: [hem, shoulder] }'),
    steps('share dart: { piece: front, dart: bust, among: [{ edge: hem }, { edge: shoulder }] }'),
    'share dart instead, with among: [{ edge: hem }, { edge: shoulder }]',
  ],
  'name-not-printable': [
    steps('remove piece: { piece: "a\\tb" }'),
    steps('remove piece: { piece: "a b" }'),
    'letters, digits, spaces',
  ],
  'list-empty': [steps('true: { edges: [] }'), steps('true: { edges: [front.neck] }'), 'at least one'],
  'list-expected': [`${head}steps: shorten\n`, steps('remove piece: { piece: front }'), '"- "'],
  'mapping-expected': [steps('remove piece: front'), steps('remove piece: { piece: front }'), 'name: value'],
  'missing-field': [steps('shorten: { pieces: front, at: hem }'), shorter('12'), '"by"'],
  'unknown-field': [steps('shorten: { pieces: front, at: hem, bye: 12 }'), shorter('12'), '"by"'],
  'space-after-colon': [steps('shorten: { pieces: front, at:hem, by: 12 }'), shorter('12'), 'at: hem'],
  'decimal-comma': [steps('shorten: { pieces: front, at: hem, by: 2,5 cm }'), shorter('2.5 cm'), '2.5 cm'],
  'pair-expected': [
    steps('take in: { seam: side, by: [10, 25, 30], between: [start, end] }'),
    steps('take in: { seam: side, by: [10, 25] }'),
    '[10, 25]',
  ],
  'paper-not-understood': [
    `${head}print: { paper: 20 x }\n`,
    `${head}print: { paper: 600 x 900 mm }\n`,
    '600 x 900 mm',
  ],
  'margins-not-understood': [
    `${head}print: { margins: [1, 2] }\n`,
    `${head}print: { margins: [10, 10, 10, 10] }\n`,
    '[top, right, bottom, left]',
  ],
  'square-not-understood': [
    `${head}print: { measured: 49 }\n`,
    `${head}print: { measured: [49.5, 50.2] }\n`,
    '[49.5, 50.2]',
  ],
  'sheet-not-read': [`${head}steps: [`, `${head}steps: []`, 'each [ with a ]'],
  'sheet-empty': ['', steps('remove piece: { piece: front }'), '"steps"'],
  'not-a-sheet': ['12', head, '"pattern"'],
  'unknown-alias': [`${head}unit: *mine\n`, `${head}unit: mm\n`, 'Write the value out'],
  'tag-refused': [`${head}unit: !old mm\n`, `${head}unit: mm\n`, 'Take the tag out'],
  'duplicate-key': [`${head}unit: mm\nunit: cm\n`, `${head}unit: cm\n`, 'Keep one'],
  'step-not-understood': [
    `${head}steps:\n  - shorten: { pieces: front, at: hem, by: 12 }\n    true: { edges: [front.hem] }\n`,
    steps('shorten: { pieces: front, at: hem, by: 12 }', 'true: { edges: [front.hem] }'),
    '"- "',
  ],
  'unknown-verb': [steps('shortn: { pieces: front, at: hem, by: 12 }'), shorter('12'), '"shorten"'],
  'sum-not-understood': [
    kept('drop: [1]', '10'),
    kept('drop: 1 cm + 4 cm', 'drop'),
    'spaces round its signs',
  ],
  'value-unknown': [kept('drop: 4 cm', 'dropp'), kept('drop: 4 cm', 'drop'), '"drop"'],
  'figures-not-together': [
    kept('drop: 21 cm', 'drop + 10 %'),
    kept('drop: 21 cm', 'drop + 10 mm'),
    'of one kind',
  ],
  'value-of-other-kind': [kept('drop: 50 %', 'drop'), kept('drop: 50 mm', 'drop'), 'a length'],
  'measure-not-understood': [
    shorter('{ so that: waist of front, is: 10 }'),
    shorter('{ so that: neck opening, is: 580 mm }'),
    'neck opening',
  ],
  'range-not-understood': [
    shorter('{ so that: neck opening, is: [1, 2, 3] }'),
    shorter('{ so that: neck opening, is: [580 mm, 600 mm] }'),
    '[580 mm, 600 mm]',
  ],
  'area-not-understood': [
    shorter('{ so that: area of front, is: 15000 }'),
    shorter('{ so that: area of front, is: 150 cm2 }'),
    '150 cm2',
  ],
  'angle-not-understood': [spread('angle: steep'), spread('angle: 12 deg'), '12 deg'],
  'angle-out-of-range': [spread('angle: 180'), spread('angle: 179'), 'less than 180'],
  'count-not-understood': [spread('by: 1, slashes: 1.5'), spread('by: 1, slashes: 2'), 'whole number'],
  'count-out-of-range': [spread('by: 1, slashes: 100000'), spread('by: 1, slashes: 3'), ' to '],
  'fields-conflict': [spread('by: 1, angle: 1'), spread('by: 1'), 'Keep one'],
  'value-needs-itself': [`${head}let: { a: b, b: a }\n`, `${head}let: { a: b, b: 4 cm }\n`, 'as a figure'],
};

test.each(Object.entries(cases))(
  '%s: written as it is said, it is told no longer',
  (code, [text, mended, word]) => {
    const found = told(text).find(t => t.code === code);
    expect(
      found,
      told(text)
        .map(t => t.code)
        .join(),
    ).toBeDefined();
    expect(found!.remedy).toContain(word);
    expect(told(mended)).toEqual([]);
  },
);

/** Limits that keep a reader safe: what goes beyond them is no sheet that anyone wrote; `hostile-sheet` tries them. */
const limits = ['sheet-too-large', 'sheet-too-deep', 'too-many-aliases', 'too-many-steps'];
/** The faults above it are to be mended; told of measured pieces and of sheets in sheets, tried in `measured` and `let-and-include`. */
const elsewhere = ['more-faults', 'point-not-understood', 'include-not-here', 'include-in-itself'];

test('every remedy of what is written in a sheet is followed in some test', () => {
  const all = [sheetText, sheetFields, sheetValues].flatMap(part => Object.keys(part));
  expect(all.filter(code => !(code in cases || [...limits, ...elsewhere].includes(code)))).toEqual([]);
});
