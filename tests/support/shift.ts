import {
  at,
  type CornerRule,
  type Edge,
  type EdgeKind,
  line,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  type Segment,
} from '@paperhinge/geometry';
import type { Cubic } from '@paperhinge/geometry/curves';
import { add, apply, rotation, scale, subtract, unit } from '@paperhinge/geometry/plane';

/** What may be varied of the shift; all lengths in mm. The defaults are the cellist's woven shift of the demo. */
export interface ShiftMeasures {
  readonly neckHalfWidth: number;
  readonly frontNeckDepth: number;
  readonly backNeckDepth: number;
  readonly shoulder: number;
  readonly quarterBust: number;
  readonly quarterHem: number;
  readonly length: number;
  readonly dartMouth: number;
  readonly capEase: number;
  readonly sleeveLength: number;
  readonly allowance: number;
  readonly hemAllowance: number;
}

export const cellistShift: ShiftMeasures = {
  neckHalfWidth: 110,
  frontNeckDepth: 124,
  backNeckDepth: 28,
  shoulder: 112,
  quarterBust: 279,
  quarterHem: 300,
  length: 880,
  dartMouth: 32,
  capEase: 12,
  sleeveLength: 560,
  allowance: 15.875,
  hemAllowance: 25.4,
};

/**
 * A woven shift with a side bust dart: front and back on the fold, a set-in sleeve and a straight neckband.
 * Drafted so that it is true: seams match, cap ease is as asked, joined lines run on, neck and hem are square to
 * the fold. Common practice, no source.
 */
export function shiftPattern(changes: Partial<ShiftMeasures> = {}): Pattern {
  const m = { ...cellistShift, ...changes };
  const front = frontPiece(m);
  const side = lengthOf(front, 'side-upper') + lengthOf(front, 'side-lower');
  const back = solve(
    190,
    260,
    underarm => lengthOf(backPiece(m, underarm), 'side') - side,
    u => backPiece(m, u),
  );
  const armhole = lengthOf(front, 'armhole') + lengthOf(back, 'armhole');
  const capError = (height: number) => lengthOf(sleevePiece(m, height, back), 'cap') - armhole - m.capEase;
  const sleeve = solve(60, 190, capError, height => sleevePiece(m, height, back));
  const neck = lengthOf(front, 'neck') + lengthOf(back, 'neck');
  return {
    name: 'Woven shift',
    unit: 'mm',
    pieces: [front, back, sleeve, neckbandPiece(m, neck)],
    seams: [
      seam('shoulder', [run('front', 'shoulder')], [run('back', 'shoulder')]),
      seam('side', [run('front', 'side-upper'), run('front', 'side-lower')], [run('back', 'side')]),
      seam('underarm', [run('sleeve', 'underarm-front')], [flip(run('sleeve', 'underarm-back'))]),
      {
        ...seam(
          'armhole',
          [flip(run('sleeve', 'cap'))],
          [flip(run('front', 'armhole')), run('back', 'armhole')],
        ),
        ease: { mm: m.capEase },
      },
      seam('neck', [run('neckband', 'lower')], [run('front', 'neck'), flip(run('back', 'neck'))]),
    ],
    fabrics: [{ name: 'main', width: 1500, role: 'main' }],
  };
}

const run = (piece: string, edge: string) => ({ piece, edge, reversed: false });
const flip = <T extends { readonly reversed: boolean }>(r: T): T => ({ ...r, reversed: !r.reversed });
const seam = (name: string, a: Pattern['seams'][number]['a'], b: Pattern['seams'][number]['b']) => ({
  name,
  a,
  b,
  ease: { mm: 0 },
});

function lengthOf(piece: Piece, name: string): number {
  return piece.outline.parts.reduce(
    (sum, part) => (part.type === 'edge' && part.name === name ? sum + pathLength(part.path) : sum),
    0,
  );
}

function solve(low: number, high: number, error: (x: number) => number, build: (x: number) => Piece): Piece {
  let a = low,
    b = high;
  const sign = Math.sign(error(a));
  for (let i = 0; i < 50; i++) {
    const m = (a + b) / 2;
    if (Math.sign(error(m)) === sign) a = m;
    else b = m;
  }
  return build((a + b) / 2);
}

/** Cubic from p leaving along u to q arriving along v; handles a share of the chord. */
function curve(p: Point, u: Point, q: Point, v: Point, a = 0.36, b = 0.36): Cubic {
  const chord = Math.hypot(q.x - p.x, q.y - p.y);
  return [p, add(p, scale(unit(u), a * chord)), subtract(q, scale(unit(v), b * chord)), q];
}

interface EdgeOptions {
  readonly kind?: EdgeKind;
  readonly allowance: number;
  readonly corners?: { readonly start?: CornerRule; readonly end?: CornerRule };
}

