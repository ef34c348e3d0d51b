import type { EdgeRole, PieceRole } from '../../pattern/types.js';

/** What an edge of a kind of piece looks like: about so, and give or take. */
export interface EdgeLike {
  /** Absent: an edge that has no role of its own, such as the end of a band. */
  readonly role?: EdgeRole;
  /** What an edge without a role is called. */
  readonly called?: string;
  /** Degrees: where it faces on a piece that stands upright, 0 to the right, 90 down, clockwise. */
  readonly faces: readonly [number, number];
  /** How far its middle lies inside its chord, as a share of that. */
  readonly hollow: readonly [number, number];
  /** Share of the outline, and by what share of itself it varies. */
  readonly share: readonly [number, number];
}

/** A kind of piece: its edges clockwise, as it stands with its centre or its front to the left. */
export interface PieceLike {
  readonly role: PieceRole;
  /** mm: its longer side, and by what share of itself it varies. */
  readonly size: readonly [number, number];
  readonly edges: readonly EdgeLike[];
  /** Drawn as a half on a fold and hardly ever whole. */
  readonly onFold?: true;
}

const edge = (
  role: EdgeRole,
  faces: EdgeLike['faces'],
  hollow: EdgeLike['hollow'],
  share: EdgeLike['share'],
): EdgeLike => ({ role, faces, hollow, share });
/** An edge that has no role of its own, by what it is called. */
const plain = (
  called: string,
  faces: EdgeLike['faces'],
  hollow: EdgeLike['hollow'],
  share: EdgeLike['share'],
): EdgeLike => ({ called, faces, hollow, share });
const straight = [0, 0.025] as const;

const shoulder = (share: number) => edge('shoulder', [-68, 9], straight, [share, 0.45]);
const centre = (share: number) => edge('centre', [180, 6], straight, [share, 0.35]);
const bodiceBelowNeck = [
  shoulder(0.065),
  edge('armhole', [-18, 10], [0.24, 0.06], [0.14, 0.45]),
  edge('side', [0, 9], straight, [0.21, 0.5]),
  edge('hem', [87, 9], [-0.03, 0.06], [0.155, 0.4]),
  centre(0.33),
];

/**
 * Kinds of pieces by what their outlines look like in flat pattern cutting; common practice, no source: read off drafts
 * of the trade's usual proportions.
 */
