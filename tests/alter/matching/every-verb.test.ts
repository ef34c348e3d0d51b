// Every verb that carries a change to the other side of a seam, on the demos: with `matching` each seam that walked
// still walks; without it the step names the seam that no longer does, where there is one.
import { edgeNamed, edgePath, type Pattern, pathLength, pieceNamed, walkSeam } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { readSheet } from '../../../packages/sheet/src/read-sheet.js';
import { runSheet } from '../../../packages/sheet/src/run-sheet.js';
import { demoPattern } from '../../support/demo-pattern.js';

interface Run {
  readonly before: Pattern;
  readonly after: Pattern;
  /** Codes of what the last step found. */
  readonly codes: readonly string[];
}
/** The steps, the last of which is meant. */
function run(name: string, ...steps: readonly string[]): Run {
  const sheet = (some: readonly string[]) =>
    readSheet(['pattern: here.svg', 'steps:', ...some.map(step => `  - ${step}`)].join('\n'), { file: 's' });
  const before =
    steps.length > 1 ? runSheet(sheet(steps.slice(0, -1)), demoPattern(name)).altered : demoPattern(name);
  const { altered, record } = runSheet(sheet(steps), demoPattern(name));
  return { before, after: altered, codes: record.steps.at(-1)!.findings.map(({ code }) => code) };
}
const matchingSeams = (pattern: Pattern): readonly string[] =>
  pattern.seams.filter(seam => walkSeam(pattern, seam).matches).map(seam => seam.name);
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

/** What the step is without `matching: yes`, the demo, and the piece that is changed besides only with it. */
const rows: readonly (readonly [string, string, string, string])[] = [
  ['shorten', 'darted-dress', 'shorten: { pieces: [skirt front], at: hem, by: 40 }', 'skirt back'],
  ['lengthen', 'darted-dress', 'lengthen: { pieces: [skirt front], at: hem, by: 40 }', 'skirt back'],
  [
    'spread',
    'darted-dress',
    'spread: { piece: skirt front, from: { edge: side, at: 1/2 }, to: { edge: centre, at: 1/2 }, by: 30 }',
    'skirt back',
  ],
  [
    'slash',
    'darted-dress',
    'slash: { piece: skirt front, slashes: [{ from: { edge: side, at: 1/3 }, to: { edge: centre, at: 2/3 }, by: -20 }, { from: { edge: side, at: 2/3 }, to: { edge: centre, at: 1/2 }, by: 30 }] }',
    'skirt back',
  ],
  ['shape hem', 'yoke-skirt', 'shape hem: { piece: back, side: 60 }', 'front'],
  [
    'level hem',
    'darted-dress',
    'level hem: { pieces: [skirt front], from: waist, stands: 104 cm, height: 32 cm }',
    'skirt back',
  ],
  ['recut armhole', 'woven-shift', 'recut armhole: { pieces: [front, back], lower: 12 }', 'sleeve'],
  ['recut armhole', 'woven-shift', 'recut armhole: { pieces: [back], lower: 12 }', 'front'],
  ['take in', 'darted-dress', 'take in: { seam: side, by: 24, from: end, to: start }', 'skirt back'],
  ['take in', 'woven-shift', 'take in: { seam: side, by: 40 }', 'sleeve'],
  ['let out', 'darted-dress', 'let out: { seam: side, by: 40, from: end, to: start }', 'skirt front'],
  ['move seam', 'yoke-skirt', 'move seam: { seam: side, into: back, by: 12 }', 'back yoke'],
  [
    'pinch out',
    'darted-dress',
    'pinch out: { piece: front, edge: waist, at: 1/4, by: 8, into: bust }',
    'skirt front',
  ],
];

/** The step with `matching: yes` in it. */
const matching = (step: string): string => step.replace(/ \}$/, ', matching: yes }');

describe.each(rows)('%s on the %s', (_, name, step, besides) => {
  test('with matching: every seam that walked still walks, and the piece beside is changed', () => {
    const { before, after, codes } = run(name, matching(step));
    expect(matchingSeams(after)).toEqual(expect.arrayContaining([...matchingSeams(before)]));
    expect(codes).not.toContain('sewn-edge-changed');
    expect(codes).not.toContain('nothing-to-match');
    expect(pieceNamed(after, besides).outline).not.toEqual(pieceNamed(before, besides).outline);
  });

  test('without: the step says which seam no longer matches', () => {
    const { before, after, codes } = run(name, step);
    expect(codes).toContain('sewn-edge-changed');
    expect(matchingSeams(after).length).toBeLessThan(matchingSeams(before).length);
    expect(pieceNamed(after, besides).outline).toEqual(pieceNamed(before, besides).outline);
  });
});