export const edge = (name: string, segments: readonly Segment[], options: EdgeOptions): Edge => ({
  type: 'edge',
  name,
  path: { segments },
  kind: options.kind ?? 'seam',
  allowance: options.allowance,
  corners: options.corners ?? {},
});

const turn = (v: Point, degrees: number): Point => apply(rotation((degrees * Math.PI) / 180), v);
const horizontal = (name: string, y: number, to: number) => ({
  kind: 'level' as const,
  name,
  path: pathOf(line(at(0, y), at(to, y))),
});
const grainLine = (from: Point, to: Point) => ({
  kind: 'grain' as const,
  name: 'grain',
  path: pathOf(line(from, to)),
});

function frontPiece(m: ShiftMeasures): Piece {
  const slope = turn(at(1, 0), 23);
  const neckPoint = at(m.neckHalfWidth, -52);
  const shoulderPoint = add(neckPoint, scale(slope, m.shoulder));
  const centre = at(0, neckPoint.y + m.frontNeckDepth);
  const apex = at(m.quarterBust - 154, 271);
  const mouthTop = at(m.quarterBust, 271 - m.dartMouth / 2),
    mouthBottom = at(m.quarterBust, 271 + m.dartMouth / 2);
  // Each side of the dart leans by half its angle, so that the side runs on straight once it is closed.
  const half = (Math.asin(m.dartMouth / 2 / Math.hypot(154, m.dartMouth / 2)) * 180) / Math.PI;
  const down = turn(at(0, 1), -half);
  const underarm = subtract(mouthTop, scale(down, 76));
  const hemSide = at(m.quarterHem, m.length - 4);
  const sideEnd = turn(at(0, 1), -3);
  const seamEdge = { allowance: m.allowance };
  return {
    name: 'front',
    title: 'Front',
    outline: {
      parts: [
        edge('neck', [curve(centre, at(1, 0), neckPoint, turn(slope, -90), 0.42, 0.42)], seamEdge),
        edge('shoulder', [line(neckPoint, shoulderPoint)], seamEdge),
        edge(
          'armhole',
          [curve(shoulderPoint, turn(slope, 90), underarm, turn(down, -90), 0.62, 0.34)],
          seamEdge,
        ),
        edge('side-upper', [line(underarm, mouthTop)], seamEdge),
        {
          type: 'dart',
          name: 'bust',
          legs: [pathOf(line(mouthTop, apex)), pathOf(line(apex, mouthBottom))],
          apex,
        },
        edge(
          'side-lower',
          [
            curve(mouthBottom, turn(at(0, 1), half), at(m.quarterBust - 13, 405), at(0, 1), 0.3, 0.3),
            curve(at(m.quarterBust - 13, 405), at(0, 1), hemSide, sideEnd, 0.3, 0.3),
          ],
          seamEdge,
        ),
        edge('hem', [curve(hemSide, turn(sideEnd, 90), at(0, m.length), at(-1, 0))], {
          kind: 'hem',
          allowance: m.hemAllowance,
        }),
        edge('centre-front', [line(at(0, m.length), centre)], { kind: 'fold', allowance: 0 }),
      ],
    },
    notches: [
      { edge: 'armhole', at: 130, style: 'single', name: 'front' },
      { edge: 'side-lower', at: 280, style: 'single' },
    ],
    lines: [
      grainLine(at(60, 780), at(60, 380)),
      horizontal('bust', 271, apex.x),
      horizontal('waist', 405, m.quarterBust - 13),
      horizontal('hip', 610, m.quarterBust - 4),
    ],
    marks: [{ kind: 'point', name: 'bust point', at: at(apex.x - 25, 271) }],
    cutting: { count: 1, mirrored: false, fabric: 'main' },
  };
}

