import { edgeNamed } from '../../pattern/outline.js';
import type { EdgeRun } from '../../pattern/types.js';
import type { Candidate } from './seam-candidates.js';
import type { SewingLine } from './sewing-lines.js';

/** An end of a line: its clockwise beginning, or its end. */
export interface End {
  readonly line: SewingLine;
  readonly atStart: boolean;
}

/** What lies around the corner at the end of an open line, over the seams that meet there. */
export interface AroundCorner {
  /** The next open line; none where the way ends at a fold or at a line's own mirror image. */
  readonly met?: End;
  /** The way ends at the middle of the garment: at a fold, or at a line that is sewn to its own mirror image. */
  readonly isMiddle: boolean;
  /** rad of cloth passed over on the way; undefined where a dart lies in it. */
  readonly cloth: number | undefined;
  readonly seamsCrossed: number;
}

/** Looks around corners over the seams given. */
export type LookAround = (from: End) => AroundCorner;

/** More seams hardly meet in one place. */
const mostSeams = 8;

/**
 * How one goes on from the end of an open line over what is sewn: past the corner of its own piece, over the seam there
 * to the next piece, and so on to the next line that is open.
 */
export function lookingAround(
  all: readonly SewingLine[],
  sewn: readonly Candidate[],
  isOpen: (line: SewingLine) => boolean,
): LookAround {
  const over = endsSewn(all, sewn);
  const rings = new Map<string, SewingLine[]>();
  for (const line of all) rings.set(line.piece.name, [...(rings.get(line.piece.name) ?? []), line]);
  return from => {
    let at = from,
      cloth: number | undefined = 0;
    for (let seamsCrossed = 0; seamsCrossed < mostSeams; seamsCrossed++) {
      const corner: number | undefined = at.line.corners[at.atStart ? 0 : 1];
      cloth = cloth === undefined || corner === undefined ? undefined : cloth + corner;
      const ring = rings.get(at.line.piece.name)!;
      const step = at.atStart ? -1 : 1;
      const line = ring[(ring.indexOf(at.line) + step + ring.length) % ring.length]!;
      const next: End = { line, atStart: !at.atStart };
      if (isOpen(line)) return { met: next, isMiddle: false, cloth, seamsCrossed };
      const other = over.get(keyOf(next));
      if (isFold(line) || other === 'mirrored') return { isMiddle: true, cloth, seamsCrossed };
      if (!other) return { isMiddle: false, cloth, seamsCrossed };
      at = other.end;
      cloth = cloth === undefined ? undefined : cloth + other.cloth;
    }
    return { isMiddle: false, cloth, seamsCrossed: mostSeams };
  };
}

const isFold = ({ piece, edges }: SewingLine): boolean =>
  edges.some(edge => edgeNamed(piece, edge).kind === 'fold');

const keyOf = ({ line, atStart }: End): string => `${line.piece.name}/${line.edges[0]}/${atStart}`;

/** Where one lands from the end of a line that is sewn, and the cloth between, that of a line which runs past there. */
type Over = { readonly end: End; readonly cloth: number } | 'mirrored';

function endsSewn(all: readonly SewingLine[], sewn: readonly Candidate[]): ReadonlyMap<string, Over> {
  const over = new Map<string, Over>();
  const set = (from: End, to: Over): void => {
    if (!over.has(keyOf(from))) over.set(keyOf(from), to);
  };
  for (const { a, b, runs } of sewn) {
    const [own, other] = [runs.a, runs.b].map(side => endsAlong(all, side));
    if (!own || !other || own.length === 0 || other.length === 0) continue;
    if (a.length === 1 && a[0] === b[0]) {
      for (const atStart of [true, false]) set({ line: a[0]!, atStart }, 'mirrored');
      continue;
    }
    for (const [p, q] of [
      [own[0]!.from, other[0]!.from],
      [own.at(-1)!.to, other.at(-1)!.to],
    ] as const) {
      set(p, { end: q, cloth: 0 });
      set(q, { end: p, cloth: 0 });
    }
    // Between two lines of a side the other one runs past.
    for (const side of [own, other])
      for (const [i, next] of side.slice(1).entries()) {
        const before = side[i]!;
        if (before.to.line === next.from.line) continue;
        set(before.to, { end: next.from, cloth: Math.PI });
        set(next.from, { end: before.to, cloth: Math.PI });
      }
  }
  return over;
}

/** The lines that the runs of a side go along, by their ends as they are come to and left. */
function endsAlong(
  all: readonly SewingLine[],
  runs: readonly EdgeRun[],
): readonly { readonly from: End; readonly to: End }[] {
  const lines = runs.map(run => ({
    line: all.find(({ piece, edges }) => piece.name === run.piece && edges.includes(run.edge))!,
    reversed: run.reversed,
  }));
  return lines
    .filter(
      ({ line }, i) =>
        i === 0 || line !== lines[i - 1]!.line || lines[i - 1]!.reversed !== lines[i]!.reversed,
    )
    .map(({ line, reversed }) => ({
      from: { line, atStart: !reversed },
      to: { line, atStart: reversed },
    }));
}
