import { at, type Edge, type PieceLine, polyline, roleOf } from '@paperhinge/geometry';
import { isCentreEdge, isCentreLine, lineRoleOf } from '@paperhinge/geometry/pattern';
import { expect, test } from 'vitest';

const path = polyline(at(0, 0), at(0, 100));
const edge = (name: string): Edge => ({ type: 'edge', name, path, kind: 'seam', allowance: 0, corners: {} });
const line = (name: string): PieceLine => ({ kind: 'level', name, path });

// Names of the centre in English, German, French, Spanish, Italian, Dutch and Portuguese, and names that only look so.
const centres = [
  'centre',
  'center front',
  'centre-back',
  'CF',
  'cb',
  'centreFront',
  'vordere Mitte',
  'Rückenmitte',
  'milieu dos',
  'centro delantero',
  'mezzo dietro',
  'middenvoor',
  'meio das costas',
];
const others = [
  'neck',
  'side',
  'hem',
  'cfx',
  'mittelnaht',
  'medium',
  'percentage',
  'waist',
  'Bund',
  'cable',
  'Seite',
];

test.each(centres)('%s is the centre, by the short way as by the whole tables', name => {
  expect(roleOf(edge(name))).toBe('centre');
  expect(isCentreEdge(edge(name))).toBe(true);
  expect(lineRoleOf(line(name))).toBe('centre');
  expect(isCentreLine(line(name))).toBe(true);
});

test.each(others)('%s is not', name => {
  expect(roleOf(edge(name))).not.toBe('centre');
  expect(isCentreEdge(edge(name))).toBe(false);
  expect(isCentreLine(line(name))).toBe(false);
});

test('a role that is given or guessed counts before the name', () => {
  expect(isCentreEdge({ ...edge('centre'), role: 'opening' })).toBe(false);
  expect(isCentreEdge({ ...edge('neck'), role: 'centre' })).toBe(true);
});
