import { definePattern, type Pattern, type Piece } from '@paperhinge/geometry';
import { proposeNames } from '@paperhinge/geometry/trace';
import { describe, expect, test } from 'vitest';
import { bathrobe, childsDress, joggers } from '../../support/fresh/at-home.js';
import { aLineDress, halfCircleSkirt, pyjamaTrousers } from '../../support/fresh/everyday.js';
import { narrowSkirt } from '../../support/fresh/narrow-skirt.js';
import { ring } from '../../support/fresh/ring.js';
import { shirtBlouse } from '../../support/fresh/shirt-blouse.js';
import { ofDraft, sideOf, sumOf } from '../../support/seams-judged.js';
import { strewn, type XY } from '../../support/twenty-drafts.js';

// Four garments drawn by someone who had not read how proposals are made, every seam counted, those of a piece with its
// like among them. At first sight 19 of 31 seams were right, upright and strewn, none sure and wrong, and the front of
// the blouse was called its back. What is held below was reached after the causes were mended: no first try.

const all = [aLineDress(), pyjamaTrousers(), shirtBlouse(), halfCircleSkirt()];

describe('seams of four everyday garments', () => {
  test('all but one are right as drawn, and none that is sure is wrong', () => {
    const { seams, right, sureAndWrong } = sumOf(all.map(ofDraft));
    expect(sureAndWrong).toEqual([]);
    expect(seams).toBe(31);
    expect(right).toBeGreaterThanOrEqual(30);
  });

  test('strewn about and every other one turned over, five of six', () => {
    const { seams, right, sureAndWrong } = sumOf(all.map(strewn).map(ofDraft));
    expect(sureAndWrong).toEqual([]);
    // Nine of ten once; the collar of the blouse is now taken upside down.
    expect(right / seams).toBeGreaterThanOrEqual(0.83);
  });
});

// Drawn after those causes were mended, so that what the mending is worth elsewhere is seen: at first sight 17 of 31
// upright and 14 strewn, none sure and wrong. What was missed were gathered skirts of plain panels, ribs and a flat
// collar; strewn, pieces of few corners still are.
const later = [childsDress(), joggers(), bathrobe(), narrowSkirt()];

describe('seams of four more, drawn after the mending', () => {
  test('all are right as drawn, and none that is sure is wrong', () => {
    const { seams, right, sureAndWrong } = sumOf(later.map(ofDraft));
    expect(sureAndWrong).toEqual([]);
    expect(seams).toBe(31);
    expect(right).toBe(31);
  });

  test('strewn about, two of three, and none that is sure is wrong', () => {
    const { right, sureAndWrong } = sumOf(later.map(strewn).map(ofDraft));
    expect(sureAndWrong).toEqual([]);
    expect(right).toBeGreaterThanOrEqual(23);
  });

  test('a front that wraps over is sewn to no other front along its open edge', () => {
    expect(seamsOf(bathrobe().pattern)).not.toContain('1.front = 1.front');
  });
});

const seamsOf = (pattern: Pattern): readonly string[] =>
  proposeNames(pattern).seams.map(({ seam }) =>
    [sideOf(pattern, seam.a), sideOf(pattern, seam.b)].map(side => side.join(' + ')).join(' = '),
  );
const signOf = (pattern: Pattern, piece: string) =>
  proposeNames(pattern).pieces.find(one => one.piece === piece)!.side;

describe('front and back', () => {
  test('a back whose neck is in its yoke is told by that neck, whatever the darts take up', () => {
    const { pattern } = shirtBlouse();
    expect(signOf(pattern, '1')).toEqual({ front: true, sign: 'deeper-neck' });
    expect(signOf(pattern, '2')).toEqual({ front: false, sign: 'deeper-neck' });
    expect(signOf(pattern, '3')).toEqual({ front: false, sign: 'deeper-neck' });
  });

  test('above the waist darts take up more in front, where necks are alike', () => {
    // Both legs of the dart are the square root of 110² + 15².
    const dart: readonly XY[] = [
      [235, 280],
      [125, 295],
      [235, 310],
    ];
    const half = (name: string, foot: number, darts: Readonly<Record<string, readonly XY[]>>): Piece =>
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
            [235, 210],
          ],
          side: [...(darts.bust ? [dart[0]!, dart[2]!] : []), [235, foot]],
          hem: [[0, foot]],
          centre: [],
        },
        { fold: 'centre', darts },
      );
    const pieces = [half('1', 560, {}), half('2', 590, { bust: dart })];
    const pattern = definePattern({ name: 'a dart in one', pieces });
    expect(signOf(pattern, '1')).toEqual({ front: false, sign: 'more-darts' });
    expect(signOf(pattern, '2')).toEqual({ front: true, sign: 'more-darts' });
  });
});

describe('what is sewn to its like', () => {
  test('a band as long as what it goes round is closed to a ring, one that laps over is not', () => {
    expect(seamsOf(pyjamaTrousers().pattern)).toEqual(
      expect.arrayContaining(['3.left = 3.left', '4.left = 4.left']),
    );
    expect(seamsOf(halfCircleSkirt().pattern)).not.toContain('3.left = 3.left');
  });

  test('layers are sewn round their open edges, but not where a piece is cut in one', () => {
    expect(seamsOf(shirtBlouse().pattern)).toContain('6.outer = 6.outer');
    const { name, pieces } = shirtBlouse().pattern;
    const once = pieces.map(piece =>
      piece.name === '6' ? { ...piece, cutting: { ...piece.cutting, count: 1 } } : piece,
    );
    expect(seamsOf(definePattern({ name, pieces: once }))).not.toContain('6.outer = 6.outer');
  });

  test('none of these is sure', () => {
    for (const { pattern } of all)
      for (const { seam, confidence } of proposeNames(pattern).seams)
        if (['end', 'edge'].includes(seam.name)) expect(confidence).toBeLessThanOrEqual(0.9);
  });
});
