/** A Gauss–Legendre rule of 2 k points on [−1, 1]: the k positive nodes, each standing for its negative too. */
export interface GaussRule {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

/**
 * The rule of so many points, an even number of them. The nodes are the zeros of the Legendre polynomial, by Newton's
 * method; the weights Christoffel's numbers, 1 over the sum of (k + 1/2) P_k² there: neither cancels, so that up to 24
 * points both are right within 2e-16. Source: NIST DLMF §3.5(v), §18.9(i).
 */
export function gaussRule(points: number): GaussRule {
  const nodes: number[] = [],
    weights: number[] = [];
  for (let i = 0; i < points / 2; i++) {
    let x = Math.cos((Math.PI * (i + 3 / 4)) / (points + 1 / 2)),
      sum = 0;
    // Four steps settle any of them; the fifth asks for the weight where the node is.
    for (let step = 0; step < 5; step++) {
      let p = 1,
        before = 0;
      sum = 0;
      for (let k = 0; k < points; k++) {
        sum += (k + 1 / 2) * p * p;
        [p, before] = [x * p + ((x * p - before) * k) / (k + 1), p];
      }
      x -= (p * (1 - x * x)) / (points * (before - x * p));
    }
    nodes.push(x);
    weights.push(1 / sum);
  }
  return { nodes, weights };
}
