import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { closeDart } from '@paperhinge/alter/darts';
import { takeIn, trueEdges } from '@paperhinge/alter/edges';
import { spread } from '@paperhinge/alter/fullness';
import { shorten } from '@paperhinge/alter/length';
import {
  checkPattern,
  type EdgeRef,
  type Finding,
  type Pattern,
  pieceNamed,
  readPattern,
} from '@paperhinge/geometry';
import { edgeTruing } from '@paperhinge/geometry/measure';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { toldFinding } from '../../support/told.js';

/** What a remedy says to write: the edges to be trued and, where it says so, the limit. */
function truingIn(
  remedy: string,
): { readonly edges: readonly EdgeRef[]; readonly within?: number } | undefined {
  const written = /true: \{ edges: \[([^\]]*)\](?:, within: ([\d.]+) mm)?/.exec(remedy);
  if (!written) return undefined;
  const edges = written[1]!.split(',').map(text => {
    const [piece, ...edge] = text.trim().split('.');
    return { piece: piece!, edge: edge.join('.') };
  });
  return { edges, ...(written[2] === undefined ? {} : { within: Number(written[2]) }) };
}

/** A finding by what it is and where, its figures apart. */
const key = ({ code, where, about }: Finding): string => JSON.stringify([code, where, about]);

let tried = 0;
/** Follows the remedy of every finding that says to true something, each on the pattern as it was found. */
function followed(pattern: Pattern): readonly string[] {
  return checkPattern(pattern).flatMap(finding => {
    const wish = truingIn(toldFinding(finding).remedy);
    if (!wish) return [];
    tried++;
    const once = trueEdges(pattern, wish);
    // What the usual limit leaves says which limit would do.
    const more = once.findings
      .map(f => /within: ([\d.]+) mm/.exec(toldFinding(f).remedy)?.[1])
      .filter(m => m !== undefined);
    const within = Math.max(0, ...more.map(Number));
    const done = within > 0 ? trueEdges(pattern, { ...wish, within }) : once;
    const left = checkPattern(done.pattern).filter(f => key(f) === key(finding));
    return left.map(
      f =>
        `${toldFinding(f).message} | ${toldFinding(f).remedy} | ${done.findings.map(d => toldFinding(d).message).join()}`,
    );
  });
}

const root = new URL('../../../', import.meta.url);
const drawn = (path: string): Pattern =>
  readPattern(readFileSync(new URL(path, root), 'utf8'), { file: path }).pattern;
const demos = readdirSync(new URL('demos/patterns/', root)).filter(name => name.endsWith('.svg'));
const found = readdirSync(new URL('tests/found/fixtures/', root)).filter(name =>
  existsSync(new URL(`tests/found/fixtures/${name}/pattern.svg`, root)),
);

describe.each([
  ...demos.map(name => `demos/patterns/${name}`),
  ...found.map(name => `tests/found/fixtures/${name}/pattern.svg`),
])('%s', path => {
  test('every remedy that says to true, followed, clears its finding', () => {
    expect(followed(drawn(path))).toEqual([]);
  });
});

describe('after an alteration', () => {
  const shift = shiftPattern();
  const steps: readonly (readonly [string, () => Pattern])[] = [
    ['close dart', () => closeDart(shift, { piece: 'front', dart: 'bust', into: 'hem' }).pattern],
    ['into the side', () => closeDart(shift, { piece: 'front', dart: 'bust', into: 'side-lower' }).pattern],
    [
      'spread',
      () => spread(shift, { piece: 'back', from: { edge: 'hem' }, to: { edge: 'shoulder' }, by: 60 }).pattern,
    ],
    [
      'overlap',
      () =>
        spread(shift, { piece: 'back', from: { edge: 'hem' }, to: { edge: 'shoulder' }, by: -25 }).pattern,
    ],
    [
      'sleeve',
      () => spread(shift, { piece: 'sleeve', from: { edge: 'cap' }, to: { edge: 'hem' }, by: 40 }).pattern,
    ],
    [
      'take in',
      () => takeIn(shift, { seam: 'side', by: 60, from: { share: 0.2 }, to: { share: 0.6 } }).pattern,
    ],
    ['shorten', () => shorten(shift, { pieces: ['front', 'back'], at: 'waist', by: 30 }).pattern],
  ];
  test.each(steps)('%s: every remedy that says to true, followed, clears its finding', (_, made) => {
    expect(followed(made())).toEqual([]);
  });

  test('what the step itself says to true is gone when it was', () => {
    const { pattern, findings } = spread(shift, {
      piece: 'back',
      from: { edge: 'hem' },
      to: { edge: 'shoulder' },
      by: -25,
    });
    const wishes = findings.flatMap(f => truingIn(toldFinding(f).remedy) ?? []);
    expect(wishes.length).toBeGreaterThan(0);
    const trued = wishes.reduce((p, wish) => trueEdges(p, wish).pattern, pattern);
    for (const { edges } of wishes)
      for (const { piece, edge } of edges)
        expect(edgeTruing(pieceNamed(trued, piece), edge)).toEqual({ kinks: [], steps: [] });
  });
});

test('there were remedies to follow', () => {
  expect(tried).toBeGreaterThan(60);
});
