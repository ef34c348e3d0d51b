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
    // The bag of a pocket in a side seam, as it hangs.
    role: 'pocket',
    size: [270, 0.3],
    edges: [
      edge('opening', [180, 9], straight, [0.33, 0.25]),
      plain('round', [0, 14], [-0.6, 0.2], [0.67, 0.12]),
    ],
  },
];
