// Every verb's example, on its own pattern and on any demo that takes it: what became of everything there was.
import { type AnyVerb, follow, verbs } from '@paperhinge/alter';
import {
  edgeNames,
  edgePath,
  type Pattern,
  PatternError,
  type Piece,
  pathLength,
  type Thing,
} from '@paperhinge/geometry';
import { dartsOf, pleatsOf } from '@paperhinge/geometry/pattern';
import { readSheet, runSteps, type StepDone, stateOf } from '@paperhinge/sheet';
import { expect, test } from 'vitest';
import { stepLine } from '../../../packages/sheet/src/reference/sentence.js';
import { demoPattern } from '../../support/demo-pattern.js';

/** A verb's example, after the steps that it needs, done to a pattern: the last step, and what stood before it. */
function worked({ verb, example }: AnyVerb, pattern: Pattern) {
  const lines = [...(example.after ?? []).flatMap(Object.entries), [verb, example.step] as const];
  const { steps } = readSheet(
    `pattern: here.svg\nsteps:\n${lines.map(([name, step]) => `  ${stepLine(name, step)}\n`).join('')}`,
    { file: 'example.yaml' },
  );
  const done = runSteps(stateOf(pattern), steps);
  return { before: done.at(-2)?.state.pattern ?? pattern, step: done.at(-1)! };
}

const pieceIn = ({ pieces }: Pattern, name: string | undefined): Piece | undefined =>
  pieces.find(piece => piece.name === name);
const lengthOf = (piece: Piece, edge: string): number => pathLength(edgePath(piece, edge));

/** Whether a pattern has what is spoken of. */
function isThere(pattern: Pattern, { seam, piece: name, edge, dart, pleat, line, mark }: Thing): boolean {
  if (seam !== undefined) return pattern.seams.some(s => s.name === seam);
  const piece = pieceIn(pattern, name);
  if (!piece) return false;
  if (edge !== undefined) return edgeNames(piece).includes(edge);
  if (dart !== undefined)
    return (
      dartsOf(piece).some(d => d.name === dart) || piece.lines.some(l => l.kind === 'dart' && l.name === dart)
    );
  if (pleat !== undefined) return pleatsOf(piece).some(p => p.name === pleat);
  if (line !== undefined) return piece.lines.some(l => l.name === line);
  return mark === undefined || piece.marks.some(m => m.name === mark);
}

/** All that can be spoken of in a pattern. */
const thingsIn = (pattern: Pattern): readonly Thing[] => [
  ...pattern.seams.map(({ name }) => ({ seam: name })),
  ...pattern.pieces.flatMap((piece): readonly Thing[] => [
    { piece: piece.name },
    ...edgeNames(piece).map(edge => ({ piece: piece.name, edge })),
    ...dartsOf(piece).map(({ name }) => ({ piece: piece.name, dart: name })),
    ...pleatsOf(piece).map(({ name }) => ({ piece: piece.name, pleat: name })),
    ...piece.lines.filter(l => l.kind !== 'dart').map(({ name }) => ({ piece: piece.name, line: name })),
    ...piece.marks.map(({ name }) => ({ piece: piece.name, mark: name })),
  ]),
];

/** Verbs that set the notches of an edge anew: none of those there were is followed. */
const setAnew = ['walk cap'];

/** What is said of the edges, corners, places and notches of a piece, and does not hold. */
function faultsOfEdges(
  piece: Piece,
  { became, state: { pattern: after }, step, findings }: StepDone,
): readonly string[] {
  const faults: string[] = [];
  for (const edge of edgeNames(piece)) {
    const ref = { piece: piece.name, edge };
    for (const end of ['start', 'end'] as const)
      for (const now of follow(became!, { ...ref, end }))
        if (!isThere(after, { piece: now.piece, edge: now.edge }))
          faults.push(`the ${end} of ${piece.name}.${edge} is not at ${now.piece}.${now.edge}`);
    for (const share of [0, 0.3, 0.5, 0.8, 1])
      for (const now of follow(became!, { ...ref, at: share * lengthOf(piece, edge) })) {
        const there = pieceIn(after, now.piece);
        const isOn = there && edgeNames(there).includes(now.edge) && now.at >= -1e-6;
        if (!isOn || now.at > lengthOf(there, now.edge) + 1e-6)
          faults.push(`${share} of ${piece.name}.${edge} is not at ${now.at} of ${now.piece}.${now.edge}`);
      }
  }
  for (const { edge, at } of setAnew.includes(step.verb) ? [] : piece.notches) {
    const now = follow(became!, { piece: piece.name, edge, at });
    const stands = now.some(place =>
      pieceIn(after, place.piece)?.notches.some(
        n => n.edge === place.edge && Math.abs(n.at - place.at) < 0.01,
      ),
    );
    if (now.length > 0 && !stands && !findings.some(f => f.code === 'notch-cut-away'))
      faults.push(`no notch where that of ${piece.name}.${edge} went`);
  }
  return faults;
}

/** All that is said of what there was and does not hold of what there is, and what there is without a name of its own. */
function faultsOf(before: Pattern, done: StepDone): readonly string[] {
  const { became, state } = done;
  const things = thingsIn(before).flatMap(thing => {
    const now = follow(became!, thing);
    const lost = now.filter(one => !isThere(state.pattern, one));
    // A new edge or seam may take the name of one that is gone.
    const isBack = now.length === 0 && !thing.edge && !thing.seam && isThere(state.pattern, thing);
    return [...lost.map(one => [thing, one]), ...(isBack ? [[thing, 'gone']] : [])].map(f =>
      JSON.stringify(f),
    );
  });
  const names = thingsIn(state.pattern).map(thing => JSON.stringify(thing));
  const twice = names.filter((name, i) => names.indexOf(name) !== i || /:" *"/.test(name));
  return [...things, ...before.pieces.flatMap(piece => faultsOfEdges(piece, done)), ...twice];
}

test.each(verbs.map(verb => [verb.verb, verb] as const))(
  'what became of everything there was: %s',
  (_, verb) => {
    const { before, step } = worked(verb, demoPattern(verb.example.pattern));
    expect(faultsOf(before, step)).toEqual([]);
  },
);

test.each(['woven-shift', 'trousers', 'shirt', 'darted-dress'])(
  'and on every other garment that takes the step: %s',
  name => {
    const pattern = demoPattern(name);
    let taken = 0;
    for (const verb of verbs) {
      let done: ReturnType<typeof worked>;
      try {
        done = worked(verb, pattern);
      } catch (error) {
        expect(error).toBeInstanceOf(PatternError);
        continue;
      }
      taken++;
      expect([verb.verb, faultsOf(done.before, done.step)]).toEqual([verb.verb, []]);
    }
    expect(taken).toBeGreaterThan(8);
  },
);
