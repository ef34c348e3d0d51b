import {
  at,
  type Edge,
  type EdgeKind,
  type EdgeRole,
  type LineRole,
  line,
  type OutlinePart,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  type PieceRole,
  type Point,
  pathOf,
  polyline,
  type Seam,
} from '@paperhinge/geometry';
import { type Affine, determinant, identity, mirror, rotation } from '@paperhinge/geometry/plane';
import { movedPiece } from '../../packages/alter/src/moved-edges/moved-part.js';

// Garments that no alteration was built on: a dress, a blouse that opens in front, a coat, and three pairs of trousers;
// drawn to other measures, lying otherwise on the page, under names of other languages. Roles are given, since names tell
// nothing here. Drafted by figures, in mm; common practice, no source.

/** How a garment differs from the next. */
export interface Garment {
  readonly title: string;
  /** What its pieces and edges are called, by what they are. */
  readonly names: Readonly<Record<string, string>>;
  /** How it lies on the page. */
  readonly lies: Affine;
  /** Where its bust dart opens. */
  readonly dart: 'side' | 'shoulder';
  /** The front opens, and is cut as a pair. */
  readonly opens: boolean;
  /** The back has a centre seam, and is cut as a pair. */
  readonly backSeam: boolean;
  /** mm added to each quarter, and the length from the neck. */
  readonly wider: number;
  readonly length: number;
}

const german = {
  front: 'Vorderteil',
  back: 'Rückenteil',
  sleeve: 'Ärmel',
  neck: 'Halsausschnitt',
  shoulder: 'Schulter',
  armhole: 'Armloch',
  side: 'Seitennaht',
  hem: 'Saum',
  centre: 'Mitte',
  cap: 'Kugel',
  dart: 'Abnäher',
};
const plain = { front: 'A', back: 'B', sleeve: 'C' };

/** Three garments for the upper body and the hips. */
export const tops: readonly Garment[] = [
  {
    title: 'a dress with a shoulder dart, named in German, lying on its side',
    names: german,
    lies: rotation(Math.PI / 2),
    dart: 'shoulder',
    opens: false,
    backSeam: false,
    wider: 0,
    length: 1000,
  },
  {
    title: 'a blouse that opens in front, its pieces lettered, drawn the other way round',
    names: plain,
    lies: mirror(at(0, 0), at(0, 1)),
    dart: 'side',
    opens: true,
    backSeam: false,
    wider: 15,
    length: 700,
  },
  {
    title: 'a wide coat with a seam in the centre back, standing on its head',
    names: {},
    lies: rotation(Math.PI),
    dart: 'side',
    opens: true,
    backSeam: true,
    wider: 45,
    length: 1120,
  },
];

/** A garment for the upper body with sleeves, and its seams. */
export function topOf(garment: Garment): Pattern {
  const called = (what: string): string => garment.names[what] ?? what;
  const run = (piece: string, edge: string, reversed = false) => ({
    piece: called(piece),
    edge: called(edge),
    reversed,
  });
  const seam = (name: string, a: Seam['a'], b: Seam['b'], mm = 0): Seam => ({ name, a, b, ease: { mm } });
  const pieces = [bodyOf(garment, 'front'), bodyOf(garment, 'back'), sleeveOf(garment)];
  return {
    name: garment.title,
    unit: 'mm',
    pieces: pieces.map(piece => laid(renamedPiece(piece, called), garment.lies)),
    seams: [
      seam('shoulder', [run('front', 'shoulder')], [run('back', 'shoulder')]),
      seam('side', [run('front', 'side')], [run('back', 'side')]),
      seam('armhole', [run('sleeve', 'cap', true)], [run('front', 'armhole', true), run('back', 'armhole')]),
      seam('underarm', [run('sleeve', 'underarm front')], [run('sleeve', 'underarm back', true)]),
      ...(garment.backSeam ? [seam('centre back', [run('back', 'centre')], [run('back', 'centre')])] : []),
    ],
    fabrics: [{ name: 'main', role: 'main' }],
  };
}

type XY = readonly [number, number];
const spot = ([x, y]: XY): Point => at(x, y);
const straight = (...through: readonly XY[]): Path => polyline(...through.map(spot));
const curve = (a: XY, b: XY, c: XY, d: XY): Path => pathOf([spot(a), spot(b), spot(c), spot(d)]);

const edge = (name: string, path: Path, role: EdgeRole, kind: EdgeKind = 'seam'): Edge => ({
  type: 'edge',
  name,
  path,
  role,
  kind,
  allowance: kind === 'fold' ? 0 : 10,
  corners: {},
});

