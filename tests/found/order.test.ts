// Orders of work and openings that were once told wrongly; what is right is common practice, no source.
import { describe, expect, test } from 'vitest';
import { foundRun } from './found.js';

const jobsOf = (name: string) => foundRun(name).record.orderOfWork.map(j => j.job);
const inOrder = (jobs: readonly string[], first: string, then: string) => {
  const [i, k] = [first, then].map(name => jobs.findIndex(j => j.startsWith(name)));
  expect(i, `${first} in ${jobs}`).toBeGreaterThanOrEqual(0);
  expect(k, `${then} in ${jobs}`).toBeGreaterThan(i!);
};

describe('a lined top', () => {
  const jobs = jobsOf('order-lined-top');

  test('can be turned: its sides are closed after neck, armholes and turning', () => {
    for (const seam of ['seam neck', 'seam armhole']) inOrder(jobs, seam, 'turn lining');
    for (const seam of ['seam side', 'seam lining side']) inOrder(jobs, 'turn lining', seam);
    inOrder(jobs, 'seam shoulder', 'seam neck');
    inOrder(jobs, 'seam lining shoulder', 'seam neck');
  });

  test('has its lining hemmed, too', () => {
    inOrder(jobs, 'seam lining side', 'hem front lining.hem + back lining.hem');
  });
});

test('raglan seams come before the neck, sides and sleeves in one pass after them', () => {
  const { record } = foundRun('order-raglan');
  const jobs = record.orderOfWork.map(j => j.job);
  for (const seam of ['seam raglan front', 'seam raglan back']) {
    inOrder(jobs, seam, 'band neckband');
    inOrder(jobs, seam, 'seam side');
    inOrder(jobs, seam, 'seam underarm');
  }
  expect(record.orderOfWork.find(j => j.job === 'seam side')!.text).toContain(
    'in one pass with the underarm seam',
  );
});

test('the opening of trousers is made first, and the waistband waits for it', () => {
  const jobs = jobsOf('order-trousers');
  expect(jobs[0]).toBe('opening front.crotch');
  inOrder(jobs, 'seam front crotch', 'seam waist');
});

test('a zip goes in while the back lies flat, and the facing is sewn on after it', () => {
  const jobs = jobsOf('order-dress-zip-facing');
  inOrder(jobs, 'opening back.centre-back', 'seam side');
  inOrder(jobs, 'opening back.centre-back', 'facing neck facing');
  inOrder(jobs, 'facing neck facing', 'understitch neck facing');
});

test('a skirt is gathered before it is sewn to its yoke', () => {
  const { record } = foundRun('order-gathered-skirt');
  const jobs = record.orderOfWork.map(j => j.job);
  inOrder(jobs, 'gather front skirt.top', 'seam yoke seam');
  // 4 × 420 mm of skirt to 4 × 240 mm of yoke.
  expect(record.orderOfWork.find(j => j.job.startsWith('gather'))!.text).toContain('from 1680 mm to 960 mm');
  expect(record.findings).toContainEqual(
    expect.objectContaining({
      code: 'passage-not-checked',
      message: expect.stringContaining('the hips pass the waist'),
    }),
  );
});

describe('over the head', () => {
  test('a free centre front is an opening as long as it is', () => {
    const head = foundRun('open-front-head').findings.find(f => f.code === 'head-passes')!;
    expect(head.figures!.slitMm).toBeCloseTo(540, 6);
  });

  test('a neck by another name is checked by its role', () => {
    const { findings } = foundRun('neck-by-another-name');
    expect(findings.filter(f => f.code.startsWith('head-'))).toHaveLength(1);
  });
});
