import {
  type Edge,
  line,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  type Point,
  pathLength,
  pathOf,
  polyline,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { fairCurve, intersectPaths, pathEnd } from '@paperhinge/geometry/paths';
import { type EdgePosition, withPiece } from '@paperhinge/geometry/pattern';
import { add, distance, dot, leftOf, lerp, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { type RollLine, rollLine, rollLineName, withBreakMarked, withLapel } from '../lapels/roll-line.js';
import { refusal, saying } from '../lapels/tellings.js';
import { type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draw a lapel on to a front, for a notched collar. Lengths in mm. */
export interface CutLapel {
  readonly piece: string;
  readonly neck: string;
  /** The front edge that meets the neck. */
  readonly edge: string;
  /** Where on the front edge the lapel begins to roll. */
  readonly break: EdgePosition;
  /** How high the collar is to stand at the centre back; default 28. */
  readonly stand?: number;
  /** From the roll line to the lapel's point, square to the line; default 80. */
  readonly width?: number;
  /** How far below the shoulder the point lies, along the roll line; default 90. */
  readonly down?: number;
  /** How far the neck goes down, parallel to the roll line, before it turns into the gorge; default 45. */
  readonly gorge?: number;
  /** How much of the lapel's upper edge no collar is sewn to; default 38. */
  readonly notch?: number;
  /** How far the lapel's edge bows outwards; default 6. */
  readonly belly?: number;
}

/**
 * Draws a lapel on to a front. On paper: the roll line from the shoulder, run on beyond the neck by the stand less 5 mm,
 * to the break point; the neck from the shoulder down, parallel to it; the lapel's point so far out and down; the gorge
 * from the neck's turn to the point; the lapel's edge bowed a little from there to the break point. The front edge above
 * the break point and the old neck line go; all else of the front stays as it is. The neck keeps its name: it is what
 * the collar is sewn to. Source: common practice, no source; amounts of a classic lapel [memory].
 *
 * @throws PatternError those of `rollLine`; `notch-beyond-gorge`, `lapel-crosses`, `edge-name-taken`; those of `perform`
 */
export const cutLapel = (pattern: Pattern, parameters: CutLapel): Alteration =>
  perform(cutLapelVerb, pattern, parameters);

export const cutLapelForm = formOf<CutLapel>()({
  verb: 'cut lapel',
  does: 'Draws a lapel on to a front: the roll line from the shoulder to the break point, the gorge that a notched collar is sewn to, the notch, and the lapel out to its point.',
  fields: {
    piece: field.piece(),
    neck: field.edge(),
    edge: field.edge(),
    break: field.place('edge'),
    stand: field.usually(field.size(), 28),
    width: field.usually(field.size(), 80),
    down: field.usually(field.length(), 90),
    gorge: field.usually(field.size(), 45),
    notch: field.usually(field.size(), 38),
    belly: field.usually(field.length(), 6),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Draw a lapel on to the {piece} between its {neck} and its {edge}, breaking at {break}[, {width} wide][, its point {down} down][, the collar standing {stand}][, the gorge beginning {gorge} down][, {notch} of notch][, bowed by {belly}]',
  startsAt: { corner: ['piece', 'neck'], edge: ['piece', 'edge'] },
  example: {
    pattern: 'shirt',
    after: [{ 'remove piece': { piece: 'collar' } }, { 'remove piece': { piece: 'stand' } }],
    step: { piece: 'front', neck: 'neck', edge: 'front-edge', break: '220 mm from neck' },
  },
});
export const cutLapelVerb = /* @__PURE__ */ verbFrom(cutLapelForm, drawnLapel);

type Whole = Required<CutLapel>;

function drawnLapel(pattern: Pattern, wish: Whole): Alteration {
  const where = { piece: wish.piece };
  return locating(where, () => {
    const roll = rollLine(pattern, wish);
    for (const name of ['lapel', 'lapel-top']) requireFreeEdgeName(roll.piece, name);
    const lapel = lapelOf(roll, wish);
    const drawn = recomposed(roll.piece, withLapel(roll, runsOf(roll, lapel)));
    const piece = withRollLine(drawn.piece, roll, lapel);
    requireSimple(piece, () => refusal('lapel-crosses', { piece: where }, where));
    return {
      pattern: withPiece(pattern, piece),
      became: drawn.became,
      did: saying('cut-lapel', {
        piece: where,
        widthMm: wish.width,
        frontMm: pathLength(roll.front.path),
        gorgeMm: distance(lapel.end, lapel.turn) + distance(lapel.turn, roll.neckPoint),
        notchMm: wish.notch,
      }),
      findings: drawn.findings,
    };
  });
}

interface Lapel {
  readonly point: Point;
  /** Where the collar's front end comes to lie on the lapel's upper edge. */
  readonly end: Point;
  /** Where the neck turns into the gorge. */
  readonly turn: Point;
  readonly belly: number;
}

function lapelOf(roll: RollLine, { width, down, gorge, notch, belly }: Whole): Lapel {
  const { neckPoint, top, up, out } = roll;
  const turn = add(neckPoint, scale(up, -gorge));
  const point = add(top, add(scale(up, -down), scale(out, width)));
  const gorgeMm = distance(turn, point);
  if (notch >= gorgeMm) throw refusal('notch-beyond-gorge', { notchMm: notch, gorgeMm });
  return { point, turn, end: lerp(point, turn, notch / gorgeMm), belly };
}

function runsOf(roll: RollLine, { point, end, turn, belly }: Lapel): readonly Run[] {
  const { neck } = roll;
  const edge = (name: string): Edge => {
    const { role: _, roleGuessed: __, opening: ___, ...rest } = neck.edge;
    return { ...rest, name, role: 'opening', corners: {} };
  };
  return [
    { type: 'run', edge: edge('lapel'), path: lapelEdge(roll, point, belly) },
    { type: 'run', edge: edge('lapel-top'), path: pathOf(line(point, end)) },
    {
      type: 'run',
      edge: { ...neck.edge, corners: {} },
      path: polyline(end, turn, roll.neckPoint),
      ...(neck.was ? { was: neck.was, redrawn: true as const } : {}),
    },
  ];
}

/** Share of the lapel's edge from the break point up at which it bows the most. Common practice, no source. */
const fullest = 0.6;

/** From the break point, where it goes on from the front edge, fair past the place where it bows to the point. */
function lapelEdge({ breakPoint, upFront, up, out }: RollLine, point: Point, belly: number): Path {
  const chord = subtract(point, breakPoint);
  const square = unit(dot(leftOf(chord), out) > 0 ? leftOf(chord) : scale(leftOf(chord), -1));
  return fairCurve(
    { point: breakPoint, direction: upFront },
    { point, direction: belly > 0 ? up : chord },
    tolerances.fitTolerance,
    [add(lerp(breakPoint, point, fullest), scale(square, belly))],
  );
}

/** The roll line from the break point to where it passes under the collar, and the break point itself. */
function withRollLine(piece: Piece, roll: RollLine, { end, turn }: Lapel): Piece {
  const { breakPoint, top } = roll;
  const whole = pathOf(line(breakPoint, top));
  const [crossing] = intersectPaths(whole, pathOf(line(end, turn)));
  const drawn: PieceLine = {
    kind: 'fold',
    name: rollLineName,
    path: pathOf(line(breakPoint, crossing?.point ?? pathEnd(whole))),
  };
  return withBreakMarked(
    { ...piece, lines: [...piece.lines.filter(l => l.name !== drawn.name), drawn] },
    roll,
  );
}
