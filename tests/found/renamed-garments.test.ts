import { cautionsFor, easeFindings, orderOfWork, overTheHead } from '@paperhinge/alter';
import { checkPattern, edgeNames, levelGirths, measurePattern, type Pattern } from '@paperhinge/geometry';
import { hemSweep } from '@paperhinge/geometry/measure';
import { printPattern } from '@paperhinge/print';
import { layCloths } from '@paperhinge/print/cloth';
import { describe, expect, test } from 'vitest';
import { demoPattern } from '../support/demo-pattern.js';

// A pattern whose roles are given is the same pattern whatever its pieces, edges, lines and marks are called: nothing looks at a name.

const wearer = { 'bust girth': 920, 'waist girth': 760, 'hip girth': 980, 'head girth': 570 };
const demos = ['woven-shift', 'yoke-skirt', 'trousers', 'shirt', 'waistcoat', 'darted-dress'];

/** The same with every role given, where one was guessed. */
const withRolesGiven = (pattern: Pattern): Pattern =>
  JSON.parse(JSON.stringify(pattern, (key, value) => (key === 'roleGuessed' ? undefined : value)));

/** What pieces, the parts of outlines, lines and marks are called, each with a word of no language for it, as long. */
function nonsenseFor({ pieces }: Pattern): ReadonlyMap<string, string> {
  const names = pieces.flatMap(({ name, title, outline: { parts }, lines, marks }) => [
    name,
    title,
    ...[...parts, ...lines, ...marks].map(thing => thing.name),
  ]);
  const letters = 'qxzvj';
  return new Map(
    [...new Set(names)].map((name, i) => {
      const digits = [...i.toString(letters.length).padStart(3, '0')].map(digit => letters[Number(digit)]);
      return [name, `q${digits.join('')}`.padEnd(name.length, 'q')];
    }),
  );
}

/** Words of the model, which may be names, too: a hem called `hem`. */
const words = ['role', 'kind', 'type', 'finish', 'towards', 'pressed', 'style', 'takenUp', 'fabric'];

/** A value with every text in it that is one of the names told by another. */
const retold = <T>(value: T, names: ReadonlyMap<string, string>): T =>
  JSON.parse(JSON.stringify(value), (key, held) => {
    if (typeof held === 'string') return words.includes(key) ? held : (names.get(held) ?? held);
    if (typeof held !== 'object' || held === null || Array.isArray(held)) return held;
    return Object.fromEntries(Object.entries(held).map(([name, inner]) => [names.get(name) ?? name, inner]));
  });

/** Each word of no language told by the name it stands for, wherever in a text. */
function calledAgain<T>(value: T, names: ReadonlyMap<string, string>): T {
  const back = new Map([...names].map(([name, word]) => [word, name]));
  const text = JSON.stringify(value).replace(/\bq[qxzvj]{3,}\b/g, word => back.get(word)!);
  return JSON.parse(text);
}

function renamed(pattern: Pattern, names: ReadonlyMap<string, string>): Pattern {
  const { name, unit, fabrics, fastenings, seams, ...rest } = pattern;
  // Seams, cloths and the pattern itself keep their names.
  const keep = <T extends { readonly name: string }>(all: readonly T[]) =>
    all.map(one => ({ ...retold(one, names), name: one.name }));
  return {
    ...rest,
    name,
    unit,
    fabrics,
    seams: keep(seams),
    ...(fastenings ? { fastenings: keep(fastenings) } : {}),
    pieces: pattern.pieces.map(piece => ({
      ...retold(piece, names),
      cutting: piece.cutting,
      ...(piece.alsoCut ? { alsoCut: piece.alsoCut } : {}),
    })),
  };
}

/** All that is found out about a garment. */
const foundOut = (pattern: Pattern) => ({
  measures: measurePattern(pattern),
  checks: checkPattern(pattern),
  girths: levelGirths(pattern),
  hems: hemSweep(pattern),
  order: orderOfWork(pattern, [], []),
  cautions: cautionsFor({ pattern, wearer, use: { child: false, sleepwear: false } }),
  ease: easeFindings(pattern, wearer),
  overTheHead: overTheHead({ pattern, wearer, derived: [] }),
  cloth: layCloths(pattern).map(({ cloth, lays, tooWide }) => [cloth, lays.map(l => l.buyMm), tooWide]),
});

describe.each(demos)('%s, called by words of no language', demo => {
  const given = withRolesGiven(demoPattern(demo));
  const names = nonsenseFor(given);
  const nameless = renamed(given, names);

  test('has the same figures, findings, order of work, cautions and cloth', () => {
    expect(new Set(names.values()).size).toBe(names.size);
    for (const piece of nameless.pieces)
      for (const name of [piece.name, ...edgeNames(piece)]) expect(names.has(name)).toBe(false);
    const wanted: Readonly<Record<string, unknown>> = JSON.parse(JSON.stringify(foundOut(given)));
    const found: Readonly<Record<string, unknown>> = calledAgain(foundOut(nameless), names);
    for (const what of Object.keys(wanted)) expect([what, found[what]]).toEqual([what, wanted[what]]);
  });
});

test('and is printed on the same pages', async () => {
  const given = withRolesGiven(demoPattern('woven-shift'));
  const names = nonsenseFor(given);
  const pagesOf = async (pattern: Pattern) =>
    calledAgain((await printPattern(pattern, { paper: 'a4' })).pages, names);
  expect(await pagesOf(renamed(given, names))).toEqual(await pagesOf(given));
});
