import type { Piece } from '@paperhinge/geometry';
import { endTangent, joined, reversedPath, startTangent } from '@paperhinge/geometry/paths';
import { scale } from '@paperhinge/geometry/plane';
import { checkInside } from './check-inside.js';
import { courseOf, pointOfEnd } from './cut.js';
import type { CutPiece, Node, Spoke } from './cut-piece.js';
import { ringOf } from './ring.js';

/**
 * A piece cut straight from a place on an edge, mm along it, to the drawn point of a dart: what `cutApart` gives for
 * that one cut, without what it needs for several. One cut from outline to outline parts the ring in two.
 * @throws PatternError `slash-leaves-piece`, `slash-crosses-dart`, `slash-crosses-pleat`, `slash-too-short`,
 *   `unknown-edge`, `unknown-dart`
 */
export function cutToDart(
  piece: Piece,
  from: { readonly edge: string; readonly along: number },
  dart: string,
): CutPiece {
  const cut = { from, to: { dart } };
  const course = courseOf(piece, cut);
  checkInside(piece, cut, course);
  const { stretches, gapOf } = ringOf(piece, [cut.from, cut.to]);
  const nodeAt = (end: Spoke['end'], away: Spoke['away']): Node => ({
    point: pointOfEnd(piece, cut[end]),
    gap: gapOf.get(cut[end])!,
    spokes: [{ cut: 0, end, away }],
  });
  const nodes = [nodeAt('from', startTangent(course)), nodeAt('to', scale(endTangent(course), -1))];
  const isForward = nodes[0]!.gap < nodes[1]!.gap;
  if (!isForward) nodes.reverse();
  const [low, high] = nodes.map(node => node.gap + 1) as [number, number];
  const all = [...stretches.keys()];
  const section = (own: readonly number[], isBack: boolean) => ({
    stretches: own,
    border: joined(...own.map(i => stretches[i]!.path), isBack ? reversedPath(course) : course),
  });
  return {
    piece,
    cuts: [cut],
    courses: [course],
    stretches,
    nodes,
    sections: [
      section(all.slice(low, high), isForward),
      section([...all.slice(high), ...all.slice(0, low)], !isForward),
    ],
    sectionOf: all.map(i => (i >= low && i < high ? 0 : 1)),
    beside: [isForward ? { left: 0, right: 1 } : { left: 1, right: 0 }],
  };
}
