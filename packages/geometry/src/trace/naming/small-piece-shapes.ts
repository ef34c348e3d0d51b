import { centre, edge, type PieceLike, plain, straight } from './piece-like.js';

/**
 * Bands, collars and pockets by what their outlines look like in flat pattern cutting; common practice, no source: read off drafts of the
 * trade's usual proportions.
 */
export const smallPieceShapes: readonly PieceLike[] = [
  {
    role: 'band',
    size: [450, 0.6],
    edges: [
      plain('upper', [-90, 4], straight, [0.45, 0.07]),
      plain('end', [0, 5], straight, [0.05, 0.6]),
      plain('lower', [90, 4], straight, [0.45, 0.07]),
      plain('end', [180, 5], straight, [0.05, 0.6]),
    ],
  },
  {
    // Half of a waistband, on a fold.
    role: 'band',
    onFold: true,
    size: [400, 0.4],
    edges: [
      plain('upper', [-90, 4], straight, [0.44, 0.07]),
      plain('end', [0, 5], straight, [0.06, 0.6]),
      plain('lower', [90, 4], straight, [0.44, 0.07]),
      centre(0.06),
    ],
  },
  {
    // A cuff.
    role: 'band',
    size: [240, 0.25],
    edges: [
      plain('upper', [-90, 4], straight, [0.35, 0.15]),
      plain('end', [0, 4], straight, [0.15, 0.4]),
      plain('lower', [90, 4], straight, [0.35, 0.15]),
      plain('end', [180, 4], straight, [0.15, 0.4]),
    ],
  },
  {
    // A band at the foot of a leg, or a deep one at a wrist.
    role: 'band',
    size: [440, 0.3],
    edges: [
      plain('upper', [-90, 4], straight, [0.4, 0.1]),
      plain('end', [0, 5], straight, [0.1, 0.4]),
      plain('lower', [90, 4], straight, [0.4, 0.1]),
      plain('end', [180, 5], straight, [0.1, 0.4]),
    ],
  },
  {
    // A cuff with rounded corners.
    role: 'band',
    size: [240, 0.25],
    edges: [
      plain('upper', [-90, 5], straight, [0.41, 0.1]),
      plain('round', [90, 5], [-0.27, 0.1], [0.59, 0.08]),
    ],
  },
  {
    role: 'collar',
    beside: 'neck',
    onFold: true,
    size: [200, 0.3],
    edges: [
      plain('outer', [-92, 7], [0.01, 0.03], [0.42, 0.12]),
      plain('end', [2, 22], straight, [0.07, 0.7]),
      edge('neck', [87, 8], [-0.02, 0.03], [0.42, 0.12]),
      centre(0.08),
    ],
  },
  {
    // A deep one.
    role: 'collar',
    beside: 'neck',
    onFold: true,
    size: [250, 0.2],
    edges: [
      plain('outer', [-92, 9], [0.01, 0.025], [0.375, 0.1]),
      plain('end', [2, 22], straight, [0.12, 0.35]),
      edge('neck', [87, 10], [-0.01, 0.025], [0.36, 0.1]),
      centre(0.145),
    ],
  },
  {
    // One that is drawn whole.
    role: 'collar',
    beside: 'neck',
    size: [430, 0.25],
    edges: [
      plain('outer', [-90, 8], [0.01, 0.03], [0.445, 0.06]),
      plain('end', [20, 25], straight, [0.075, 0.35]),
      edge('neck', [90, 8], [-0.02, 0.03], [0.405, 0.06]),
      plain('end', [160, 25], straight, [0.075, 0.35]),
    ],
  },
  {
    // Half of such a collar's under side, seamed behind.
    role: 'collar',
    beside: 'neck',
    inPairs: true,
    size: [250, 0.2],
    edges: [
      plain('outer', [-92, 9], [0.01, 0.025], [0.375, 0.1]),
      plain('end', [2, 22], straight, [0.12, 0.35]),
      edge('neck', [87, 10], [-0.01, 0.025], [0.36, 0.1]),
      centre(0.145),
    ],
  },
  {
    // A flat collar in two halves, laid out round the neck.
    role: 'collar',
    beside: 'neck',
    size: [160, 0.5],
    edges: [
      plain('outer', [-45, 40], [-0.6, 0.25], [0.65, 0.12]),
      edge('neck', [135, 40], [0.3, 0.12], [0.37, 0.2]),
    ],
  },
  {
    // One that runs out to a point in front.
    role: 'collar',
    beside: 'neck',
    size: [175, 0.5],
    edges: [
      plain('outer', [-10, 45], [-0.7, 0.3], [0.6, 0.15]),
      edge('neck', [170, 40], [0.3, 0.12], [0.29, 0.2]),
      plain('end', [-70, 45], [0, 0.05], [0.11, 0.4]),
    ],
  },
  {
    // One whose ends are cut off square, or come to a fold behind.
    role: 'collar',
    beside: 'neck',
    size: [160, 0.5],
    edges: [
      plain('outer', [-45, 40], [-0.3, 0.15], [0.46, 0.15]),
      plain('end', [60, 50], [-0.05, 0.1], [0.13, 0.5]),
      edge('neck', [135, 40], [0.3, 0.12], [0.28, 0.25]),
      plain('end', [-150, 50], [-0.02, 0.1], [0.13, 0.5]),
    ],
  },
  {
    role: 'pocket',
    size: [170, 0.3],
    edges: [
      edge('opening', [-90, 8], straight, [0.24, 0.2]),
      plain('round', [90, 10], [-1.2, 0.4], [0.76, 0.1]),
    ],
  },
  {
    role: 'pocket',
    size: [170, 0.3],
    edges: [
      edge('opening', [-90, 6], straight, [0.24, 0.2]),
      plain('end', [0, 6], straight, [0.26, 0.2]),
      plain('lower', [90, 6], [-0.04, 0.06], [0.24, 0.2]),
      plain('end', [180, 6], straight, [0.26, 0.2]),
    ],
  },
  {
    // Pointed below.
    role: 'pocket',
    size: [160, 0.3],
    edges: [
      edge('opening', [-90, 8], straight, [0.25, 0.15]),
      plain('side', [2, 8], straight, [0.23, 0.25]),
      plain('lower', [65, 20], straight, [0.14, 0.3]),
      plain('lower', [115, 20], straight, [0.14, 0.3]),
      plain('side', [178, 8], straight, [0.23, 0.25]),
    ],
  },
  {
    // Its lower corners cut off.
    role: 'pocket',
    size: [190, 0.5],
    edges: [
      edge('opening', [-90, 8], straight, [0.3, 0.25]),
      plain('side', [0, 8], straight, [0.2, 0.35]),
      plain('corner', [45, 15], straight, [0.06, 0.5]),
      plain('lower', [90, 8], straight, [0.2, 0.35]),
      plain('corner', [135, 15], straight, [0.06, 0.5]),
      plain('side', [180, 8], straight, [0.2, 0.35]),
    ],
  },
  {
    // For both hands, before the belly.
    role: 'pocket',
    size: [330, 0.3],
    edges: [
      plain('upper', [-90, 6], straight, [0.23, 0.25]),
      edge('opening', [-35, 18], [0, 0.1], [0.14, 0.3]),
      plain('side', [0, 8], straight, [0.08, 0.5]),
      plain('lower', [90, 6], straight, [0.33, 0.15]),
      plain('side', [180, 8], straight, [0.08, 0.5]),
      edge('opening', [-145, 18], [0, 0.1], [0.14, 0.3]),
    ],
  },
  {
    // A half of it, on the fold of the front.
    role: 'pocket',
    onFold: true,
    size: [200, 0.3],
    edges: [
      plain('upper', [-90, 6], straight, [0.135, 0.3]),
      edge('opening', [-35, 18], [0, 0.1], [0.2, 0.3]),
      plain('side', [0, 8], straight, [0.12, 0.5]),
      plain('lower', [90, 6], straight, [0.24, 0.2]),
      centre(0.3),
    ],
  },
  {
    // The bag of a pocket in a side seam, as it hangs.
    role: 'pocket',
    size: [270, 0.3],
    edges: [
      edge('opening', [180, 9], straight, [0.33, 0.25]),
      plain('round', [0, 14], [-0.6, 0.2], [0.67, 0.12]),
    ],
  },
];
