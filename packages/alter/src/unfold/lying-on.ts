import {
  apply,
  distance,
  edgePath,
  type Finding,
  isCentreName,
  type Mark,
  type Notch,
  nearestOnPath,
  type Piece,
  type PieceLine,
  pathEnd,
  pathLength,
  pathStart,
  reversedPath,
  tolerances,
  transformedPath,
} from '@paperhinge/geometry';
import { bridged } from '../edit/bridged.js';
import { type OpenedOutline, unusedOther } from './mirrored-outline.js';

/** Points this near the fold line are on it: what a drawing joins, it also means. */
const onFold = tolerances.joiningGap;

/** Notches of the opened piece: each edge's own, and their mirror images. */
export function openedNotches(
  piece: Piece,
  { fates, fold }: OpenedOutline,
): { readonly notches: readonly Notch[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const notches = piece.notches.flatMap((notch): readonly Notch[] => {
    const fate = fates.get(notch.edge);
    if (!fate || notch.edge === fold.name) {
      findings.push({
        severity: 'warning',
        code: 'notch-cut-away',
        where: { piece: piece.name, edge: notch.edge },
        message: `The notch at ${notch.at.toFixed(1)} mm of "${notch.edge}" is gone with the fold it stood on.`,
        figures: { atMm: notch.at },
        remedy: 'Mark the place on the centre line, if it is still wanted.',
      });
      return [];
    }
    const length = pathLength(edgePath(piece, notch.edge));
    if ('other' in fate) return [notch, { ...notch, edge: fate.other, at: length - notch.at }];
    const own = fate.crossing === 'end' ? notch.at : length + notch.at;
    // A notch on the centre line is its own mirror image.
    if (Math.abs(length - own) <= onFold) return [{ ...notch, at: length }];
    const name = notch.name === undefined ? {} : { name: `${notch.name}-other` };
    return [
      { ...notch, at: own },
      { ...notch, ...name, at: 2 * length - own },
    ];
  });
  return { notches, findings };
}

/**
 * Lines of the opened piece. One grain line is enough; a line along the fold is its own mirror image; a line that
 * reaches the fold, and every level, runs on across it; any other gets a mirrored copy. The fold itself stays as a
 * line named `centre ...`, by which later steps know what holds the piece.
 */
export function openedLines(piece: Piece, { map, fold }: OpenedOutline): readonly PieceLine[] {
  const taken = new Set(piece.lines.map(l => l.name));
  const lines = piece.lines.flatMap((line): readonly PieceLine[] => {
    const points = line.path.segments.flatMap(s => [...s]);
    const off = (p: (typeof points)[number]) => distance(p, apply(map, p)) / 2;
    if (line.kind === 'grain' || points.every(p => off(p) <= onFold)) return [line];
    const start = pathStart(line.path),
      end = pathEnd(line.path);
    const touches = Math.min(off(start), off(end)) <= onFold;
    const closes = distance(start, end) <= tolerances.coincidenceTolerance;
    const across = line.kind === 'level' || line.kind === 'lengthen-shorten';
    if (!closes && (touches || across)) {
      const outward = off(start) <= off(end) ? line.path : reversedPath(line.path);
      return [{ ...line, path: bridged(reversedPath(transformedPath(outward, map)), outward) }];
    }
    return [line, { ...line, name: unusedOther(line.name, taken), path: transformedPath(line.path, map) }];
  });
  const name = isCentreName(fold.name) ? fold.name : 'centre';
  const centre = taken.has(name) ? [] : [{ kind: 'placement' as const, name, path: fold.path }];
  return [...lines, ...centre];
}

/** Marks of the opened piece, those off the fold twice. */
export function openedMarks(piece: Piece, { map, fold }: OpenedOutline): readonly Mark[] {
  const taken = new Set(piece.marks.map(m => m.name));
  return piece.marks.flatMap((mark): readonly Mark[] =>
    nearestOnPath(fold.path, mark.at).distance <= onFold
      ? [mark]
      : [mark, { ...mark, name: unusedOther(mark.name, taken), at: apply(map, mark.at) }],
  );
}