const dartOf = (name: string, from: XY, apex: XY, to: XY): OutlinePart => ({
  type: 'dart',
  name,
  legs: [pathOf(line(spot(from), spot(apex))), pathOf(line(spot(apex), spot(to)))],
  apex: spot(apex),
});

const level = (role: LineRole, from: XY, to: XY): PieceLine => ({
  kind: 'level',
  name: `${role} level`,
  role,
  path: straight(from, to),
});

/** mm of the bust dart. */
const mouth = 28;

function bodyOf({ dart, opens, backSeam, wider: w, length }: Garment, which: 'front' | 'back'): Piece {
  const front = which === 'front';
  const onFold = front ? !opens : !backSeam;
  const [armpit, waist, hip] = [240 + w, 222 + w, 250 + w];
  // Below a dart in the side the front is longer by its mouth.
  const low = front && dart === 'side' ? mouth : 0;
  const hem: XY = [hip + (length - 620) / 20, length + low];
  const tip: XY = [190 + w / 2, 44];
  const bust: XY = [95, 262];
  const across = (t: number): XY => [72 + (tip[0] - 72) * t, tip[1] * t];
  // Beyond a dart in the shoulder all is turned about its point, so that the shoulder is straight once it is folded.
  const shoulderDart = front && dart === 'shoulder';
  const turn = shoulderDart ? mouth / Math.hypot(across(0.45)[0] - bust[0], across(0.45)[1] - bust[1]) : 0;
  const moved = ([x, y]: XY): XY => {
    const [u, v] = [x - bust[0], y - bust[1]];
    return [
      bust[0] + u * Math.cos(turn) - v * Math.sin(turn),
      bust[1] + u * Math.sin(turn) + v * Math.cos(turn),
    ];
  };
  const leg = moved(across(0.45));
  const end = moved(tip);
  const neckDrop = front ? 82 : 22;
  const shoulder: readonly OutlinePart[] = shoulderDart
    ? [
        edge('shoulder', straight([72, 0], across(0.45)), 'shoulder'),
        dartOf('dart', across(0.45), bust, leg),
        edge('shoulder', straight(leg, end), 'shoulder'),
      ]
    : [edge('shoulder', straight([72, 0], tip), 'shoulder')];
  const below: readonly XY[] = [[armpit - 2, 250 + low], [waist, 420 + low], [hip, 620 + low], hem];
  const side: readonly OutlinePart[] =
    front && dart === 'side'
      ? [
          edge('side', straight([armpit, 225], [armpit - 2, 250]), 'side'),
          dartOf('dart', [armpit - 2, 250], [bust[0] + 25, 250 + mouth / 2], [armpit - 2, 250 + mouth]),
          edge('side', straight(...below), 'side'),
        ]
      : [edge('side', straight([armpit, 225], ...below), 'side')];
  const hollow = front ? 20 : 10;
  return {
    name: which,
    title: which,
    role: 'bodice',
    outline: {
      parts: [
        edge('neck', curve([0, neckDrop], [40, neckDrop], [66, neckDrop / 2], [72, 0]), 'neck'),
        ...shoulder,
        edge('armhole', curve(end, [end[0] - hollow, 130], [armpit - 70, 222], [armpit, 225]), 'armhole'),
        ...side,
        edge('hem', straight(hem, [0, length + low]), 'hem', 'hem'),
        edge(
          'centre',
          straight([0, length + low], [0, neckDrop]),
          front && opens ? 'opening' : 'centre',
          onFold ? 'fold' : 'seam',
        ),
      ],
    },
    notches: [],
    lines: [
      { kind: 'grain', name: 'grain', path: straight([40, 560], [40, 160]) },
      level('bust', [0, 262], [armpit - 8, 262]),
      level('waist', [0, 420 + low], [waist, 420 + low]),
      level('hip', [0, 620 + low], [hip, 620 + low]),
    ],
    marks: front ? [{ kind: 'point', name: 'bust point', role: 'bust point', at: spot(bust) }] : [],
    cutting: { count: onFold ? 1 : 2, mirrored: !onFold, fabric: 'main' },
  };
}

