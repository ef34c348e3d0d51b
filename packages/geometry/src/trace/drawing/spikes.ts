import { pathLength } from '../../path/length.js';
import { endTangent, joined, type Path, pathEnd, pathStart, startTangent } from '../../path/path.js';
import { cornerTurn, dartLegTolerance } from '../../tolerance.js';
import { angleBetween, distance, subtract } from '../../vector.js';

/** A stretch of an outline between corners, or the two legs of a dart drawn as part of it. */
export interface Strand {
  readonly name: string;
  readonly path: Path;
  readonly dart?: true;
}

/** rad: at its point a dart's outline turns back by at least this. */
const sharp = (110 * Math.PI) / 180;
/** Of a dart's leg: its mouth is no wider. */
const widestMouth = 0.9;

/**
 * Edges of a clockwise outline with its inward spikes taken for darts: two lines of one length that turn back into the
 * piece. Where the edges on both sides run on into one another once the dart is closed, they are one edge.
 */
export function withSpikesAsDarts(edges: readonly Strand[]): readonly Strand[] {
  const n = edges.length;
  const isSpike = edges.map((edge, i) => n > 4 && spikes(edge, edges[(i + 1) % n]!));
  const first = isSpike.findIndex((spike, i) => !spike && !isSpike[(i + n - 1) % n]);
  if (first < 0 || !isSpike.includes(true)) return edges;
  const out: Strand[] = [];
  let darts = 0;
  for (let k = 0; k < n; k++) {
    const i = (first + k) % n,
      edge = edges[i]!;
    if (isSpike[i]) {
      out.push({ name: `dart-${++darts}`, path: joined(edge.path, edges[(i + 1) % n]!.path), dart: true });
      k++;
    } else out.push(edge);
  }
  return out.map((strand, i) => {
    const dart = out[(i + out.length - 1) % out.length]!,
      before = out[(i + out.length - 2) % out.length]!;
    return !strand.dart && dart.dart && !before.dart && i >= 2 && runsOn(before.path, dart.path, strand.path)
      ? { ...strand, name: before.name }
      : strand;
  });
}

function spikes(leg: Strand, next: Strand): boolean {
  const [a, b] = [pathLength(leg.path), pathLength(next.path)];
  return (
    angleBetween(endTangent(leg.path), startTangent(next.path)) < -sharp &&
    Math.abs(a - b) <= Math.max(dartLegTolerance, 0.02 * a) &&
    distance(pathStart(leg.path), pathEnd(next.path)) < widestMouth * Math.min(a, b)
  );
}

/** Whether two edges are one line as they are drawn, or once the dart between them is closed. */
function runsOn(before: Path, dart: Path, after: Path): boolean {
  const apex = pathEnd({ segments: dart.segments.slice(0, Math.ceil(dart.segments.length / 2)) });
  const closing = angleBetween(subtract(pathEnd(dart), apex), subtract(pathStart(dart), apex));
  const bend = angleBetween(endTangent(before), startTangent(after));
  return Math.abs(bend) < cornerTurn || Math.abs(bend + closing) < cornerTurn;
}
