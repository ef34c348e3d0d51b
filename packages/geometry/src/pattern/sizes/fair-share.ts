/** A place down the grain and the share that is wanted there. */
export interface ShareAt {
  /** mm. */
  readonly down: number;
  readonly share: number;
}

/**
 * A share that takes the values given at their places and goes from one to the next fair, without a bend and without
 * rising above or falling below the two; beyond the first and the last it stays as it is.
 *
 * Monotone cubic interpolation with level ends. Source: Fritsch and Carlson, "Monotone piecewise cubic
 * interpolation", SIAM J. Numer. Anal. 17 (1980) [remembered].
 */
export function fairShare(places: readonly ShareAt[]): (down: number) => number {
  const knots = [...places]
    .sort((a, b) => a.down - b.down)
    .filter((p, i, all) => p.down !== all[i - 1]?.down);
  const slopes = slopesAt(knots);
  return down => {
    const next = knots.findIndex(knot => knot.down >= down);
    if (next === 0) return knots[0]!.share;
    if (next < 0) return knots.at(-1)!.share;
    const from = knots[next - 1]!,
      to = knots[next]!;
    const wide = to.down - from.down;
    const t = (down - from.down) / wide;
    const s = 1 - t;
    return (
      from.share * s * s * (1 + 2 * t) +
      to.share * t * t * (3 - 2 * t) +
      slopes[next - 1]! * wide * t * s * s -
      slopes[next]! * wide * t * t * s
    );
  };
}

/** At an inner knot the harmonic mean of the slopes on both sides, weighted by their widths; 0 where those differ in sign. */
function slopesAt(knots: readonly ShareAt[]): readonly number[] {
  const wide = knots.slice(1).map((knot, i) => knot.down - knots[i]!.down);
  const steep = knots.slice(1).map((knot, i) => (knot.share - knots[i]!.share) / wide[i]!);
  return knots.map((_, i) => {
    const before = steep[i - 1],
      after = steep[i];
    if (before === undefined || after === undefined || before * after <= 0) return 0;
    const w1 = 2 * wide[i]! + wide[i - 1]!,
      w2 = wide[i]! + 2 * wide[i - 1]!;
    return (w1 + w2) / (w1 / before + w2 / after);
  });
}
