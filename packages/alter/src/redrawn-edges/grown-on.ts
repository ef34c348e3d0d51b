import { type Edge, edgePath, type Path, type Piece, type PieceLine } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { endTangent, joined, pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
import { isCentreEdge } from '@paperhinge/geometry/pattern';
import { dot, scale, subtract, unit } from '@paperhinge/geometry/plane';
import type { Became } from '../became/became.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { offStraight } from '../hinge/off-straight.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { type Item, type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { edgeInRing, withEdgeRedrawn } from './corner-moved.js';
import { facingBeyond } from './facing-beyond.js';
import { refusal } from './tellings.js';

/** An edge beside the grown one that goes on in an edge of the facing: at which of its ends, and what that is called. */
export interface GoesOn {
  readonly edge: string;
  readonly at: 'start' | 'end';
  readonly facing: string;
}

/** A piece with a facing cut in one with it. */
export interface GrownOn extends Reshaped {
  readonly goesOn: readonly GoesOn[];
}

/**
 * A piece with what lies within `width` mm of a straight edge standing beyond it, turned over in it; the edge is a fold
 * line then. A fold beside it runs on; any other edge gets one of its own in the facing.
 *
 * @param turn mm of allowance on the facing's free edge; 0 leaves it raw
 * @throws PatternError `grown-on-edge-curved`, `grown-on-off-square`, `grown-facing-too-wide`, `corner-beside-dart`,
 *   `edge-in-two-parts`, `edge-name-taken`, `redrawn-crosses`
 */
export function grownOn(piece: Piece, name: string, width: number, turn: number): GrownOn {
  const edge = { piece: piece.name, edge: name };
  const ring = edgeInRing(piece, name);
  const { items, index, run } = ring;
  const [before, after] = [-1, 1].map(step =>
    runBeside(piece.name, name, items[(index + step + items.length) % items.length]!),
  ) as [Run, Run];
  const offMm = offStraight(edgePath(piece, name));
  const square = squareToCentre(run.path, before, after);
  if (offMm > tolerances.foldTolerance)
    throw refusal('grown-on-edge-curved', { edge, offMm, ...square }, edge);
  const inner: Edge = {
    type: 'edge',
    name: `${name}-facing`,
    path: run.path,
    kind: turn === 0 ? 'raw' : 'seam',
    allowance: turn,
    corners: {},
  };
  const facing = facingBeyond(run.path, { before, after }, width, inner);
  if (!facing) throw refusal('grown-facing-too-wide', { edge, widthMm: width }, edge);
  const sides = [
    { beside: before, fresh: runningOn(before, facing.before, 'end'), at: 'end' as const },
    { beside: after, fresh: runningOn(after, facing.after, 'start'), at: 'start' as const },
  ];
  if (sides.some(({ fresh }) => !fresh))
    throw refusal(
      'grown-on-off-square',
      { edge, fold: { edge: foldOf(before, after)!.edge.name }, ...square },
      edge,
    );
  const goesOn = sides.flatMap(({ beside, fresh, at }) =>
    fresh!.edge.name === beside.edge.name ? [] : [{ edge: beside.edge.name, at, facing: fresh!.edge.name }],
  );
  for (const added of [inner.name, ...goesOn.map(one => one.facing)]) requireFreeEdgeName(piece, added);
  const drawn = recomposed(
    piece,
    withEdgeRedrawn(ring, [sides[0]!.fresh!, facing.inner, sides[1]!.fresh!], []),
  );
  requireSimple(drawn.piece, () => refusal('redrawn-crosses', { edge }, edge));
  const line: PieceLine = { kind: 'fold', name: `${name} fold`, path: run.path };
  const things = [...drawn.became.things, { was: edge, now: { piece: piece.name, line: line.name } }];
  const became: Became = { ...drawn.became, things };
  return { ...drawn, piece: { ...drawn.piece, lines: [...drawn.piece.lines, line] }, became, goesOn };
}

function runBeside(piece: string, name: string, item: Item): Run {
  const edge = { piece, edge: name };
  if (item.type === 'run') return item;
  throw refusal('corner-beside-dart', { edge, dart: { piece, [item.type]: item.name } }, edge);
}

const foldOf = (before: Run, after: Run): Run | undefined =>
  [before, after].find(({ edge }) => edge.kind === 'fold');

/** A fold runs on as one with itself, if it is square to the edge that is turned; else there is nothing. */
function runningOn(beside: Run, fresh: Run, at: 'start' | 'end'): Run | undefined {
  if (beside.edge.kind !== 'fold') return fresh;
  const [arriving, leaving] = at === 'end' ? [beside.path, fresh.path] : [fresh.path, beside.path];
  if (offStraight(joined(arriving, leaving)) > tolerances.foldTolerance) return undefined;
  return { ...fresh, edge: beside.edge };
}

/**
 * mm up the side (negative: down) by which the edge's far end must move for it to be square to the centre beside it;
 * nothing where no centre lies there, or the side runs along the edge.
 */
function squareToCentre(path: Path, before: Run, after: Run): { readonly sideMm?: number } {
  const centre = [before, after].find(({ edge }) => isCentreEdge(edge));
  if (!centre) return {};
  const [corner, far] =
    centre === before ? [pathStart(path), pathEnd(path)] : [pathEnd(path), pathStart(path)];
  const down =
    centre === before
      ? unit(subtract(corner, pathStart(centre.path)))
      : unit(subtract(corner, pathEnd(centre.path)));
  const side = centre === before ? startTangent(after.path) : scale(endTangent(before.path), -1);
  const lean = -dot(side, down);
  return Math.abs(lean) <= tolerances.joiningGap ? {} : { sideMm: dot(subtract(far, corner), down) / lean };
}
