import type { Piece } from '../../pattern/types.js';
import type { Overlay } from './overlays.js';
import { type Candidate, candidate, edgesTaken } from './seam-candidates.js';
import { exact } from './seam-chances.js';
import { isSewable, runsOf, type SewingLine } from './sewing-lines.js';

/** Of an edge that nothing else is sewn to; and of one that a collar or a band lies between. */
const freeSure = 4,
  betweenSure = 1.5;
/** Nothing says that what lies under an edge is sewn to it. */
const mostOfOverlay = 0.85;

/**
 * Linings, facings and bags of pockets along the edges that they share with what they lie on, where those are sewn to
 * nothing or to a collar: the rest of their edges is sewn as what they lie on is.
 */
export function overlaySeams(
  lines: readonly SewingLine[],
  overlays: readonly Overlay[],
  sewn: readonly Candidate[],
): readonly Candidate[] {
  const taken = new Set(sewn.flatMap(edgesTaken));
  const between = new Set(
    sewn
      .filter(({ a, b }) =>
        [...a, ...b].some(({ pieceRole }) => pieceRole === 'collar' || pieceRole === 'band'),
      )
      .flatMap(edgesTaken),
  );
  const keyOf = (line: SewingLine): string => edgesTaken({ a: [line], b: [] })[0]!;
  return overlays.flatMap(overlay =>
    linesOnOneAnother(lines, overlay).flatMap(([a, b]) => {
      if (taken.has(keyOf(a))) return [];
      const isBetween = between.has(keyOf(b));
      if (!isSewable(a) || !isSewable(b) || (taken.has(keyOf(b)) && !isBetween)) return [];
      const runs = { a: runsOf(a, false), b: runsOf(b, goesAgainst(a, b)) };
      const odds = isBetween ? betweenSure : freeSure;
      return [{ ...candidate(b.role ?? 'edge', [a], [b], exact, { runs, most: mostOfOverlay }), odds }];
    }),
  );
}

/** mm: what follows a line that lies on another, and is as long as what follows there, lies there, too. */
const asLong = 0.3;

/** Lines that lie on one another with all their edges, of what lies above first. */
export function linesOnOneAnother(
  lines: readonly SewingLine[],
  { over, under, shared }: Overlay,
): readonly (readonly [SewingLine, SewingLine])[] {
  const on = lines
    .filter(({ piece, edges }) => piece === over && edges.every(edge => shared.has(edge)))
    .flatMap(a => {
      const there = a.edges.map(edge => shared.get(edge)!);
      const b = lines.find(
        ({ piece, edges }) =>
          piece === under && edges.length === there.length && edges.every(edge => there.includes(edge)),
      );
      return b ? [[a, b] as const] : [];
    });
  const beside = on.flatMap(([a, b]) =>
    [1, -1].flatMap(step => {
      const own = following(lines, a, step),
        other = following(lines, b, goesAgainst(a, b) ? -step : step);
      const isNew = own && other && !on.some(([c, d]) => c === own || d === other);
      return isNew && Math.abs(own.lengthMm - other.lengthMm) < asLong ? [[own, other] as const] : [];
    }),
  );
  return [...on, ...beside];
}

function following(lines: readonly SewingLine[], line: SewingLine, step: number): SewingLine | undefined {
  const ring = lines.filter(({ piece }) => piece === line.piece);
  return ring[(ring.indexOf(line) + step + ring.length) % ring.length];
}

/** A piece that is drawn turned over goes round the other way. */
export function goesAgainst(a: SewingLine, b: SewingLine): boolean {
  const off = (one: number | undefined, other: number | undefined): number =>
    one === undefined || other === undefined ? 0 : Math.abs(one - other);
  return (
    off(a.corners[0], b.corners[1]) + off(a.corners[1], b.corners[0]) <
    off(a.corners[0], b.corners[0]) + off(a.corners[1], b.corners[1])
  );
}

/** Lines along which a facing lies, on the piece and on the facing: they open, and are sewn to one another. */
export function facedLines(
  lines: readonly SewingLine[],
  overlays: readonly Overlay[],
): ReadonlySet<SewingLine> {
  const partial = overlays.filter(({ isWhole }) => !isWhole);
  const isFaced = ({ piece, edges }: SewingLine): boolean =>
    partial.some(
      ({ over, under, shared }) =>
        (under === piece && [...shared.values()].some(edge => edges.includes(edge))) ||
        (over === piece && edges.some(edge => shared.has(edge))),
    );
  return new Set(lines.filter(isFaced));
}

/**
 * The piece that a line of a lining or facing lies on with its whole length: mostly it is sewn to that line, or as that
 * line is.
 */
export const laidOnto =
  (overlays: readonly Overlay[]) =>
  ({ piece, edges }: SewingLine): Piece | undefined =>
    overlays.find(({ over, shared }) => over === piece && edges.some(edge => shared.has(edge)))?.under;
