import { edgeRoles, lineRoles, markRoles, pieceRoles } from '../pattern/roles/role-names.js';
import {
  cornerRules,
  edgeKinds,
  fabricRoles,
  fasteningKinds,
  finishes,
  lineKinds,
  notchStyles,
  pleatKinds,
  pressings,
  takenUpWays,
  units,
} from '../pattern/words.js';
import type { Drawn } from './reference-drawing.js';
import type { AttributeName, fabricKeys, fasteningKeys, metadataKeys, seamKeys } from './vocabulary.js';

// What `pattern-svg.md` says of every word of the convention, with an example that is drawn, printed and read: the
// compiler and a test hold it to the vocabulary.

/** An attribute or a key: what may be written, what it says, and a drawing that has it. */
export interface Entry {
  /** The form of its value. */
  readonly value: string;
  readonly says: string;
  readonly example: Drawn;
}

const oneOf = (words: readonly string[]): string => words.map(word => `\`${word}\``).join(', ');
const length = 'a length such as `12 mm`, `1.2 cm`, `3/8 in`; bare numbers in the unit of the drawing';

/** Of the drawing itself. */
const ofDrawings = {
  paperhinge: {
    value: '`2`',
    says: 'The version of this convention. A drawing without it is of before there were versions; it reads the same, but for how copies count in seams, and a note says so where that makes a difference.',
    example: { root: 'data-paperhinge="2"' },
  },
  pattern: {
    value: 'a name',
    says: "The pattern's name; without it the file's.",
    example: { root: 'data-pattern="Wrap skirt"' },
  },
  unit: {
    value: oneOf(units),
    says: 'The unit of bare numbers in attributes, and of all that is said of the pattern; without it mm. The lines themselves are in the units of the drawing.',
    example: { root: 'data-unit="in"', edges: { hem: 'data-allowance="1/2"' } },
  },
  tolerance: {
    value: length,
    says: 'By how much the two sides of a seam may differ and still match; without it 0.8 mm (1/32 in). A paper pattern traced by hand is not true to that: 2 mm.',
    example: { root: 'data-tolerance="2 mm"' },
  },
  size: {
    value: 'a name',
    says: 'Which of several sizes this is: on a group round the pieces of a size, on a piece, or on edges within one piece. All sizes have the same names; what belongs to no size belongs to all. A sheet chooses with `size:`; what lies between two sizes is written as `12…14`.',
    example: {
      content: [
        '<g data-size="12"><path data-edge="waist" d="M40 10 H85"/><path data-edge="side" d="M85 10 L100 70"/><path data-edge="hem" d="M100 70 H40"/></g>',
        '<g data-size="14"><path data-edge="waist" d="M40 10 H90"/><path data-edge="side" d="M90 10 L105 70"/><path data-edge="hem" d="M105 70 H40"/></g>',
        '<path data-edge="centre" data-kind="fold" d="M40 70 V10"/>',
      ].join('\n    '),
    },
  },
} as const satisfies Partial<Record<AttributeName, Entry>>;

