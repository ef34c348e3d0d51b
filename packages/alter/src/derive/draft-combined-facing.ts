import {
  type Edge,
  type EdgeRef,
  type Finding,
  type OutlinePart,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  roleOf,
} from '@paperhinge/geometry';
import { endTangent, fairCurve, pathEnd, pathStart, startTangent, subpath } from '@paperhinge/geometry/paths';
import { leftOf, rightOf } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { drafted } from './drafted.js';
import { dartFindings, derivedFacing, perSource, saidOf } from './facing-derived.js';
import { facingEnd } from './facing-end.js';
import { type FacingOn, facingOn } from './facing-piece.js';
import { type FacingShape, partedRing, requireSound } from './facing-shape.js';
import { flatAlong } from './flat-along.js';
import { placedFacings } from './placed-facings.js';
import { refusal } from './tellings.js';

/** A facing of neck and armhole in one. Lengths in mm. */
export interface DraftCombinedFacing {
  readonly name: string;
  /** Neck and armhole of each piece. */
  readonly along: readonly EdgeRef[];
  /** How far it reaches down the centre from the neck, and down the side from the armhole; default 60, and 50. */
  readonly width?: number;
  readonly side?: number;
  readonly fabric?: string;
}

/**
 * Drafts the facing of a sleeveless garment in one for neck and armhole. On paper: the piece traced round its neck, its
 * shoulder and its armhole, with the darts that open there pinned closed, and a fair line drawn from the side to the
 * centre, square to both, above the bust. Each piece gets one, sewn to the next at shoulder and side as the garment is.
 * The garment does not change. Source: common practice, no source (trade-notes §7).
 *
 * @throws PatternError `no-shoulder-between`, `edges-not-in-one-run`, `facing-end-too-wide`, `facing-too-wide`,
 *   `dart-in-facing`, `drafted-along-itself`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftCombinedFacing = (pattern: Pattern, parameters: DraftCombinedFacing): Alteration =>
  perform(draftCombinedFacingVerb, pattern, parameters);

export const draftCombinedFacingForm = formOf<DraftCombinedFacing>()({
  verb: 'draft combined facing',
  does: 'Drafts the facing of neck and armhole in one, for a garment without sleeves, traced with the darts there closed; the facings of front and back are sewn to one another at shoulder and side.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    width: field.usually(field.size(), 60),
    side: field.usually(field.size(), 50),
    fabric: field.optional(field.cloth()),
  },
  leaves: drafted,
  sentence:
    'Draft a combined facing "{name}" for {along}[, {width} down the centre][, {side} down the side][, of the {fabric} cloth]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'waistcoat',
    step: {
      name: 'facing',
      along: ['front.neck', 'front.armhole', 'back.neck', 'back.armhole'],
      width: 90,
    },
  },
});
export const draftCombinedFacingVerb = /* @__PURE__ */ verbFrom(draftCombinedFacingForm, drawnFacings);

type Whole = DraftCombinedFacing & Required<Pick<DraftCombinedFacing, 'width' | 'side'>>;

function drawnFacings(pattern: Pattern, wish: Whole): Alteration {
  const drawn = perSource(distinctEdges(wish.along), wish.name).map(own => facingFor(pattern, own, wish));
  const placed = placedFacings(
    pattern,
    drawn.map(d => d.facing),
  );
  const derived = placed.facings.map(({ piece, faced }) =>
    derivedFacing(
      placed.pattern,
      piece,
      faced.map(one => one.edge),
      { kind: 'facing', width: wish.width, join: 0 },
    ),
  );
  return {
    pattern: placed.pattern,
    did: saidOf('facing', derived),
    findings: [...placed.findings, ...drawn.flatMap(d => d.findings)],
    derived,
  };
}

function facingFor(
  pattern: Pattern,
  { source: from, along, name }: ReturnType<typeof perSource>[number],
  wish: Whole,
): { readonly facing: FacingOn; readonly findings: readonly Finding[] } {
  const given = pieceNamed(pattern, from);
  const edges = withShoulder(
    given,
    along.map(ref => ref.edge),
  );
  const { piece: source, darts } = flatAlong(given, edges);
  const shape = combinedShape(source, edges, wish);
  const fabric = wish.fabric ?? source.cutting.fabric;
  return {
    facing: facingOn({ name, shape, source, along, fabric, join: 0 }),
    findings: dartFindings(name, from, darts),
  };
}

/**
 * These edges, and the shoulder where it lies between two of them.
 * @throws PatternError `no-shoulder-between`
 */
function withShoulder(piece: Piece, edges: readonly string[]): readonly string[] {
  const { parts } = piece.outline;
  const isEdge = (part: OutlinePart, named: boolean): boolean =>
    part.type === 'edge' && edges.includes(part.name) === named;
  // What lies between the named edges, one after the other round the outline.
  const starts = [...parts.keys()].filter(i => isEdge(parts[i]!, true) && !isEdge(next(parts, i), true));
  const between = starts.map(i => {
    const rest = [...parts.slice(i + 1), ...parts.slice(0, i)];
    return rest.slice(0, rest.findIndex(part => isEdge(part, true)) + 1 || undefined);
  });
  const shoulders = between
    .map(gap => gap.filter((part): part is Edge => isEdge(part, false)))
    .filter(gap => gap.length > 0 && gap.every(edge => roleOf(edge) === 'shoulder'));
  const names = [...new Set([...edges, ...shoulders.flat().map(edge => edge.name)])];
  const hasShoulder = parts.some(
    part => part.type === 'edge' && names.includes(part.name) && roleOf(part) === 'shoulder',
  );
  if (hasShoulder) return names;
  const thing = { piece: piece.name };
  throw refusal(
    'no-shoulder-between',
    { piece: thing, edges: edges.map(edge => ({ ...thing, edge })) },
    thing,
  );
}

const next = (parts: readonly OutlinePart[], i: number): OutlinePart => parts[(i + 1) % parts.length]!;

function combinedShape(
  piece: Piece,
  edges: readonly string[],
  { width, side }: Pick<Whole, 'width' | 'side'>,
): FacingShape {
  const { outer, rest } = partedRing(piece, edges);
  const [after, before] = [rest[0], rest.at(-1)];
  if (after?.type !== 'edge' || before?.type !== 'edge') {
    const dart = [after, before].find(part => part && part.type !== 'edge');
    throw refusal('dart-in-facing', {
      dart: { piece: piece.name, [dart?.type ?? 'edge']: dart?.name ?? edges[0]! },
    });
  }
  // The armhole ends at the side, the neck at the centre.
  const reach = (faced: Edge): number => (roleOf(faced) === 'armhole' ? side : width);
  const first = facingEnd(piece, after, reach(outer.at(-1)!)),
    last = facingEnd(piece, before, reach(outer[0]!));
  const afterPath = subpath(after.path, 0, first);
  const length = pathLength(before.path);
  const beforePath = subpath(before.path, length - last, Number.POSITIVE_INFINITY);
  const shape: FacingShape = {
    outer,
    afterOuter: [{ path: afterPath, of: { edge: after, from: 0 } }],
    inner: fairCurve(
      { point: pathEnd(afterPath), direction: rightOf(endTangent(afterPath)) },
      { point: pathStart(beforePath), direction: leftOf(startTangent(beforePath)) },
    ),
    beforeOuter: [{ path: beforePath, of: { edge: before, from: length - last } }],
    trimmedMm: 0,
  };
  requireSound(piece, shape, width);
  return shape;
}
