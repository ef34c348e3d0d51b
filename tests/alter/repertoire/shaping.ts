import type { Row } from './row.js';

// Darts, fullness, length and level, edges redrawn, each with the steps that do it.

const shift = 'woven-shift',
  dress = 'darted-dress',
  shirt = 'shirt',
  trousers = 'trousers';
const spreadHem = (more: string): string =>
  `spread: { piece: back, from: { edge: hem, at: 1/2 }, to: { edge: shoulder, at: 1/2 }, ${more} }`;
const spreadMany = (more: string): string =>
  `spread: { piece: back, from: { edge: hem, at: [1/4, 3/4] }, to: { edge: shoulder, at: [1/4, 3/4] }, slashes: 4, ${more} }`;
const gathers = (more: string): string =>
  `spread: { piece: sleeve, from: { edge: hem }, to: { edge: cap }, by: 90, slashes: 3, ${more} }`;

export const darts: readonly Row[] = [
  ['closed into an edge', shift, 'close dart: { piece: front, dart: bust, into: hem }'],
  ['closed by a share', shift, 'close dart: { piece: front, dart: bust, into: hem, share: 40 % }'],
  [
    'closed into several edges with shares',
    shift,
    'share dart: { piece: front, dart: bust, among: [{ edge: hem, share: 50 % }, { edge: shoulder, share: 30 % }] }',
  ],
  [
    'closed into another dart',
    dress,
    'join darts: { piece: front, dart: bust, into: under-bust, pivot: bust point }',
  ],
  [
    'moved to any place of any edge, about its point',
    shift,
    'move dart: { piece: front, dart: bust, to: { edge: armhole, at: 1/3 } }',
  ],
  [
    'moved about the bust point',
    shift,
    'move dart: { piece: front, dart: bust, to: { edge: shoulder, at: 1/2 }, pivot: bust point, point back: 25 }',
  ],
  [
    'split: a share of it moved',
    shift,
    'move dart: { piece: front, dart: bust, to: { edge: shoulder }, share: 50 %, name: shoulder dart, pivot: bust point, point back: 25 }',
  ],
  ['combined', dress, 'join darts'],
  ['its point moved to a mark', shift, 'move dart point: { piece: front, dart: bust, to: bust point }'],
  ['its point raised', shift, 'move dart point: { piece: front, dart: bust, up: 15 }'],
  ['its point lowered', shift, 'move dart point: { piece: front, dart: bust, up: -15 }'],
  ['lengthened', shift, 'move dart point: { piece: front, dart: bust, deeper: 15 }'],
  ['shortened', shift, 'move dart point: { piece: front, dart: bust, deeper: -15 }'],
  ['resized', dress, 'resize dart'],
  ...['gathers', 'ease', 'tuck', 'knife pleat', 'box pleat', 'inverted pleat'].map(
    (into): Row => [
      `changed into ${into}`,
      dress,
      `change dart: { piece: front, dart: under-bust, into: ${into} }`,
    ],
  ),
  ['changed into flare', dress, 'change dart: { piece: skirt front, dart: hip, into: flare }'],
  ['a new one opened, of a given intake', shift, 'open dart'],
  [
    'into a seam line: a panel through its point',
    shift,
    'divide: { piece: front, name: side front, from: { dart: bust }, to: { edge: hem, at: 1/2 } }',
  ],
  [
    'into a princess line',
    dress,
    'divide: { piece: back, name: side back, from: { dart: shoulder-blade }, to: { dart: back-waist } }',
  ],
  ['double-pointed', shift, 'add contour dart'],
  ['its legs trued', trousers, 'true dart'],
];

export const fullness: readonly Row[] = [
  ['a wedge by one slash', shift, spreadHem('by: 40')],
  ['a wedge by many', shift, spreadMany('by: 40')],
  ['in parallel', shift, spreadHem('by: 40, hinge: none')],
  ['in parallel, by many', shift, spreadMany('by: 40, hinge: none')],
  ['unequal', shift, 'slash'],
  ['tapered: other amounts at both ends', shift, spreadHem('by: 40, other end: 10')],
  ['hinged at an edge', shift, spreadHem('by: 20, hinge: from')],
  [
    'hinged inside',
    shift,
    'slash: { piece: front, slashes: [{ from: { edge: hem, at: 1/2 }, to: { edge: shoulder, at: 1/2 }, by: 20, pivot: bust point }] }',
  ],
  [
    'gathers by a ratio',
    shift,
    'spread: { piece: sleeve, from: { edge: cap }, to: { edge: hem }, ratio: 130 %, slashes: 4, into: gathers }',
  ],
  ...['knife pleats', 'box pleats', 'inverted pleats', 'tucks'].map(
    (into): Row => [into, shift, gathers(`into: ${into}, name: fold, stitched: 40`)],
  ),
  ...['full', 'three-quarter', 'half', 'quarter'].map(
    (part): Row => [
      `a ${part} circle`,
      shift,
      `draft circle skirt: { name: skirt, part: ${part}, waist: 72 cm, length: 40 cm }`,
    ],
  ),
  ['a flounce', shift, 'draft flounce'],
  ['a godet', dress, 'draft godet'],
  ['a vent', dress, 'add vent'],
  ['a slit', dress, 'leave slit'],
  ['reduced by overlap', shift, spreadHem('by: -30')],
  [
    'what a slash opens, in a dart',
    shift,
    'slash: { piece: back, slashes: [{ from: { edge: hem, at: 1/2 }, to: { edge: shoulder, at: 1/2 }, by: 25, into: dart, name: waist }] }',
  ],
];

