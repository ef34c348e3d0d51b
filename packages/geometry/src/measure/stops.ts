import { besides } from '../joining/corner.js';
import { intersectPaths } from '../path/intersect.js';
import { pathLength } from '../path/length.js';
import type { Path } from '../path/path.js';
import { pathsOfPart } from '../pattern/outline.js';
import type { Dart, OutlinePart, Piece } from '../pattern/types.js';
import { coincidenceTolerance, joiningGap } from '../tolerance.js';

/** A place where a line crosses the outline, in mm along it, and the parts of the outline that it meets there. */
export interface Stop {
  readonly at: number;
  readonly edges: readonly string[];
  readonly darts: readonly MetLeg[];
}

/** A leg of a dart, met `fromApex` mm from the dart's apex. */
interface MetLeg {
  readonly dart: Dart;
  readonly legMm: number;
  readonly fromApex: number;
}

/** Where a line crosses the outline of a piece, in its order. */
export function stopsAlong(piece: Piece, across: Path, outline: Path): readonly Stop[] {
  const stops: { at: number; edges: string[]; darts: MetLeg[] }[] = [];
  const ranges = partRanges(piece);
  const whole = ranges.at(-1)!.end;
  for (const { alongA, alongB } of intersectPaths(across, outline)) {
    const last = stops.at(-1);
    const stop =
      last && alongA - last.at <= coincidenceTolerance ? last : { at: alongA, edges: [], darts: [] };
    if (stop !== last) stops.push(stop);
    // The place where the outline closes is given as its start, and lies on its last part as well.
    for (const along of alongB <= coincidenceTolerance ? [alongB, whole] : [alongB])
      for (const { part, leg, start, end } of ranges) {
        if (along < start - coincidenceTolerance || along > end + coincidenceTolerance) continue;
        const fromApex = Math.max(0, leg === 0 ? end - along : along - start);
        if (part.type === 'edge') stop.edges.push(part.name);
        else if (part.type === 'dart') stop.darts.push({ dart: part, legMm: end - start, fromApex });
        // A pleat is folded shut: out of its mouth the line meets the edges on either side.
        else stop.edges.push(...edgesBeside(piece, part));
      }
  }
  return stops;
}

/** Where the edges, the legs of darts and the mouths of pleats lie along the outline, in mm from its start. */
function partRanges(piece: Piece) {
  const ranges: { part: OutlinePart; leg: number; start: number; end: number }[] = [];
  let along = 0;
  for (const part of piece.outline.parts)
    for (const [leg, path] of pathsOfPart(part).entries()) {
      const end = along + pathLength(path);
      ranges.push({ part, leg, start: along, end });
      along = end;
    }
  return ranges;
}

const edgesBeside = (piece: Piece, part: OutlinePart): readonly string[] =>
  (['start', 'end'] as const).map(end => besides(piece.outline, part, end).name);

/** Index of the stretch within the cloth that holds, or lies nearest to, a place along the line. */
export function nearestStretch(
  stops: readonly Stop[],
  inside: readonly boolean[],
  at: number,
): number | undefined {
  // Negative within the one that holds the place.
  const away = (i: number) => Math.max(stops[i]!.at - at, at - stops[i + 1]!.at);
  const within = inside.flatMap((isIn, i) => (isIn ? [i] : []));
  return within.toSorted((i, k) => away(i) - away(k))[0];
}

/** The stretches of a line between its stops, whether each lies within the cloth, and the one it is walked from. */
interface Stretches {
  readonly stops: readonly Stop[];
  readonly inside: readonly boolean[];
  readonly home: number;
  readonly way: 1 | -1;
  /** Where on the line it was drawn to, that way. */
  readonly drawnTo: number;
}

/**
 * Cloth in mm beyond the stretch `home`, one way along the line, and where on the line it ends at which edges. An
 * armhole that dips below the corner that a level is drawn to leaves no hole in the level.
 */
export function clothBeyond(piece: Piece, { stops, inside, home, way, drawnTo }: Stretches) {
  let length = 0;
  let edge = way === 1 ? home + 1 : home;
  for (;;) {
    const next = way === 1 ? edge : edge - 1;
    const here = stops[edge]!,
      beyond = stops[edge + way];
    if (!beyond || next < 0) break;
    const isDrawnTo = Math.abs(beyond.at - drawnTo) <= joiningGap;
    if (inside[next] || (isDrawnTo && beyond.edges.length > 1)) length += Math.abs(beyond.at - here.at);
    else if (!here.darts.some(d => beyond.darts.some(e => e.dart === d.dart))) break;
    edge += way;
  }
  const { at, edges, darts } = stops[edge]!;
  const out = darts[0];
  if (!out) return { length, at, edges };
  // Out of a dart's mouth: along its seam to the edges on either side of it.
  return { length: length + out.legMm - out.fromApex, at, edges: edgesBeside(piece, out.dart) };
}