function backPiece(m: ShiftMeasures, underarmY: number): Piece {
  const slope = turn(at(1, 0), 21);
  const neckPoint = at(m.neckHalfWidth, -m.backNeckDepth);
  const shoulderPoint = add(neckPoint, scale(slope, m.shoulder));
  const underarm = at(m.quarterBust + 1, underarmY);
  const waist = at(m.quarterBust - 13, 405);
  const hemSide = at(m.quarterHem, m.length - 4);
  const sideEnd = turn(at(0, 1), -3),
    sideStart = turn(at(0, 1), 4);
  const seamEdge = { allowance: m.allowance };
  return {
    name: 'back',
    title: 'Back',
    outline: {
      parts: [
        edge('neck', [curve(at(0, 0), at(1, 0), neckPoint, turn(slope, -90), 0.56, 0.27)], seamEdge),
        edge('shoulder', [line(neckPoint, shoulderPoint)], seamEdge),
        edge(
          'armhole',
          [curve(shoulderPoint, turn(slope, 90), underarm, turn(sideStart, -90), 0.58, 0.3)],
          seamEdge,
        ),
        edge(
          'side',
          [
            curve(underarm, sideStart, waist, at(0, 1), 0.3, 0.3),
            curve(waist, at(0, 1), hemSide, sideEnd, 0.3, 0.3),
          ],
          seamEdge,
        ),
        edge('hem', [curve(hemSide, turn(sideEnd, 90), at(0, m.length), at(-1, 0))], {
          kind: 'hem',
          allowance: m.hemAllowance,
        }),
        edge('centre-back', [line(at(0, m.length), at(0, 0))], { kind: 'fold', allowance: 0 }),
      ],
    },
    notches: [
      { edge: 'armhole', at: 110, style: 'double', name: 'back' },
      { edge: 'side', at: 356, style: 'single' },
    ],
    lines: [
      grainLine(at(60, 780), at(60, 380)),
      horizontal('bust', 271, m.quarterBust - 5),
      horizontal('waist', 405, m.quarterBust - 13),
      horizontal('hip', 610, m.quarterBust - 4),
    ],
    marks: [],
    cutting: { count: 1, mirrored: false, fabric: 'main' },
  };
}

function sleevePiece(m: ShiftMeasures, capHeight: number, back: Piece): Piece {
  const half = 192,
    wrist = 128;
  const top = at(0, 0),
    backPoint = at(-half, capHeight),
    frontPoint = at(half, capHeight);
  const hemFront = at(wrist, m.sleeveLength),
    hemBack = at(-wrist, m.sleeveLength);
  const alongFront = unit(subtract(hemFront, frontPoint)),
    alongBack = unit(subtract(backPoint, hemBack));
  const rise = at(-half * 0.52, capHeight * 0.44),
    fall = at(half * 0.52, capHeight * 0.47);
  const climb = at(1, -1.02),
    drop = at(1, 1.08);
  const seamEdge = { allowance: m.allowance };
  const backArmhole = lengthOf(back, 'armhole');
  return {
    name: 'sleeve',
    title: 'Sleeve',
    outline: {
      parts: [
        edge(
          'cap',
          [
            curve(backPoint, turn(alongBack, 90), rise, climb, 0.34, 0.3),
            curve(rise, climb, top, at(1, 0), 0.34, 0.34),
            curve(top, at(1, 0), fall, drop, 0.34, 0.34),
            curve(fall, drop, frontPoint, turn(alongFront, -90), 0.3, 0.36),
          ],
          seamEdge,
        ),
        edge('underarm-front', [line(frontPoint, hemFront)], seamEdge),
        edge(
          'hem',
          [
            curve(hemFront, turn(alongFront, 90), at(0, m.sleeveLength + 5), at(-1, 0)),
            curve(at(0, m.sleeveLength + 5), at(-1, 0), hemBack, turn(alongBack, -90)),
          ],
          { kind: 'hem', allowance: m.hemAllowance },
        ),
        edge('underarm-back', [line(hemBack, backPoint)], seamEdge),
      ],
    },
    // No ease between underarm and the lower notches: they lie as far from the underarm as on the armholes.
    notches: [
      { edge: 'cap', at: backArmhole - 110, style: 'double', name: 'back' },
      { edge: 'cap', at: backArmhole + m.capEase * 0.6, style: 'single', name: 'top' },
      { edge: 'cap', at: backArmhole + m.capEase + 130, style: 'single', name: 'front' },
    ],
    lines: [grainLine(at(0, 420), at(0, 130)), horizontalAcross('upper arm', capHeight, half)],
    marks: [],
    cutting: { count: 2, mirrored: true, fabric: 'main' },
  };
}

const horizontalAcross = (name: string, y: number, half: number) => ({
  kind: 'level' as const,
  name,
  path: pathOf(line(at(-half, y), at(half, y))),
});

function neckbandPiece(m: ShiftMeasures, neck: number): Piece {
  const seamEdge = { allowance: m.allowance };
  return {
    name: 'neckband',
    title: 'Neckband',
    outline: {
      parts: [
        edge('upper', [line(at(0, 0), at(neck, 0))], seamEdge),
        edge('centre-front', [line(at(neck, 0), at(neck, 30))], { kind: 'fold', allowance: 0 }),
        edge('lower', [line(at(neck, 30), at(0, 30))], seamEdge),
        edge('centre-back', [line(at(0, 30), at(0, 0))], seamEdge),
      ],
    },
    notches: [],
    lines: [grainLine(at(40, 15), at(neck - 40, 15))],
    marks: [],
    cutting: { count: 2, mirrored: false, layers: 2, fabric: 'main' },
  };
}
