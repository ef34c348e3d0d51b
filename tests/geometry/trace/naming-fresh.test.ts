import { definePattern, edgeNames, type Pattern, type Piece } from '@paperhinge/geometry';
import { proposeNames } from '@paperhinge/geometry/trace';
import { describe, expect, test } from 'vitest';
import { heldOutGarments } from '../../support/fresh/held-out.js';
import { lastThree } from '../../support/fresh/last-three.js';
import { ring } from '../../support/fresh/ring.js';
import { freshGarments } from '../../support/fresh/six-garments.js';
import { ofDraft, sideOf, sumOf } from '../../support/seams-judged.js';
import { band, strewn } from '../../support/twenty-drafts.js';

// Garments that the proposals were not built on. At first sight, before the proposals went by the lines alone, 22 of the
// 62 seams of the first seven were right and one that was sure was wrong. Of three drawn afterwards 14 of 21 were right
// at first sight, none sure and wrong; of the last three 14 of 14 upright, and strewn 13 of 14 with one sure and wrong
// (mended: what a piece is not sure to be makes no seam sure).

const all = [...freshGarments(), ...heldOutGarments(), ...lastThree()];

describe('seams of thirteen garments that the proposals were not built on', () => {
  test('nine of ten are right as drawn, and none that is sure is wrong', () => {
    const { seams, right, sureAndWrong } = sumOf(all.map(ofDraft));
    expect(sureAndWrong).toEqual([]);
    expect(seams).toBeGreaterThanOrEqual(95);
    expect(right / seams).toBeGreaterThanOrEqual(0.9);
  });

  test('strewn about and every other one turned over, five of six', () => {
    const { seams, right, sureAndWrong } = sumOf(all.map(strewn).map(ofDraft));
    expect(sureAndWrong).toEqual([]);
    expect(right / seams).toBeGreaterThanOrEqual(0.83);
  });
});

const seamsOf = (pattern: Pattern) =>
  proposeNames(pattern).seams.map(({ seam, confidence }) => ({
    sides: [sideOf(pattern, seam.a), sideOf(pattern, seam.b)].map(side => side.join('+')).sort(),
    confidence,
  }));
const has = (pattern: Pattern, a: string, b: string): boolean =>
  seamsOf(pattern).some(({ sides }) => sides.join(' ') === [a, b].sort().join(' '));
const fresh = (title: string): Pattern => all.find(one => one.title === title)!.pattern;

describe('what seams are seen by', () => {
  test('lines that run on across a seam are not sewn to one another, as a hem to a hem', () => {
    for (const { pattern, seams } of all) {
      const sewn = new Set(seams.flat(2));
      const hems = pattern.pieces.flatMap(piece =>
        edgeNames(piece)
          .filter(edge => edge === 'hem')
          .map(edge => `${piece.name}.${edge}`),
      );
      const wrong = seamsOf(pattern).filter(
        ({ sides, confidence }) =>
          confidence > 0.9 && sides.every(side => hems.includes(side) && !sewn.has(side)),
      );
      expect(wrong).toEqual([]);
    }
  });

  test('a lining is sewn as what it lies on is, and along the edges that are free there', () => {
    const waistcoat = fresh('lined waistcoat');
    expect(has(waistcoat, '4.side', '5.side')).toBe(true);
    expect(has(waistcoat, '5.armhole', '2.armhole')).toBe(true);
    expect(has(waistcoat, '3.centre', '1.centre')).toBe(true);
    expect(has(waistcoat, '5.side', '2.side')).toBe(false);
  });

  test('two pieces cut alike are a front and a back where nothing else could be', () => {
    const half = (name: string): Piece =>
      ring(
        name,
        [0, 60],
        {
          neck: [
            [40, 50],
            [70, 0],
          ],
          shoulder: [[180, 40]],
          armhole: [
            [168, 130],
            [190, 190],
            [230, 210],
          ],
          side: [[236, 560]],
          hem: [[0, 560]],
          centre: [],
        },
        { fold: 'centre' },
      );
    const twins = definePattern({ name: 'alike', pieces: [half('1'), half('2')] });
    expect(has(twins, '1.side', '2.side')).toBe(true);
    expect(has(twins, '1.shoulder', '2.shoulder')).toBe(true);
  });

  test('a line is sewn to one that others make: a sleeve of two pieces into four panels, a band onto a waist', () => {
    expect(
      has(
        fresh('jacket with panel seams and sleeves of two pieces'),
        '5.cap+6.cap',
        '1.armhole+2.armhole+3.armhole+4.armhole',
      ),
    ).toBe(true);
    expect(has(fresh('culottes'), '3.lower', '1.waist+2.waist')).toBe(true);
  });

  test('legs of no kind that is known have their crotches, but never surely', () => {
    const crotch = seamsOf(fresh('culottes')).filter(({ sides }) => sides[0] === sides[1]);
    expect(crotch.map(({ sides }) => sides[0])).toEqual(['1.crotch', '2.crotch']);
    for (const { confidence } of crotch) expect(confidence).toBeLessThanOrEqual(0.9);
  });

  test('halves of one length are told apart by their notches', () => {
    const block = (name: string, wide: number, notchedAt: number): Piece => {
      const drawn = ring(name, [0, 0], {
        top: [[wide, 10]],
        long: [[wide + 10, 400]],
        foot: [[-10, 430]],
        edge: [],
      });
      return { ...drawn, notches: [{ edge: 'long', at: notchedAt, style: 'single' }] };
    };
    const other = (name: string, wide: number, notchedAt: number): Piece => {
      const drawn = ring(name, [0, 0], {
        up: [[-10, -390]],
        side: [[wide, -450]],
        low: [[wide, 20]],
        back: [],
      });
      return { ...drawn, notches: [{ edge: 'up', at: notchedAt, style: 'single' }] };
    };
    // Four edges of one length, the square root of 10² + 390²: only the notches tell which belong together.
    const pieces = [block('1', 300, 120), block('2', 345, 300), other('3', 90, 300), other('4', 136, 120)];
    const told = seamsOf(definePattern({ name: 'notched', pieces })).map(({ sides }) => sides.join(' = '));
    expect(told).toContain('1.long = 4.up');
    expect(told).toContain('2.long = 3.up');
  });

  test('bands cut to one width are not sewn end to end', () => {
    const pieces = [band('1', 900, 60), band('2', 240, 60)];
    expect(seamsOf(definePattern({ name: 'bands', pieces }))).toEqual([]);
  });
});
