import { centre, edge, type PieceLike, plain, straight } from './piece-like.js';

/** Waist and length of what is cut to a circle, mm, as they usually are; common practice, no source. */
const quarterWaist = 180,
  skirtLength = 600;

/** A quarter of a skirt cut to a circle: a sector of so many degrees with its centre to the left. */
function sector(degrees: number): PieceLike {
  const angle = (degrees * Math.PI) / 180;
  const radius = quarterWaist / angle,
    hem = angle * (radius + skirtLength);
  const whole = quarterWaist + hem + 2 * skirtLength;
  // How far the middle of an arc lies from its chord, as a share of the chord.
  const bow = Math.tan(angle / 4) / 2;
  return {
    role: 'skirt',
    size: [skirtLength + radius * (1 - Math.cos(angle)), 0.35],
    edges: [
      edge('waist', [-90 - degrees / 2, 10], [bow, 0.04], [quarterWaist / whole, 0.35]),
      edge('side', [-degrees, 10], straight, [skirtLength / whole, 0.2]),
      edge('hem', [90 - degrees / 2, 10], [-bow, 0.04], [hem / whole, 0.2]),
      centre(skirtLength / whole),
    ],
  };
}

/**
 * Trousers and skirts by what their outlines look like in flat pattern cutting; common practice, no source: read off drafts of the
 * trade's usual proportions.
 */
export const lowerBodyShapes: readonly PieceLike[] = [
  sector(45),
  sector(90),
  {
    role: 'trouser',
    size: [1040, 0.2],
    edges: [
      edge('waist', [-91, 9], [0.01, 0.03], [0.077, 0.35]),
      edge('outseam', [1, 6], [-0.01, 0.025], [0.41, 0.15]),
      edge('hem', [90, 6], straight, [0.08, 0.4]),
      edge('inseam', [173, 6], [0.04, 0.035], [0.305, 0.2]),
      edge('crotch', [-160, 14], [0.1, 0.05], [0.128, 0.35]),
    ],
  },
  {
    // Shorts.
    role: 'trouser',
    size: [520, 0.35],
    edges: [
      edge('waist', [-91, 9], [0.01, 0.03], [0.14, 0.3]),
      edge('outseam', [1, 7], [-0.01, 0.025], [0.31, 0.2]),
      edge('hem', [90, 7], straight, [0.19, 0.35]),
      edge('inseam', [173, 9], [0.03, 0.04], [0.12, 0.5]),
      edge('crotch', [-160, 14], [0.1, 0.05], [0.22, 0.3]),
    ],
  },
  {
    role: 'skirt',
    size: [640, 0.35],
    edges: [
      edge('waist', [-94, 8], [0.02, 0.035], [0.125, 0.45]),
      edge('side', [-7, 10], [-0.012, 0.025], [0.35, 0.25]),
      edge('hem', [87, 8], [-0.012, 0.03], [0.175, 0.45]),
      centre(0.35),
    ],
  },
  {
    role: 'skirt',
    size: [680, 0.3],
    edges: [
      edge('waist', [-90, 5], [0.03, 0.05], [0.2, 0.4]),
      edge('side', [-7, 9], [-0.012, 0.025], [0.27, 0.3]),
      edge('hem', [90, 5], [-0.03, 0.05], [0.26, 0.4]),
      edge('side', [187, 9], [-0.012, 0.025], [0.27, 0.3]),
    ],
  },
  {
    // A whole leg without an outside seam.
    role: 'trouser',
    size: [960, 0.25],
    edges: [
      edge('waist', [-90, 8], [0, 0.04], [0.13, 0.3]),
      edge('crotch', [-15, 18], [0.12, 0.06], [0.12, 0.35]),
      edge('inseam', [8, 8], [0.03, 0.04], [0.27, 0.25]),
      edge('hem', [90, 7], straight, [0.09, 0.4]),
      edge('inseam', [172, 8], [0.03, 0.04], [0.27, 0.25]),
      edge('crotch', [-165, 18], [0.12, 0.06], [0.12, 0.35]),
    ],
  },
  {
    // Such a leg of shorts or bloomers.
    role: 'trouser',
    size: [380, 0.35],
    edges: [
      edge('waist', [-90, 10], [0, 0.05], [0.24, 0.3]),
      edge('crotch', [-15, 22], [0.12, 0.08], [0.19, 0.3]),
      edge('inseam', [10, 14], straight, [0.06, 0.6]),
      edge('hem', [90, 9], [0, 0.06], [0.28, 0.3]),
      edge('inseam', [170, 14], straight, [0.06, 0.6]),
      edge('crotch', [-165, 22], [0.12, 0.08], [0.18, 0.3]),
    ],
  },
  {
    // A gore.
    role: 'skirt',
    size: [680, 0.3],
    edges: [
      edge('waist', [-90, 5], [-0.03, 0.06], [0.07, 0.45]),
      edge('side', [-7, 7], [-0.01, 0.025], [0.38, 0.15]),
      edge('hem', [90, 5], [-0.05, 0.06], [0.165, 0.4]),
      edge('side', [187, 7], [-0.01, 0.025], [0.38, 0.15]),
    ],
  },
  {
    // A hip yoke.
    role: 'yoke',
    size: [240, 0.35],
    edges: [
      edge('waist', [-97, 8], [0.04, 0.03], [0.28, 0.25]),
      edge('side', [-15, 10], [-0.015, 0.025], [0.2, 0.35]),
      edge('yoke', [85, 8], [-0.023, 0.03], [0.335, 0.25]),
      centre(0.185),
    ],
  },
  {
    // A yoke above the seat of trousers, its centre deeper than its side.
    role: 'yoke',
    inPairs: true,
    beside: 'legs',
    size: [220, 0.3],
    edges: [
      edge('waist', [-92, 10], [0.04, 0.03], [0.365, 0.12]),
      edge('side', [0, 14], straight, [0.08, 0.4]),
      edge('yoke', [88, 10], [-0.04, 0.03], [0.4, 0.12]),
      centre(0.15),
    ],
  },
  {
    // A front leg with the opening of a pocket cut away at the hip.
    role: 'trouser',
    size: [1000, 0.3],
    edges: [
      edge('waist', [-93, 9], straight, [0.045, 0.4]),
      plain('pocket', [-45, 22], [0.12, 0.15], [0.065, 0.4]),
      edge('outseam', [1, 7], [-0.01, 0.03], [0.38, 0.15]),
      edge('hem', [90, 6], straight, [0.075, 0.4]),
      edge('inseam', [173, 6], [0.03, 0.035], [0.31, 0.2]),
      edge('crotch', [-165, 14], [0.1, 0.05], [0.12, 0.35]),
    ],
  },
  {
    // A child's leg.
    role: 'trouser',
    size: [600, 0.25],
    edges: [
      edge('waist', [-90, 9], [0.01, 0.03], [0.11, 0.35]),
      edge('outseam', [1, 7], [0, 0.035], [0.375, 0.15]),
      edge('hem', [90, 7], straight, [0.125, 0.35]),
      edge('inseam', [171, 8], [0.01, 0.035], [0.235, 0.25]),
      edge('crotch', [-165, 14], [0.11, 0.05], [0.16, 0.3]),
    ],
  },
];
