// A floor of 80 x 60 cm in two megapixels: small enough for every run of the tests.
import { pathLength } from '@paperhinge/geometry';
import { pathStart, pointAlong } from '@paperhinge/geometry/paths';
import type { PhotoTrace, TracedPiece } from '@paperhinge/geometry/trace';
import { photoFrame } from '@paperhinge/print';
import { rendered } from '../../print/rendered.js';
import { shapes } from '../../support/photo-floors.js';
import { type Judgement, judged } from '../../support/photo-judge.js';
import {
  aim,
  type LaidPiece,
  type LaidSheet,
  laid,
  type PagePicture,
  type Pair,
  type Scene,
} from '../../support/photo-scene.js';

let pages: Promise<readonly PagePicture[]> | undefined;

/** The sheets of a frame as an outside renderer shows their PDF. */
export const framePages = (): Promise<readonly PagePicture[]> =>
  (pages ??= photoFrame({ paper: 'a4', sheets: 9 }).then(pdf =>
    rendered(pdf, 1, 9, 203.2).map(page => ({ ...page, perMm: 8 })),
  ));

export const floorWidth = 800,
  floorHeight = 600;

/** Where sheets lie unless a test says otherwise: in the corners of the floor, turned any way. */
const places: readonly { readonly at: Pair; readonly angle: number }[] = [
  { at: [125, 165], angle: 0.1 },
  { at: [665, 140], angle: 1.7 },
  { at: [650, 455], angle: -0.4 },
  { at: [130, 470], angle: 3.0 },
];

export interface FloorWishes {
  readonly pieces?: readonly LaidPiece[];
  readonly sheets?: readonly LaidSheet[];
  readonly ground?: readonly [number, number, number];
  readonly tilt?: number;
  readonly towards?: number;
  readonly k1?: number;
  readonly blur?: number;
  readonly over?: Pair;
  readonly distance?: number;
  readonly size?: Pair;
}

export const facing: LaidPiece = { outline: laid(shapes.facing, [310, 70], 0), colour: [230, 200, 60] };
export const pocket: LaidPiece = { outline: laid(shapes.pocket, [330, 330], 0.3), colour: [240, 238, 230] };

export async function sheetsOf(scale: Pair = [1, 1]): Promise<readonly LaidSheet[]> {
  const list = await framePages();
  return places.map((place, i) => ({ ...place, page: list[i]!, scale }));
}

/** A scene of the small floor. */
export async function smallFloor(wishes: FloorWishes = {}): Promise<Scene> {
  // Rendering and tracing hold the thread for seconds; the runner must hear from its tests in between.
  await new Promise(resolve => setImmediate(resolve));
  const {
    pieces = [facing, pocket],
    sheets = await sheetsOf(),
    ground = [105, 80, 60],
    tilt = 0.35,
    towards = 1,
    k1 = -0.06,
    blur = 0.8,
    over = [floorWidth / 2, floorHeight / 2],
    distance = 870,
    size: [width, height] = [1632, 1224],
  } = wishes;
  return {
    camera: {
      width,
      height,
      focal: 0.85 * width,
      centre: [width / 2, height / 2],
      k1,
      k2: 0.01,
      pose: aim({ over, distance, tilt, towards, roll: 0.1 }),
    },
    floor: { width: 1300, height: 1100, origin: [-250, -250], sheets, pieces, fine: 5 },
    ground,
    pieces,
    light: { across: 0.3, down: -0.2, vignette: 0.4, lamp: 0.1, at: [0.2, 0.1] },
    blur,
    noise: 3,
    seed: 5,
    gamma: 1,
    parts: 2,
  };
}

/** The traced piece that lies nearest to a true one, held against it. */
export function held(trace: PhotoTrace, outline: LaidPiece['outline']): Judgement {
  const judgements = trace.pieces.map(piece => judgedPiece(piece, outline));
  return judgements.reduce((a, b) => (b.worst < a.worst ? b : a));
}

export function judgedPiece({ edges }: TracedPiece, outline: LaidPiece['outline']): Judgement {
  const points = edges.flatMap(edge => {
    const length = pathLength(edge),
      n = Math.max(2, Math.ceil(length));
    return Array.from({ length: n }, (_, k): Pair => {
      const { x, y } = pointAlong(edge, (length * k) / n);
      return [x, y];
    });
  });
  const corners = edges.map((edge): Pair => [pathStart(edge).x, pathStart(edge).y]);
  return judged(points, corners, outline);
}
