import { cuttingLine, edgePath, pieceNamed, walkSeam } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { oncePer, oncePerAll } from '../../packages/geometry/src/once-per.js';
import { shiftPattern } from '../support/shift.js';

describe('what is worked out once', () => {
  test('the same object is asked about once, another like it anew', () => {
    let asked = 0;
    const size = oncePer(({ length }: readonly number[]) => {
      asked++;
      return length;
    });
    const one = [1, 2];
    expect([size(one), size(one), size([1, 2])]).toEqual([2, 2, 2]);
    expect(asked).toBe(2);
  });

  test('nothing at all is known too', () => {
    let asked = 0;
    const check = oncePer((_: object): void => void asked++);
    const thing = {};
    check(thing);
    check(thing);
    expect(asked).toBe(1);
  });

  test('what throws is asked again and throws again', () => {
    const refuse = oncePer((_: object): never => {
      throw new Error('no');
    });
    const thing = {};
    expect(() => refuse(thing)).toThrow('no');
    expect(() => refuse(thing)).toThrow('no');
  });

  test('several keys are known in their order, and a shorter row apart from a longer', () => {
    const row = oncePerAll(
      (...keys: readonly object[]) => keys,
      (...keys) => keys.length,
    );
    const a = {},
      b = {};
    expect([row(a), row(a, b), row(b, a, a), row(a), row(a, b)]).toEqual([1, 2, 3, 1, 2]);
  });
});

describe('what is known of a pattern follows it when it is altered', () => {
  const pattern = shiftPattern();
  const front = pieceNamed(pattern, 'front');
  const parts = front.outline.parts;

  test('the line of an edge is that of the piece given', () => {
    const neck = edgePath(front, 'neck');
    const moved = {
      ...front,
      outline: {
        parts: parts.map(part =>
          part.type === 'edge' && part.name === 'neck'
            ? { ...part, path: { segments: [...part.path.segments].reverse() } }
            : part,
        ),
      },
    };
    expect(edgePath(front, 'neck')).toBe(neck);
    expect(edgePath(moved, 'neck')).not.toBe(neck);
  });

  test('the cutting line is that of the allowances given', () => {
    const wider = {
      ...front,
      outline: {
        parts: parts.map(part =>
          part.type === 'edge' && part.allowance > 0 ? { ...part, allowance: part.allowance + 5 } : part,
        ),
      },
    };
    const altered = withPiece(pattern, wider);
    expect(cuttingLine(front, pattern)).toBe(cuttingLine(front, pattern));
    expect(cuttingLine(wider, altered)).not.toEqual(cuttingLine(front, pattern));
    expect(cuttingLine(wider, altered)).toEqual(
      cuttingLine({ ...wider }, { ...altered, pieces: [...altered.pieces] }),
    );
  });

  test('a seam is walked anew where one of its pieces or another seam is another', () => {
    const seam = pattern.seams.find(s => s.a.some(r => r.piece === 'front'))!;
    const walk = walkSeam(pattern, seam);
    const touched = new Set([...seam.a, ...seam.b].map(r => r.piece));
    const other = pattern.pieces.find(p => !touched.has(p.name))!;
    expect(walkSeam(withPiece(pattern, { ...other }), seam)).toBe(walk);
    expect(walkSeam(withPiece(pattern, { ...front }), seam)).not.toBe(walk);
    expect(walkSeam({ ...pattern, seams: [...pattern.seams] }, seam)).not.toBe(walk);
    expect(walkSeam({ ...pattern, seams: [...pattern.seams] }, seam)).toEqual(walk);
  });
});
