import {
  type EdgePosition,
  edgePath,
  type Finding,
  formatLength,
  neighboursOf,
  type Pattern,
  PatternError,
  pathLength,
  pieceNamed,
  type Seam,
  timesInGarment,
  walkSeam,
  withPiece,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { type MovedRun, moveEdgesInwards } from '../edit/move-edges-inwards.js';
import type { Taper } from '../edit/taper.js';

/** Take in (positive `by`) or let out (negative) a seam: mm in the garment, shared equally by the seam's edges. */
export interface TakeIn {
  readonly seam: string;
  readonly by: number;
  /** Places at which the change has tapered to nothing, on the seam's own length; absent = full to the end. */
  readonly from?: EdgePosition;
  readonly to?: EdgePosition;
}

/**
 * Takes a seam in by `by` mm over the whole garment; a negative amount lets it out. Each edge that is sewn in it
 * moves inwards, square to itself, by its equal share: an edge that stands twice in the garment counts twice, and
 * the edges that follow one another on one side of the seam count as one. With `from` or `to` the change grows
 * evenly from nothing there to the full share at the other end; with both it is full half way and runs smoothly to
 * nothing at either. Places are measured on side a and apply at the same share of side b. Neighbouring edges and
 * dart legs run on straight or are cut where the moved edge crosses them.
 *
 * @throws PatternError `unknown-seam`; `position-off-seam`, `taper-order`, `not-a-neighbour`; `take-in-too-much`
 */
export function takeIn(pattern: Pattern, { seam: name, by, from, to }: TakeIn): Alteration {
  const seam = seamNamed(pattern, name);
  const sides = sidesOf(pattern, seam);
  const edges = sides.reduce((sum, side) => sum + side.times, 0);
  const each = by / edges;
  const taper = taperOf(pattern, seam, from, to);
  const findings: Finding[] = [];
  let altered = pattern;
  for (const pieceName of new Set(sides.flatMap(side => side.runs.map(r => r.piece)))) {
    const piece = pieceNamed(altered, pieceName);
    const runs = sides.flatMap(side => side.runs.filter(r => r.piece === pieceName));
    const done = moveEdgesInwards(piece, runs, each, taper);
    findings.push(...done.findings);
    altered = withPiece(altered, done.piece);
  }
  // Both sides were equal before: if they no longer are, the maker must know from this step.
  const walked = walkSeam(altered, seam);
  if (walkSeam(pattern, seam).matches && !walked.matches)
    findings.push(...walked.findings.filter(f => f.severity === 'fault'));
  const say = (mm: number): string => formatLength(Math.abs(mm), pattern.unit);
  const verb = by < 0 ? 'let out' : 'took in';
  return {
    pattern: altered,
    did: `${verb} seam ${name} by ${say(by)} in the garment: ${say(each)} on each of ${edges} edges${taperText(taper)}`,
    findings,
  };
}

interface Side {
  readonly runs: readonly MovedRun[];
  /** How many edges lie beside each other on this side in the whole garment. */
  readonly times: number;
}

/** Each side of the seam, or the one side of a seam that is sewn to its own mirror image. */
function sidesOf(pattern: Pattern, seam: Seam): readonly Side[] {
  const sides = (['a', 'b'] as const).map((which): Side => {
    const side = seam[which];
    const runs = side.filter(
      (run, i) => side.findIndex(r => r.piece === run.piece && r.edge === run.edge) === i,
    );
    const lengths = runs.map(run => pathLength(edgePath(pieceNamed(pattern, run.piece), run.edge)));
    const whole = lengths.reduce((sum, l) => sum + l, 0);
    let start = 0;
    const placed = runs.map((run, i) => {
      const from = start;
      start += lengths[i]!;
      return { ...run, side: which, fromShare: from / whole, toShare: start / whole };
    });
    return {
      runs: placed,
      times: Math.max(...runs.map(run => timesInGarment(pieceNamed(pattern, run.piece)))),
    };
  });
  const label = (side: Side): string =>
    side.runs
      .map(r => `${r.piece}.${r.edge}`)
      .sort()
      .join(' ');
  return label(sides[0]!) === label(sides[1]!) ? [sides[0]!] : sides;
}

function seamNamed(pattern: Pattern, name: string): Seam {
  const seam = pattern.seams.find(s => s.name === name);
  if (seam) return seam;
  throw new PatternError('unknown-seam', {
    message: `The pattern has no seam "${name}".`,
    remedy: `Use one of its seams: ${pattern.seams.map(s => s.name).join(', ') || '(none)'}.`,
  });
}

function taperOf(pattern: Pattern, seam: Seam, from?: EdgePosition, to?: EdgePosition): Taper {
  const start = from && shareOfSeam(pattern, seam, from),
    end = to && shareOfSeam(pattern, seam, to);
  if (start !== undefined && end !== undefined && start >= end)
    throw new PatternError('taper-order', {
      message: `On seam "${seam.name}" the taper ends before it begins.`,
      remedy: 'Give "from" a place nearer the seam\'s beginning than "to".',
    });
  return { ...(start === undefined ? {} : { from: start }), ...(end === undefined ? {} : { to: end }) };
}

/** A place on side a of a seam as a share of its length from its beginning. */
function shareOfSeam(pattern: Pattern, seam: Seam, position: EdgePosition): number {
  const length = seam.a.reduce(
    (sum, run) => sum + pathLength(edgePath(pieceNamed(pattern, run.piece), run.edge)),
    0,
  );
  const share = 'share' in position ? position.share : position.mm / length;
  if (!(share >= 0 && share <= 1))
    throw new PatternError('position-off-seam', {
      message: `The place lies beyond seam "${seam.name}", which is ${length.toFixed(1)} mm long.`,
      remedy: 'Give a share from 0 to 100 % or a length within the seam.',
    });
  if (position.from === undefined || position.from === 'start') return share;
  if (position.from === 'end') return 1 - share;
  const starts = [seam.a, seam.b].map(side => outerNeighbour(pattern, side[0]!, 'start'));
  const ends = [seam.a, seam.b].map(side => outerNeighbour(pattern, side.at(-1)!, 'end'));
  const atStart = starts.includes(position.from);
  if (atStart !== ends.includes(position.from)) return atStart ? share : 1 - share;
  throw new PatternError(atStart ? 'ambiguous-end' : 'not-a-neighbour', {
    message: `"${position.from}" touches ${atStart ? 'both ends' : 'neither end'} of seam "${seam.name}".`,
    remedy: 'Say from start or from end.',
  });
}

function outerNeighbour(pattern: Pattern, run: Seam['a'][number], end: 'start' | 'end'): string {
  const beside = neighboursOf(pieceNamed(pattern, run.piece), run.edge);
  return (end === 'start') === run.reversed ? beside.end : beside.start;
}

const percent = (share: number): string => `${Number((share * 100).toFixed(1))} %`;
function taperText({ from, to }: Taper): string {
  if (from === undefined && to === undefined) return '';
  const places = [from, to].filter(s => s !== undefined).map(percent);
  return `, tapering to nothing at ${places.join(' and ')} of the seam`;
}