export const lengths: readonly Row[] = [
  ['at the hem', shift, 'shorten'],
  ['at a line', shift, 'lengthen: { pieces: [front, back], at: waist, by: 25 }'],
  [
    'at several lines',
    shift,
    'lengthen: { pieces: [front, back], at: waist, by: 15 }',
    'lengthen: { pieces: [front, back], at: hip, by: 15 }',
  ],
  [
    'tapered',
    shift,
    'spread: { piece: back, from: { edge: centre-back, at: 1/2 }, to: { edge: side, at: 1/2 }, by: 15 }',
  ],
  ['a hem curved at the side', shift, 'shape hem: { piece: back, side: 70 }'],
  [
    'high-low',
    shift,
    'shape hem: { piece: front, centre: 90, side: 20 }',
    'shape hem: { piece: back, centre: -60, side: 20 }',
  ],
  ['a shirt tail', shift, 'shape hem: { piece: front, side: 60, matching: yes }'],
  [
    'a hem of given sweep',
    dress,
    'recut edge: { piece: skirt front, edge: side, out: [0, { so that: sweep of skirt front.hem, is: 130 cm }] }',
  ],
  ['a hem at a height from the floor', dress, 'level hem'],
  ['a hem band grown on', trousers, 'add grown-on facing'],
  ['a hem band by itself', shift, 'cut off band'],
];

export const edges: readonly Row[] = [
  ['inset V', shift, 'recut neckline'],
  ...['V', 'round', 'square'].map(
    (shape): Row => [
      `${shape} neckline`,
      shift,
      `recut neckline: { piece: front, shape: ${shape}, depth: 160 }`,
    ],
  ),
  ...['boat', 'scoop', 'sweetheart'].map(
    (shape): Row => [
      `${shape} neckline`,
      shift,
      `recut neckline: { piece: front, shape: ${shape}, depth: ${shape === 'boat' ? 60 : 180} }`,
    ],
  ),
  [
    'a neckline drawn',
    `${shift} with a neckline drawn`,
    'recut neckline: { piece: front, shape: drawn, line: drawn neck }',
  ],
  ['keyhole', shift, 'cut keyhole'],
  ['cowl', shift, 'drape neckline'],
  ['funnel', dress, 'raise neckline'],
  ['a gaping neck into a dart', dress, 'pinch out'],
  [
    'a gaping armhole into a dart',
    dress,
    'pinch out: { piece: front, edge: armhole, at: 1/2, by: 8, into: bust }',
  ],
  ['armhole deeper', shift, 'recut armhole: { pieces: [front, back], lower: 15, matching: yes }'],
  ['armhole shallower', shift, 'recut armhole: { pieces: [front, back], lower: -10 }'],
  ['armhole cut in', shift, 'recut armhole: { pieces: [front, back], in: 15 }'],
  [
    'sleeveless',
    shift,
    'remove piece: { piece: sleeve }',
    'recut armhole: { pieces: [front, back], lower: -10, in: 15 }',
  ],
  [
    'an edge through points',
    `${shift} with a neckline drawn`,
    'recut edge: { piece: front, edge: hem, through: [by hem] }',
  ],
  ['an edge by an offset', shift, 'recut edge: { piece: front, edge: neck, in: 15 }'],
  ['an edge along a drawn line', shift, 'recut edge: { piece: front, edge: hem, line: waist }'],
  ['an edge to a length', shift, 'recut edge: { piece: sleeve, edge: cap, length: 560 }'],
  ['an edge like another', dress, 'recut edge: { piece: front, edge: armhole, like: back.armhole }'],
  [
    'an edge to match its partner',
    shift,
    'shorten: { pieces: [back], at: hem, by: 20 }',
    'match edge: { edge: back.side, at: start }',
  ],
  ['button stand', shift, 'add button stand'],
  ['grown-on facing', trousers, 'add grown-on facing'],
  ['wrap-over', dress, 'wrap over'],
  ['placket', shirt, 'draft placket'],
  ['kimono', shift, 'cut kimono: { seam: armhole, slope: 25, drop: 40 }'],
  ['raglan', shift, 'cut raglan'],
];
