import { describe, expect, test } from 'vitest';
import { gaussRule } from '../../packages/geometry/src/quadrature.js';

// Zeros of the Legendre polynomials and their weights to 40 digits [derived]; they agree with NIST DLMF §3.5(v) [memory].
const published: readonly (readonly [
  points: number,
  nodes: readonly number[],
  weights: readonly number[],
])[] = [
  [4, [0.8611363115940526, 0.33998104358485626], [0.34785484513745385, 0.6521451548625461]],
  [
    8,
    [0.9602898564975363, 0.7966664774136267, 0.525532409916329, 0.1834346424956498],
    [0.10122853629037626, 0.22238103445337448, 0.31370664587788727, 0.362683783378362],
  ],
  [
    24,
    [
      0.9951872199970213, 0.9747285559713095, 0.9382745520027328, 0.8864155270044011, 0.820001985973903,
      0.7401241915785544, 0.6480936519369755, 0.5454214713888396, 0.4337935076260451, 0.3150426796961634,
      0.1911188674736163, 0.06405689286260563,
    ],
    [
      0.0123412297999872, 0.028531388628933663, 0.04427743881741981, 0.05929858491543678, 0.0733464814110803,
      0.08619016153195327, 0.09761865210411388, 0.10744427011596563, 0.1155056680537256, 0.12167047292780339,
      0.1258374563468283, 0.12793819534675216,
    ],
  ],
];

describe.each(published)('the rule of %i points', (points, nodes, weights) => {
  const rule = gaussRule(points);
  test('has the published nodes and weights', () => {
    expect(rule.nodes.length).toBe(points / 2);
    rule.nodes.forEach((node, i) => {
      expect(Math.abs(node - nodes[i]!)).toBeLessThan(2e-16);
      expect(Math.abs(rule.weights[i]! - weights[i]!)).toBeLessThan(3e-16);
    });
  });
  // A rule of n points is exact up to the power 2n − 1: the integral of x^k over [−1, 1] is 2 / (k + 1), k even.
  test('integrates every power it should, and not the next', () => {
    const integral = (power: number) =>
      2 * rule.nodes.reduce((sum, node, i) => sum + rule.weights[i]! * node ** power, 0);
    for (let power = 0; power < 2 * points; power += 2)
      expect(Math.abs(integral(power) - 2 / (power + 1))).toBeLessThan(1e-15);
    if (points <= 8) expect(Math.abs(integral(2 * points) - 2 / (2 * points + 1))).toBeGreaterThan(1e-6);
  });
});
