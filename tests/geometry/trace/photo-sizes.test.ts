import { edgeNames, type Point, pathLength, readPattern } from '@paperhinge/geometry';
import { pathStart, pointAlong } from '@paperhinge/geometry/paths';
import {
  patternsOfTrace,
  type SizeTraced,
  tracePhotos,
  traceScan,
  writeTrace,
} from '@paperhinge/geometry/trace';
import { expect, test } from 'vitest';

import { dotsToMm, inColour, offRing, paper, penLine, scanned } from '../../support/drawn-scan.js';
import {
  type LaidPiece,
  type Pair,
  photograph,
  type SceneCamera,
  seenAt,
} from '../../support/photo-scene.js';
import { refusalOf } from '../../support/told.js';
import { judgedPiece, smallFloor } from './small-floor.js';

/** Half of a body in a size: its corners, and the places of its armhole and neck between them. mm. */
interface Half {
  readonly corners: readonly Pair[];
  /** Closed; the upright edge is the last. */
  readonly ring: readonly Pair[];
}

/** Half a body that grows to the right and downwards; its upright edge lies where that of every size does. */
function half([x, y]: Pair, grown: number, scale = 1): Half {
  const at = (a: number, b: number, dx: number, dy: number): Pair => [
    x + scale * (a + dx * grown),
    y + scale * (b + dy * grown),
  ];
  const corners = [
    at(0, 30, 0, -0.5),
    at(36, 0, 0.3, -0.3),
    at(82, 18, 0.8, -0.2),
    at(104, 84, 1, 0.6),
    at(112, 180, 1.1, 1),
    at(0, 190, 0, 1),
  ];
  const bent = (p: Pair, q: Pair, by: number): readonly Pair[] => {
    const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
    return Array.from({ length: 40 }, (_, i): Pair => {
      const t = i / 40,
        off = by * 4 * t * (1 - t);
      return [p[0] + dx * t - dy * off, p[1] + dy * t + dx * off];
    });
  };
  const bends = [0.18, 0, 0.14, 0, 0.02, 0];
  return {
    corners,
    ring: corners.flatMap((p, i) => bent(p, corners[(i + 1) % corners.length]!, bends[i]!)),
  };
}

/** How far a traced size lies off: 95 % of its points, the worst, and its corners. mm. */
function offOf({ pieces }: Pick<SizeTraced, 'pieces'>, truth: Half) {
  const offs = pieces[0]!.edges
    .flatMap(edge => {
      const length = pathLength(edge);
      return Array.from({ length: 80 }, (_, i) => offRing(pointAlong(edge, (length * i) / 80), truth.ring));
    })
    .sort((a, b) => a - b);
  const corners = pieces[0]!.edges.map(edge => {
    const { x, y } = pathStart(edge);
    return Math.min(...truth.corners.map(([a, b]) => Math.hypot(a - x, b - y)));
  });
  return { most: offs[Math.floor(0.95 * offs.length)]!, worst: offs.at(-1)!, corner: Math.max(...corners) };
}

const inDots = ([x, y]: Pair): Point => ({ x: x * dotsToMm + 2, y: y * dotsToMm - 1 });
const sizes = [0, 8, 16].map(grown => half([20, 20], grown, 0.8));
const called = ['36', '38', '40'];

test('three sizes in one scan, told apart by colour and by dashes, are one pattern in every size', () => {
  const channels = [paper(), paper(), paper()];
  // Red ink takes green and blue from the paper, blue ink red and green, green ink red and blue.
  const inks = [
    [1, 2],
    [0, 1],
    [0, 2],
  ];
  const dashes = [undefined, undefined, [4, 3]] as const;
  sizes.forEach(({ ring }, k) => {
    // What all sizes have in common is drawn once, in black: the upright edge from the top to the largest size's foot.
    const own = ring.slice(0, 5 * 40 + 1);
    for (const c of inks[k]!) penLine(channels[c]!, own, dashes[k]);
  });
  const [top, foot] = [sizes[2]!.corners[0]!, sizes[2]!.corners[5]!];
  for (const channel of channels) penLine(channel, [top, foot]);
  const pens = [
    { colour: 'red', dashed: false },
    { colour: 'blue' },
    { colour: 'green', dashed: true },
  ] as const;
  const trace = traceScan(inColour(channels), {
    dotsToMm,
    at: [sizes[0]!.corners.map(inDots)],
    sizes: pens.map((pen, i) => ({ size: called[i]!, pen })),
  });
  expect(trace.sizes!.map(({ size }) => size)).toEqual(called);
  trace.sizes!.forEach((size, i) => {
    const { most, worst, corner } = offOf(size, sizes[i]!);
    expect(most, called[i]).toBeLessThan(0.5);
    expect(worst, called[i]).toBeLessThan(1);
    expect(corner, called[i]).toBeLessThan(0.7);
  });
  const svg = writeTrace({ patterns: patternsOfTrace('nest', trace), bothLines: false }, 'cutting');
  for (const size of called) {
    const { pattern, sizes: inFile } = readPattern(svg, { size });
    expect(inFile).toEqual(called);
    expect(edgeNames(pattern.pieces[0]!)).toHaveLength(6);
  }
});

