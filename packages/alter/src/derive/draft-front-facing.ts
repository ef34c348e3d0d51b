import {
  type Edge,
  type EdgeRef,
  type OutlinePart,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  roleOf,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { endTangent, fairCurve, pathEnd, pathStart, startTangent, subpath } from '@paperhinge/geometry/paths';
import { rightOf, scale } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { distinctEdges, holdsEdge, sameEdge } from '../edge-refs.js';
import { rolledOut } from '../lapels/rolled-out.js';
import { refusal } from '../lapels/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { derivedFacing, saidOf } from './facing-derived.js';
import { facingEnd } from './facing-end.js';
import { type FacingOn, facingOn } from './facing-piece.js';
import { type FacingShape, partedRing, requireSound } from './facing-shape.js';
import { hemsAsSeams } from './hems-as-seams.js';
import { placedFacings } from './placed-facings.js';
import { refusal as refusalOfDrafts } from './tellings.js';

/** A facing from the hem up the front edge to the shoulder. Lengths in mm. */
export interface DraftFrontFacing {
  readonly name: string;
  /** All edges from the front edge up to the shoulder, with lapel and collar where they are cut in one. */
  readonly along: readonly EdgeRef[];
  /** How wide it is at the hem, and at the shoulder; default 70, and 45. */
  readonly width?: number;
  readonly shoulder?: number;
  /** Of these edges, those that roll to the outside: there it is larger by `turn`; default 2. */
  readonly rolling?: readonly EdgeRef[];
  readonly turn?: number;
  readonly fabric?: string;
  /** mm that a hem among the edges gets when it becomes a seam; absent: what most seams of its piece have. */
  readonly allowance?: number;
}

/**
 * Drafts the facing of a front that opens, with its lapel, or with its shawl collar, whose upper side it is. On paper:
 * the front traced along its edge from the hem to the shoulder; the inner line from the shoulder, square to it, fair
 * down to the hem, where it runs beside the front edge. Where lapel or collar roll to the outside the facing is larger
 * by the turn of the cloth, nothing at the break point. Edges that the front sews to its other half, as a shawl collar
 * at the centre back, the facing sews to its own. The garment does not change, but a hem among the edges becomes a
 * seam. Source: common practice, no source; turn of cloth 2 to 3 mm (trade-notes §7).
 *
 * @throws PatternError `edges-not-in-one-run`, `no-shoulder-beside`, `facing-end-too-wide`, `facing-too-wide`,
 *   `rolling-not-along`, `take-in-too-much`; `drafted-along-itself`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftFrontFacing = (pattern: Pattern, parameters: DraftFrontFacing): Alteration =>
  perform(draftFrontFacingVerb, pattern, parameters);

export const draftFrontFacingForm = formOf<DraftFrontFacing>()({
  verb: 'draft front facing',
  does: 'Drafts the facing of a front that opens, from the hem up to the shoulder, with its lapel or its shawl collar; where these roll to the outside it is larger by the turn of the cloth.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    width: field.usually(field.size(), 70),
    shoulder: field.usually(field.size(), 45),
    rolling: field.optional(field.edgesOfPieces()),
    turn: field.usually(field.length(), 2),
    fabric: field.optional(field.cloth()),
    allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
  },
  leaves: ({ name }) => ({ pieces: [name], seams: [name, `${name} join`] }),
  sentence:
    'Draft a front facing "{name}" for {along}[, {width} wide at the hem][, {shoulder} at the shoulder][, {turn} larger][ where these roll out: {rolling}][, of the {fabric} cloth][, a hem among them now a seam of {allowance}]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'shirt',
    after: [
      { 'remove piece': { piece: 'collar' } },
      { 'remove piece': { piece: 'stand' } },
      {
        'cut lapel': { piece: 'front', neck: 'neck', edge: 'front-edge', break: '220 mm from neck' },
      },
    ],
    step: {
      name: 'front facing',
      along: ['front.front-edge', 'front.lapel', 'front.lapel-top', 'front.neck'],
      rolling: ['front.lapel', 'front.lapel-top'],
    },
  },
});
export const draftFrontFacingVerb = /* @__PURE__ */ verbFrom(draftFrontFacingForm, drawnFrontFacing);

type Whole = DraftFrontFacing & Required<Pick<DraftFrontFacing, 'width' | 'shoulder' | 'turn'>>;

function drawnFrontFacing(given: Pattern, wish: Whole): Alteration {
  const { name, width } = wish;
  const along = distinctEdges(wish.along);
  const rolling = distinctEdges(wish.rolling ?? []);
  const stray = rolling.find(ref => !holdsEdge(along, ref));
  if (stray) throw refusal('rolling-not-along', { edge: { ...stray } }, stray);
  const { pattern, findings: turned } = hemsAsSeams(given, along, name, wish.allowance);
  const source = pieceNamed(pattern, along[0]!.piece);
  const others = along.filter(ref => ref.piece !== source.name);
  if (others.length > 0)
    throw refusalOfDrafts('edges-not-in-one-run', { edges: along.map(ref => ({ ...ref })) });
  const shape = frontFacingShape(
    source,
    along.map(ref => ref.edge),
    wish,
  );
  const fabric = wish.fabric ?? source.cutting.fabric;
  const drawn = closedLikeFront(pattern, facingOn({ name, shape, source, along, fabric, join: 0 }), along);
  const names = rolling.map(ref => ref.edge);
  const flush = drawn.faced.map(one => one.edge).filter(edge => !names.includes(edge));
  const facing = { ...drawn, piece: rolledOut(drawn.piece, names, flush, wish.turn) };
  const placed = placedFacings(pattern, [facing]);
  const derived = placed.facings.map(({ piece, faced }) =>
    derivedFacing(
      placed.pattern,
      piece,
      faced.map(one => one.edge),
      { kind: 'facing', width, join: 0 },
    ),
  );
  return {
    pattern: placed.pattern,
    did: saidOf('facing', derived),
    findings: [...turned, ...placed.findings],
    derived,
  };
}

/** The facing closes where its front closes, and is not sewn to it there. */
function closedLikeFront({ seams }: Pattern, facing: FacingOn, along: readonly EdgeRef[]): FacingOn {
  const closing = along.filter(ref =>
    seams.some(({ a, b }) => [...a, ...b].every(run => sameEdge(run, ref))),
  );
  return {
    ...facing,
    faced: facing.faced.filter(one => !holdsEdge(closing, one.source)),
    closed: closing.map(ref => ref.edge),
  };
}

function frontFacingShape(
  piece: Piece,
  edges: readonly string[],
  { width, shoulder }: Pick<Whole, 'width' | 'shoulder'>,
): FacingShape {
  const { outer, rest } = partedRing(piece, edges);
  const [after, before] = [rest[0], rest.at(-1)];
  const isShoulder = (part: OutlinePart | undefined): part is Edge =>
    part?.type === 'edge' && roleOf(part) === 'shoulder';
  const up = isShoulder(after);
  if (up === isShoulder(before) || after?.type !== 'edge' || before?.type !== 'edge')
    throw refusal(
      'no-shoulder-beside',
      { piece: { piece: piece.name }, beside: [after, before].flatMap(part => thingOf(piece, part)) },
      { piece: piece.name },
    );
  const first = facingEnd(piece, after, up ? shoulder : width),
    last = facingEnd(piece, before, up ? width : shoulder);
  const afterPath = subpath(after.path, 0, first);
  const length = pathLength(before.path);
  const beforePath = subpath(before.path, length - last, Number.POSITIVE_INFINITY);
  // Square to the shoulder, and beside the front edge at the hem.
  const inner = fairCurve(
    {
      point: pathEnd(afterPath),
      direction: up ? rightOf(endTangent(afterPath)) : scale(endTangent(outer.at(-1)!.path), -1),
    },
    {
      point: pathStart(beforePath),
      direction: up ? scale(startTangent(outer[0]!.path), -1) : scale(rightOf(startTangent(beforePath)), -1),
    },
  );
  const shape: FacingShape = {
    outer,
    afterOuter: [{ path: afterPath, of: { edge: after, from: 0 } }],
    inner,
    beforeOuter: [{ path: beforePath, of: { edge: before, from: length - last } }],
    trimmedMm: 0,
  };
  requireSound(piece, shape, width);
  return shape;
}

const thingOf = (piece: Piece, part: OutlinePart | undefined) =>
  part ? [{ piece: piece.name, [part.type]: part.name }] : [];
