import type { Point } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import {
  type Affine,
  compose,
  distance,
  identity,
  leftOf,
  rotation,
  scale,
  subtract,
  translation,
  unit,
} from '@paperhinge/geometry/plane';
import type { CutPiece } from '../hinge/cut-piece.js';

import type { WholeSpread } from './spread-wish.js';
import { refusal } from './tellings.js';

const chordOf = ({ courses }: CutPiece, cut: number): readonly [Point, Point] => [
  pathStart(courses[cut]!),
  pathEnd(courses[cut]!),
];

/** rad by which each slash turns; 0 for unhinged ones. */
export function turnsOf(cutPiece: CutPiece, parameters: WholeSpread): readonly number[] {
  const { by = 0, angle, hinge, slashes, from, to } = parameters;
  return cutPiece.cuts.map((_, cut) => {
    if (hinge === 'none') return 0;
    if (angle !== undefined) return angle / slashes;
    const radius = distance(...chordOf(cutPiece, cut));
    const share = by / (2 * slashes * radius);
    if (Math.abs(share) <= 1) return 2 * Math.asin(share);
    const edge = hinge === 'to' ? from.edge : to.edge;
    throw refusal('spread-too-wide', { slashMm: radius, byMm: Math.abs(by / slashes) }, { edge });
  });
}

/** The motion across each slash: of the section to its left, if the one to its right stays. */
function steps(cutPiece: CutPiece, parameters: WholeSpread): readonly Affine[] {
  const { by = 0, angle, hinge, slashes } = parameters;
  if (hinge === 'none' && angle !== undefined) throw refusal('spread-needs-length', {});
  return turnsOf(cutPiece, parameters).map((turn, cut) => {
    const [from, to] = chordOf(cutPiece, cut);
    // To the left, looking from `from` to `to`, lies what follows along the edge at `from`: moving it that way opens.
    if (hinge === 'to') return rotation(turn, to);
    if (hinge === 'from') return rotation(-turn, from);
    return translation(scale(leftOf(unit(subtract(to, from))), by / slashes));
  });
}

/** Motions of all sections, outwards from the one that stays: each follows its neighbour and adds its own slash. */
export function motionsFrom(cutPiece: CutPiece, holding: number, parameters: WholeSpread): readonly Affine[] {
  const across = steps(cutPiece, parameters);
  const motions: (Affine | undefined)[] = cutPiece.sections.map((_, i) =>
    i === holding ? identity : undefined,
  );
  const visit = (section: number) => {
    for (const [cut, { left, right }] of cutPiece.beside.entries()) {
      if (left === right || (left !== section && right !== section)) continue;
      const next = left === section ? right : left;
      if (motions[next]) continue;
      const step = left === section ? inverse(across[cut]!) : across[cut]!;
      motions[next] = compose(step, motions[section]!);
      visit(next);
    }
  };
  visit(holding);
  return motions.map(motion => motion ?? identity);
}

/** Of a rigid motion: its linear part is orthogonal, so its transpose turns back. */
function inverse({ a, b, c, d, e, f }: Affine): Affine {
  return { a, b: c, c: b, d, e: -(a * e + b * f), f: -(c * e + d * f) };
}