test('two sizes of one pen are told apart by their dashes alone', () => {
  const sheet = paper();
  // Nothing in common: the second lies clear of the first all round.
  const [inner, outer] = [half([30, 34], 0, 0.8), half([22, 26], 20, 0.8)];
  penLine(sheet, [...inner.ring, inner.ring[0]!]);
  penLine(sheet, [...outer.ring, outer.ring[0]!], [4, 3]);
  const trace = traceScan(scanned(sheet), {
    dotsToMm,
    at: [inner.corners.map(inDots)],
    sizes: [
      { size: 'S', pen: { dashed: false } },
      { size: 'M', pen: { dashed: true } },
    ],
  });
  expect(offOf(trace.sizes![0]!, inner).worst).toBeLessThan(1);
  const { most, worst } = offOf(trace.sizes![1]!, outer);
  expect(most).toBeLessThan(0.5);
  expect(worst).toBeLessThan(1);
});

test('a size that is not drawn near the corners is refused by its name', () => {
  const sheet = paper();
  penLine(sheet, [...sizes[0]!.ring, sizes[0]!.ring[0]!]);
  const told = refusalOf(() =>
    traceScan(inColour([sheet, sheet, sheet]), {
      dotsToMm,
      at: [sizes[0]!.corners.map(inDots)],
      sizes: [
        { size: 'S', pen: { colour: 'black' } },
        { size: 'M', pen: { colour: 'red' } },
      ],
    }),
  );
  expect(told.code).toBe('size-not-drawn-there');
  expect(told.message).toContain('"M"');
});

/** The dot of a picture that shows a place of the floor (Newton's method on the camera's own way back). */
function dotOf(camera: SceneCamera, [x, y]: Pair): Pair {
  let [u, v] = camera.centre;
  for (let round = 0; round < 20; round++) {
    const [a, b] = seenAt(camera, u, v);
    const [[ax, ay], [bx, by]] = [seenAt(camera, u + 1, v), seenAt(camera, u, v + 1)];
    const [p, q, r, s] = [ax - a, bx - a, ay - b, by - b];
    const det = p * s - q * r;
    u += ((x - a) * s - (y - b) * q) / det;
    v += ((y - b) * p - (x - a) * r) / det;
  }
  return [u, v];
}

/** A pen line along a closed ring, as thin as it is: what lies between two rings. */
const drawn = (ring: readonly Pair[], colour: LaidPiece['colour']): LaidPiece => {
  const sides = [0.3, -0.3].map(off =>
    ring.map((p, i): Pair => {
      const [a, b] = [ring.at(i - 1)!, ring[(i + 1) % ring.length]!];
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const long = Math.hypot(dx, dy);
      return [p[0] - (off * dy) / long, p[1] + (off * dx) / long];
    }),
  );
  const round = [...sides[0]!, sides[0]![0]!, sides[1]![0]!, ...[...sides[1]!].reverse(), sides[0]![0]!];
  return { outline: round.map((p, i) => [p, round[(i + 1) % round.length]!]), colour };
};

test('two colours on paper that was photographed aslant', async () => {
  const nest = [0, 14].map(grown => half([330 - grown, 200 - grown / 2], 2 * grown, 1.2));
  const inks = [
    [190, 30, 40],
    [30, 60, 190],
  ] as const;
  const scene = await smallFloor({
    ground: [236, 234, 228],
    pieces: nest.map(({ ring }, i) => drawn(ring, inks[i]!)),
    size: [2040, 1530],
    tilt: 0.3,
  });
  const clicks = nest[0]!.corners.map(([x, y]): Point => {
    const [u, v] = dotOf(scene.camera, [x, y]);
    return { x: u + 1, y: v - 1 };
  });
  const trace = tracePhotos([photograph(scene)], {
    at: [clicks],
    sizes: [
      { size: 'S', pen: { colour: 'red' } },
      { size: 'M', pen: { colour: 'blue' } },
    ],
  });
  trace.sizes!.forEach((size, i) => {
    // A photographed floor lies as its first sheet does: the outlines are laid on one another first.
    const outline = nest[i]!.ring.map((p, k) => [p, nest[i]!.ring[(k + 1) % nest[i]!.ring.length]!] as const);
    const { most, worst } = judgedPiece(size.pieces[0]!, outline);
    expect(most, size.size).toBeLessThan(0.5);
    expect(worst, size.size).toBeLessThan(1);
  });
});
