import {
  edgeNamed,
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { reversedPath, subpath } from '@paperhinge/geometry/paths';
import { neighboursOf, partsOfEdge, withPiece } from '@paperhinge/geometry/pattern';
import { type Affine, determinant } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration, Redrawn } from '../alteration.js';
import { type Became, together } from '../became/became.js';
import { carriedNotches } from '../became/parts.js';
import { laidOn } from '../dividing/laid-on.js';
import { finding, refusal, saying } from '../dividing/tellings.js';
import { type TwoEdges, twoEdgesOf } from '../dividing/two-edges.js';
import { bridgedRing } from '../moved-edges/bridged-ring.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { type Item, itemsOf, type Run, recomposed } from '../moved-edges/composed.js';
import { moveEdgesInwards } from '../moved-edges/move-edges-inwards.js';
import { movedPath } from '../moved-edges/moved-part.js';
import { seamNamed } from '../moved-edges/seam-place.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { movedWithNext } from './move-seam-matching.js';
import type { MoveSeam } from './move-seam-wish.js';

/**
 * Moves a seam: a strip as wide as asked is cut off one piece along the seam and laid against the other, edge to edge,
 * with what the cut takes of the neighbouring edges (neck and armhole, of a shoulder). So a shoulder goes forward, a side
 * seam back. The garment keeps its shape: both new seam lines are one line. Where the seam lines were not alike the strip
 * is laid end on end, and the finding says how far apart they lie. With `matching` the seams of two pieces that go on from
 * its ends move into the same side by as much. Source: common practice, no source.
 *
 * @throws PatternError `unknown-seam`, `seam-not-of-two-edges`, `seam-of-one-piece`, `join-through-dart`,
 *   `take-in-too-much`, `seam-strip-too-wide`; those of `perform`
 */
export const moveSeam = (pattern: Pattern, parameters: MoveSeam): Alteration =>
  perform(moveSeamVerb, pattern, parameters);

export const moveSeamForm = formOf<MoveSeam>()({
  verb: 'move seam',
  does: 'Moves a seam into one of its two pieces: a strip along it is cut off there and joined to the other piece. The garment keeps its shape.',
  fields: {
    seam: field.seam(),
    into: field.piece(),
    by: field.lengths(),
    matching: field.optional(field.yesOrNo()),
  },
  leaves: ({ seam }) => ({ seams: [seam] }),
  sentence: 'Move the {seam} seam into the {into} by {by}[, the seams that go on from it too: {matching}]',
  startsAt: { seam: ['seam'], edge: ['into'] },
  example: { pattern: 'woven-shift', step: { seam: 'shoulder', into: 'front', by: '15 mm' } },
});
export const moveSeamVerb = /* @__PURE__ */ verbFrom(moveSeamForm, (pattern, { matching, ...wish }) =>
  matching ? movedWithNext(pattern, wish, moveSeam) : movedAlone(pattern, wish),
);

function movedAlone(pattern: Pattern, { seam: name, into, by }: MoveSeam): Redrawn {
  const seam = seamNamed(pattern, name);
  const { a, b } = twoEdgesOf(pattern, seam);
  pieceNamed(pattern, into);
  if (a.piece.name !== into && b.piece.name !== into)
    throw refusal('seam-not-of-piece', { seam: { seam: name }, piece: { piece: into } }, { seam: name });
  const [gives, takes] = a.piece.name === into ? [a, b] : [b, a];
  const amounts: readonly [number, number] = typeof by === 'number' ? [by, by] : by;
  return locating({ piece: into, edge: gives.run.edge }, () => {
    const less = narrowed(gives, amounts);
    const { motion, apartMm } = laidOn({ seam, a: takes, b: gives });
    const more = widened(takes, stripOf(gives, less.piece), motion);
    const where = { piece: takes.piece.name, edge: takes.run.edge };
    const tooWide = () =>
      refusal('seam-strip-too-wide', { seam: { seam: name }, byMm: Math.max(...amounts) }, where);
    requireSimple(more.piece, tooWide);
    return {
      pattern: withPiece(withPiece(pattern, less.piece), more.piece),
      became: together(less.became, more.became),
      did: saying('moved-seam', {
        seam: { seam: name },
        from: { piece: takes.piece.name },
        to: { piece: into },
        byMm: typeof by === 'number' ? [by] : by,
      }),
      findings: [
        ...less.findings,
        ...(apartMm > tolerances.seamTolerance
          ? [finding('warning', 'seam-sides-unlike', where, { seam: { seam: name }, apartMm })]
          : []),
      ],
    };
  });
}

