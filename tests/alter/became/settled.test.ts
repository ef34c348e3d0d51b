import { type Alteration, inWords, perform, type Verb, verbOf } from '@paperhinge/alter';
import {
  at,
  type EdgeRun,
  edgePath,
  line,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { toldFinding } from '../../support/told.js';
import { block, depth, edge, patternOf } from '../hinge/pieces.js';

/** A step as one writes it outside the project: it returns a pattern and says what it did, no more. */
const outside = (alter: (pattern: Pattern) => Alteration): Verb<object, object> =>
  verbOf<object>()({
    verb: 'crop',
    does: 'Cuts a strip off.',
    fields: {},
    sentence: 'Crop it',
    startsAt: {},
    example: { pattern: 'woven-shift', step: {} },
    alter,
  });
const x = 100 + depth;
const run = (name: string, part?: EdgeRun['part']): EdgeRun => ({
  piece: 'block',
  edge: name,
  reversed: false,
  ...(part ? { part } : {}),
});
/** The block with notches, a seam over part of its lower side, and a zip. */
function given(): Pattern {
  const piece: Piece = {
    ...block(),
    notches: [
      { edge: 'side-lower', at: 100, style: 'single' },
      { edge: 'side-lower', at: 380, style: 'single', name: 'hem notch' },
      { edge: 'hem', at: 50, style: 'single' },
    ],
  };
  const other: Piece = { ...block(), name: 'other', madeFor: [{ piece: 'block', edge: 'top' }] };
  return {
    ...patternOf(piece, other),
    seams: [
      {
        name: 'side',
        a: [run('side-lower', { from: 50, to: 385 })],
        b: [run('side-lower')],
        ease: { mm: 0 },
      },
      { name: 'top', a: [run('top')], b: [{ ...run('top'), piece: 'other' }], ease: { mm: 0 } },
    ],
    fastenings: [{ name: 'zip', kind: 'zip', along: run('top') }],
  };
}
/** The lowest 60 mm go; the hem is drawn anew as a seam of another name. */
const cropped = (pattern: Pattern): Pattern => {
  const piece = pieceNamed(pattern, 'block');
  const parts = piece.outline.parts.map(part => {
    if (part.name === 'side-lower') return edge('side-lower', 'seam', line(at(x, 215), at(x, 540)));
    if (part.name === 'hem') return edge('waist', 'seam', line(at(x, 540), at(0, 540)));
    if (part.name === 'centre') return edge('centre', 'fold', line(at(0, 540), at(0, 0)));
    return part;
  });
  return withPiece(pattern, { ...piece, outline: { parts }, notches: piece.notches.slice(0, 2) });
};

describe('a step written outside the project', () => {
  const done = perform(
    outside(p => ({ pattern: cropped(p), did: inWords('Cropped.'), findings: [] })),
    given(),
    {},
  );
  test('tells the notches and edges it lost', () => {
    const told = done.findings.map(f => [f.code, toldFinding(f).message]);
    expect(told).toEqual([
      [
        'notch-cut-away',
        'The notch "hem notch" of the side lower of the block, 380 mm along it, was cut away.',
      ],
      ['notch-cut-away', 'A notch of the hem of the block, 50 mm along it, was cut away.'],
      ['edge-cut-away', 'The hem of the block was cut away altogether.'],
    ]);
  });
  test('has its notches, the parts of its seams and what became of what all the same', () => {
    expect(pieceNamed(done.pattern, 'block').notches).toEqual([
      { edge: 'side-lower', at: 100, style: 'single' },
    ]);
    expect(done.pattern.seams[0]!.a).toEqual([run('side-lower', { from: 50, to: 325 })]);
    expect(done.became!.edges.map(e => e.was.edge)).toEqual(['side-lower', 'hem', 'centre']);
  });
  test('leaves what it did not touch the same object', () => {
    const same = given();
    const nothing = perform(
      outside(p => ({ pattern: p, did: inWords('Looked.'), findings: [] })),
      same,
      {},
    );
    expect(nothing.pattern).toEqual(same);
    expect(nothing.pattern.pieces[0]).toBe(same.pieces[0]);
    expect(nothing.findings).toEqual([]);
  });
  test('that takes an edge away takes its seam and fastening, each with a finding', () => {
    const without = (pattern: Pattern): Pattern => {
      const piece = pieceNamed(pattern, 'block');
      const parts = piece.outline.parts.map(part =>
        part.name === 'top' ? { ...part, name: 'crown' } : part,
      );
      return withPiece(pattern, { ...piece, outline: { parts } });
    };
    const lost = perform(
      outside(p => ({ pattern: without(p), did: inWords('Renamed.'), findings: [] })),
      given(),
      {},
    );
    expect(lost.findings.map(f => f.code)).toEqual(['edge-cut-away', 'seam-gone', 'fastening-gone']);
    expect(lost.pattern.seams.map(s => s.name)).toEqual(['side']);
    expect(lost.pattern.fastenings).toEqual([]);
  });
});

describe('a step that says what became of what', () => {
  const renamed = (pattern: Pattern): Alteration => {
    const piece = pieceNamed(pattern, 'block');
    const parts = piece.outline.parts.map(part => (part.name === 'top' ? { ...part, name: 'crown' } : part));
    const to = pathLength(edgePath(piece, 'top'));
    const was = { piece: 'block', edge: 'top', from: 0, to };
    return {
      pattern: withPiece(pattern, { ...piece, outline: { parts } }),
      did: inWords('Renamed.'),
      findings: [],
      became: { edges: [{ was, now: { ...was, edge: 'crown' } }], things: [] },
    };
  };
  const done = perform(outside(renamed), given(), {});
  test('has its seams, fastenings and what was made for its edges follow', () => {
    expect(done.findings).toEqual([]);
    expect(done.pattern.seams[1]!.a).toEqual([run('crown')]);
    expect(done.pattern.fastenings![0]!.along).toEqual(run('crown'));
    expect(pieceNamed(done.pattern, 'other').madeFor).toEqual([{ piece: 'block', edge: 'crown' }]);
  });
  test('an edge in two: its seam runs over both, backwards where it did', () => {
    const divided = (pattern: Pattern): Alteration => {
      const piece = pieceNamed(pattern, 'block');
      const parts = piece.outline.parts.flatMap(part =>
        part.name === 'top'
          ? [
              edge('left', 'seam', line(at(0, 0), at(60, 0))),
              edge('right', 'seam', line(at(60, 0), at(x, 0))),
            ]
          : [part],
      );
      const was = (from: number, to: number) => ({ piece: 'block', edge: 'top', from, to });
      const now = (name: string, to: number) => ({ piece: 'block', edge: name, from: 0, to });
      return {
        ...renamed(pattern),
        pattern: withPiece(pattern, { ...piece, outline: { parts } }),
        became: {
          edges: [
            { was: was(0, 60), now: now('left', 60) },
            { was: was(60, x), now: now('right', x - 60) },
          ],
          things: [],
        },
      };
    };
    const backwards = given().seams.map(s => ({ ...s, a: s.a.map(r => ({ ...r, reversed: true })) }));
    const both = perform(outside(divided), { ...given(), seams: backwards }, {}).pattern.seams[1]!;
    expect(both.a).toEqual([
      { ...run('right'), reversed: true },
      { ...run('left'), reversed: true },
    ]);
  });
  test('two edges in one: runs that followed each other are one whole run', () => {
    const joined = (pattern: Pattern): Alteration => {
      const piece = pieceNamed(pattern, 'block');
      const parts = piece.outline.parts.flatMap(part =>
        part.name === 'side-lower'
          ? [edge('skirt', 'seam', line(at(x, 215), at(x, 600)), line(at(x, 600), at(0, 600)))]
          : part.name === 'hem'
            ? []
            : [part],
      );
      const span = (name: string, from: number, to: number) => ({ piece: 'block', edge: name, from, to });
      return {
        ...renamed(pattern),
        pattern: withPiece(pattern, { ...piece, outline: { parts }, notches: [] }),
        became: {
          edges: [
            { was: span('side-lower', 0, 385), now: span('skirt', 0, 385) },
            { was: span('hem', 0, x), now: span('skirt', 385, 385 + x) },
          ],
          things: [],
        },
      };
    };
    const seams = [{ name: 'low', a: [run('side-lower'), run('hem')], b: [run('top')], ease: { mm: 0 } }];
    const whole = perform(outside(joined), { ...given(), seams }, {}).pattern.seams[0]!;
    expect(whole.a).toEqual([run('skirt')]);
    const part = [{ ...seams[0]!, a: [run('hem')] }];
    const half = perform(outside(joined), { ...given(), seams: part }, {}).pattern.seams[0]!;
    expect(half.a).toEqual([run('skirt', { from: 385, to: 385 + x })]);
  });
});
