import {
  type Edge,
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import type { Became } from '../became/became.js';
import { inTurn } from '../became/in-turn.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { sameEdge } from '../edge-refs.js';
import { offStraight } from '../hinge/off-straight.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { type Run, recomposed } from '../moved-edges/composed.js';
import { moveEdgesInwards } from '../moved-edges/move-edges-inwards.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { facingBeyond } from '../redrawn-edges/facing-beyond.js';
import { asPair, centreLine, openEdge } from '../redrawn-edges/opened-centre.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Add a button stand beyond a centre edge, with a facing cut in one if one is wanted. */
export interface AddButtonStand {
  readonly piece: string;
  readonly edge: string;
  /** mm beyond the centre: half the button and 6 mm. */
  readonly width: number;
  /** mm of facing cut in one beyond the stand's edge, which is a fold then. */
  readonly facing?: number;
}

/**
 * Adds a button stand beyond a straight centre edge, and a line where the centre was; the edges beside it run on
 * straight. A piece on the fold is cut as a pair from now on. With a facing the stand's edge becomes a fold line, and
 * what lies within the facing's width of it stands beyond it turned over, so that folded back it lies edge on edge.
 * Stand: half the button and 6 mm beyond the centre line (trade-notes §7; common practice, no source).
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `stand-edge-bent`, `grown-facing-too-wide`, `corner-beside-dart`,
 *   `edge-in-two-parts`, `edge-name-taken`, `take-in-too-much`, `redrawn-crosses`; those of `perform`
 */
export const addButtonStand = (pattern: Pattern, parameters: AddButtonStand): Alteration =>
  perform(addButtonStandVerb, pattern, parameters);

export const addButtonStandForm = formOf<AddButtonStand>()({
  verb: 'add button stand',
  does: 'Adds a strip beyond a centre edge for buttons and buttonholes, and a facing beyond that, turned over and cut in one, if one is wanted.',
  fields: {
    piece: field.piece(),
    edge: field.edge(),
    width: field.size(),
    facing: field.optional(field.size()),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Add a button stand {width} wide to the {edge} of the {piece}[, with a facing {facing} wide cut in one]',
  startsAt: { edge: ['piece', 'edge'] },
  example: {
    pattern: 'woven-shift',
    step: { piece: 'front', edge: 'centre-front', width: '15 mm', facing: '60 mm' },
  },
});
export const addButtonStandVerb = /* @__PURE__ */ verbFrom(addButtonStandForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const { width, facing } = parameters;
  const ref = { piece: piece.name, edge: parameters.edge };
  return locating(ref, () => {
    const { run } = edgeInRing(piece, ref.edge);
    const centre = edgePath(piece, ref.edge);
    const offMm = offStraight(centre);
    if (offMm > tolerances.foldTolerance) throw refusal('stand-edge-bent', { edge: ref, offMm }, ref);
    const opened = run.edge.kind === 'fold';
    const wider = withStand(piece, ref.edge, width, centre);
    const done = facing === undefined ? wider : withFacing(wider, ref.edge, facing);
    requireSimple(done.piece, () => refusal('redrawn-crosses', { edge: ref }, ref));
    // A seam that closed the centre is open now.
    const seams = pattern.seams.filter(({ a, b }) => ![...a, ...b].every(one => sameEdge(one, ref)));
    const closed = pattern.seams.filter(seam => !seams.includes(seam));
    const became: Became = {
      ...done.became,
      things: [...done.became.things, ...closed.map(({ name }) => ({ was: { seam: name } }))],
    };
    return {
      pattern: { ...withPiece(pattern, opened ? asPair(done.piece) : done.piece), seams },
      became,
      did: saying('added-button-stand', {
        edge: ref,
        widthMm: width,
        ...(facing === undefined ? {} : { facingMm: facing }),
        opened,
      }),
      findings: done.findings,
    };
  });
});

/** The edge moved out in parallel, free to open now, and a line where it was. */
function withStand(piece: Piece, name: string, width: number, centre: Path): Reshaped {
  const moved = {
    piece: piece.name,
    edge: name,
    reversed: false,
    side: 'a',
    fromShare: 0,
    toShare: 1,
  } as const;
  const done = moveEdgesInwards(piece, [moved], -width, { kind: 'whole' });
  const parts = done.piece.outline.parts.map(part =>
    part.type === 'edge' && part.name === name ? openEdge(piece, part) : part,
  );
  const lines = [...done.piece.lines.filter(l => l.name !== name), centreLine(name, centre)];
  return { ...done, piece: { ...done.piece, outline: { parts }, lines } };
}

/** The stand's edge becomes a fold line, and the facing lies beyond it. */
function withFacing(stand: Reshaped, name: string, width: number): Reshaped {
  const { piece } = stand;
  const ring = edgeInRing(piece, name);
  const { items, index, run } = ring;
  const [before, after] = [-1, 1].map(step => items[(index + step + items.length) % items.length]!);
  const edge = { piece: piece.name, edge: name };
  for (const beside of [before!, after!])
    if (beside.type !== 'run')
      throw refusal(
        'corner-beside-dart',
        { edge, dart: { piece: piece.name, [beside.type]: beside.name } },
        edge,
      );
  const inner: Edge = {
    type: 'edge',
    name: 'facing',
    path: run.path,
    kind: 'raw',
    allowance: 0,
    corners: {},
  };
  const facing = facingBeyond(run.path, { before: before as Run, after: after as Run }, width, inner);
  if (!facing) throw refusal('grown-facing-too-wide', { edge, widthMm: width }, edge);
  const fresh = [facing.before, facing.inner, facing.after];
  for (const { edge: added } of fresh) requireFreeEdgeName(piece, added.name);
  const drawn = recomposed(piece, withEdgeRedrawn(ring, fresh, []));
  const line: PieceLine = { kind: 'fold', name: `${name} fold`, path: run.path };
  const folded: Became = {
    ...drawn.became,
    things: [...drawn.became.things, { was: edge, now: { piece: piece.name, line: line.name } }],
  };
  return {
    piece: { ...drawn.piece, lines: [...drawn.piece.lines, line] },
    became: inTurn(stand.became, folded),
    findings: stand.findings,
  };
}
