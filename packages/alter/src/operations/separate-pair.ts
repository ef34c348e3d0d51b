import {
  type Cutting,
  type EdgeRun,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { mirror } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { laidAside } from '../derive/free-place.js';
import { requireFreePieceName } from '../dividing/names-free.js';
import { grainOrVertical, middleOf } from '../moved-edges/grain.js';
import { movedPiece } from '../moved-edges/moved-part.js';
import { openedSeams } from '../unfold/opened-seams.js';
import { refusal, saying } from '../unfold/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Cut a pair as two pieces of their own. */
export interface SeparatePair {
  readonly piece: string;
  /** What the other one is called. */
  readonly name: string;
}

/**
 * Makes two pieces of a pair, so that left and right may differ: the piece as it is drawn, and its mirror image beside it,
 * each cut singly with its right side up. No line moves. A seam of both halves now sews one to the other; any other is
 * sewn once to each. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `pair-needed`, `piece-name-taken`; those of `perform`
 */
export const separatePair = (pattern: Pattern, parameters: SeparatePair): Alteration =>
  perform(separatePairVerb, pattern, parameters);

export const separatePairForm = formOf<SeparatePair>()({
  verb: 'separate pair',
  does: 'Makes two pieces of a pair, the one as drawn and its mirror image, each cut singly, so that left and right may differ.',
  fields: { piece: field.piece(), name: field.newName() },
  leaves: ({ piece, name }) => ({ pieces: [name], changed: [piece], seams: 'unknown' }),
  sentence: 'Separate the pair of the {piece}; its mirror image is the {name}',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'trousers', step: { piece: 'front', name: 'other front' } },
});
export const separatePairVerb = /* @__PURE__ */ verbFrom(
  separatePairForm,
  (pattern, { piece: own, name }) => {
    const piece = pieceNamed(pattern, own);
    const where = { piece: own };
    requireFreePieceName(pattern, name);
    const all = [piece.cutting, ...(piece.alsoCut ?? [])];
    if (foldEdgeOf(piece) || !all.every(({ count, mirrored }) => mirrored && count % 2 === 0))
      throw refusal('pair-needed', { piece: where, count: piece.cutting.count }, where);
    const one = cutSingly(piece);
    const pieces = pattern.pieces.map(p => (p === piece ? one : p));
    const other = laidAside({ ...pattern, pieces }, mirrored(one, name));
    const { seams, findings } = sewnApart(pattern.seams, piece, name);
    return {
      pattern: { ...pattern, pieces: [...pieces, other], seams },
      became: nothingBecame,
      did: saying('separated-pair', { piece: where, other: { piece: name }, count: one.cutting.count }),
      findings,
    };
  },
);

const cutSingly = (piece: Piece): Piece => {
  const half = (cutting: Cutting): Cutting => ({
    ...cutting,
    count: cutting.count / 2,
    mirrored: false,
    rightSideUp: true,
  });
  const { cutting, alsoCut } = piece;
  return { ...piece, cutting: half(cutting), ...(alsoCut ? { alsoCut: alsoCut.map(half) } : {}) };
};

/** Turned over about the grain through its middle; notches keep their places, counted from the edges' other ends. */
function mirrored(piece: Piece, name: string): Piece {
  const turned = movedPiece(piece, mirror(middleOf(piece), grainOrVertical(piece).grain));
  const parts = [...turned.outline.parts].reverse();
  const drawn: Piece = {
    ...turned,
    name,
    title: `${name[0]!.toUpperCase()}${name.slice(1)}`,
    outline: { parts },
  };
  const length = (edge: string): number => pathLength(edgePath(piece, edge));
  return { ...drawn, notches: piece.notches.map(notch => ({ ...notch, at: length(notch.edge) - notch.at })) };
}

/** Seams of a piece once it is two: see `openedSeams`, which says how an edge and its mirror image are sewn. */
function sewnApart(all: readonly Seam[], piece: Piece, other: string) {
  const own = piece.name;
  const centre = all.filter(seam => isOfBoth(seam, own));
  const onOther = (run: EdgeRun): EdgeRun => ({ ...run, piece: other, reversed: !run.reversed });
  const halves = all.map(seam => (centre.includes(seam) ? { ...seam, b: seam.b.map(onOther) } : seam));
  const fates = new Map(edgeNames(piece).map(edge => [edge, { other: mark + edge }] as const));
  const opened = openedSeams(
    own,
    halves.filter(seam => !isHalved(seam, own, other)),
    fates,
  );
  const marked = (run: EdgeRun): EdgeRun =>
    run.edge.startsWith(mark) ? { ...run, piece: other, edge: run.edge.slice(mark.length) } : run;
  const seams = opened.seams.map(seam =>
    [...seam.a, ...seam.b].some(run => run.edge.startsWith(mark))
      ? { ...seam, a: seam.a.map(marked), b: seam.b.map(marked) }
      : seam,
  );
  return {
    seams: [...seams, ...halves.filter(seam => isHalved(seam, own, other))],
    findings: opened.findings,
  };
}

/** Stands before the names of mirrored edges until they are on their own piece; no name begins so. */
const mark = '\u0000';

/** A seam that sews the same edges of both copies to one another. */
const isOfBoth = ({ a, b }: Seam, piece: string): boolean =>
  a.length === b.length &&
  a.every((run, i) => run.piece === piece && b[i]!.piece === piece && run.edge === b[i]!.edge);

const isHalved = ({ a, b }: Seam, own: string, other: string): boolean =>
  a.every(run => run.piece === own) && b.every(run => run.piece === other);
