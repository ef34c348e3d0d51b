import { trueDart } from '@paperhinge/alter/darts';
import { at, type Piece, pathOf, validatePattern } from '@paperhinge/geometry';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { expect, test } from 'vitest';
import { toldDid } from '../../support/told.js';
import { areaOf, block, dart, depth, expectUntouched, only, patternOf, refusal } from '../hinge/pieces.js';

const x = 100 + depth;
const withDart = (part: Piece['outline']['parts'][number]): Piece => ({
  ...block(),
  outline: { parts: block().outline.parts.map(p => (p.name === 'bust' ? part : p)) },
});
const trued = (piece: Piece) => trueDart(patternOf(piece), { piece: 'block', dart: 'bust' });

test('curved legs are drawn straight, nothing else moves', () => {
  const curved = withDart({
    ...dart('bust', at(x, 185), at(100, 200), at(x, 215)),
    legs: [
      pathOf([at(x, 185), at(180, 185), at(140, 196), at(100, 200)]),
      pathOf([at(100, 200), at(140, 204), at(180, 215), at(x, 215)]),
    ],
  });
  const after = only(trued(curved).pattern);
  expect(areaOf(after)).toBeCloseTo(areaOf(block()), 9);
  expectUntouched(block(), after);
});

test('the shorter leg is drawn on to the length of the other, and its edge to the new end', () => {
  const askew = withDart(dart('bust', at(x, 185), at(100, 200.9), at(x, 215)));
  const done = trued(askew);
  validatePattern(done.pattern);
  const [found] = dartsOf(only(done.pattern));
  const [a, b] = found!.legs.map(({ segments }) => segments[0]!);
  const long = (leg: typeof a) => Math.hypot(leg!.at(-1)!.x - leg![0].x, leg!.at(-1)!.y - leg![0].y);
  // The point lies 0.9 mm low: the upper leg is the longer one.
  const wanted = Math.hypot(depth, 15.9);
  expect(long(a)).toBeCloseTo(wanted, 9);
  expect(long(b)).toBeCloseTo(wanted, 9);
  expect(done.findings.map(f => [f.code, f.where.edge])).toEqual([['dart-end-redrawn', 'side-lower']]);
  expect(toldDid(done)).toBe(
    `The legs of the bust dart of the block are straight now and ${wanted.toFixed(1)} mm long, both; they were ${wanted.toFixed(1)} mm and ${Math.hypot(depth, 14.1).toFixed(1)} mm.`,
  );
});

test('a dart that is true is left, with a word', () => {
  expect(() => trued(block())).toThrow(refusal('dart-is-true', /leave/i));
});
