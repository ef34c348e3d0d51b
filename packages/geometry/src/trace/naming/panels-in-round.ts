import { type Candidate, candidate, usual } from './seam-candidates.js';
import { exact } from './seam-chances.js';
import { runsOf, type SewingLine } from './sewing-lines.js';

/** mm: panels that are alike have edges that differ by less. */
const asTraced = 0.5;
/** Fewer go round no body one after the other: two are a front and a back. */
const fewest = 3;
/** Panels that are alike may follow one another in any order. */
const anyOrder = 0.8;

/**
 * Panels of a skirt that are all alike and drawn one by one: each is sewn to the one drawn after it, the last to the
 * first.
 */
export function panelsInRound(lines: readonly SewingLine[]): readonly Candidate[] {
  const sides = (first: SewingLine): readonly [SewingLine, SewingLine] | undefined => {
    const own = lines.filter(line => line.piece === first.piece && line.role === 'side');
    const down = own.find(line => line.before === 'waist'),
      up = own.find(line => line.after === 'waist');
    return own.length === 2 && down && up ? [down, up] : undefined;
  };
  const panels = lines
    .filter((line, i) => lines.findIndex(other => other.piece === line.piece) === i)
    .filter(({ pieceRole, piece }) => pieceRole === 'skirt' && piece.cutting.count === 1)
    .flatMap(line => {
      const pair = sides(line);
      return pair ? [{ pair, lengths: pair.map(side => side.lengthMm) }] : [];
    });
  const alike = panels.filter(({ lengths }) =>
    lengths.every((length, i) => Math.abs(length - panels[0]!.lengths[i]!) <= asTraced),
  );
  if (alike.length < fewest || alike.length < panels.length) return [];
  return alike.map(({ pair: [down] }, i) => {
    const [, up] = alike[(i + 1) % alike.length]!.pair;
    const runs = { a: runsOf(down, false), b: runsOf(up, true) };
    // Against all others that are just as long, the one drawn next is taken.
    return candidate('side', [down], [up], exact, {
      runs,
      prior: 40 * usual * alike.length,
      most: anyOrder,
    });
  });
}