/** Of a piece: a group with all that belongs to it. */
const ofPieces = {
  piece: {
    value: 'a name',
    says: 'A group that holds all of one piece. Names of pieces differ from each other.',
    example: {},
  },
  title: {
    value: 'a text',
    says: 'What is printed on the piece; without it its name.',
    example: { piece: 'data-title="Skirt front"' },
  },
  cut: {
    value: 'a whole number',
    says: 'How many are cut of the cloth in `data-fabric`; without it 1. Every copy counts in seams, girths and bands; a piece on a fold counts twice.',
    example: { piece: 'data-cut="2"', edges: { centre: 'data-kind="seam"' } },
  },
  mirrored: {
    value: '`yes`, `no`',
    says: 'Whether they are cut as mirrored pairs; without it, yes where their number is even and no edge is a fold.',
    example: { piece: 'data-cut="4" data-mirrored="no"', edges: { centre: 'data-kind="seam"' } },
  },
  layers: {
    value: 'a whole number',
    says: 'How many of them lie on one another in the garment, as a collar cut 4 in 2 layers; without it 1. In seams they count once.',
    example: { piece: 'data-cut="4" data-layers="2"', edges: { centre: 'data-kind="seam"' } },
  },
  'right-side-up': {
    value: '`yes`, `no`',
    says: 'Cut singly, the right side of the pattern up: never turned over on the cloth.',
    example: { piece: 'data-right-side-up="yes"', edges: { centre: 'data-kind="seam"' } },
  },
  'also-cut': {
    value: 'how many of which cloth, with commas: `2 lining, 1 interfacing`',
    says: 'What the piece is cut from besides. This does not count in seams. What differs from the usual stands in brackets: `2 lining (not mirrored, 2 layers, right side up, note "less 2 mm")`; a name with other signs than letters, digits, spaces and hyphens stands in quotation marks.',
    example: { piece: 'data-also-cut="1 lining"' },
  },
  fabric: {
    value: 'a name',
    says: 'The cloth it is cut of; without it `main`.',
    example: { piece: 'data-fabric="contrast"' },
  },
  'greatest-stretch': {
    value: oneOf(['across', 'along']),
    says: 'Which way of the cloth must stretch most round the body, seen from the grain line; without it across.',
    example: { piece: 'data-greatest-stretch="along"' },
  },
  note: {
    value: 'a text',
    says: 'Printed beside how often it is cut.',
    example: { piece: 'data-note="nap down"' },
  },
} as const satisfies Partial<Record<AttributeName, Entry>>;

/** Of an edge: a stretch of the outline between two corners. */
const ofEdges = {
  edge: {
    value: 'a name',
    says: 'A stretch of the stitching line between two corners: one path, in any direction; edges may stand in any order. Their ends meet within 0.05 mm. An edge that a dart or pleat interrupts is one path of two strokes.',
    example: {},
  },
  role: {
    value: `on an edge ${oneOf(edgeRoles)}; on a piece ${oneOf(pieceRoles)}; on a line ${oneOf(lineRoles)}; on a mark ${oneOf(markRoles)}`,
    says: 'What it is, whatever it is called. Without it that is guessed on reading, from names in seven languages, kinds, seams and shape; checks that hang on a guess say so.',
    example: { piece: 'data-role="skirt"', edges: { waist: 'data-role="waist"' } },
  },
  kind: {
    value: oneOf(edgeKinds),
    says: 'What becomes of it: sewn, turned up, laid on a fold of the cloth, or left as it is cut; without it it is a seam. Folds and raw edges have no allowance.',
    example: { edges: { hem: 'data-kind="hem"' } },
  },
  allowance: {
    value: length,
    says: 'Between stitching line and cutting line. It is that of the nearest element round it that has one: the edge, its piece, the drawing. With none it is 0, and a note says so.',
    example: { edges: { hem: 'data-allowance="8mm"' } },
  },
  'corner-start': {
    value: oneOf(cornerRules),
    says: "How the allowances meet at the edge's start (clockwise): run on to their crossing, or shaped so that they lie under a seam pressed open or a hem turned up. Without it the usual rule.",
    example: { edges: { hem: 'data-corner-start="turned-up"' } },
  },
  'corner-end': {
    value: oneOf(cornerRules),
    says: "The same at the edge's end.",
    example: { edges: { side: 'data-corner-end="mitre"' } },
  },
  opening: {
    value: length,
    says: 'How long a slit, placket or zip lets the edge open.',
    example: { edges: { side: 'data-opening="30 mm"' } },
  },
  finish: {
    value: oneOf(finishes),
    says: 'How the edge is finished.',
    example: { edges: { hem: 'data-finish="turned twice"' } },
  },
  topstitch: {
    value: length,
    says: 'How far from the edge it is topstitched.',
    example: { edges: { side: 'data-topstitch="5 mm"' } },
  },
  interfacing: {
    value: length,
    says: 'How wide a strip of interfacing lies along the edge.',
    example: { edges: { waist: 'data-interfacing="20 mm"' } },
  },
  'left-to-true': {
    value: 'lengths with commas, such as `182.5 mm, 240 mm`',
    says: 'Where alterations left sharp corners on the edge, measured from its start (clockwise), darts and pleats not counted. Such a corner is never taken to be meant: checks tell it, and truing redraws it. A place where the line has no corner any more says nothing.',
    example: { waist: 'M40 10 L62 18 L85 10', edges: { waist: 'data-left-to-true="23.4 mm"' } },
  },
} as const satisfies Partial<Record<AttributeName, Entry>>;

