// Every kind of piece that is made for an edge: drafted, its edge redrawn, refreshed. Oracle: the same draft made only
// after the edge was redrawn; and every seam it is sewn in walks.
import { edgeNames, edgePath, type Pattern, pathLength, pieceNamed, walkSeam } from '@paperhinge/geometry';
import { boundsOfPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { verbs } from '../../../packages/alter/src/verbs.js';
import { readSheet } from '../../../packages/sheet/src/read-sheet.js';
import { stepLine } from '../../../packages/sheet/src/reference/sentence.js';
import { runSheet } from '../../../packages/sheet/src/run-sheet.js';
import { demoPattern } from '../../support/demo-pattern.js';

const run = (name: string, steps: readonly string[]): Pattern =>
  runSheet(
    readSheet(`pattern: here.svg\nsteps:\n${steps.map(s => `  ${s}\n`).join('')}`, { file: 's' }),
    demoPattern(name),
  ).altered;

/** What redraws the edges of each verb's example, its steps as a sheet writes them. */
const redraws: Readonly<Record<string, string>> = {
  'draft band': '- recut neckline: { piece: front, shape: round, depth: 180 }',
  'draft waistband': '- take in: { seam: yoke side, by: 24, from: start, to: end }',
  'draft cuff': '- take in: { seam: underarm, by: 20 }',
  'draft casing': '- take in: { seam: underarm, by: 20 }',
  'draft placket': '- take in: { seam: underarm, by: 12, from: end, to: start }',
  'draft fly': '- take in: { seam: front crotch, by: 10, from: start, to: end }',
  'draft patch pocket': '- shorten: { pieces: [front, back], at: hem, by: 40 }',
  'draft seam pocket': '- take in: { seam: side, by: 40 }',
  'draft collar': '- recut neckline: { piece: front, shape: round, depth: 180 }',
  'draft notched collar': '- let out: { seam: shoulder, by: 12 }',
  'draft hood': '- recut neckline: { piece: front, shape: round, depth: 180 }',
  'draft lining': '- take in: { seam: side, by: 24, from: end, to: start }',
  'draft strip': '- take in: { seam: underarm, by: 20 }',
  'draft binding': '- recut neckline: { piece: front, shape: round, depth: 180 }',
  'draft facing': '- recut neckline: { piece: front, shape: round, depth: 180 }',
  'draft combined facing': '- recut armhole: { pieces: [front, back], lower: 15 }',
  'draft front facing': '- let out: { seam: shoulder, by: 12 }',
  'draft stay': '- recut armhole: { pieces: [front, back], in: 15 }',
  'draft interfacing': '- recut edge: { piece: waistband, edge: upper, out: 5 }',
  'draft godet': '- shorten: { pieces: [skirt front, skirt back], at: hem, by: 60 }',
  'draft flounce': '- take in: { seam: underarm, by: 20 }',
};

/** Drafted to figures of their own: their edges may change, and they keep their size. */
const sizedByFigures = [
  'draft godet',
  'draft cuff',
  'draft placket',
  'draft patch pocket',
  'draft seam pocket',
];

/** Where lines are drawn on what was there before, as a pocket is placed. */
const linesOf = ({ pieces }: Pattern, made: readonly string[]) =>
  pieces
    .filter(({ name }) => !made.includes(name))
    .map(({ name, lines }) => ({
      name,
      lines: lines.map(({ name: line, path }) => {
        const { min, max } = boundsOfPath(path);
        return [line, ...[min.x, min.y, max.x, max.y].map(mm => Math.round(10 * mm) / 10)];
      }),
    }));

/** The sizes of pieces that a draft made, by their names. */
const sizes = (pattern: Pattern, names: readonly string[]) =>
  names.map(name => {
    const piece = pieceNamed(pattern, name);
    const edges = edgeNames(piece).map(edge => [
      edge,
      Math.round(100 * pathLength(edgePath(piece, edge))) / 100,
    ]);
    return { name, edges, area: Math.round(signedArea(outlinePath(piece.outline))) };
  });

test('no verb that drafts a piece for edges is left out', () => {
  const drafting = verbs.map(({ verb }) => verb).filter(verb => verb.startsWith('draft '));
  // Drafted by measures alone, or in one with the piece it is for.
  const others = ['draft circle skirt', 'draft tie', 'draft shawl collar', 'draft slant pocket'];
  expect([...Object.keys(redraws), ...others].toSorted()).toEqual(drafting.toSorted());
});

describe.each(Object.entries(redraws))('%s', (verb, redraw) => {
  test('refreshed, is what it would be drafted as now, and its seams walk', () => {
    const { example } = verbs.find(one => one.verb === verb)!;
    const before = (example.after ?? []).flatMap(s =>
      Object.entries(s).map(([name, step]) => stepLine(name, step)),
    );
    const draft = stepLine(verb, example.step);
    const name = example.pattern;
    const old = run(name, before).pieces;
    const outgrown = run(name, [...before, draft, redraw]);
    const refreshed = run(name, [...before, draft, redraw, '- refresh: {}']);
    const afresh = run(name, [...before, redraw, draft]);
    const made = refreshed.pieces.filter(piece => !old.some(one => one.name === piece.name)).map(p => p.name);
    const ours = made.length > 0 ? made : [String(example.step.name)];
    expect(sizes(refreshed, ours)).toEqual(sizes(afresh, ours));
    expect(linesOf(refreshed, ours)).toEqual(linesOf(afresh, ours));
    if (!sizedByFigures.includes(verb)) expect(sizes(refreshed, ours)).not.toEqual(sizes(outgrown, ours));
    const own = refreshed.seams.filter(({ a, b }) => [...a, ...b].some(run => ours.includes(run.piece)));
    for (const seam of own) expect(walkSeam(refreshed, seam).matches, seam.name).toBe(true);
  });
});

// A slant pocket's mouth is an edge of the piece only once it is cut: what is redrawn then is drawn to again.
test.each([
  ['the mouth further in', '- recut edge: { piece: front, edge: mouth, in: 8 }'],
  ['the mouth curved', '- recut edge: { piece: front, edge: mouth, length: 172 }'],
  ['the mouth slanting more', '- recut edge: { piece: front, edge: mouth, in: [10, 0] }'],
  ['the side taken in', '- take in: { seam: outseam, by: 20 }'],
  ['the waist taken in at the crotch', '- take in: { seam: front crotch, by: 10, from: start, to: end }'],
])('draft slant pocket: refreshed after %s, its seams walk', (_, redraw) => {
  const draft = '- draft slant pocket: { name: pocket, piece: front, waist: waist, side: outseam }';
  const drafted = run('trousers', [draft]);
  const pattern = run('trousers', [draft, redraw, '- refresh: {}']);
  const matching = (of: Pattern) =>
    of.seams.filter(seam => walkSeam(of, seam).matches).map(({ name }) => name);
  // Taken in, the trousers are smaller in the waist than their band.
  const kept = matching(drafted).filter(name => name !== 'waist' || redraw.includes('mouth'));
  expect(matching(pattern)).toEqual(expect.arrayContaining(kept));
  const mouth = (of: Pattern, piece: string) => pathLength(edgePath(pieceNamed(of, piece), 'mouth'));
  expect(mouth(pattern, 'pocket facing')).toBeCloseTo(mouth(pattern, 'front'), 6);
  const [side, facing] = ['pocket side', 'pocket facing'].map(name => pieceNamed(pattern, name));
  expect(pathLength(edgePath(side!, 'bag'))).toBeCloseTo(pathLength(edgePath(facing!, 'bag')), 6);
});