function sleeveOf({ wider: w }: Garment): Piece {
  const half = 172 + w / 2;
  const top: XY = [0, -128];
  return {
    name: 'sleeve',
    title: 'sleeve',
    role: 'sleeve',
    outline: {
      parts: [
        edge(
          'cap',
          {
            segments: [
              ...curve([-half, 0], [-half * 0.55, -10], [-half * 0.5, -128], top).segments,
              ...curve(top, [half * 0.5, -128], [half * 0.55, -10], [half, 0]).segments,
            ],
          },
          'cap',
        ),
        edge('underarm front', straight([half, 0], [125, 430]), 'underarm'),
        edge('hem', straight([125, 430], [-125, 430]), 'hem', 'hem'),
        edge('underarm back', straight([-125, 430], [-half, 0]), 'underarm'),
      ],
    },
    notches: [],
    lines: [
      { kind: 'grain', name: 'grain', path: straight([0, 380], [0, 60]) },
      level('elbow', [-150, 190], [150, 190]),
    ],
    marks: [],
    cutting: { count: 2, mirrored: true, fabric: 'main' },
  };
}

/** A piece where it lies on the page; turned over its outline is met the other way round. */
function laid(piece: Piece, map: Affine): Piece {
  const moved = movedPiece(piece, map);
  if (determinant(map) > 0) return moved;
  return { ...moved, outline: { parts: [...moved.outline.parts].reverse() } };
}

/** The piece under other names; roles stay. */
function renamedPiece(piece: Piece, called: (what: string) => string): Piece {
  const parts = piece.outline.parts.map(part => ({ ...part, name: called(part.name) }));
  return { ...piece, name: called(piece.name), title: called(piece.title), outline: { parts } };
}

/** Three pairs of trousers: shorts, wide ones lying on their side, and narrow ones drawn the other way round. */
export const trousers: readonly {
  readonly title: string;
  readonly lies: Affine;
  readonly length: number;
  readonly hem: number;
  readonly wider: number;
}[] = [
  { title: 'shorts', lies: identity, length: 420, hem: 250, wider: 0 },
  { title: 'wide trousers on their side', lies: rotation(Math.PI / 2), length: 1040, hem: 300, wider: 20 },
  {
    title: 'narrow trousers the other way round',
    lies: mirror(at(0, 0), at(0, 1)),
    length: 980,
    hem: 170,
    wider: -8,
  },
];

export function trousersOf({ title, lies, length, hem, wider: w }: (typeof trousers)[number]): Pattern {
  const inseam = (side: number): number => Math.hypot(side, length - 262);
  const front = legOf('vorn', [0, 0], [-48, 262]);
  const fromHem = (205 + w - hem / 2) / 2;
  // As long as the front's inseam, from a crotch point that reaches further under the body.
  const reach = 100;
  const drop = Math.sqrt(inseam(fromHem + 48) ** 2 - (fromHem + reach) ** 2);
  const back = legOf('hinten', [-12, -26], [-reach, length - drop]);
  function legOf(name: string, top: XY, point: XY): Piece {
    const outer = 205 + w;
    const mid = (outer - hem / 2) / 2;
    const role: PieceRole = 'trouser';
    return {
      name,
      title: name,
      role,
      outline: {
        parts: [
          edge('oben', straight(top, [outer - 15, 0]), 'waist'),
          edge('außen', straight([outer - 15, 0], [outer, 190], [mid + hem, length]), 'outseam'),
          edge('unten', straight([mid + hem, length], [mid, length]), 'hem', 'hem'),
          edge('innen', straight([mid, length], point), 'inseam'),
          edge('Schritt', curve(point, [-8, point[1] - 6], [top[0] + 12, 190], top), 'crotch'),
        ],
      },
      notches: [],
      lines: [
        { kind: 'grain', name: 'Fadenlauf', path: straight([outer / 2, length - 40], [outer / 2, 60]) },
        level('hip', [0, 180], [outer - 1, 180]),
      ],
      marks: [],
      cutting: { count: 2, mirrored: true, fabric: 'main' },
    };
  }
  const run = (piece: string, name: string, reversed = false) => ({ piece, edge: name, reversed });
  const seam = (name: string, a: Seam['a'], b: Seam['b']): Seam => ({ name, a, b, ease: { mm: 0 } });
  return {
    name: title,
    unit: 'mm',
    pieces: [front, back].map(piece => laid(piece, lies)),
    seams: [
      seam('outer', [run('vorn', 'außen')], [run('hinten', 'außen')]),
      seam('inner', [run('vorn', 'innen')], [run('hinten', 'innen')]),
      seam('front crotch', [run('vorn', 'Schritt', true)], [run('vorn', 'Schritt', true)]),
      seam('back crotch', [run('hinten', 'Schritt', true)], [run('hinten', 'Schritt', true)]),
    ],
    fabrics: [{ name: 'main', role: 'main' }],
  };
}
