import { readdirSync } from 'node:fs';
import * as model from '@paperhinge/geometry';
import { at, PatternError, pathOf, polyline, type Segment } from '@paperhinge/geometry';
import * as curves from '@paperhinge/geometry/curves';
import * as cuttingLines from '@paperhinge/geometry/cutting-line';
import * as paths from '@paperhinge/geometry/paths';
import { identity } from '@paperhinge/geometry/plane';
import * as regions from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { deepFinite, hostile, replacedNumbers } from '../support/hostile-values.js';
import { told } from '../support/told.js';

const geometry = { ...model, ...curves, ...paths, ...regions, ...cuttingLines };
const source = new URL('../../packages/geometry/src/', import.meta.url);
const files = ['curve', 'path', 'region', 'cutting-line'].flatMap(folder =>
  readdirSync(new URL(folder, source)).map(file => new URL(`${folder}/${file}`, source).pathname),
);
const modules: readonly Record<string, unknown>[] = await Promise.all(files.map(file => import(file)));
const ofTheKernel = new Set(modules.flatMap(module => Object.values(module)));
const publicNames = Object.entries(geometry)
  .filter(([, value]) => typeof value === 'function' && ofTheKernel.has(value))
  .map(([name]) => name);

const cubic: Segment = [at(0, 0), at(10, 30), at(40, 40), at(70, 5)];
const straight: Segment = [at(5, -10), at(40, 60)];
const path = pathOf(cubic, [at(70, 5), at(90, 20)]);
const beyond = pathOf([at(120, 30), at(150, 30)]);
const square = polyline(at(0, 0), at(100, 0), at(100, 100), at(0, 100), at(0, 0));
const other = polyline(at(50, 50), at(150, 50), at(150, 150), at(50, 150), at(50, 50));
const edge = (name: string, ...points: readonly (readonly [number, number])[]) => ({
  type: 'edge' as const,
  name,
  kind: 'seam' as const,
  allowance: 10,
  corners: {},
  path: polyline(...points.map(([x, y]) => at(x, y))),
});
const parts = [
  edge('top', [0, 0], [100, 0]),
  edge('right', [100, 0], [100, 100]),
  {
    type: 'dart' as const,
    name: 'dart',
    apex: at(60, 60),
    legs: [polyline(at(100, 100), at(60, 60)), polyline(at(60, 60), at(80, 110))] as const,
  },
  edge('bottom', [80, 110], [0, 100]),
  edge('left', [0, 100], [0, 0]),
];
const piece = {
  name: 'front',
  title: 'Front',
  outline: { parts },
  notches: [],
  lines: [{ kind: 'grain' as const, name: 'grain', path: polyline(at(20, 20), at(20, 80)) }],
  marks: [],
  cutting: { count: 1, mirrored: false, fabric: 'main' },
};

