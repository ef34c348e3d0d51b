import { type Candidate, ofItself } from './seam-candidates.js';
import type { SewingLine } from './sewing-lines.js';

/** Odds of a crotch that is seen by how its legs are sewn: lengths say nothing of a line and its mirror image. */
const crotchOdds = 4,
  mostSure = 0.85;

/**
 * The crotches of legs, whatever they look like: of a pair of pieces that is sewn to another along two lines, with one
 * line between these below (the hem) and two above (the waist and the crotch), the one beside the shorter seam.
 */
export function crotchesOfLegs(all: readonly SewingLine[], sewn: readonly Candidate[]): readonly Candidate[] {
  return [...new Set(all.map(line => line.piece))]
    .filter(({ cutting }) => cutting.count > 1 && cutting.mirrored)
    .flatMap(piece => {
      const ring = all.filter(line => line.piece === piece);
      if (ring.some(isOfBodice)) return [];
      const crotch = crotchIn(ring, sewn);
      if (!crotch) return [];
      return [ofItself(crotch, { name: 'crotch', odds: crotchOdds, most: mostSure })];
    });
}

/** A front that wraps over has two seams and an open edge, too. */
const isOfBodice = ({ pieceRole, confidence }: SewingLine): boolean =>
  pieceRole === 'bodice' && confidence > surelyKnown;
/** A piece surer than this is known. */
const surelyKnown = 0.8;

function crotchIn(ring: readonly SewingLine[], sewn: readonly Candidate[]): SewingLine | undefined {
  if (ring.length !== 5) return undefined;
  const partner = (line: SewingLine): SewingLine | undefined => {
    const one = sewn.find(({ a, b }) => a.length === 1 && b.length === 1 && (a[0] === line || b[0] === line));
    return one && (one.a[0] === line ? one.b[0] : one.a[0]);
  };
  const seams = ring.filter(line => {
    const other = partner(line);
    return other !== undefined && other.piece !== line.piece;
  });
  const [first, second, ...more] = seams;
  if (!first || !second || more.length > 0 || partner(first)!.piece !== partner(second)!.piece)
    return undefined;
  const shorter = first.lengthMm < second.lengthMm ? first : second;
  const at = ring.indexOf(shorter);
  const beside = [ring[(at + 1) % 5]!, ring[(at + 4) % 5]!];
  // The hem lies between the two seams by itself; the crotch has the waist behind it.
  return beside.find(line => {
    const step = ring.indexOf(line) === (at + 1) % 5 ? 1 : 4;
    const next = ring[(ring.indexOf(line) + step) % 5]!;
    return !seams.includes(next);
  });
}
