import { PatternError } from '@paperhinge/geometry';
import { type PhotoTrace, tracePhotos } from '@paperhinge/geometry/trace';
import { describe, expect, test } from 'vitest';
import { has } from '../../print/rendered.js';
import { photograph } from '../../support/photo-scene.js';
import { toldFinding } from '../../support/told.js';
import { facing, held, pocket, smallFloor } from './small-floor.js';

type Colour = readonly [number, number, number];
const painted = (ground: Colour, ...colours: readonly [Colour, Colour]) => ({
  ground,
  pieces: [
    { outline: facing.outline, colour: colours[0] },
    { outline: pocket.outline, colour: colours[1] },
  ],
});
const traced = async (wishes: ReturnType<typeof painted>): Promise<PhotoTrace> =>
  tracePhotos([photograph(await smallFloor(wishes))]);
const codes = ({ findings }: PhotoTrace): readonly string[] => findings.map(f => f.code);

describe.skipIf(!has('pdftoppm'))('pieces on a ground of nearly their colour', { timeout: 300_000 }, () => {
  test('black on nearly black is found, and said to be less true', async () => {
    const trace = await traced(painted([38, 38, 42], [24, 24, 26], [220, 60, 60]));
    expect(trace.pieces).toHaveLength(2);
    expect(held(trace, facing.outline).most).toBeLessThan(0.6);
    const faint = trace.findings.filter(f => f.code === 'piece-faint');
    expect(faint).toHaveLength(1);
    expect(toldFinding(faint[0]!).remedy).toContain('sheet of another colour under it');
  });

  test('a difference of 4 % is still found, and said to be less true', async () => {
    const ground: Colour = [105, 80, 60];
    const nearly = ground.map(v => v * Math.exp(-0.04)) as unknown as Colour;
    const trace = await traced(painted(ground, nearly, [230, 200, 60]));
    expect(trace.pieces).toHaveLength(2);
    expect(held(trace, facing.outline).most).toBeLessThan(0.8);
    expect(codes(trace)).toContain('piece-faint');
  });

  test('what cannot be told from the ground is never passed over: pieces are counted', async () => {
    const trace = await traced(painted([105, 80, 60], [105, 81, 60], [230, 200, 60]));
    expect(trace.pieces).toHaveLength(1);
    // What is clear is not called faint.
    for (const code of ['piece-faint', 'edge-faint', 'floor-too-bright'])
      expect(codes(trace)).not.toContain(code);
    const [counted] = trace.findings.filter(f => f.code === 'pieces-counted');
    expect(toldFinding(counted!)).toMatchObject({
      message: '1 piece was found.',
      remedy: expect.stringContaining('those that are missing'),
    });
  });

  test('a floor so bright that nothing shows on it is told', async () => {
    const bright = painted([252, 252, 252], [240, 244, 252], [60, 60, 60]);
    const outcome = await traced(bright).then(codes, error =>
      error instanceof PatternError ? [error.code] : [String(error)],
    );
    expect(outcome).toContain('floor-too-bright');
  });
});
