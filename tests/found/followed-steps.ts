// What the tables of remedies share: steps or a call that are told something, and the same done as the remedy says.
import { readdirSync, readFileSync } from 'node:fs';
import {
  type Finding,
  type Pattern,
  PatternError,
  pieceNamed,
  readPattern,
  type Where,
} from '@paperhinge/geometry';
import { patternOfSheet, readSheet, runSheet } from '@paperhinge/sheet';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { expect, test } from 'vitest';
import { faultsIn } from '../../packages/sheet/src/faults.js';
import { rectangle } from '../support/polygon-piece.js';

export interface Said {
  readonly code: string;
  readonly remedy: string;
  readonly where: Where;
  /** Nothing was done. */
  readonly refused?: true;
}
/** All that a maker is told where something is done. */
export type Doing = () => readonly Said[];
/** What is told something, a word of the remedy, and the same done as the remedy says. */
export type FollowedCase = readonly [bad: Doing, says: string, mended: Doing];

const words = wordsOf(english, 'mm');
const saidOf = (findings: readonly Finding[]): readonly Said[] =>
  findings.map(f => ({ code: f.code, remedy: words.finding(f).remedy, where: f.where }));

/** What a call tells, by its findings or by being refused. */
export const work =
  (call: () => unknown): Doing =>
  () => {
    try {
      const done = call() as { readonly findings?: readonly Finding[] } | readonly Finding[] | undefined;
      return saidOf(
        Array.isArray(done) ? done : ((done as { findings?: readonly Finding[] })?.findings ?? []),
      );
    } catch (error) {
      if (!(error instanceof PatternError)) throw error;
      return faultsIn(error).map(f => ({
        code: f.code,
        remedy: words.error(f).remedy,
        where: f.where,
        refused: true,
      }));
    }
  };

/** What the steps of a sheet tell of the pattern at its end; facts of the garment stand above them. */
export const steps = (pattern: Pattern, ...lines: readonly string[]): Doing =>
  work(() => runOf(pattern, lines).findings);

/** What each step tells as it is done. */
export const eachStep = (pattern: Pattern, ...lines: readonly string[]): Doing =>
  work(() => runOf(pattern, lines).steps.flatMap(step => step.findings));

function runOf(pattern: Pattern, lines: readonly string[]) {
  const above = lines.filter(line => /^(wearer|fabrics|let|opening|seams|pieces): /.test(line));
  const below = lines.filter(line => !above.includes(line)).map(line => `  - ${line}`);
  const sheet = readSheet(['pattern: p.svg', ...above, 'steps:', ...below].join('\n'), {
    file: 'sheet.yaml',
  });
  return runSheet(sheet, pattern);
}

/** What a sheet tells of a drawing, read and done. */
export const sheetOf = (text: string, drawing: string): Doing =>
  work(() => {
    const sheet = readSheet(text, { file: 'sheet.yaml' });
    const read = patternOfSheet(sheet, new TextEncoder().encode(drawing), 'p.svg');
    return runSheet(sheet, read.pattern, { readFindings: read.findings }).findings;
  });

const root = new URL('../../', import.meta.url);
export const demo = (name: string): Pattern =>
  readPattern(readFileSync(new URL(`demos/patterns/${name}.svg`, root)), { file: `${name}.svg` }).pattern;

/** A panel 300 mm wide and 400 mm high whose bottom is its hem and whose left edge is its fold. */
export const panel = (name = 'panel') => {
  const plain = rectangle(name, 300, 400, {
    lines: [
      { kind: 'grain', name: 'grain', path: { segments: [[point(40, 350), point(40, 50)]] } },
      { kind: 'level', name: 'waist', path: { segments: [[point(0, 200), point(300, 200)]] } },
    ],
  });
  const kinds: Readonly<Record<string, 'hem' | 'fold'>> = { bottom: 'hem', left: 'fold' };
  return {
    ...plain,
    outline: {
      parts: plain.outline.parts.map(part => {
        const kind = kinds[part.name];
        return part.type !== 'edge' || kind === undefined
          ? part
          : { ...part, kind, allowance: kind === 'fold' ? 0 : part.allowance };
      }),
    },
  };
};
const point = (x: number, y: number) => ({ x, y });

/** A pattern with one piece changed. */
export const withPiece = (
  pattern: Pattern,
  name: string,
  change: (piece: ReturnType<typeof pieceNamed>) => ReturnType<typeof pieceNamed>,
): Pattern => ({
  ...pattern,
  pieces: pattern.pieces.map(piece => (piece.name === name ? change(pieceNamed(pattern, name)) : piece)),
});

/** Each remedy of a table is followed, and what it was told for is told no longer there. */
export function followAll(cases: Readonly<Record<string, FollowedCase>>): void {
  test.each(Object.entries(cases))(
    '%s: done as it is said, it is told no longer',
    (key, [bad, says, mended]) => {
      const code = key.split(' ')[0]!;
      const found = bad().find(f => f.code === code);
      expect(
        found,
        bad()
          .map(f => `${f.code} (${f.remedy})`)
          .join('\n'),
      ).toBeDefined();
      expect(found!.remedy).toContain(says);
      expect(
        mended().filter(f => f.refused || (f.code === code && f.where.piece === found!.where.piece)),
      ).toEqual([]);
    },
  );
}

/** Codes that tests of remedies quote in these folders: a reader or a verb added tomorrow brings its own. */
export const toldIn = (...parts: readonly string[]): ReadonlySet<string> =>
  new Set(
    parts.flatMap(part => {
      const place = new URL(`../${part}/`, import.meta.url);
      return readdirSync(place)
        .filter(name => name.endsWith('.test.ts'))
        .map(name => readFileSync(new URL(name, place), 'utf8'))
        .filter(text => /remed|mend/.test(text))
        .flatMap(text => [...text.matchAll(/'([a-z]+(?:-[a-z0-9]+)+)'/g)].map(([, code]) => code!));
    }),
  );
/** What their own test refuses and mends beside one another ("what is refused, each with its remedy"). */
const ofTheirVerbs = toldIn('alter/operations', 'alter/derive');

/** Every code of some tables of words is followed here, in the test of its own verb, or left out by name. */
export function completeOver(
  tables: readonly object[],
  cases: Readonly<Record<string, FollowedCase>>,
  left: readonly string[],
): void {
  test('every remedy is followed, or left out for a reason', () => {
    const all = tables.flatMap(table => Object.keys(table));
    const followed = Object.keys(cases).map(key => key.split(' ')[0]!);
    const answered = new Set([...followed, ...left, ...ofTheirVerbs]);
    expect(all.filter(code => !answered.has(code))).toEqual([]);
    expect(left.filter(code => followed.includes(code) || !all.includes(code))).toEqual([]);
  });
}
