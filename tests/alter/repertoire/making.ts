import { adjustments } from '../../../packages/alter/src/fit/adjust/names.js';
import type { Row } from './row.js';

// Seams, pieces made from an edge or a measure, sleeves, and figures, each with the steps that do it.

const shift = 'woven-shift',
  dress = 'darted-dress',
  skirt = 'yoke-skirt',
  shirt = 'shirt',
  trousers = 'trousers',
  smock = 'smock',
  waistcoat = 'waistcoat';
const bare: readonly string[] = ['remove piece: { piece: collar }', 'remove piece: { piece: stand }'];
const neck = '[front.neck, back.neck]';

export const seams: readonly Row[] = [
  ['divided along a drawn line', shift, 'divide: { piece: front, name: lower front, line: waist }'],
  ['a yoke', dress, 'divide'],
  [
    'a panel',
    dress,
    'divide: { piece: skirt front, name: side front, from: { edge: waist, at: 2/3 }, to: { edge: hem, at: 1/3 } }',
  ],
  ['a band', shift, 'cut off band'],
  [
    'a division that goes on over the seam',
    skirt,
    'divide: { piece: back, name: back panel, from: { edge: side, at: 1/4 }, to: { edge: centre, at: 1/4 }, matching: yes }',
  ],
  ['joined at a seam', waistcoat, 'join pieces'],
  [
    'joined, what does not lie flat kept open',
    skirt,
    'join pieces: { seam: yoke side, up to: 1/2, dart: rest }',
  ],
  ['shoulder forward', shift, 'move seam'],
  ['side to the back', skirt, 'move seam: { seam: side, into: back, by: 15, matching: yes }'],
  ['centre seam to fold', smock, 'seam to fold'],
  ['fold to centre seam', shift, 'fold to seam'],
  ['a whole piece from a half', shift, 'unfold'],
  ['right and left different', trousers, 'separate pair'],
  ['walked and notched', shift, 'add notches'],
  [
    'an edge matched to its partner',
    shift,
    'shorten: { pieces: [back], at: hem, by: 20 }',
    'match edge: { edge: back.side, at: start }',
  ],
];

export const made: readonly Row[] = [
  ['band', shift, 'draft band'],
  [
    'a ring split over a gap',
    shift,
    'recut neckline: { piece: front, shape: inset V, depth: 85, half width: 45 }',
    `draft band: { name: neckband, along: ${neck}, gap: front.inset, ratio: 80 %, width: 56, join: 7 }`,
  ],
  ['straight waistband with underlap', skirt, 'draft waistband'],
  [
    'shaped waistband',
    dress,
    'close dart: { piece: skirt front, dart: hip, into: hem }',
    'cut off band: { edge: skirt front.waist, width: 40, name: front waistband }',
  ],
  ['facing', shift, 'draft facing'],
  [
    'facing over darts',
    dress,
    'draft facing: { name: waist facing, along: [skirt front.waist, skirt back.waist], width: 60, joined: yes }',
  ],
  ['facing of neck and armhole in one', waistcoat, 'draft combined facing'],
  ['binding', shift, 'draft binding'],
  ['strip', shift, 'draft strip'],
  ['interfacing', trousers, 'draft interfacing'],
  ['stay', shift, 'draft stay'],
  ['cuff', shift, 'draft cuff'],
  ['casing with elastic', shift, 'draft casing'],
  ['placket', shirt, 'draft placket'],
  ['patch pocket', shift, 'draft patch pocket'],
  ['in-seam pocket', shift, 'draft seam pocket'],
  ['slant pocket', trousers, 'draft slant pocket'],
  ['tie', smock, 'draft tie'],
  ['strap', shift, 'draft tie: { name: strap, length: 420, width: 20 }'],
  ['loop', trousers, 'draft tie: { name: loop, length: 80, width: 10, count: 5 }'],
  ['flat collar', shift, 'draft collar'],
  ['stand collar', shift, `draft collar: { name: collar, along: ${neck}, kind: stand, width: 35 }`],
  ['shirt collar', shift, `draft collar: { name: collar, along: ${neck}, kind: shirt, width: 45 }`],
  ['shawl collar', shirt, ...bare, 'draft shawl collar'],
  [
    'notched collar',
    shirt,
    ...bare,
    'cut lapel: { piece: front, neck: neck, edge: front-edge, break: 220 mm from neck }',
    'draft notched collar',
  ],
  ['hood', shift, 'draft hood'],
  ['lining with ease pleat', dress, 'draft lining'],
  ['fly', trousers, 'draft fly'],
  [
    'what was made drafted again for its edge',
    shift,
    'draft facing: { name: neck facing, along: [front.neck, back.neck], width: 60 }',
    'recut neckline: { piece: front, shape: round, depth: 160 }',
    'refresh: {}',
  ],
];

export const sleeves: readonly Row[] = [
  ['cap walked into the armhole', shift, 'walk cap'],
  ['cap raised at one seam length', shift, 'change cap: { piece: sleeve, by: 15, keep: seam }'],
  ['cap lowered at one seam length', shift, 'change cap: { piece: sleeve, by: -15, keep: seam }'],
  ['cap raised at one width', shift, 'change cap: { piece: sleeve, by: 15, keep: width }'],
  [
    'ease let in',
    shift,
    'change cap: { piece: sleeve, by: { so that: ease of armhole, is: 28 mm }, keep: width }',
  ],
  [
    'ease taken out',
    shift,
    'change cap: { piece: sleeve, by: { so that: ease of armhole, is: 2 mm }, keep: width }',
  ],
  ['upper arm wider', shift, 'adjust: { for: full upper arm, by: 30 }'],
  [
    'shortened with a band',
    shift,
    'shorten: { pieces: [sleeve], at: hem, by: 250 }',
    'draft strip: { name: sleeve band, along: [sleeve.hem], width: 60, join: 10 }',
  ],
  ...['puff', 'bell', 'bishop', 'flutter'].map(
    (into): Row => [into, shift, `shape sleeve: { piece: sleeve, into: ${into}, by: 100 }`],
  ),
  ['one piece to two', shift, 'divide sleeve'],
  ['elbow dart', shift, 'bend sleeve'],
];

const onTrousers = [
  'full thigh',
  'thin thigh',
  'long crotch',
  'short crotch',
  'long crotch point',
  'short crotch point',
  'full seat',
  'flat seat',
];
export const figures: readonly Row[] = [
  ...adjustments.map((to): Row => {
    const steps =
      to.startsWith('high') && to.endsWith('hip')
        ? ['unfold: { piece: skirt front }', 'unfold: { piece: skirt back }']
        : [];
    const on = onTrousers.includes(to) ? trousers : steps.length > 0 ? dress : shift;
    return [to, on, ...steps, `adjust: { for: ${to}, by: ${/neck|shoulder/.test(to) ? 8 : 20} }`];
  }),
  [
    'full bust without a dart',
    shift,
    'change dart: { piece: front, dart: bust, into: ease }',
    'adjust: { for: full bust, by: 30 }',
  ],
  ['woven to knit', shift, 'refit: { for: knit, by: 60 }'],
  ['knit to woven', shift, 'refit: { for: woven, by: 40 }'],
];
