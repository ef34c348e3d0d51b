import { cuttingLine, type Piece } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { at, dart, pieceOf, straightEdge } from './pieces.js';

// A dart of 80 degrees beside an edge that rises by 20: the leg's line leaves that edge by 30 degrees, so that its image,
// folded over the leg, never comes to the middle of the intake, 40 degrees off.
const half = 84 / 2;
const waist = (riseBefore: number, riseAfter: number, pressed: 'start' | 'end' | 'open'): Piece => {
  const rise = (degrees: number): number => 120 * Math.tan((degrees * Math.PI) / 180);
  const [a, b] = [at(200 - half, 0), at(200 + half, 0)];
  const [from, to] = [at(a.x - 120, -rise(riseBefore)), at(b.x + 120, -rise(riseAfter))];
  return pieceOf([
    straightEdge('before', from, a),
    dart('dart', a, at(200, 50), b, pressed),
    straightEdge('after', b, to),
    straightEdge('right', to, at(to.x, 300)),
    straightEdge('foot', at(to.x, 300), at(from.x, 300)),
    straightEdge('left', at(from.x, 300), from),
  ]);
};
test.each([
  [0, 0, 'start', false],
  [0, 0, 'end', false],
  [0, 0, 'open', false],
  [0, 20, 'start', false],
  [0, 20, 'end', true],
  [0, 20, 'open', true],
  [20, 0, 'start', true],
  [20, 0, 'end', false],
  [20, 0, 'open', true],
] as const)(
  'with edges that rise by %d and %d degrees, pressed %s, it is cut across: %s',
  (before, after, pressed, isCut) => {
    const codes = cuttingLine(waist(before, after, pressed)).findings.map(f => f.code);
    expect(codes.includes('dart-mouth-bridged')).toBe(isCut);
  },
);
