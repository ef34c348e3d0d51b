import { at, type Edge, type EdgeRun, line, type Piece, type Point, pathOf } from '@paperhinge/geometry';
import { joined, reversedPath, subpath } from '@paperhinge/geometry/paths';
import { type Affine, add, scale, subtract } from '@paperhinge/geometry/plane';
import { centroid } from '@paperhinge/geometry/regions';
import { grainOrVertical } from '../moved-edges/grain.js';
import { movedPart } from '../moved-edges/moved-part.js';
import { grainLine, seamEdge } from './collar-shapes.js';
import { alongWaist, type FlyFront, type FlyMeasures, flyLine } from './fly-shape.js';
import { titled } from './long-piece.js';

/** What the pieces of a fly are cut by. */
export interface FlyPieceMeasures extends FlyMeasures {
  readonly over: 'right' | 'left';
  readonly fabric?: string;
}

/** Where the opening ends, on fronts, facing and shield alike. */
export const zipEnd = 'zip end';

/** A piece of the fly and its run that lies on the centre front, from the waist. */
export interface FlyPiece {
  readonly piece: Piece;
  readonly own: EdgeRun;
}

/** The facing of the front that lies uppermost, right side up: traced from the front, and turned over for one side. */
export function flyFacing(front: FlyFront, name: string, wish: FlyPieceMeasures): FlyPiece {
  const { piece: source, edge, waist, down, across, downwards } = front;
  const outer = flyLine(front, wish, across);
  const centre = subpath(down, 0, wish.length + wish.below);
  const top = subpath(across, 0, alongWaist(across, outer));
  const parts: readonly Edge[] = [
    { ...seamEdge('centre', downwards ? centre : reversedPath(centre), edge.allowance), role: 'opening' },
    ...(downwards
      ? [inner(reversedPath(outer)), topEdge(waist, reversedPath(top))]
      : [topEdge(waist, top), inner(outer)]),
  ];
  // As drawn a front whose outline runs up the centre is the wearer's left one; its facing lies on it turned over.
  const isLeft = !downwards;
  const turned = isLeft === (wish.over === 'left');
  const own = turned ? parts.toReversed().map(part => movedPart(part, overleaf) as Edge) : parts;
  const { grain } = grainOrVertical(source);
  const half = scale(turned ? at(-grain.x, grain.y) : grain, (wish.length + wish.below) * 0.3);
  const middle = centroid(joined(...own.map(part => part.path)));
  return {
    piece: {
      name,
      title: titled(name),
      role: 'facing',
      outline: { parts: own },
      notches: [
        { edge: 'centre', at: openingEnd(wish, downwards !== turned), style: 'single', name: zipEnd },
      ],
      lines: [grainLine(subtract(middle, half), add(middle, half))],
      marks: [],
      cutting: { count: 1, mirrored: false, rightSideUp: true, fabric: wish.fabric ?? source.cutting.fabric },
      alsoCut: [{ count: 1, mirrored: false, fabric: 'interfacing' }],
    },
    own: { piece: name, edge: 'centre', reversed: downwards === turned },
  };
}

const overleaf: Affine = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };

const inner = (path: Edge['path']): Edge => seamEdge('inner', path, 0, 'raw');
const topEdge = (waist: Edge, path: Edge['path']): Edge => ({
  ...seamEdge('waist', path, waist.allowance),
  role: 'waist',
});

/** mm from the start of an edge that runs down from the waist, or up to it, to the end of the opening. */
const openingEnd = ({ length, below }: FlyPieceMeasures, down: boolean): number => (down ? length : below);

/** A strip folded lengthwise, as long as the facing and a little wider than it, so that it covers the zip. */
export function flyShield(place: Point, front: FlyFront, name: string, wish: FlyPieceMeasures): FlyPiece {
  const { edge, waist, piece: source } = front;
  const [long, wide] = [wish.length + wish.below, wish.width + wider];
  const spot = (x: number, y: number): Point => at(place.x + x, place.y + y);
  const side = (of: string, from: Point, to: Point, allowance: number) =>
    seamEdge(of, pathOf(line(from, to)), allowance);
  const corners = [spot(0, 0), spot(2 * wide, 0), spot(2 * wide, long), spot(0, long)] as const;
  return {
    piece: {
      name,
      title: titled(name),
      role: 'placket',
      outline: {
        parts: [
          { ...side('waist', corners[0], corners[1], waist.allowance), role: 'waist' },
          side('free', corners[1], corners[2], edge.allowance),
          side('end', corners[2], corners[3], edge.allowance),
          { ...side('centre', corners[3], corners[0], edge.allowance), role: 'opening' },
        ],
      },
      notches: [{ edge: 'centre', at: wish.below, style: 'single', name: zipEnd }],
      lines: [
        grainLine(spot(wide / 2, long * 0.8), spot(wide / 2, long * 0.2)),
        { kind: 'fold', name: 'fold', path: pathOf(line(spot(wide, 0), spot(wide, long))) },
      ],
      marks: [],
      cutting: { count: 1, mirrored: false, fabric: wish.fabric ?? source.cutting.fabric },
    },
    own: { piece: name, edge: 'centre', reversed: true },
  };
}

/** mm by which the shield is wider than the facing, so that it covers the zip's tape. Common practice, no source. */
const wider = 5;
