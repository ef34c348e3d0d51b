import { centre, edge, type PieceLike, plain, straight } from './piece-like.js';

const shoulder = (share: number) => edge('shoulder', [-68, 9], straight, [share, 0.45]);
const bodiceBelowNeck = [
  shoulder(0.065),
  edge('armhole', [-18, 10], [0.24, 0.06], [0.14, 0.45]),
  edge('side', [0, 9], straight, [0.21, 0.5]),
  edge('hem', [87, 9], [-0.03, 0.06], [0.155, 0.4]),
  centre(0.33),
];

/**
 * Bodies, yokes and sleeves by what their outlines look like in flat pattern cutting; common practice, no source: read off drafts of the
 * trade's usual proportions.
 */
export const upperBodyShapes: readonly PieceLike[] = [
  {
    role: 'bodice',
    size: [620, 0.45],
    edges: [edge('neck', [-122, 22], [0.16, 0.06], [0.07, 0.45]), ...bodiceBelowNeck],
  },
  {
    // A dress to the knee, wider below.
    role: 'bodice',
    size: [1000, 0.25],
    edges: [
      edge('neck', [-122, 22], [0.16, 0.06], [0.045, 0.45]),
      shoulder(0.05),
      edge('armhole', [-18, 10], [0.24, 0.06], [0.085, 0.4]),
      edge('side', [-5, 9], straight, [0.3, 0.25]),
      edge('hem', [87, 9], [-0.03, 0.06], [0.13, 0.35]),
      centre(0.38),
    ],
  },
  {
    // Cut straight, its sleeves set onto a straight line, as robes are.
    role: 'bodice',
    size: [950, 0.35],
    edges: [
      edge('neck', [-115, 22], [0.16, 0.08], [0.04, 0.5]),
      edge('shoulder', [-78, 9], straight, [0.08, 0.4]),
      edge('armhole', [0, 8], straight, [0.1, 0.35]),
      edge('side', [0, 8], straight, [0.29, 0.3]),
      edge('hem', [89, 8], [-0.01, 0.04], [0.12, 0.35]),
      centre(0.38),
    ],
  },
  {
    // Such a front that wraps over, open from the shoulder to the hem.
    role: 'bodice',
    size: [1000, 0.35],
    edges: [
      edge('shoulder', [-78, 9], straight, [0.075, 0.4]),
      edge('armhole', [0, 8], straight, [0.1, 0.35]),
      edge('side', [0, 8], straight, [0.3, 0.3]),
      edge('hem', [89, 8], [-0.01, 0.04], [0.12, 0.35]),
      plain('front', [-174, 8], [0.01, 0.04], [0.41, 0.2]),
    ],
  },
  {
    // A bodice that wraps over to the waist.
    role: 'bodice',
    size: [500, 0.25],
    edges: [
      edge('shoulder', [-70, 10], straight, [0.09, 0.35]),
      edge('armhole', [-18, 12], [0.22, 0.08], [0.165, 0.3]),
      edge('side', [0, 12], straight, [0.14, 0.35]),
      edge('hem', [88, 10], [-0.01, 0.04], [0.24, 0.25]),
      plain('front', [-152, 14], [0.02, 0.05], [0.36, 0.2]),
    ],
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
    // One that ends at the waist.
    role: 'bodice',
    size: [300, 0.25],
    edges: [
      edge('armhole', [-45, 20], [0.12, 0.08], [0.18, 0.3]),
      edge('side', [0, 9], straight, [0.265, 0.25]),
      edge('hem', [90, 10], [-0.01, 0.04], [0.15, 0.35]),
      edge('panel', [180, 10], [-0.02, 0.05], [0.42, 0.15]),
    ],
  },
  {
    // The front of a waistcoat, its neck running on into its open centre, pointed below.
    role: 'bodice',
    size: [600, 0.25],
    edges: [
      edge('shoulder', [-68, 12], straight, [0.08, 0.35]),
      edge('armhole', [-18, 12], [0.24, 0.07], [0.23, 0.25]),
      edge('side', [0, 9], straight, [0.18, 0.3]),
      edge('hem', [80, 14], [-0.02, 0.05], [0.19, 0.3]),
      plain('point', [125, 20], straight, [0.06, 0.4]),
      plain('front', [-165, 12], [0, 0.05], [0.42, 0.15]),
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
    // The upper half of a sleeve in two pieces.
    role: 'sleeve',
    size: [610, 0.25],
    edges: [
      edge('cap', [-93, 9], [-0.55, 0.16], [0.26, 0.3]),
      edge('underarm', [2, 9], [-0.04, 0.04], [0.33, 0.2]),
      edge('hem', [92, 7], straight, [0.1, 0.4]),
      edge('underarm', [174, 9], [-0.01, 0.05], [0.31, 0.2]),
    ],
  },
  {
    // Its under half.
    role: 'sleeve',
    size: [490, 0.25],
    edges: [
      edge('cap', [-97, 12], [0.2, 0.12], [0.155, 0.35]),
      edge('underarm', [3, 9], [-0.02, 0.04], [0.385, 0.15]),
      edge('hem', [93, 8], straight, [0.08, 0.45]),
      edge('underarm', [173, 9], [0.02, 0.05], [0.365, 0.15]),
    ],
  },
  {
    // The middle of a low-necked front with a panel seam from the armhole.
    role: 'bodice',
    size: [420, 0.4],
    edges: [
      edge('neck', [-148, 16], [0.3, 0.12], [0.2, 0.35]),
      edge('shoulder', [-74, 12], straight, [0.045, 0.5]),
      edge('armhole', [-6, 14], [0.05, 0.06], [0.11, 0.5]),
      edge('panel', [5, 12], [0, 0.06], [0.28, 0.3]),
      edge('hem', [86, 10], [-0.01, 0.04], [0.1, 0.45]),
      centre(0.27),
    ],
  },
  {
    // A body cut high in the leg, as a bathing suit is.
    role: 'bodice',
    size: [700, 0.3],
    edges: [
      edge('neck', [-135, 18], [0.17, 0.09], [0.085, 0.5]),
      edge('shoulder', [-68, 12], straight, [0.04, 0.5]),
      edge('armhole', [-20, 12], [0.25, 0.08], [0.115, 0.4]),
      edge('side', [0, 10], [0.04, 0.06], [0.2, 0.35]),
      edge('hem', [38, 22], [0, 0.15], [0.17, 0.4]),
      edge('inseam', [90, 12], straight, [0.022, 0.6]),
      centre(0.37),
    ],
  },
  {
    // Half of a hood, its face to the right.
    role: 'hood',
    beside: 'neck',
    size: [370, 0.25],
    edges: [
      edge('panel', [-145, 18], [-0.35, 0.15], [0.49, 0.15]),
      edge('opening', [0, 12], [-0.02, 0.05], [0.32, 0.15]),
      edge('neck', [92, 16], [0, 0.08], [0.19, 0.3]),
    ],
  },
];
