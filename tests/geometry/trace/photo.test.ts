import { PatternError } from '@paperhinge/geometry';
import { type PhotoTrace, tracePhotos } from '@paperhinge/geometry/trace';
import { describe, expect, test } from 'vitest';
import { has } from '../../print/rendered.js';
import { shapes } from '../../support/photo-floors.js';
import { laid, photograph } from '../../support/photo-scene.js';
import { type FloorWishes, facing, held, pocket, sheetsOf, smallFloor } from './small-floor.js';

const traced = async (wishes?: FloorWishes): Promise<PhotoTrace> =>
  tracePhotos([photograph(await smallFloor(wishes))]);

async function codeOf(work: Promise<unknown>): Promise<string> {
  const error = await work.then(
    () => undefined,
    e => e,
  );
  expect(error).toBeInstanceOf(PatternError);
  return (error as PatternError).code;
}

// A dot is 0.6 mm here, twice that of the bar's twelve megapixels; the bar itself is printed by tests/bench/trace.js.
// Rendering a photograph dot by dot takes its time where other work shares the processor.
describe.skipIf(!has('pdftoppm'))('a photograph of a floor (needs pdftoppm)', { timeout: 300_000 }, () => {
  test('pieces come out within half a millimetre, their corners too, at true scale', async () => {
    const trace = await traced();
    expect(trace.pieces).toHaveLength(2);
    expect(trace.sheets).toHaveLength(4);
    expect(trace.residualMm).toBeLessThan(0.1);
    for (const piece of [facing, pocket]) {
      const { most, worst, length, lengthOff, cornersOff } = held(trace, piece.outline);
      expect(most).toBeLessThan(0.25);
      expect(worst).toBeLessThan(0.6);
      expect(Math.abs(lengthOff)).toBeLessThan(0.001 * length + 0.3);
      for (const off of cornersOff) expect(off).toBeLessThan(0.5);
    }
    // Four corners, and two at the pocket's mouth; its round end is one edge.
    expect(trace.pieces.map(p => p.edges.length).sort()).toEqual([2, 4]);
  });

  test('another place of the camera gives the same pieces', async () => {
    const traces = [
      await traced(),
      await traced({ tilt: 0.55, towards: 4, k1: 0.1, over: [390, 310], distance: 950 }),
    ];
    for (const piece of [facing, pocket]) {
      const [a, b] = traces.map(t => held(t, piece.outline));
      expect(Math.abs(a!.lengthOff - b!.lengthOff)).toBeLessThan(0.8);
      expect(b!.worst).toBeLessThan(0.8);
    }
  });

  test('dark pieces on a light ground, and pieces that differ from it by colour alone', async () => {
    const dark = { outline: facing.outline, colour: [35, 38, 50] as const };
    const red = { outline: pocket.outline, colour: [222, 170, 165] as const };
    const trace = await traced({ ground: [185, 185, 190], pieces: [dark, red] });
    expect(trace.pieces).toHaveLength(2);
    for (const piece of [dark, red]) expect(held(trace, piece.outline).worst).toBeLessThan(0.9);
  });

  test('a sheet half hidden still measures', async () => {
    const cover = {
      outline: laid(shapes.band, [-170, 440], 0),
      colour: [90, 160, 210] as const,
    };
    const trace = await traced({ pieces: [facing, pocket, cover] });
    expect(held(trace, facing.outline).worst).toBeLessThan(0.6);
    expect(held(trace, pocket.outline).worst).toBeLessThan(0.6);
  });

  test('sheets that the printer made smaller measure right once their square is measured', async () => {
    const scene = await smallFloor({ sheets: await sheetsOf([0.98, 0.985]) });
    const picture = photograph(scene);
    const printed = { across: 0.98, down: 0.985 };
    const { lengthOff } = held(tracePhotos([picture], { printed }), facing.outline);
    expect(Math.abs(lengthOff)).toBeLessThan(0.9);
    // Unsaid, everything comes out larger by that much.
    const unsaid = held(tracePhotos([picture]), facing.outline);
    expect(unsaid.lengthOff / unsaid.length).toBeGreaterThan(0.012);
  });

  test('two pictures are joined by the sheets that they share', async () => {
    const near = { distance: 700, tilt: 0.2 };
    const pictures = [
      photograph(await smallFloor({ ...near, over: [330, 300] })),
      photograph(await smallFloor({ ...near, over: [480, 300], towards: 3 })),
    ];
    const trace = tracePhotos(pictures);
    expect(trace.sheets).toHaveLength(4);
    for (const piece of [facing, pocket]) expect(held(trace, piece.outline).worst).toBeLessThan(0.7);
  });

  test('what runs out of the picture is left out and told', async () => {
    const trace = await traced({ over: [400, 420], distance: 700, tilt: 0.1 });
    expect(trace.findings.map(f => f.code)).toContain('piece-cut-off');
  });

  test('stages are told in order, and the work can be stopped at each', async () => {
    const picture = photograph(await smallFloor());
    const stages: string[] = [];
    tracePhotos([picture], { onStage: stage => void stages.push(stage) });
    expect(stages).toEqual(['targets', 'camera', 'floor', 'outlines']);
    const told: (readonly [string, number])[] = [];
    tracePhotos([picture], { onProgress: (stage, share) => void told.push([stage, share]) });
    expect([...new Set(told.map(([stage]) => stage))]).toEqual(stages);
    for (const stage of stages) {
      const shares = told.filter(([own]) => own === stage).map(([, share]) => share);
      expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    }
    expect(told.at(-1)).toEqual(['outlines', 1]);
    // A token of one's own that is turned while the outlines are traced.
    let asked = false;
    const outcome = () =>
      tracePhotos([picture], {
        onProgress: stage => {
          asked ||= stage === 'outlines';
        },
        signal: {
          get aborted() {
            return asked;
          },
        },
      });
    expect(outcome).toThrow(expect.objectContaining({ code: 'work-stopped' }));
    expect(() => tracePhotos([picture], { signal: AbortSignal.abort() })).toThrow(
      expect.objectContaining({ code: 'work-stopped' }),
    );
    const stopped = new Error('stopped');
    expect(() =>
      tracePhotos([picture], {
        onStage: () => {
          throw stopped;
        },
      }),
    ).toThrow(stopped);
  });

  test('what cannot be measured is refused with the reason', async () => {
    const [one, two] = await sheetsOf();
    expect(await codeOf(traced({ sheets: [] }))).toBe('no-target-found');
    expect(await codeOf(traced({ sheets: [one!, two!] }))).toBe('too-few-targets');
    expect(await codeOf(traced({ blur: 9 }))).toBe('picture-blurred');
    // One of the four sheets can just be read: more of them would be no better.
    expect(await codeOf(traced({ blur: 4 }))).toBe('picture-blurred');
    expect(await codeOf(traced({ size: [640, 480] }))).toBe('picture-too-small');
    expect(await codeOf(traced({ pieces: [] }))).toBe('no-piece-found');
  });
});
