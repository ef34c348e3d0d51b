// A front with slanting pockets that is lengthened above the lower end of its mouth: what shows beyond the mouth is too
// short now, and the front, sewn to the bag there, too long. Which piece is to be changed is told by their other seams.
import { type Finding, type Pattern, type Piece, walkSeams } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { level, patternOf, rectangle, seam } from '../support/polygon-piece.js';
import { back, bag, bagSeam, band, front, mouthSeam, sidePiece, sideSeam } from '../support/slant-skirt.js';

const line = level('hip', [120, 100], [225, 100]);
const skirt = patternOf(
  [front, back, sidePiece([line]), bag([level('hip', [120, 100], [205, 100])]), band],
  [sideSeam, mouthSeam, bagSeam],
);

const steps = (pattern: Pattern, ...lines: readonly string[]) =>
  runSheet(
    readSheet(['pattern: p.svg', 'steps:', ...lines.map(text => `  - ${text}`)].join('\n'), {
      file: 's.yaml',
    }),
    pattern,
  );
const off = (findings: readonly Finding[]) =>
  new Map(
    findings
      .filter(f => f.code === 'seam-does-not-match')
      .map(f => [f.about!.seam as string, wordsOf(english, 'mm').finding(f).remedy]),
  );
const lengthened = 'lengthen: { pieces: [front, back], at: hip, by: 15 }';

test('the side piece is what is too short, not the front', () => {
  const told = off(steps(skirt, lengthened).findings);
  expect([...told.keys()]).toEqual([{ seam: 'side' }, { seam: 'mouth' }]);
  const [side, mouth] = [...told.values()];
  // The side's upper part, 25 mm out in 100 mm down, is drawn out to 115; nothing else of it changes its length.
  const byMm = Math.hypot(25, 115) - Math.hypot(25, 100);
  expect(side).toContain(`lengthen the side of the side piece by ${byMm.toFixed(1)} mm`);
  expect(side).not.toContain('lengthen the side of the front');
  expect(mouth).toContain('lengthen the mouth of the bag by');
});

test('done as the remedies say, all seams match', () => {
  const { altered } = steps(skirt, lengthened, 'lengthen: { pieces: [side piece, bag], at: hip, by: 15 }');
  expect(walkSeams(altered).filter(walk => !walk.matches)).toEqual([]);
});

test('the front is what is too long where its other seams say so', () => {
  const told = off(steps(skirt, 'lengthen: { pieces: [front, back], at: hem, by: 0 }').findings);
  expect(told.size).toBe(0);
  const long = off(steps(skirt, 'lengthen: { pieces: [side piece], at: hip, by: 15 }').findings);
  expect([...long.values()].every(remedy => remedy.includes('of the side piece by'))).toBe(true);
});

describe('a piece that is cut twice and drawn once', () => {
  const panel = (width: number): Piece =>
    rectangle('panel', width, 300, { cutting: { count: 2, mirrored: true } });
  const waist = seam('waist', ['band.bottom'], ['panel.top']);
  const fitted = (width: number) => patternOf([rectangle('band', 420, 40), panel(width)], [waist]);
  const walked = (width: number) => walkSeams(fitted(width))[0]!;

  test('is changed on paper by half of what the seam is off', () => {
    expect([walked(200).aMm, walked(200).bMm]).toEqual([420, 400]);
    const remedy = wordsOf(english, 'mm').finding(walked(200).findings[0]!).remedy;
    expect(remedy).toContain('lengthen the top of the panel by 10 mm (it is sewn there 2 times)');
    expect(remedy).toContain('Shorten the bottom of the band by 20 mm,');
  });

  test('done so, the seam matches; by the whole it would not', () => {
    expect(walked(210).matches).toBe(true);
    expect(walked(220).matches).toBe(false);
  });
});
