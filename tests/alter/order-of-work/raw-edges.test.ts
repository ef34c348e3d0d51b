import { orderOfWork } from '@paperhinge/alter';
import type { Pattern } from '@paperhinge/geometry';
import { catalogueOf, english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { finishedTrial } from '../../support/finished-trial.js';

// Common practice, no source: raw edges are bound or turned while the pieces lie flat; those of a seam that others
// cross, and of one that is gathered, once it is sewn.

function jobsOf(pattern: Pattern) {
  const { order, findings } = orderOfWork(pattern, [], []);
  expect(findings).toEqual([]);
  const words = wordsOf(english, 'cm');
  return order.map(({ job, text, because }) => ({
    job,
    text: words.sentence(text),
    because: because.map(b => words.sentence(b)),
  }));
}
const finishJobs = (pattern: Pattern) => jobsOf(pattern).filter(j => j.job.startsWith('finish'));
const follow = (pattern: Pattern, ...wanted: readonly string[]) => {
  const jobs = jobsOf(pattern).map(j => j.job);
  const places = wanted.map(w => jobs.indexOf(w));
  expect(places, `${wanted.join(' < ')} in ${jobs.join(', ')}`).not.toContain(-1);
  expect(places, jobs.join(', ')).toEqual([...places].sort((a, b) => a - b));
};

describe('the sides of a shirt, bound', () => {
  const shirt = finishedTrial('trial-shirt', { 'front.side': 'bound', 'back.side': 'bound' });
  // Two fronts and a back on the fold: each side stands twice in the shirt.
  const allMm = 2 * Math.hypot(300 - 292.8986, 610.0698 - 255) + 2 * Math.hypot(10, 620 - 265);

  test('are one job, with the binding that it takes', () => {
    const [bound] = finishJobs(shirt);
    expect(bound!.text).toBe(
      `Bind the raw edges of the back side and the front side, ${(allMm / 10).toFixed(2)} cm in all.`,
    );
  });

  test('are bound flat, before the side is closed, and the side says why it waits', () => {
    follow(shirt, 'finish back.side + front.side', 'seam side');
    const side = jobsOf(shirt).find(j => j.job === 'seam side')!;
    expect(side.because.join(' ')).toContain('its raw edge is finished while the piece still lies flat');
  });

  test('in German', async () => {
    const words = wordsOf(await catalogueOf('de'), 'cm');
    const said = orderOfWork(shirt, [], []).order.map(({ text }) => words.sentence(text));
    expect(said).toContain('Schnittkante einfassen: „back side“ und „front side“, zusammen 142,06 cm.');
  });
});

test('an armhole that shoulders and yoke cross is bound once the sleeve is in', () => {
  const shirt = finishedTrial('trial-shirt', { 'front.armhole': 'bound', 'sleeve.cap': 'turned once' });
  follow(shirt, 'seam armhole', 'finish front.armhole');
  const jobs = jobsOf(shirt);
  const cap = jobs.find(j => j.job === 'finish sleeve.cap')!;
  expect(cap.text).toMatch(/^Turn in the raw edge of the sleeve cap, [\d.]+ cm in all, and sew\.$/);
  expect(cap.because.join(' ')).toContain('only once that seam is sewn');
});

test('a side that is gathered is bound once it is sewn', () => {
  const shirt = finishedTrial('trial-shirt', { 'front.side': 'bound' });
  const seams = shirt.seams.map(s => (s.name === 'side' ? { ...s, takenUp: 'gathered' as const } : s));
  follow(shirt, 'finish front.side', 'seam side');
  follow({ ...shirt, seams }, 'seam side', 'finish front.side');
});

test('a raw edge that takes a zip is bound before the zip goes in', () => {
  const skirt = finishedTrial('trial-skirt', { 'back.centre-back': 'bound' });
  follow(skirt, 'finish back.centre-back', 'zip zip', 'seam centre back');
});

test('an edge of several seams is finished once all of them are sewn', () => {
  const skirt = finishedTrial('trial-skirt', { 'front.side': 'rolled' });
  follow(skirt, 'seam side', 'finish front.side');
  follow(skirt, 'seam pocket front', 'finish front.side');
});

test('what is sewn to the edge may be its finish: then the seam is the whole job', () => {
  expect(finishJobs(finishedTrial('trial-skirt', { 'front.waist': 'banded' }))).toEqual([]);
  expect(finishJobs(finishedTrial('trial-skirt', { 'front.waist': 'turned once' }))).toHaveLength(1);
});
