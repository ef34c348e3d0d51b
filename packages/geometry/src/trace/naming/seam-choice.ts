import type { Seam } from '../../pattern/types.js';
import { runningOn } from './joined-lines.js';
import { type Candidate, edgesTaken } from './seam-candidates.js';
import type { SewingLine } from './sewing-lines.js';

/** A candidate that was taken, and how sure. */
export interface Chosen {
  readonly candidate: Candidate;
  readonly confidence: number;
  readonly seam: Seam;
}

/** Takes the surest first, and drops what that leaves no room for: its edges, and those that run on across it. */
export function chosenOf(
  all: readonly SewingLine[],
  candidates: readonly Candidate[],
  limit: number,
): readonly Chosen[] {
  const chosen: Chosen[] = [];
  let open = onceEach(candidates);
  let before = 1;
  for (let best = likeliest(open, limit); best; best = likeliest(open, limit)) {
    const { candidate, confidence } = best;
    const own = new Set(edgesTaken(candidate));
    const across = besideOf(all, candidate);
    open = open.filter(
      other =>
        !edgesTaken(other).some(edge => own.has(edge)) &&
        !joinsBeside(other, across) &&
        !makesTube(other, candidate),
    );
    // What is likeliest only once others are settled is no surer than they are.
    before = Math.min(confidence, before);
    chosen.push({ candidate, confidence: Math.min(before, candidate.most ?? 1), seam: seamOf(candidate) });
  }
  return chosen;
}

/**
 * Whether two seams join the same two halves on a fold along two edges that run up to it: the one on the other would be
 * a tube.
 */
export const makesTube = (one: Candidate, other: Candidate): boolean => {
  const sides = [one.a[0]!, one.b[0]!, other.a[0]!, other.b[0]!];
  const [p, q, r, s] = sides.map(({ piece }) => piece);
  return (
    one.a.length + one.b.length + other.a.length + other.b.length === 4 &&
    p !== q &&
    ((p === r && q === s) || (p === s && q === r)) &&
    sides.every(({ meetsFold }) => meetsFold)
  );
};

/** Whether a candidate sews to one another lines that lie beside a seam on both its sides: they run on across it. */
export const joinsBeside = ({ a, b }: Candidate, { ofA, ofB }: BesideSeam): boolean =>
  (a.some(line => ofA.includes(line)) && b.some(line => ofB.includes(line))) ||
  (a.some(line => ofB.includes(line)) && b.some(line => ofA.includes(line)));

/** Lines beside a seam, of its two sides. */
export interface BesideSeam {
  readonly ofA: readonly SewingLine[];
  readonly ofB: readonly SewingLine[];
}

/** The lines beside a seam; none beside one of a piece with itself. */
export function besideOf(all: readonly SewingLine[], one: Candidate): BesideSeam {
  const ends = one.a.some(a => one.b.some(b => a.piece === b.piece)) ? [] : runningOn(all, one);
  const lines = (side: 0 | 1) => ends.flatMap(end => end[side]?.line ?? []);
  return { ofA: lines(0), ofB: lines(1) };
}

/** Of candidates that sew the same to the same, the one with the best odds, or the way that its notches tell. */
function onceEach(candidates: readonly Candidate[]): readonly Candidate[] {
  const best = new Map<string, Candidate>();
  for (const one of candidates) {
    const side = (b: readonly SewingLine[]): string => [...edgesTaken({ a: [], b })].sort().join(' ');
    const key = [side(one.a), side(one.b)].sort().join(' = ');
    const known = best.get(key);
    if (!known || isBetter(one, known)) best.set(key, one);
  }
  return [...best.values()];
}

const isBetter = (one: Candidate, known: Candidate): boolean =>
  one.odds > known.odds || (one.odds === known.odds && (one.marks ?? 1) > (known.marks ?? 1));

/** The candidate with the best odds among all that its edges are in, nothing among them. */
function likeliest(candidates: readonly Candidate[], limit: number) {
  const all = new Map<string, number>();
  for (const one of candidates)
    for (const edge of new Set(edgesTaken(one))) all.set(edge, (all.get(edge) ?? 1) + one.odds);
  const sure = (one: Candidate): number =>
    Math.min(...edgesTaken(one).map(edge => one.odds / all.get(edge)!));
  const [best] = candidates
    .map(candidate => ({ candidate, confidence: sure(candidate) }))
    .sort((x, y) => y.confidence - x.confidence);
  return best && best.confidence >= limit ? best : undefined;
}

/** The seam that a candidate makes. */
export function seamOf({ name, runs, aMm, bMm }: Candidate): Seam {
  const difference = aMm - bMm;
  return { name, ...runs, ease: { mm: Math.abs(difference) < 1 ? 0 : difference } };
}
