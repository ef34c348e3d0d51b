import {
  at,
  definePattern,
  definePiece,
  type PatternSpec,
  type PieceSpec,
  polyline,
} from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';

// Plain JavaScript may say anything; what is no word or no figure is refused with a remedy.

const square: PieceSpec = {
  name: 'square',
  outline: [
    { name: 'a', path: polyline(at(0, 0), at(100, 0)) },
    { name: 'b', path: polyline(at(100, 0), at(100, 100)) },
    { name: 'c', path: polyline(at(100, 100), at(0, 0)) },
  ],
};
const edge = (more: object): object => ({
  outline: square.outline.map((part, i) => (i === 0 ? { ...part, ...more } : part)),
});

test('a plain square is let in', () => {
  expect(definePiece(square).name).toBe('square');
});

describe('a piece is refused with', () => {
  test.each<[string, object, string]>([
    ['a kind that is none', edge({ kind: 'hemm' }), 'word-not-understood'],
    ['a role that is none', edge({ role: 'nek' }), 'word-not-understood'],
    ['a corner that is none', edge({ corners: { start: 'round' } }), 'word-not-understood'],
    ['a finish that is none', edge({ finish: 'turned' }), 'word-not-understood'],
    ['topstitching at no number', edge({ topstitch: Number.NaN }), 'length-not-positive'],
    ['interfacing without end', edge({ interfacing: Number.POSITIVE_INFINITY }), 'length-not-positive'],
    ['half a layer', { cutting: { layers: 0.5 } }, 'cut-count'],
    [
      'no number of copies besides',
      { alsoCut: [{ count: Number.NaN, mirrored: false, fabric: 'x' }] },
      'cut-count',
    ],
    ['a stretch that is none', { greatestStretch: 'around' }, 'word-not-understood'],
    ['a role of a piece that is none', { role: 'slev' }, 'word-not-understood'],
    ['a notch style that is none', { notches: [{ edge: 'a', at: 5, style: 'twin' }] }, 'word-not-understood'],
    [
      'a line kind that is none',
      { lines: [{ kind: 'grane', name: 'g', path: polyline(at(0, 0), at(1, 1)) }] },
      'word-not-understood',
    ],
    [
      'a line without end',
      { lines: [{ kind: 'grain', name: 'g', path: { segments: [[at(0, 0), { x: Number.NaN, y: 1 }]] } }] },
      'coordinate-out-of-range',
    ],
    [
      'a mark nowhere',
      { marks: [{ kind: 'point', name: 'm', at: { x: Number.POSITIVE_INFINITY, y: 0 } }] },
      'coordinate-out-of-range',
    ],
  ])('%s', (_, changes, code) => {
    const error = refusalOf(() => definePiece({ ...square, ...changes } as PieceSpec));
    expect(error.code).toBe(code);
    expect(error.where.piece).toBe('square');
    expect(error.remedy).not.toBe('');
  });
});

describe('a pattern is refused with', () => {
  const run = { piece: 'square', edge: 'a', reversed: false };
  const seam = { name: 's', a: [run], b: [{ ...run, edge: 'b' }], ease: { mm: 0 } };
  const zip = { name: 'zip', kind: 'zip', along: run };
  test.each<[string, object, string]>([
    ['a unit that is none', { unit: 'm' }, 'word-not-understood'],
    ['a tolerance of no number', { tolerance: Number.NaN }, 'length-not-positive'],
    ['a cloth of no width', { fabrics: [{ name: 'main', role: 'main', width: 0 }] }, 'length-not-positive'],
    [
      'a cloth that stretches without end',
      { fabrics: [{ name: 'main', role: 'main', stretch: { across: Number.POSITIVE_INFINITY } }] },
      'stretch-out-of-range',
    ],
    ['ease of no number', { seams: [{ ...seam, ease: { mm: Number.NaN } }] }, 'length-out-of-range'],
    ['a way to take it up that is none', { seams: [{ ...seam, takenUp: 'shrunk' }] }, 'word-not-understood'],
    [
      'a part of an edge beyond it',
      { seams: [{ ...seam, a: [{ ...run, part: { from: 50, to: 101 } }] }] },
      'position-off-edge',
    ],
    [
      'a part turned round',
      { seams: [{ ...seam, a: [{ ...run, part: { from: 50, to: 40 } }] }] },
      'position-off-edge',
    ],
    [
      'a part of no number',
      { seams: [{ ...seam, a: [{ ...run, part: { from: Number.NaN, to: 40 } }] }] },
      'pattern-not-usable',
    ],
    ['a fastening that is none', { fastenings: [{ ...zip, kind: 'glue' }] }, 'word-not-understood'],
    ['a fastening of no length', { fastenings: [{ ...zip, length: 0 }] }, 'length-not-positive'],
    ['a fastening nowhere', { fastenings: [{ ...zip, along: { ...run, edge: 'd' } }] }, 'unknown-edge'],
  ])('%s', (_, changes, code) => {
    const spec = { name: 'p', pieces: [definePiece(square)], ...changes } as PatternSpec;
    const error = refusalOf(() => definePattern(spec));
    expect(error.code).toBe(code);
    expect(error.remedy).not.toBe('');
  });

  test('and one that is sound is let in', () => {
    const spec = {
      name: 'p',
      pieces: [definePiece(square)],
      seams: [{ ...seam, a: [{ ...run, part: { from: 0, to: 100 } }] }],
      fastenings: [{ ...zip, length: 80 }],
    } as PatternSpec;
    expect(definePattern(spec).fastenings).toHaveLength(1);
  });
});