type Side = TwoEdges['a'];

/** The piece that the seam moves into, with its seam edge that much further in; notches keep their share of it. */
function narrowed({ piece, run }: Side, [atStart, atEnd]: readonly [number, number]): Reshaped {
  const most = Math.max(atStart, atEnd);
  const moved = { ...run, side: 'a' as const, fromShare: 0, toShare: 1 };
  const taper = { kind: 'ends', from: 0, to: 1, atFrom: atStart / most, atTo: atEnd / most } as const;
  const done = moveEdgesInwards(
    piece,
    [moved],
    most,
    most === 0 || atStart === atEnd ? { kind: 'whole' } : taper,
  );
  const became: Became = {
    ...done.became,
    edges: [
      ...done.became.edges.filter(({ was }) => was.edge !== run.edge),
      { was: wholeOf(piece, run.edge), now: wholeOf(done.piece, run.edge) },
    ],
  };
  return { ...done, became, piece: { ...done.piece, notches: carriedNotches(piece, became) } };
}

const wholeOf = (piece: Piece, edge: string) => ({
  piece: piece.name,
  edge,
  from: 0,
  to: pathLength(edgePath(piece, edge)),
});

/** What was cut off: the new seam line, against the outline, and what the cut took of the edges on either side of it. */
interface Strip {
  readonly line: Path;
  readonly before: Path | undefined;
  readonly after: Path | undefined;
}

function stripOf({ piece, run }: Side, narrower: Piece): Strip {
  const { start, end } = neighboursOf(piece, run.edge);
  return {
    line: reversedPath(edgePath(narrower, run.edge)),
    before: lostOf(piece, narrower, start, 'end'),
    after: lostOf(piece, narrower, end, 'start'),
  };
}

/** What an edge lost at one end; of a dart beside the seam, nothing is handed over. */
function lostOf(before: Piece, after: Piece, name: string, at: 'start' | 'end'): Path | undefined {
  if (!before.outline.parts.some(part => part.type === 'edge' && part.name === name)) return undefined;
  const [was, is] = [before, after].map(piece => partsOfEdge(piece, name).at(at === 'end' ? -1 : 0)!.path);
  const lost = pathLength(was!) - pathLength(is!);
  if (lost <= tolerances.coincidenceTolerance) return undefined;
  return at === 'end' ? subpath(was!, pathLength(is!), pathLength(was!)) : subpath(was!, 0, lost);
}

/** The other piece with the strip laid against its seam edge, whose name the new line takes. */
function widened({ piece, run }: Side, { line, before, after }: Strip, motion: Affine): Reshaped {
  const items = itemsOf(piece);
  const i = items.findIndex(item => item.type === 'run' && item.edge.name === run.edge);
  const own = items[i] as Run;
  const over = determinant(motion) < 0;
  const [first, last] = over ? [before, after] : [after, before];
  const beside = (step: 1 | -1): Run['edge'] => {
    const next = items[(i + step + items.length) % items.length]!;
    return next.type === 'run' ? next.edge : edgeNamed(piece, run.edge);
  };
  const laid = (path: Path | undefined, edge: Run['edge']): readonly Item[] =>
    path ? [{ type: 'run', edge, path: movedPath(path, motion) }] : [];
  const strip: readonly Item[] = [
    ...laid(first, beside(-1)),
    { ...own, path: movedPath(line, motion) },
    ...laid(last, beside(1)),
  ];
  return recomposed(piece, bridgedRing(items.flatMap((item, k) => (k === i ? strip : [item]))));
}
