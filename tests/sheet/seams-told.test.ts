// Both sides of every seam: whatever a verb's worked example does to an edge that is sewn to another, the step names the
// seam that no longer matches, and leaves no edge unsewn without saying so.
import { readFileSync } from 'node:fs';
import { verbs } from '@paperhinge/alter';
import { edgeNamed, edgeNames, type Pattern, readPattern, type Seam, walkSeam } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { readSheet } from '../../packages/sheet/src/read-sheet.js';
import { stepLine } from '../../packages/sheet/src/reference/sentence.js';
import { runSteps } from '../../packages/sheet/src/run-steps.js';
import { stateOf } from '../../packages/sheet/src/state.js';

/** A garment and the steps done to it, the last of which is looked at. */
interface Done {
  readonly pattern: string;
  readonly steps: readonly string[];
}
const examples = verbs.map(({ verb, example }): readonly [string, Done] => {
  const lines = [...(example.after ?? []).flatMap(Object.entries), [verb, example.step] as const];
  return [
    verb,
    { pattern: example.pattern, steps: lines.map(([name, step]) => stepLine(name, step).slice(2)) },
  ];
});

/** Steps on one side of a seam alone, that must name it. */
const onesided: readonly (readonly [says: string, seam: string, done: Done])[] = [
  [
    'a piece shortened by itself at a line',
    'side',
    { pattern: 'woven-shift', steps: ['shorten: { pieces: [front], at: waist, by: 20 mm }'] },
  ],
  [
    'a piece lengthened by itself at the hem',
    'skirt side',
    { pattern: 'darted-dress', steps: ['lengthen: { pieces: [skirt front], at: hem, by: 30 mm }'] },
  ],
  [
    'fullness at a waist',
    'front waist',
    {
      pattern: 'darted-dress',
      steps: [
        'spread: { piece: skirt front, from: { edge: waist, at: 1/2 }, to: { edge: hem, at: 1/2 }, by: 40 mm, hinge: to }',
      ],
    },
  ],
  [
    'a dart closed that a seam counts on',
    'front waist',
    { pattern: 'darted-dress', steps: ['resize dart: { piece: skirt front, dart: hip, to: 10 mm }'] },
  ],
  [
    'an edge redrawn outwards',
    'inseam',
    { pattern: 'trousers', steps: ['recut edge: { piece: front, edge: inseam, out: [0 mm, 25 mm] }'] },
  ],
  [
    'a neck recut that a collar is sewn to',
    'stand',
    { pattern: 'shirt', steps: ['recut edge: { piece: front, edge: neck, in: 15 mm }'] },
  ],
  [
    'a hem shaped on one side',
    'side',
    { pattern: 'yoke-skirt', steps: ['shape hem: { piece: front, side: -60 mm, centre: 0 mm }'] },
  ],
  [
    'an armhole cut deeper under its sleeve',
    'armhole',
    { pattern: 'shirt', steps: ['recut armhole: { pieces: [front, back], lower: 20 mm, in: 0 mm }'] },
  ],
  [
    'a sleeve made narrower in its cap',
    'armhole',
    { pattern: 'woven-shift', steps: ['change cap: { piece: sleeve, by: 20 mm, keep: width }'] },
  ],
];

function worked({ pattern: name, steps: lines }: Done) {
  const file = new URL(`../../demos/patterns/${name}.svg`, import.meta.url);
  const { pattern } = readPattern(readFileSync(file), { file: name });
  const { steps } = readSheet(`pattern: p.svg\nsteps:\n${lines.map(line => `  - ${line}\n`).join('')}`, {
    file: 'x',
  });
  const done = runSteps(stateOf(pattern), steps);
  return {
    before: done.at(-2)?.state.pattern ?? pattern,
    after: done.at(-1)!.state.pattern,
    findings: done.at(-1)!.findings,
  };
}
const matches = (pattern: Pattern, seam: Seam): boolean => walkSeam(pattern, seam).matches;

describe.each(examples)('%s', (_, example) => {
  const { before, after, findings } = worked(example);
  const warned = findings.filter(f => f.severity !== 'note');
  const named = (name: string) =>
    warned.some(
      f => f.where.seam === name || JSON.stringify(f.about).includes(JSON.stringify({ seam: name })),
    );

  test('names each seam that it leaves unlike', () => {
    const unlike = after.seams.filter(seam => {
      const was = before.seams.find(other => other.name === seam.name);
      return !matches(after, seam) && (was === undefined || matches(before, was));
    });
    expect(unlike.map(seam => [seam.name, named(seam.name)])).toEqual(unlike.map(seam => [seam.name, true]));
  });

  test('leaves no edge that was sewn unsewn without naming its seam', () => {
    const isLeft = ({ piece, edge }: Seam['a'][number]): boolean => {
      const now = after.pieces.find(p => p.name === piece);
      if (!now || !edgeNames(now).includes(edge) || edgeNamed(now, edge).kind !== 'seam') return false;
      // Open on purpose, as the front of a garment.
      if (edgeNamed(now, edge).role === 'opening') return false;
      return !after.seams.some(({ a, b }) =>
        [...a, ...b].some(run => run.piece === piece && run.edge === edge),
      );
    };
    const gone = before.seams.filter(seam => !after.seams.some(other => other.name === seam.name));
    const open = gone.filter(({ a, b }) => [...a, ...b].some(isLeft));
    expect(open.map(seam => [seam.name, named(seam.name)])).toEqual(open.map(seam => [seam.name, true]));
  });
});

test.each(onesided)('%s: the step names the %s seam', (_, seam, done) => {
  const { before, after, findings } = worked(done);
  expect(matches(before, before.seams.find(s => s.name === seam)!)).toBe(true);
  expect(matches(after, after.seams.find(s => s.name === seam)!)).toBe(false);
  const told = findings.filter(f => f.code === 'sewn-edge-changed').map(f => f.where.seam);
  expect(told).toContain(seam);
});