export const pieceShapes: readonly PieceLike[] = [
  {
    role: 'bodice',
    size: [620, 0.45],
    edges: [edge('neck', [-122, 22], [0.16, 0.06], [0.07, 0.45]), ...bodiceBelowNeck],
  },
  {
    // A neck cut to a V, or the edge of a waistcoat.
    role: 'bodice',
    size: [620, 0.45],
    edges: [edge('neck', [-152, 14], [0.01, 0.05], [0.16, 0.4]), ...bodiceBelowNeck],
  },
  {
    role: 'bodice',
    size: [650, 0.45],
    edges: [
      edge('neck', [-90, 6], [0.25, 0.12], [0.09, 0.45]),
      edge('shoulder', [-68, 9], straight, [0.05, 0.45]),
      edge('armhole', [-18, 10], [0.22, 0.06], [0.09, 0.45]),
      edge('side', [0, 9], straight, [0.17, 0.45]),
      edge('hem', [90, 5], [0, 0.04], [0.2, 0.35]),
      edge('side', [180, 9], straight, [0.17, 0.45]),
      edge('armhole', [-162, 10], [0.22, 0.06], [0.09, 0.45]),
      edge('shoulder', [-112, 9], straight, [0.05, 0.45]),
    ],
  },
  {
    role: 'bodice',
    size: [550, 0.45],
    edges: [
      edge('yoke', [-90, 8], straight, [0.12, 0.4]),
      edge('armhole', [-30, 12], [0.24, 0.06], [0.085, 0.45]),
      edge('side', [-2, 9], straight, [0.26, 0.35]),
      edge('hem', [80, 12], [-0.05, 0.06], [0.17, 0.35]),
      centre(0.34),
    ],
  },
  {
    role: 'yoke',
    size: [200, 0.45],
    edges: [
      edge('neck', [-112, 18], [0.13, 0.06], [0.18, 0.4]),
      edge('shoulder', [-67, 8], straight, [0.165, 0.35]),
      edge('armhole', [9, 9], [0.05, 0.035], [0.185, 0.4]),
      edge('yoke', [90, 7], straight, [0.28, 0.3]),
      centre(0.17),
    ],
  },
  {
    role: 'sleeve',
    size: [520, 0.55],
    edges: [
      edge('cap', [-90, 7], [-0.32, 0.11], [0.35, 0.35]),
      edge('underarm', [8, 8], straight, [0.22, 0.6]),
      edge('hem', [90, 5], [0, 0.03], [0.2, 0.5]),
      edge('underarm', [172, 8], straight, [0.22, 0.6]),
    ],
  },
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
    // Raglan: its armhole runs to the neck.
    role: 'bodice',
    size: [620, 0.45],
    edges: [
      edge('neck', [-115, 22], [0.13, 0.06], [0.06, 0.5]),
      edge('armhole', [-40, 12], [0.05, 0.05], [0.16, 0.35]),
      edge('side', [0, 9], straight, [0.22, 0.45]),
      edge('hem', [87, 9], [-0.02, 0.05], [0.16, 0.35]),
      centre(0.36),
    ],
  },
  {
    role: 'sleeve',
    size: [680, 0.35],
    edges: [
      edge('neck', [-90, 14], [0.02, 0.06], [0.04, 0.6]),
      edge('armhole', [-22, 14], [0.03, 0.05], [0.17, 0.35]),
      edge('underarm', [8, 9], straight, [0.24, 0.5]),
      edge('hem', [90, 7], straight, [0.15, 0.5]),
      edge('underarm', [172, 9], straight, [0.24, 0.5]),
      edge('armhole', [-158, 14], [0.03, 0.05], [0.17, 0.35]),
    ],
  },
  {
    // Sleeve and body in one.
    role: 'bodice',
    size: [750, 0.35],
    edges: [
      edge('neck', [-122, 22], [0.16, 0.06], [0.065, 0.45]),
      edge('shoulder', [-74, 9], straight, [0.2, 0.4]),
      edge('wrist', [8, 14], straight, [0.07, 0.5]),
      edge('side', [45, 18], [0.2, 0.12], [0.28, 0.3]),
      edge('hem', [88, 9], [0, 0.04], [0.13, 0.35]),
      centre(0.28),
    ],
  },
  {
    // The middle of a front or back with a panel seam from the shoulder.
    role: 'bodice',
    size: [700, 0.4],
    edges: [
      edge('neck', [-122, 22], [0.16, 0.06], [0.07, 0.45]),
      edge('shoulder', [-68, 9], straight, [0.04, 0.5]),
      edge('panel', [0, 9], [-0.005, 0.03], [0.4, 0.2]),
      edge('hem', [90, 8], [-0.01, 0.04], [0.1, 0.45]),
      centre(0.38),
    ],
  },
  {
    // The middle of a front or back with a panel seam from the armhole.
    role: 'bodice',
    size: [700, 0.4],
    edges: [
      edge('neck', [-122, 22], [0.16, 0.06], [0.07, 0.45]),
      shoulder(0.06),
      edge('armhole', [-8, 12], [0.06, 0.06], [0.06, 0.5]),
      edge('panel', [2, 12], [-0.03, 0.06], [0.32, 0.25]),
      edge('hem', [90, 8], [-0.01, 0.04], [0.11, 0.45]),
      centre(0.37),
    ],
  },
  {
    // The side of a front or back with a panel seam.
    role: 'bodice',
    size: [560, 0.4],
    edges: [
      edge('armhole', [-45, 20], [0.12, 0.08], [0.09, 0.5]),
      edge('side', [0, 9], straight, [0.36, 0.25]),
      edge('hem', [90, 8], [-0.01, 0.04], [0.12, 0.5]),
      edge('panel', [180, 9], [-0.02, 0.05], [0.42, 0.2]),
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
    // The side of a front or back with a panel seam from the shoulder.
    role: 'bodice',
    size: [600, 0.4],
    edges: [
      edge('shoulder', [-68, 9], straight, [0.045, 0.5]),
      edge('armhole', [-20, 14], [0.2, 0.08], [0.16, 0.4]),
      edge('side', [0, 9], straight, [0.29, 0.3]),
      edge('hem', [90, 8], [-0.01, 0.04], [0.1, 0.5]),
      edge('panel', [180, 9], [-0.02, 0.05], [0.41, 0.2]),
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
      plain('upper', [-90, 4], straight, [0.36, 0.12]),
      plain('end', [0, 4], straight, [0.14, 0.3]),
      plain('lower', [90, 4], straight, [0.36, 0.12]),
      plain('end', [180, 4], straight, [0.14, 0.3]),
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
];