const waistInTwo = 'M40 10 L58 10 M66 10 L85 10';

/** Of darts and pleats: what takes up length at an edge. */
const ofDarts = {
  dart: {
    value: 'a name',
    says: "A wedge that is sewn shut: from one leg's end to the point and on to the other's. Legs are equally long, within 1 mm. A closed shape within the piece is a dart with two points.",
    example: { waist: waistInTwo, inside: '<path data-dart="front" d="M58 10 L62 45 L66 10"/>' },
  },
  pressed: {
    value: oneOf(pressings),
    says: 'Where the dart is pressed: towards its leg met first or last going clockwise, or open. Without it, down or towards the centre.',
    example: {
      waist: waistInTwo,
      inside: '<path data-dart="front" data-pressed="open" d="M58 10 L62 45 L66 10"/>',
    },
  },
  pleat: {
    value: 'a name',
    says: 'A fold that takes up length: the line across its mouth, along the edge.',
    example: { waist: waistInTwo, inside: '<path data-pleat="front" d="M58 10 H66"/>' },
  },
  'pleat-kind': {
    value: oneOf(pleatKinds),
    says: 'How the cloth is folded; without it a knife pleat.',
    example: { waist: waistInTwo, inside: '<path data-pleat="front" data-pleat-kind="box" d="M58 10 H66"/>' },
  },
  towards: {
    value: oneOf(['start', 'end']),
    says: "Which way a knife pleat or tuck is laid: towards the mouth's end met first or last going clockwise; without it the last.",
    example: { waist: waistInTwo, inside: '<path data-pleat="front" data-towards="start" d="M58 10 H66"/>' },
  },
  stitched: {
    value: length,
    says: 'How far down from the edge the fold is stitched; without it it is only laid.',
    example: { waist: waistInTwo, inside: '<path data-pleat="front" data-stitched="25 mm" d="M58 10 H66"/>' },
  },
} as const satisfies Partial<Record<AttributeName, Entry>>;

/** Of what lies on a piece, and of other ways to draw one. */
const ofMarks = {
  notch: {
    value: oneOf(notchStyles),
    says: 'A mark at the edge that is matched with one of the partner edge. It sits where its drawing crosses the outline, else at the nearest point; of a pair, at its middle.',
    example: { inside: '<path data-notch="double" d="M88 29 L94 27 M90 35 L96 33"/>' },
  },
  on: {
    value: 'the name of an edge',
    says: 'On which edge a notch sits where its drawing runs through a corner.',
    example: { inside: '<path data-notch="single" data-on="side" d="M82 7 L88 13"/>' },
  },
  line: {
    value: oneOf(lineKinds),
    says: 'A line within the piece.',
    example: { inside: '<path data-line="grain" d="M60 60 V25"/>' },
  },
  mark: {
    value: '`point`, `drill`, `button` or a word of your own',
    says: 'A spot: the middle of what is drawn.',
    example: { inside: '<circle data-mark="button" cx="60" cy="30" r="2"/>' },
  },
  name: {
    value: 'a name',
    says: 'What a line, mark or notch is called; without it its kind.',
    example: { inside: '<path data-line="level" data-name="hip" d="M40 40 H95"/>' },
  },
  outline: {
    value: 'empty',
    says: 'The whole piece as one closed path. Its corners (turns of over 20 degrees) part it into edges `edge-1`, `edge-2` ... clockwise from the corner at or after its first point; a sheet may name them. Any closed path that a sheet names (`pieces:`) does as well.',
    example: { content: '<path data-outline="" d="M40 10 H85 L100 70 H40 Z"/>' },
  },
  'line-drawn': {
    value: oneOf(['stitching', 'cutting']),
    says: 'Which line is drawn, on the edge or on anything round it; without it the stitching line. A cutting line is moved inwards by the allowance it includes, once, on reading.',
    example: { piece: 'data-line-drawn="cutting" data-included-allowance="5 mm"' },
  },
  'included-allowance': {
    value: length,
    says: 'The allowance that a drawn cutting line includes, inherited as `data-allowance` is; afterwards it is the allowance of the edge.',
    example: {
      piece: 'data-line-drawn="cutting" data-included-allowance="5 mm"',
      edges: { hem: 'data-included-allowance="8 mm"' },
    },
  },
  derived: {
    value: 'a word',
    says: 'Drawn from the pattern (its cutting line, its title) and passed over on reading, with all it holds.',
    example: {
      inside: '<text data-derived="title" x="55" y="45" font-size="6" fill="#222" stroke="none">Front</text>',
    },
  },
} as const satisfies Partial<Record<AttributeName, Entry>>;

