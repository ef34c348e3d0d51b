import { line, type Path, type Pleat, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import { add, scale } from '@paperhinge/geometry/plane';
import { placeOnEdge } from './beside-edge.js';
import type { DrawnFact } from './drawn-fact.js';

import type { Ink } from './ink.js';
import type { PieceSetting } from './piece-setting.js';
import { arrowhead, straight, stroke } from './shapes.js';

/** mm that the folds of a pleat that is only laid are drawn, and the least of any. */
const laid = 45;
const shortest = 20;
/** mm inside the edge at which the arrow lies, and its head. */
const arrowInset = 9;
const head = 4;

/** Each pleat: its folds down into the piece, where it is stitched, and arrows the way it is laid. */
export const pleatFacts = ({ piece, reader }: PieceSetting): readonly DrawnFact[] =>
  piece.outline.parts
    .filter(part => part.type === 'pleat')
    .map(pleat => {
      const words = reader.words.piece;
      const name = words.pleat[pleat.kind];
      const down = pleat.stitched > 0 ? words.stitchedDown(reader.length(pleat.stitched)) : '';
      const depth = Math.max(pleat.stitched || laid, shortest);
      return {
        inks: pleatInks(pleat, depth),
        words: down ? [`${name}, ${down}`, name] : [name],
        along: foldAt(pleat.mouth, 1, depth),
        off: 0.8,
      };
    });

function pleatInks(pleat: Pleat, depth: number): readonly Ink[] {
  const { mouth, kind, stitched } = pleat;
  // The mouth's ends meet; the cloth between them folds in its middle, or a quarter from either end. The cutting line
  // brings these folds as far as they are stitched.
  const folds = stitched > 0 ? [] : kind === 'knife' || kind === 'tuck' ? [0.5] : [0.25, 0.75];
  return [
    stroke('fold-line', mouth),
    ...[0, 1].map(share => stroke('placement', foldAt(mouth, share, depth))),
    ...folds.map(share => stroke('fold-line', foldAt(mouth, share, depth))),
    ...(stitched > 0 ? [0, 1].map(share => stroke('stitch', foldAt(mouth, share, stitched))) : []),
    ...arrowsOf(pleat).flatMap(([from, to]) => arrow(mouth, from, to)),
  ];
}

/** Shares of the mouth between which arrows run: to the line that the fold is laid on. */
function arrowsOf({ kind, towards }: Pleat): readonly (readonly [number, number])[] {
  if (kind === 'box')
    return [
      [0.5, 0],
      [0.5, 1],
    ];
  if (kind === 'inverted')
    return [
      [0, 0.5],
      [1, 0.5],
    ];
  return towards === 'start' ? [[1, 0]] : [[0, 1]];
}

/** A line from a place of the mouth into the piece, square to it. */
function foldAt(mouth: Path, share: number, depth: number): Path {
  const [from, to] = [within(mouth, share, 0), within(mouth, share, depth)];
  return pathOf(line(from, to));
}

function within(mouth: Path, share: number, inset: number): Point {
  const length = pathLength(mouth);
  const { at } = placeOnEdge(mouth, share * length);
  const { inwards } = placeOnEdge(mouth, length / 2);
  return add(at, scale(inwards, inset));
}

function arrow(mouth: Path, from: number, to: number): readonly Ink[] {
  const [a, b] = [within(mouth, from, arrowInset), within(mouth, to, arrowInset)];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length === 0) return [];
  const along = scale({ x: b.x - a.x, y: b.y - a.y }, 1 / length);
  return [straight('grain', a, b), arrowhead('grain', b, along, Math.min(head, length / 2))];
}
