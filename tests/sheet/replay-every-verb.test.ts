// Every verb's example replayed: on the same garment under other names, by a map of names; and out of its own record.
import { type AnyVerb, verbs } from '@paperhinge/alter';
import { edgeNames, edgePath, type Pattern, pathLength } from '@paperhinge/geometry';
import { outlinePath, renamed } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { readSheet } from '../../packages/sheet/src/read-sheet.js';
import { stepLine } from '../../packages/sheet/src/reference/sentence.js';
import { sheetOfRecord } from '../../packages/sheet/src/replay/sheet-of-record.js';
import { runSheet } from '../../packages/sheet/src/run-sheet.js';
import { demoPattern } from '../support/demo-pattern.js';

/** A verb's example, after the steps that it needs, as a sheet. */
const sheetOf = ({ verb, example }: AnyVerb): string =>
  [...(example.after ?? []).flatMap(step => Object.entries(step)), [verb, example.step] as const].reduce(
    (sheet, [name, step]) => `${sheet}  ${stepLine(name, step)}\n`,
    'pattern: here.svg\nsteps:\n',
  );

/** What a maker would measure of a pattern, whatever its things are called: areas and edges, by size. */
function figures({ pieces }: Pattern): readonly number[] {
  const areas = pieces.map(piece => signedArea(outlinePath(piece.outline)));
  const edges = pieces.flatMap(piece => edgeNames(piece).map(edge => pathLength(edgePath(piece, edge))));
  return [...areas, ...edges].toSorted((a, b) => a - b);
}

function expectAlike(is: Pattern, was: Pattern): void {
  const [a, b] = [figures(is), figures(was)];
  expect(a).toHaveLength(b.length);
  for (const [i, figure] of a.entries()) expect(Math.abs(figure - b[i]!)).toBeLessThan(1e-3);
}

/** The pattern with every piece and edge called otherwise, and the map from old names to new. */
function calledOtherwise(pattern: Pattern) {
  const to = Object.fromEntries(
    pattern.pieces.map(
      (piece, i) =>
        [
          piece.name,
          {
            name: `piece ${i}`,
            edges: edgeNames(piece).map((_, k) => `line ${i}${String.fromCharCode(97 + k)}`),
          },
        ] as const,
    ),
  );
  const pieces = Object.fromEntries(pattern.pieces.map(piece => [piece.name, to[piece.name]!.name]));
  const edges = Object.fromEntries(
    pattern.pieces.flatMap(piece =>
      edgeNames(piece).map((edge, k) => [`${piece.name}.${edge}`, to[piece.name]!.edges[k]!]),
    ),
  );
  return { pattern: renamed(pattern, to), names: JSON.stringify({ pieces, edges }) };
}

describe('the example of every verb, replayed', () => {
  test.each(verbs.map(verb => [verb.verb, verb] as const))(
    '%s, under other names and out of its record',
    (_, verb) => {
      const before = demoPattern(verb.example.pattern);
      const first = runSheet(readSheet(sheetOf(verb), { file: 'first' }), before);

      const other = calledOtherwise(before);
      const including = `pattern: here.svg\nsteps:\n  - include: { sheet: first.yaml, names: ${other.names} }\n`;
      const included = (file: string) => ({ file, text: sheetOf(verb) });
      const renamedRun = runSheet(readSheet(including, { file: 'other', included }), other.pattern);
      expectAlike(renamedRun.altered, first.altered);

      const again = readSheet(sheetOfRecord(first.record, 'here.svg'), { file: 'again' });
      expectAlike(runSheet(again, before).altered, first.altered);
    },
  );
});
