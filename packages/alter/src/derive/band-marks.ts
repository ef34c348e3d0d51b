import { type Notch, type Pattern, pathLength, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { partsOfEdge, withPiece } from '@paperhinge/geometry/pattern';
import type { Joint } from './chain-links.js';
import type { GarmentChain } from './garment-chain.js';
import type { LaidAlong } from './laid-along.js';

/** A mark on the sewn edge of a band. */
export interface BandMark {
  /** mm from the band's stitched start. */
  readonly at: number;
  readonly label: string;
  /** Whether it stands at a half or quarter of the band. */
  readonly isPart: boolean;
  /** mm of garment edge before it, gap not counted; nothing where it lies over the gap. */
  readonly onEdge: number | undefined;
}

/**
 * Where a band is marked: halves and quarters of its length between the joins, the gap's ends, and every seam and
 * fold of the edge. The sewn part is stretched evenly, the part over the gap not at all.
 * @param finishedMm the band's length between its joins
 */
export function bandMarks(
  { chains, edgeMm, gapMm }: Pick<LaidAlong, 'chains' | 'edgeMm' | 'gapMm'>,
  finishedMm: number,
): readonly BandMark[] {
  const scale = (finishedMm - gapMm) / edgeMm;
  const gaps = chains.flatMap(c => c.joints).filter(j => j.gap).length;
  const found: BandMark[] = [];
  let edge = 0,
    band = 0,
    gapAt: { from: number; to: number; edge: number } | undefined;
  for (const { lying, joints } of chains)
    for (const [i, { lengthMm }] of lying.entries()) {
      edge += lengthMm;
      band += lengthMm * scale;
      const joint = joints[i];
      if (!joint) continue;
      if (joint.gap) {
        gapAt = { from: band, to: band + gapMm / gaps, edge };
        found.push({ at: band, label: 'gap end', isPart: false, onEdge: edge });
        band = gapAt.to;
        found.push({ at: band, label: 'gap end', isPart: false, onEdge: edge });
      } else if (edge < edgeMm - tolerances.joiningGap)
        found.push({ at: band, label: jointLabel(joint), isPart: false, onEdge: edge });
    }
  const onEdgeAt = (at: number): number | undefined => {
    if (gapAt && at > gapAt.from && at < gapAt.to) return undefined;
    return (gapAt && at >= gapAt.to ? at - gapMm : at) / scale;
  };
  const parts = [1, 2, 3].map(
    (n): BandMark => ({
      at: (finishedMm * n) / 4,
      label: n === 2 ? 'half' : 'quarter',
      isPart: true,
      onEdge: onEdgeAt((finishedMm * n) / 4),
    }),
  );
  return merged([...parts, ...found]);
}

const jointLabel = ({ kind, name }: Joint): string => (kind === 'seam' ? `${name} seam` : name);

/** Marks in one place are one mark with both names. */
function merged(marks: readonly BandMark[]): readonly BandMark[] {
  const result: BandMark[] = [];
  for (const mark of [...marks].sort((a, b) => a.at - b.at)) {
    const last = result.at(-1);
    if (last && mark.at - last.at <= tolerances.joiningGap)
      result[result.length - 1] = {
        ...last,
        label: `${last.label}, ${mark.label}`,
        isPart: last.isPart || mark.isPart,
      };
    else result.push(mark);
  }
  return result;
}

/**
 * Marks the edges where the band's halves and quarters fall. Marks at an edge's very end need no notch, nor does the
 * mirrored half of a piece that stands twice. Notches that an earlier draft of the same band left are taken off.
 */
export function withEdgeMarks(
  pattern: Pattern,
  chains: readonly GarmentChain[],
  marks: readonly BandMark[],
  name: string,
): Pattern {
  const label = `${name} quarter`;
  const wanted = marks.filter(m => m.isPart && m.onEdge !== undefined);
  const places: (Notch & { readonly piece: string })[] = [];
  let from = 0;
  for (const { piece, edge, copy, reversed, lengthMm, beforeMm } of laidWithOffsets(pattern, chains)) {
    for (const { onEdge } of wanted) {
      const along = onEdge! - from;
      if (copy !== 0 || along <= endMargin || along >= lengthMm - endMargin) continue;
      const at = beforeMm + (reversed ? lengthMm - along : along);
      places.push({ piece, edge, at, style: 'single', name: label });
    }
    from += lengthMm;
  }
  return [...new Set(chains.flatMap(c => c.lying.map(l => l.piece)))].reduce((altered, pieceName) => {
    const piece = pieceNamed(altered, pieceName);
    const own = places.filter(p => p.piece === pieceName).map(({ piece: _, ...notch }) => notch);
    const kept = piece.notches.filter(n => n.name !== label);
    if (own.length === 0 && kept.length === piece.notches.length) return altered;
    return withPiece(altered, { ...piece, notches: [...kept, ...own] });
  }, pattern);
}

/**
 * The notches of a piece that is as long as its edges and lies along them: those of the edges themselves, and one where
 * each seam and fold of the garment meets it.
 */
export function notchesAlong(pattern: Pattern, laid: LaidAlong): readonly Omit<Notch, 'edge'>[] {
  const joints = bandMarks(laid, laid.edgeMm)
    // Halves and quarters are for what is stretched.
    .filter(({ label }) => label !== 'half' && label !== 'quarter')
    .map(({ at, label }) => ({ at, style: 'single' as const, name: label }));
  let from = 0;
  const own = laidWithOffsets(pattern, laid.chains).flatMap(
    ({ piece, edge, reversed, lengthMm, beforeMm }) => {
      const start = from;
      from += lengthMm;
      return pieceNamed(pattern, piece)
        .notches.filter(n => n.edge === edge && n.at >= beforeMm && n.at <= beforeMm + lengthMm)
        .map(({ edge: _, at, ...notch }) => ({
          ...notch,
          at: start + (reversed ? lengthMm - (at - beforeMm) : at - beforeMm),
        }));
    },
  );
  const apart = own.filter(n => joints.every(joint => Math.abs(joint.at - n.at) > endMargin));
  return [...joints, ...apart.filter(n => n.at > endMargin && n.at < laid.edgeMm - endMargin)].toSorted(
    (a, b) => a.at - b.at,
  );
}

/** mm. A notch nearer to an end than this could not be told from the corner. */
const endMargin = 3;

/** Each stretch with the length of the parts of its edge before it. */
function laidWithOffsets(pattern: Pattern, chains: readonly GarmentChain[]) {
  return chains
    .flatMap(c => c.lying)
    .map(lying => {
      const parts = partsOfEdge(pieceNamed(pattern, lying.piece), lying.edge).map(p => pathLength(p.path));
      return { ...lying, beforeMm: parts.slice(0, lying.part).reduce((sum, l) => sum + l, 0) };
    });
}
