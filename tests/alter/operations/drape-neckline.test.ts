import { measured } from '@paperhinge/alter';
import { addGrownOnFacing, drapeNeckline } from '@paperhinge/alter/edges';
import {
  at,
  edgePath,
  line,
  type Piece,
  pathOf,
  pieceNamed,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { runSheet } from '@paperhinge/sheet';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { read, withSteps } from '../../sheet/sheets.js';
import { shiftPattern } from '../../support/shift.js';
import { toldDid } from '../../support/told.js';
import {
  anyBodice,
  areaOf,
  edge,
  expectClosed,
  expectUntouched,
  lengthOf,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

/** Half a front of straight lines: its neck from (0, 100) to (80, 0), its armhole from (200, 40) to (240, 220). */
const front = (): Piece =>
  pieceOf([
    edge('neck', 'seam', line(at(0, 100), at(80, 0))),
    edge('shoulder', 'seam', line(at(80, 0), at(200, 40))),
    edge('armhole', 'seam', line(at(200, 40), at(240, 220))),
    edge('side', 'seam', line(at(240, 220), at(240, 600))),
    edge('hem', 'hem', line(at(240, 600), at(0, 600))),
    edge('centre', 'fold', line(at(0, 600), at(0, 100))),
  ]);
type Given = Parameters<typeof drapeNeckline>[1];
const drape = (changes: Partial<Given> = {}, piece = front()) =>
  drapeNeckline(patternOf(piece), { piece: 'block', by: 0, slashes: 1, ...changes });

describe('a cowl', () => {
  test('without spreading fills the neck up to the shoulder', () => {
    const after = only(drape().pattern);
    expect(lengthOf(after, 'neck')).toBeCloseTo(80, 9);
    expect(lengthOf(after, 'centre')).toBeCloseTo(600, 9);
    expect(areaOf(after) - areaOf(front())).toBeCloseTo((80 * 100) / 2, 6);
    expectUntouched(front(), after, 'neck', 'centre');
    expectClosed(after);
  });
  // One slash from the neck's middle (40, 50) to the armhole's (220, 130), which hinges: what lies above it turns.
  test('spread turns the shoulder about the hinge, and ends square to the centre', () => {
    const reach = Math.hypot(180, 80);
    const turn = 2 * Math.asin(60 / 2 / reach);
    const [x, y] = [80 - 220, 0 - 130];
    const corner = at(
      220 + x * Math.cos(turn) - y * Math.sin(turn),
      130 + x * Math.sin(turn) + y * Math.cos(turn),
    );
    const done = drape({ by: 60 });
    const after = only(done.pattern);
    const neck = edgePath(after, 'neck');
    expect(pathEnd(neck).x).toBeCloseTo(corner.x, 9);
    expect(pathEnd(neck).y).toBeCloseTo(corner.y, 9);
    expect(pathStart(neck).x).toBeCloseTo(0, 9);
    expect(pathStart(neck).y).toBeCloseTo(corner.y, 9);
    expect(lengthOf(after, 'neck')).toBeCloseTo(corner.x, 9);
    expect(lengthOf(after, 'armhole')).toBeCloseTo(lengthOf(front(), 'armhole'), 9);
    expect(toldDid(done)).toBe(
      `The block was spread by 60 mm at the neck, which is straight and square to the centre now, ${corner.x.toFixed(1)} mm long on the pattern; the centre runs on by ${(100 - corner.y).toFixed(1)} mm.`,
    );
  });
  test('says that it wants the bias and a facing in one, which can be grown on', () => {
    const { pattern, findings } = drape({ by: 60 });
    expect(findings.map(f => f.code)).toContain('cowl-on-bias');
    const faced = addGrownOnFacing(pattern, { edges: [{ piece: 'block', edge: 'neck' }], width: 60 });
    expect(lengthOf(only(faced.pattern), 'centre')).toBeCloseTo(lengthOf(only(pattern), 'centre') + 60, 6);
  });
  test('leaves shoulder, armhole and side of a garment to be sewn as they were', () => {
    const before = shiftPattern();
    const { pattern } = drapeNeckline(before, { piece: 'front', by: 80, slashes: 3 });
    const matches = (name: string) => walkSeams(pattern).find(w => w.seam === name)!.matches;
    expect(['shoulder', 'armhole', 'side'].map(matches)).toEqual([true, true, true]);
    expect(pieceNamed(pattern, 'front').outline.parts.length).toBe(
      pieceNamed(before, 'front').outline.parts.length,
    );
  });
  test('is spread until the neck is as long as is asked', () => {
    const sheet = read(
      withSteps(
        'drape neckline: { piece: front, by: { so that: length of front.neck, is: 26 cm }, slashes: 3 }',
      ),
    );
    const neck = { of: 'edges', edges: [{ piece: 'front', edge: 'neck' }] } as const;
    expect(measured(runSheet(sheet, shiftPattern()).altered, neck)).toBeCloseTo(260, 2);
  });
  test('on any bodice keeps every edge but neck, centre and what hinges', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 5, max: 90, noNaN: true }), (piece, by) => {
        const { pattern } = drape({ by, slashes: 2 }, piece);
        validatePattern(pattern);
        expectUntouched(piece, only(pattern), 'neck', 'centre', 'armhole');
        expect(lengthOf(only(pattern), 'armhole')).toBeCloseTo(lengthOf(piece, 'armhole'), 6);
        const neck = edgePath(only(pattern), 'neck');
        expect(pathStart(neck).x).toBeCloseTo(0, 6);
        expect(pathStart(neck).y).toBeCloseTo(pathEnd(neck).y, 6);
      }),
      { numRuns: 50 },
    );
  });
});

describe('what is refused, each with its remedy', () => {
  const replaced = (name: string, part: Piece['outline']['parts'][number]) => ({
    ...front(),
    outline: { parts: front().outline.parts.map(p => (p.name === name ? part : p)) },
  });
  test('a piece without an armhole, unless it is said where the slashes end', () => {
    const sleeveless = replaced('armhole', edge('curve', 'seam', line(at(200, 40), at(240, 220))));
    expect(() => drape({ by: 30 }, sleeveless)).toThrow(refusal('no-armhole'));
    expect(() => drape({ by: 30, to: { edge: 'curve' } }, sleeveless)).not.toThrow();
  });
  test('a centre that is bent', () => {
    const bent = replaced('centre', {
      ...edge('centre', 'seam', line(at(0, 600), at(0, 100))),
      path: pathOf([at(0, 600), at(12, 400), at(12, 300), at(0, 100)]),
    });
    expect(() => drape({}, bent)).toThrow(refusal('stand-edge-bent', /straight: yes/));
  });
  test('a whole piece, whose neck has no centre at its end', () => {
    const whole = replaced('centre', edge('other side', 'seam', line(at(0, 600), at(0, 100))));
    expect(() => drape({}, whole)).toThrow(refusal('neck-not-between', /half a piece/));
  });
});
