import type { Point } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import {
  type Affine,
  add,
  distance,
  leftOf,
  rotation,
  scale,
  subtract,
  translation,
  unit,
} from '@paperhinge/geometry/plane';
import type { CutPiece } from '../hinge/cut-piece.js';
import { motionsAcross } from '../hinge/motions-across.js';
import { type Openings, radiusOf, turnOf } from './slash-turn.js';
import type { WholeSpread } from './spread-wish.js';
import { refusal } from './tellings.js';

const chordOf = ({ courses }: CutPiece, cut: number): readonly [Point, Point] => [
  pathStart(courses[cut]!),
  pathEnd(courses[cut]!),
];

/** mm that one slash opens at its wide end and at the other; an angle opens nothing at the hinge. */
const amountsOf = ({ by = 0, otherEnd = 0, slashes }: WholeSpread): Openings => [
  by / slashes,
  otherEnd / slashes,
];

/** Whether both ends open alike, so that nothing turns. */
const isParallel = ({ hinge, by = 0, otherEnd = 0, angle }: WholeSpread): boolean =>
  hinge === 'none' || (angle === undefined && by === otherEnd && by !== 0);

/** rad by which each slash turns; 0 for unhinged ones. */
export function turnsOf(cutPiece: CutPiece, parameters: WholeSpread): readonly number[] {
  const { angle, hinge, slashes, from, to } = parameters;
  return cutPiece.cuts.map((_, cut) => {
    if (isParallel(parameters)) return 0;
    if (angle !== undefined) return angle / slashes;
    const length = distance(...chordOf(cutPiece, cut));
    return turnOf(length, amountsOf(parameters), hinge === 'to' ? from.edge : to.edge);
  });
}

/** The motion across each slash: of the section to its left, if the one to its right stays. */
function steps(cutPiece: CutPiece, parameters: WholeSpread): readonly Affine[] {
  const { angle, hinge } = parameters;
  if (hinge === 'none' && angle !== undefined) throw refusal('spread-needs-length', {});
  const amounts = amountsOf(parameters);
  return turnsOf(cutPiece, parameters).map((turn, cut) => {
    const [from, to] = chordOf(cutPiece, cut);
    const way = unit(subtract(to, from));
    // To the left, looking from `from` to `to`, lies what follows along the edge at `from`: moving it that way opens.
    if (isParallel(parameters)) return translation(scale(leftOf(way), amounts[0]));
    const length = distance(from, to);
    const reach = angle !== undefined || turn === 0 ? length : radiusOf(length, amounts);
    if (hinge === 'from') return rotation(-turn, add(to, scale(way, -reach)));
    return rotation(turn, add(from, scale(way, reach)));
  });
}

/** Motions of all sections: each follows its neighbour and adds its own slash. */
export const motionsFrom = (
  cutPiece: CutPiece,
  holding: number,
  parameters: WholeSpread,
): readonly Affine[] => motionsAcross(cutPiece, holding, steps(cutPiece, parameters));
