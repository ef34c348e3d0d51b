import {
  at,
  type Edge,
  type EdgeRun,
  edgePath,
  line,
  type OutlinePart,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import { arcBetween } from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { copiesInGarment } from '@paperhinge/geometry/pattern';
import { add } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { freePlace, laidAside } from '../derive/free-place.js';
import { titled } from '../derive/long-piece.js';
import { requireFreePieceName, requireFreeSeamName } from '../dividing/names-free.js';
import { refusal as dividingRefusal } from '../dividing/tellings.js';
import { hemEnd } from '../fullness/hem-end.js';
import { refusal, saying } from '../fullness/tellings.js';
import { godetSeams } from '../fullness/without-godet.js';
import { seamNamed } from '../moved-edges/seam-place.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draft a godet that is set into the lower end of a seam. */
export interface DraftGodet {
  readonly name: string;
  readonly seam: string;
  /** mm up the seam from the hem. */
  readonly depth: number;
  /** mm along the godet's hem. */
  readonly sweep: number;
}

/**
 * Drafts a godet: a part of a circle of radius `depth` whose hem is `sweep` long, set into the lower end of a seam, which
 * is sewn as far down as the godet's point only. One is cut for each time the seam stands in the garment. Its angle is
 * sweep over depth. `refresh` sets it into the seam again, as far up from the hem as that is then. Source: common practice (angle [derived]).
 *
 * @throws PatternError `unknown-seam`, `piece-name-taken`, `seam-name-taken`, `seam-not-of-two-edges`,
 *   `vent-not-at-hem`, `godet-seam-short`; those of `perform`
 */
export const draftGodet = (pattern: Pattern, parameters: DraftGodet): Alteration =>
  perform(draftGodetVerb, pattern, parameters);

export const draftGodetForm = formOf<DraftGodet>()({
  verb: 'draft godet',
  does: 'Drafts a part of a circle that is set into the lower end of a seam, to widen the hem there.',
  fields: {
    name: field.newName(),
    seam: field.seam(),
    depth: field.size(),
    sweep: field.size(),
  },
  leaves: ({ name, seam }) => ({ pieces: [name], seams: [seam, `${name} first`, `${name} second`] }),
  sentence: 'Draft a godet "{name}" into the {seam} seam, {depth} up from the hem and {sweep} along its hem',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: {
    pattern: 'darted-dress',
    step: { name: 'godet', seam: 'skirt side', depth: '250 mm', sweep: '220 mm' },
  },
});
export const draftGodetVerb = /* @__PURE__ */ verbFrom(draftGodetForm, (pattern, parameters) => {
  const { name, depth, sweep } = parameters;
  const seam = seamNamed(pattern, parameters.seam);
  requireFreePieceName(pattern, name);
  const names = godetSeams(name);
  for (const one of names) requireFreeSeamName(pattern, one);
  const [first, second] = [seam.a, seam.b].map(side => lowerEnd(pattern, seam, side, depth));
  const count = copiesInGarment(pieceNamed(pattern, seam.a[0]!.piece));
  const recipe = { verb: draftGodetForm.verb, parameters: { ...parameters } };
  const piece = { ...laidAside(pattern, godetPiece(pattern, parameters, first!, count)), recipe };
  const sewn = (which: string, edge: string, part: EdgeRun): Seam => ({
    name: which,
    a: [{ piece: name, edge, reversed: edge === 'first' }],
    b: [part],
    ease: { mm: 0 },
  });
  const shorter = { ...seam, a: [first!.rest], b: [second!.rest] };
  return {
    pattern: {
      ...pattern,
      pieces: [...pattern.pieces, piece],
      seams: [
        ...pattern.seams.map(s => (s === seam ? shorter : s)),
        sewn(names[0], 'first', first!.lower),
        sewn(names[1], 'second', second!.lower),
      ],
    },
    became: nothingBecame,
    did: saying('drafted-godet', {
      piece: { piece: name },
      seam: { seam: seam.name },
      depthMm: depth,
      sweepMm: sweep,
      count,
    }),
    findings: [],
  };
});

interface LowerEnd {
  /** What of the edge is sewn to the godet, towards the hem, and what to its partner as before. */
  readonly lower: EdgeRun;
  readonly rest: EdgeRun;
  readonly edge: Edge;
}

function lowerEnd(pattern: Pattern, seam: Seam, side: readonly EdgeRun[], depthMm: number): LowerEnd {
  const named = { seam: seam.name };
  const [run] = side;
  if (side.length !== 1 || run!.part) throw dividingRefusal('seam-not-of-two-edges', { seam: named }, named);
  const piece = pieceNamed(pattern, run!.piece);
  const ref = { piece: run!.piece, edge: run!.edge };
  const end = hemEnd(piece, run!.edge);
  if (!end) throw refusal('vent-not-at-hem', { edge: ref }, ref);
  const seamMm = pathLength(edgePath(piece, run!.edge));
  if (depthMm >= seamMm - tolerances.joiningGap)
    throw refusal('godet-seam-short', { seam: named, depthMm, seamMm }, named);
  const [lower, rest] =
    end.at === 'end'
      ? [
          { from: seamMm - depthMm, to: seamMm },
          { from: 0, to: seamMm - depthMm },
        ]
      : [
          { from: 0, to: depthMm },
          { from: depthMm, to: seamMm },
        ];
  return {
    lower: { ...ref, reversed: end.at === 'start', part: lower },
    rest: { ...run!, part: rest },
    edge: end.part,
  };
}

/** Point up, its two straight sides equal, its hem an arc about the point. */
function godetPiece(
  pattern: Pattern,
  { name, depth, sweep }: DraftGodet,
  { edge, lower }: LowerEnd,
  count: number,
): Piece {
  const point = freePlace(pattern, name);
  const half = sweep / depth / 2;
  const way = (angle: number) => at(depth * Math.sin(angle), depth * Math.cos(angle));
  const [right, left] = [way(half), way(-half)];
  const source = pieceNamed(pattern, lower.piece);
  const side = (label: string, path: Edge['path'], kind: Edge['kind'], allowance: number): OutlinePart => ({
    type: 'edge',
    name: label,
    path,
    kind,
    allowance,
    corners: {},
  });
  const hem = source.outline.parts.find((p): p is Edge => p.type === 'edge' && p.kind === 'hem');
  const outline = [
    side('second', pathOf(line(point, add(point, right))), 'seam', edge.allowance),
    side('hem', pathOf(...arcBetween(point, right, left, true)), 'hem', hem?.allowance ?? edge.allowance),
    side('first', pathOf(line(add(point, left), point)), 'seam', edge.allowance),
  ];
  return {
    name,
    title: titled(name),
    role: 'gusset',
    outline: { parts: outline },
    notches: [],
    lines: [
      {
        kind: 'grain',
        name: 'grain',
        path: pathOf(line(at(point.x, point.y + depth * 0.35), at(point.x, point.y + depth * 0.85))),
      },
    ],
    marks: [],
    cutting: { count, mirrored: false, fabric: source.cutting.fabric },
  };
}