/** Every attribute, by what it stands on. The compiler holds it complete. */
export const reference: readonly {
  readonly heading: string;
  readonly entries: Partial<Record<AttributeName, Entry>>;
}[] = [
  { heading: 'The drawing', entries: ofDrawings },
  { heading: 'Pieces', entries: ofPieces },
  { heading: 'Edges', entries: ofEdges },
  { heading: 'Darts and pleats', entries: ofDarts },
  { heading: 'Lines, marks, notches, and other ways to draw', entries: ofMarks },
];

/** @internal Fails to compile where an attribute has no entry. */
export const complete: Readonly<Record<AttributeName, Entry>> = {
  ...ofDrawings,
  ...ofPieces,
  ...ofEdges,
  ...ofDarts,
  ...ofMarks,
};

type Key = (typeof metadataKeys | typeof seamKeys | typeof fabricKeys | typeof fasteningKeys)[number];

/** What the keys of the JSON block say. */
export const metadataSays: Readonly<Record<Key, string>> = {
  seams: 'What is sewn to what, by the name of the seam.',
  fabrics: 'The cloths, by the names that `data-fabric` uses.',
  fastenings: 'Zips, buttons and the like, by a name.',
  madeFor:
    'By the name of a piece: the edges that it was drafted for, so that it can be said when they change.',
  a: 'One side of a seam: a run, or a list of runs in the order of sewing. A run is `piece.edge from X`, where X is the edge, dart or pleat at whose corner the sewing begins (`start` and `end`, clockwise, where that is not clear). In a list each run continues the last. Of an edge that is sewn in part: `skirt.waist from side, 60 mm to 220 mm`, measured from where the run begins; lengths, shares (`1/4`), `start` and `end`.',
  b: 'The other side.',
  ease: 'By how much side a is to be longer than side b: a length, or a percentage of b.',
  takenUp: `How the difference is taken up: ${oneOf(takenUpWays)}; without it eased in.`,
  tolerance: "By how much the sides may differ from that and still match; without it the drawing's.",
  width: 'Usable width: a length.',
  stretch: 'A percentage across, or `{ "across": "35 %", "along": "20 %" }`.',
  recovery: 'A percentage.',
  nap: '`true` or `false`: whether all pieces lie one way.',
  repeat: 'The length of a stripe or a print.',
  role: `${oneOf(fabricRoles)}; without it the cloth's name where it is one of these, else main.`,
  kind: oneOf(fasteningKinds),
  along: 'The run it lies along.',
  length: 'How long it is.',
  count: 'How many buttons, hooks or snaps.',
  spacing: 'From one to the next.',
  size: 'The width of a button, an elastic or a cord.',
  relaxed: 'The relaxed length of an elastic or a cord.',
  sort: 'A word of your own, such as `invisible`.',
  overlap: 'How far the upper side reaches over the middle.',
  underlap: 'How far the lower side reaches under it.',
};
