import {
  at,
  type Edge,
  line,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  type Point,
  pathOf,
  type Segment,
} from '@paperhinge/geometry';

/** Numbers from 0 to 1, the same for the same seed (Park and Miller, 1988). */
export function numbersFrom(seed: number): () => number {
  let state = (seed * 7919 + 1) % 2147483647 || 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

type Next = () => number;
const one = <T>(list: readonly T[], next: Next): T => list[Math.floor(next() * list.length)]!;

/** A named side of a piece, as a chain through points or a path, with a kind of its own if need be. */
type Side = readonly [name: string, path: Path, kind?: Edge['kind'] | undefined];

interface Drawn {
  readonly sides: readonly Side[];
  readonly grain: PieceLine['path'];
}

/** A curve by its control points. */
const curve = (a: Point, b: Point, c: Point, d: Point): Segment => [a, b, c, d];
const straight = (a: Point, b: Point): Path => pathOf(line(a, b));

/** A panel with a shaped side, such as a gore, a sleeve or a bodice half. */
function panel(next: Next): Drawn {
  const [width, height] = [40 + next() * 460, 40 + next() * 900];
  const top = width * (0.2 + 0.8 * next());
  return {
    sides: [
      ['top', straight(at(0, 0), at(top, 0))],
      [
        'side',
        pathOf(curve(at(top, 0), at(top, height / 3), at(width, (2 * height) / 3), at(width, height))),
      ],
      ['hem', straight(at(width, height), at(0, height))],
      ['centre', straight(at(0, height), at(0, 0)), next() < 0.3 ? 'fold' : undefined],
    ],
    grain: straight(at(top / 3, height * 0.2), at(top / 3, height * 0.8)),
  };
}

/** A waistband, a strap, a loop: long and narrow, its grain along it or across. */
function strip(next: Next): Drawn {
  const [width, height] = [18 + next() * 90, 60 + next() * 1100];
  return {
    sides: [
      ['end', straight(at(0, 0), at(width, 0))],
      ['outer', straight(at(width, 0), at(width, height))],
      ['other-end', straight(at(width, height), at(0, height))],
      ['inner', straight(at(0, height), at(0, 0)), next() < 0.2 ? 'fold' : undefined],
    ],
    grain:
      next() < 0.6
        ? straight(at(width / 2, height * 0.2), at(width / 2, height * 0.8))
        : straight(at(width * 0.2, height / 2), at(width * 0.8, height / 2)),
  };
}

/** A sleeve with a round cap, its grain down the middle, sometimes on the bias. */
function sleeve(next: Next): Drawn {
  const [width, height, cap] = [160 + next() * 300, 120 + next() * 500, 40 + next() * 120];
  const middle = at(width / 2, cap + height / 2);
  const turn = next() < 0.3 ? Math.PI / 4 : Math.PI / 2;
  const reach = Math.min(width, height) * 0.3;
  const ray = at(Math.cos(turn) * reach, Math.sin(turn) * reach);
  return {
    sides: [
      [
        'cap',
        pathOf(
          curve(at(0, cap), at(width * 0.25, cap), at(width * 0.3, 0), at(width / 2, 0)),
          curve(at(width / 2, 0), at(width * 0.7, 0), at(width * 0.75, cap), at(width, cap)),
        ),
      ],
      ['front-underarm', straight(at(width, cap), at(width * 0.9, cap + height))],
      ['hem', straight(at(width * 0.9, cap + height), at(width * 0.1, cap + height)), 'hem'],
      ['back-underarm', straight(at(width * 0.1, cap + height), at(0, cap))],
    ],
    grain: straight(at(middle.x - ray.x, middle.y - ray.y), at(middle.x + ray.x, middle.y + ray.y)),
  };
}

const titles = ['', 'Left front side panel, upper half', 'Loop', 'Ärmelstulpe', 'Front', 'Under collar'];

function piece(name: string, cloth: string, next: Next): Piece {
  const { sides, grain } = one([panel, panel, strip, sleeve], next)(next);
  const allowance = one([0, 6, 10, 15], next);
  const parts = sides.map(([edgeName, path, kind = allowance > 0 ? 'seam' : 'raw']): Edge => {
    const turned = kind === 'seam' || kind === 'hem';
    return { type: 'edge', name: edgeName, path, kind, allowance: turned ? allowance : 0, corners: {} };
  });
  return {
    name,
    title: one(titles, next) || name,
    outline: { parts },
    notches: [],
    lines: next() < 0.85 ? [{ kind: 'grain', name: 'grain', path: grain }] : [],
    marks: [],
    cutting: { count: one([1, 2, 4], next), mirrored: false, fabric: cloth },
  };
}

/** A garment of 1 to 40 pieces of up to three cloths; now and then all of them alike, as gores are. */
export function randomGarment(seed: number): Pattern {
  const next = numbersFrom(seed);
  const count = 1 + Math.floor(next() * 40);
  const cloths = ['main', 'lining', 'interfacing'].slice(0, 1 + Math.floor(next() * 3));
  const alike = next() < 0.3 ? Math.floor(next() * 1e6) : undefined;
  const pieces = Array.from({ length: count }, (_, i) =>
    piece(`piece ${i + 1}`, cloths[i % cloths.length]!, alike === undefined ? next : numbersFrom(alike)),
  );
  return {
    name: `Garment ${seed}`,
    unit: 'mm',
    pieces,
    seams: [],
    fabrics: cloths.map(name => ({ name, role: name === 'main' ? 'main' : 'lining' })),
  };
}
