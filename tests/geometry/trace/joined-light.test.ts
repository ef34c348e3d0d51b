import { tracePhotos } from '@paperhinge/geometry/trace';
import { describe, expect, test } from 'vitest';
import { has } from '../../print/rendered.js';
import { type LaidPiece, laid, type Pair, photograph } from '../../support/photo-scene.js';
import { held, pocket, smallFloor } from './small-floor.js';

// A telephone sets light and colour anew for every picture it takes.

const corners: readonly Pair[] = [
  [0, 0],
  [290, 0],
  [290, 50],
  [0, 50],
];
/** It reaches from the one picture into the other. */
const belt: LaidPiece = {
  outline: laid(
    corners.map((p, i) => [p, corners[(i + 1) % 4]!]),
    [258, 270],
    0,
  ),
  colour: [60, 90, 160],
};

describe.skipIf(!has('pdftoppm'))('pictures of one floor in light of their own (needs pdftoppm)', () => {
  test('pieces come out whole and true where one picture meets the other, and nothing else is seen there', async () => {
    const near = { pieces: [belt, pocket], distance: 620, tilt: 0.2 };
    const left = photograph(await smallFloor({ ...near, over: [250, 300] })),
      right = photograph(await smallFloor({ ...near, over: [560, 300], towards: 3 }));
    // Darker by half, and bluer.
    const gains = [0.5, 0.55, 0.62, 1];
    const dim = { ...left, rgba: left.rgba.map((v, k) => Math.round(v * gains[k % 4]!)) };
    const trace = tracePhotos([dim, right]);
    expect(trace.pieces).toHaveLength(2);
    for (const { outline } of [belt, pocket]) expect(held(trace, outline).worst).toBeLessThan(0.3);
    expect(trace.findings.map(f => f.code)).toEqual(['trace-truth', 'pieces-counted']);
  });
});