// These leave every seam walking whether they are carried over it or not: what they carry is measured itself.
describe('carried over a seam that walks all the same', () => {
  const both = (step: string, name: string) => [run(name, step), run(name, matching(step))] as const;
  const names = ({ pieces }: Pattern): readonly string[] => pieces.map(({ name }) => name);

  test.each([
    [
      'divide: { piece: back, name: back panel, from: { edge: side, at: 1/4 }, to: { edge: centre, at: 1/4 } }',
    ],
    ['cut off band: { edge: back.hem, width: 80, name: back panel, doubled: no }'],
  ])('%s', step => {
    const [alone, matched] = both(step, 'yoke-skirt');
    expect(alone.codes).not.toContain('sewn-edge-changed');
    expect(names(alone.after)).not.toContain('front panel');
    expect(names(matched.after)).toEqual(expect.arrayContaining(['back panel', 'front panel']));
    const parts = (piece: string) =>
      [piece, `${piece} panel`].map(one => lengthOf(matched.after, one, 'side'));
    for (const [i, mm] of parts('back').entries()) expect(mm).toBeCloseTo(parts('front')[i]!, 1);
    expect(matchingSeams(matched.after)).toEqual(
      expect.arrayContaining([...matchingSeams(matched.before), 'back panel', 'front panel']),
    );
  });

  test('notches are carried on to the facing that is sewn to the marked edge', () => {
    const facing = 'draft facing: { name: neck facing, along: [front.neck, back.neck], width: 60 }';
    const step = 'add notches: { seam: neck, count: 3 }';
    const on = (pattern: Pattern) => pieceNamed(pattern, 'neck facing front').notches.length;
    const [alone, matched] = [run('woven-shift', facing, step), run('woven-shift', facing, matching(step))];
    expect(on(alone.after)).toBe(on(alone.before));
    expect(on(matched.after)).toBeGreaterThan(on(matched.before));
    expect(matchingSeams(matched.after)).toEqual(matchingSeams(matched.before));
  });

  test('an allowance is set on what the edge is sewn to', () => {
    const [alone, matched] = both('set allowance: { edges: [sleeve.cap], to: 9 }', 'woven-shift');
    const on = (pattern: Pattern, piece: string) =>
      edgeNamed(pieceNamed(pattern, piece), 'armhole').allowance;
    for (const piece of ['front', 'back']) {
      expect(on(alone.after, piece)).toBe(on(alone.before, piece));
      expect(on(matched.after, piece)).toBe(9);
    }
  });
});

// Hand-worked: 40 mm round the body is 10 off each of four side edges; the sleeve, whose underarm goes on from there, loses
// 10 off each of its two, so that its straight hem is 20 shorter.
test('a side taken in takes as much off each edge of the underarm', () => {
  const { before, after } = run('woven-shift', 'take in: { seam: side, by: 40, matching: yes }');
  const lost = lengthOf(before, 'sleeve', 'hem') - lengthOf(after, 'sleeve', 'hem');
  expect(Math.abs(lost - 20)).toBeLessThan(1);
});

describe('where nothing answers', () => {
  test.each([
    [
      'divide: { piece: sleeve, name: cuff, from: { edge: hem, at: 1/2 }, to: { edge: cap, at: 1/2 } }',
      'nothing-to-match',
    ],
    ['cut off band: { edge: sleeve.hem, width: 50, name: sleeve band }', 'nothing-to-match'],
    ['move seam: { seam: shoulder, into: front, by: 10 }', 'seam-goes-on-nowhere'],
    ['take in: { seam: shoulder, by: 10 }', 'seam-goes-on-nowhere'],
  ])('%s says so', (step, code) => {
    expect(run('woven-shift', matching(step)).codes).toContain(code);
  });

  test('a verb whose change has no counterpart refuses the word', () => {
    expect(() => run('woven-shift', matching('close dart: { piece: front, dart: bust, into: hem }'))).toThrow(
      expect.objectContaining({ code: 'unknown-field' }),
    );
  });
});