/** A sound call of each public function; every number in it is made hostile in turn. */
const soundCalls: Readonly<Record<string, readonly unknown[]>> = {
  arcBetween: [at(0, 0), at(10, 0), at(0, 10), true],
  segmentLength: [cubic],
  lengthBetween: [cubic, 0.2, 0.7],
  parameterAtLength: [cubic, 20],
  boundsOf: [cubic],
  curvatureAt: [cubic, 0.5],
  intersectSegments: [cubic, straight],
  nearestOnSegment: [cubic, at(30, 0)],
  offsetSegment: [cubic, 5, 0.005],
  asCubic: [straight],
  between: [cubic, 0.2, 0.7],
  derivativeAt: [cubic, 0.5],
  line: [at(0, 0), at(10, 0)],
  pointAt: [cubic, 0.5],
  quadratic: [at(0, 0), at(10, 20), at(20, 0)],
  secondDerivativeAt: [cubic, 0.5],
  splitAt: [cubic, 0.5],
  tangentAt: [cubic, 0.5],
  transformed: [cubic, identity],
  selfCrossing: [cubic],
  cuttingLine: [piece],
  offsetOutline: [square, 10],
  stitchingLine: [parts, () => 10],
  pathWithoutLoops: [path],
  boundsOfPath: [path],
  curveOfLength: [at(0, 0), at(1, 0), at(100, 0), at(1, 0), 120],
  fairCurve: [
    { point: at(0, 0), direction: at(1, 0) },
    { point: at(100, 0), direction: at(1, 0) },
    0.005,
    [at(40, 10)],
  ],
  fitCurve: [[at(0, 0), at(40, 10), at(100, 0)], at(1, 0), at(1, 0), 0.005],
  intersectPaths: [path, pathOf(straight)],
  locate: [path, 20],
  pathLength: [path],
  pointAlong: [path, 20],
  splitPath: [path, 20],
  subpath: [path, 20, 40],
  tangentAlong: [path, 20],
  nearestOnPath: [path, at(30, 0)],
  offsetPath: [path, 5, 0.005],
  endTangent: [path],
  startTangent: [path],
  polyline: [at(0, 0), at(10, 0)],
  transformedPath: [path, identity],
  simplifyPath: [path, 0.1],
  smoothJoin: [path, beyond, 'tangent'],
  centroid: [square],
  signedArea: [square],
  clearance: [square, other],
  containsPoint: [square, at(50, 50)],
  selfCrossings: [square],
  difference: [[square], [other]],
  intersection: [[square], [other]],
  union: [[square], [other]],
};
/** Of a path they read one end, and are right whatever stands at the other. */
const readAtOneEnd = ['startTangent', 'endTangent'];
/** They hand back what they are given, or parts of it, and read no number. */
const unread = [
  'isLine',
  'startOf',
  'endOf',
  'reversed',
  'pathOf',
  'joined',
  'pathStart',
  'pathEnd',
  'reversedPath',
];

describe('every public door of curve, path, region and cutting line', () => {
  test('is in the table of this test', () => {
    expect([...Object.keys(soundCalls), ...unread].sort()).toEqual([...publicNames].sort());
  });

  describe.each(Object.entries(soundCalls))('%s', (name, sound) => {
    const door = (geometry as unknown as Record<string, (...given: readonly unknown[]) => unknown>)[name]!;
    const answerTo = (given: readonly unknown[]): unknown => {
      try {
        return door(...given);
      } catch (error) {
        return error;
      }
    };

    test('answers a sound call in finite numbers', () => {
      expect(deepFinite(answerTo(sound))).toBe(true);
    });

    test.each(hostile)('is shut to %d wherever a number stands', value => {
      for (const given of replacedNumbers(sound, value)) {
        const answer = answerTo(given);
        const isRefused = answer instanceof PatternError && told(answer).remedy !== '';
        const mayAnswer = !Number.isNaN(value) || readAtOneEnd.includes(name);
        const isSound = mayAnswer && deepFinite(answer);
        expect(isRefused || isSound, `${JSON.stringify(given)} gave ${String(answer)}`).toBe(true);
      }
    });
  });

  test.each(unread)('%s takes what it is given as it is', name => {
    const door = (geometry as unknown as Record<string, (given: unknown) => unknown>)[name]!;
    const bad: Segment = [at(Number.NaN, 0), at(1, 1)];
    expect(() => door(/[pP]ath|joined/.test(name) && name !== 'pathOf' ? pathOf(bad) : bad)).not.toThrow();
  });

  test('a path without segments and a segment of three points are refused', () => {
    const three = [at(0, 0), at(1, 1), at(2, 0)] as unknown as Segment;
    const refusal = (code: string) => expect.objectContaining({ code });
    expect(() => geometry.segmentLength(three)).toThrow(refusal('not-a-segment'));
    expect(() => geometry.signedArea(pathOf(three))).toThrow(refusal('not-a-segment'));
    for (const door of [geometry.pathLength, geometry.signedArea, geometry.boundsOfPath, geometry.pathStart])
      expect(() => door({ segments: [] })).toThrow(refusal('path-empty'));
    expect(() => geometry.smoothJoin(path, beyond, 'soft' as 'tangent')).toThrow(
      refusal('unknown-continuity'),
    );
  });

  test('an allowance given by a function is read as carefully', () => {
    for (const bad of hostile) {
      expect(() => geometry.stitchingLine(parts, () => bad)).toThrow(PatternError);
      expect(() => geometry.offsetOutline(square, () => bad)).toThrow(PatternError);
    }
    expect(() => geometry.stitchingLine(parts, () => -1)).toThrow(
      expect.objectContaining({ code: 'allowance-out-of-range' }),
    );
  });
});
