// What a good workroom knows, clause by clause, each run on a demo garment: the verb and the fields that do it. A row that
// is refused, leaves an unsound pattern, changes nothing, or leaves a seam that walked out of step without a word, fails.
import { readFileSync } from 'node:fs';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  polyline,
  readPattern,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { verbs } from '../../../packages/alter/src/verbs.js';
import { readSheet } from '../../../packages/sheet/src/read-sheet.js';
import { stepLine } from '../../../packages/sheet/src/reference/sentence.js';
import { runSteps } from '../../../packages/sheet/src/run-steps.js';
import { type State, stateOf } from '../../../packages/sheet/src/state.js';
import { figures, made, seams, sleeves } from './making.js';
import { darts, edges, fullness, lengths } from './shaping.js';

const all = { darts, fullness, lengths, edges, seams, made, sleeves, figures };

const demo = (name: string): Pattern => {
  const [file] = name.split(' ');
  const read = readPattern(readFileSync(new URL(`../../../demos/patterns/${file}.svg`, import.meta.url)), {
    file: name,
  });
  return name === file ? read.pattern : withNeckDrawn(read.pattern);
};
/** A line from 60 mm below the neck to the shoulder, 30 mm from it; a mark 12 mm above the hem's middle. */
function withNeckDrawn(pattern: Pattern): Pattern {
  const front = pieceNamed(pattern, 'front');
  const fold = edgePath(front, 'centre-front'),
    shoulder = edgePath(front, 'shoulder');
  const ends = [pointAlong(fold, Number.POSITIVE_INFINITY), pointAlong(fold, 0)].toSorted(
    (a, b) => a.y - b.y,
  );
  const path = polyline({ x: ends[0]!.x, y: ends[0]!.y + 60 }, pointAlong(shoulder, 30));
  const hem = edgePath(front, 'hem');
  const middle = pointAlong(hem, pathLength(hem) / 2);
  const mark = { kind: 'point', name: 'by hem', at: { x: middle.x, y: middle.y - 12 } } as const;
  const lines = [...front.lines, { kind: 'style', name: 'drawn neck', path } as const];
  return withPiece(pattern, { ...front, lines, marks: [...front.marks, mark] });
}

const starts = new Map<string, State>();
/** A garment is read once. */
function startOf(name: string): State {
  const start = starts.get(name) ?? stateOf(demo(name));
  starts.set(name, start);
  return start;
}

const written = (step: string): string => {
  const verb = verbs.find(one => one.verb === step);
  return verb ? stepLine(verb.verb, verb.example.step) : `- ${step}`;
};

for (const [clause, rows] of Object.entries(all))
  describe(clause, () => {
    test.each(rows)('%s, on the %s', (_, on, ...steps) => {
      const text = `pattern: here.svg\nsteps:\n${steps.map(step => `  ${written(step)}\n`).join('')}`;
      const start = startOf(on);
      const before = start.pattern;
      const done = runSteps(start, readSheet(text, { file: 'row' }).steps);
      const altered = done.at(-1)!.state.pattern;
      validatePattern(altered);
      const told = done.flatMap(({ findings }) => findings.map(({ where }) => where.seam));
      for (const seam of altered.seams) {
        const was = before.seams.find(({ name }) => name === seam.name);
        const isKept = !was || !walkSeam(before, was).matches || walkSeam(altered, seam).matches;
        expect(isKept || told.includes(seam.name), `the ${seam.name} seam is out without a word`).toBe(true);
      }
      expect(done).toHaveLength(steps.length);
      expect(JSON.stringify(altered)).not.toBe(JSON.stringify(before));
    });
  });

test('every verb stands in it', () => {
  const used = new Set(
    Object.values(all)
      .flat()
      .flatMap(([, , ...steps]) => steps.map(step => step.split(':')[0])),
  );
  const others = [
    'set allowance',
    'set seam',
    'true',
    'take in',
    'let out',
    'draft front facing',
    'add fly extension',
  ];
  expect(verbs.map(({ verb }) => verb).filter(verb => !used.has(verb) && !others.includes(verb))).toEqual([]);
});
