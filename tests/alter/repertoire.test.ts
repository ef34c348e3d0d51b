// What a good workroom knows, clause by clause, each run on a demo garment: the verb and the fields that do it. A row that
// is refused, leaves an unsound pattern, changes nothing, or leaves a seam that walked out of step without a word, fails.
import { readFileSync } from 'node:fs';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  polyline,
  readPattern,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { adjustments } from '../../packages/alter/src/fit/adjust/names.js';
import { verbs } from '../../packages/alter/src/verbs.js';
import { readSheet } from '../../packages/sheet/src/read-sheet.js';
import { stepLine } from '../../packages/sheet/src/reference/sentence.js';
import { runSteps } from '../../packages/sheet/src/run-steps.js';
import { type State, stateOf } from '../../packages/sheet/src/state.js';

/** What is done, on which garment, by which steps, the last of which is meant; `VERB` alone: its own example. */
type Row = readonly [what: string, on: string, ...steps: readonly string[]];

const shift = 'woven-shift',
  dress = 'darted-dress',
  skirt = 'yoke-skirt',
  shirt = 'shirt',
  trousers = 'trousers',
  smock = 'smock',
  waistcoat = 'waistcoat';
const bare: readonly string[] = ['remove piece: { piece: collar }', 'remove piece: { piece: stand }'];
const neck = '[front.neck, back.neck]';
const spreadHem = (more: string): string =>
  `spread: { piece: back, from: { edge: hem, at: 1/2 }, to: { edge: shoulder, at: 1/2 }, ${more} }`;
const spreadMany = (more: string): string =>
  `spread: { piece: back, from: { edge: hem, at: [1/4, 3/4] }, to: { edge: shoulder, at: [1/4, 3/4] }, slashes: 4, ${more} }`;
const gathers = (more: string): string =>
  `spread: { piece: sleeve, from: { edge: hem }, to: { edge: cap }, by: 90, slashes: 3, ${more} }`;

const darts: readonly Row[] = [
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

const fullness: readonly Row[] = [
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

const lengths: readonly Row[] = [
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

const edges: readonly Row[] = [
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

const seams: readonly Row[] = [
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

const made: readonly Row[] = [
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

const sleeves: readonly Row[] = [
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
const figures: readonly Row[] = [
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

const all = { darts, fullness, lengths, edges, seams, made, sleeves, figures };

const demo = (name: string): Pattern => {
  const [file] = name.split(' ');
  const read = readPattern(readFileSync(new URL(`../../demos/patterns/${file}.svg`, import.meta.url)), {
    file: name,
  });
  return name === file ? read.pattern : withNeckDrawn(read.pattern);
};
/** A line from 60 mm below the neck to the shoulder, 30 mm from it; a mark 12 mm above the hem's middle. */
function withNeckDrawn(pattern: Pattern): Pattern {
  const front = pieceNamed(pattern, 'front');
  const fold = edgePath(front, 'centre-front'),
    shoulder = edgePath(front, 'shoulder');
  const ends = [pointAlong(fold, Number.POSITIVE_INFINITY), pointAlong(fold, 0)].toSorted(
    (a, b) => a.y - b.y,
  );
  const path = polyline({ x: ends[0]!.x, y: ends[0]!.y + 60 }, pointAlong(shoulder, 30));
  const hem = edgePath(front, 'hem');
  const middle = pointAlong(hem, pathLength(hem) / 2);
  const mark = { kind: 'point', name: 'by hem', at: { x: middle.x, y: middle.y - 12 } } as const;
  const lines = [...front.lines, { kind: 'style', name: 'drawn neck', path } as const];
  return withPiece(pattern, { ...front, lines, marks: [...front.marks, mark] });
}

const starts = new Map<string, State>();
/** A garment is read once. */
function startOf(name: string): State {
  const start = starts.get(name) ?? stateOf(demo(name));
  starts.set(name, start);
  return start;
}

const written = (step: string): string => {
  const verb = verbs.find(one => one.verb === step);
  return verb ? stepLine(verb.verb, verb.example.step) : `- ${step}`;
};

for (const [clause, rows] of Object.entries(all))
  describe(clause, () => {
    test.each(rows)('%s, on the %s', (_, on, ...steps) => {
      const text = `pattern: here.svg\nsteps:\n${steps.map(step => `  ${written(step)}\n`).join('')}`;
      const start = startOf(on);
      const before = start.pattern;
      const done = runSteps(start, readSheet(text, { file: 'row' }).steps);
      const altered = done.at(-1)!.state.pattern;
      validatePattern(altered);
      const told = done.flatMap(({ findings }) => findings.map(({ where }) => where.seam));
      for (const seam of altered.seams) {
        const was = before.seams.find(({ name }) => name === seam.name);
        const isKept = !was || !walkSeam(before, was).matches || walkSeam(altered, seam).matches;
        expect(isKept || told.includes(seam.name), `the ${seam.name} seam is out without a word`).toBe(true);
      }
      expect(done).toHaveLength(steps.length);
      expect(JSON.stringify(altered)).not.toBe(JSON.stringify(before));
    });
  });

test('every verb stands in it', () => {
  const used = new Set(
    Object.values(all)
      .flat()
      .flatMap(([, , ...steps]) => steps.map(step => step.split(':')[0])),
  );
  const others = [
    'set allowance',
    'set seam',
    'true',
    'take in',
    'let out',
    'draft front facing',
    'add fly extension',
  ];
  expect(verbs.map(({ verb }) => verb).filter(verb => !used.has(verb) && !others.includes(verb))).toEqual([]);
});
