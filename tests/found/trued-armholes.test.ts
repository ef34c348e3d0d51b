// Armholes that run on badly at shoulder and side, trued as each finding says, with the caps: what that does to the ease has
// a remedy that mends it, and the trued line bends nowhere tighter than its allowance.
import {
  edgeNamed,
  edgePath,
  type Finding,
  type Path,
  type Pattern,
  pathLength,
  pieceNamed,
  walkSeams,
} from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { foundPattern } from './found.js';

const done = (pattern: Pattern, steps: readonly string[]) =>
  runSheet(
    readSheet(['pattern: p.svg', 'steps:', ...steps.map(text => `  - ${text}`)].join('\n'), {
      file: 's.yaml',
    }),
    pattern,
  );
const remedyOf = (finding: Finding): string => wordsOf(english, 'mm').finding(finding).remedy;
const stepIn = (text: string, verb: string): string => {
  const from = text.indexOf(`${verb}: {`);
  let depth = 0;
  const end = [...text.slice(from)].findIndex(c => {
    depth += c === '{' ? 1 : c === '}' ? -1 : 0;
    return c === '}' && depth === 0;
  });
  return text.slice(from, from + end + 1);
};

/** The least radius of a line in mm, through places a millimetre apart. */
function leastRadius(path: Path): number {
  const length = pathLength(path);
  const at = (mm: number) => pointAlong(path, mm);
  const places = Array.from({ length: Math.floor(length) - 2 }, (_, i) => i + 1);
  return Math.min(
    ...places.map(mm => {
      const [p, q, r] = [at(mm - 1), at(mm), at(mm + 1)];
      const twice = Math.abs((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
      const sides = [p, q, r].map((one, i, all) => {
        const next = all[(i + 1) % 3]!;
        return Math.hypot(next.x - one.x, next.y - one.y);
      });
      return (sides[0]! * sides[1]! * sides[2]!) / (2 * twice);
    }),
  );
}

describe.each([
  ['trial-wrap-dress', ['front.armhole', 'back.armhole'], 'sleeve.cap', 'armhole', 12],
  ['trial-hooded-coat', ['front.armhole', 'back.armhole'], 'sleeve.cap', 'armhole', 10],
  [
    'trial-hooded-coat',
    ['front lining.armhole', 'back lining.armhole'],
    'sleeve lining.cap',
    'lining armhole',
    10,
  ],
] as const)('%s: %s', (name, armholes, cap, seam, easeMm) => {
  const { pattern } = foundPattern(name);
  const steps = [`true: { edges: [${armholes.join(', ')}] }`, `true: { edges: [${cap}] }`];

  test('what its seam is off then is made up by the height of the cap, as the remedy says', () => {
    const off = done(pattern, steps).findings.find(
      f => f.code === 'seam-does-not-match' && f.where.piece === cap.split('.')[0],
    );
    const found = off ?? done(pattern, steps).findings.find(f => f.code === 'seam-does-not-match');
    expect(found).toBeDefined();
    const { altered, findings } = done(pattern, [...steps, stepIn(remedyOf(found!), 'change cap')]);
    const walk = walkSeams(altered).find(w => w.seam === seam)!;
    // Sums of the edges as they are drawn now.
    const lengthOf = (ref: string) => {
      const [piece, edge] = ref.split('.') as [string, string];
      return pathLength(edgePath(pieceNamed(altered, piece), edge));
    };
    expect(lengthOf(cap) - armholes.reduce((sum, ref) => sum + lengthOf(ref), 0)).toBeCloseTo(easeMm, 1);
    expect(walk.matches).toBe(true);
    expect(findings.map(f => f.code)).not.toContain('seam-does-not-match');
  });

  test('bends nowhere tighter than the allowance along it has room for', () => {
    const { altered, findings } = done(pattern, steps);
    expect(findings.map(f => f.code)).not.toContain('allowance-too-wide');
    for (const ref of armholes) {
      const [piece, edge] = ref.split('.') as [string, string];
      const { allowance } = edgeNamed(pieceNamed(altered, piece), edge);
      expect(leastRadius(edgePath(pieceNamed(altered, piece), edge))).toBeGreaterThan(allowance);
    }
  });
});
