import { orderOfWork } from '@paperhinge/alter';
import type { Edge, Fastening, Pattern } from '@paperhinge/geometry';
import { catalogueOf, english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';

// Common practice, no source: an edge is finished once no seam crosses it any more; a seam is topstitched when it is
// sewn; what closes the garment comes last.

/** The shift without its bands, each edge of a name changed. */
function shiftWith(
  changes: Readonly<Record<string, Partial<Edge>>>,
  fastenings: readonly Fastening[] = [],
): Pattern {
  const shift = shiftPattern();
  const kept = shift.pieces.filter(p => ['front', 'back', 'sleeve'].includes(p.name));
  const names = kept.map(p => p.name);
  return {
    ...shift,
    fastenings,
    seams: shift.seams.filter(({ a, b }) => [...a, ...b].every(r => names.includes(r.piece))),
    pieces: kept.map(piece => ({
      ...piece,
      outline: {
        parts: piece.outline.parts.map(part =>
          part.type === 'edge'
            ? { ...part, ...changes[part.name], ...changes[`${piece.name}.${part.name}`] }
            : part,
        ),
      },
    })),
  };
}

function jobsOf(pattern: Pattern) {
  const { order, findings } = orderOfWork(pattern, [], []);
  const words = wordsOf(english, 'in');
  expect(findings).toEqual([]);
  return order.map(({ job, text }) => ({ job, text: words.sentence(text) }));
}
const placeOf = (jobs: ReturnType<typeof jobsOf>, name: string) => jobs.findIndex(j => j.job === name);

describe('edges that nothing is sewn to', () => {
  test('are finished alike in one job, once the seam that crosses them is sewn', () => {
    const jobs = jobsOf(shiftWith({ neck: { finish: 'bound' } }));
    const bound = placeOf(jobs, 'finish front.neck + back.neck');
    expect(jobs[bound]!.text).toBe('Bind the front neck and the back neck.');
    expect(bound).toBeGreaterThan(placeOf(jobs, 'seam shoulder'));
  });

  test.each([
    ['turned once', 'Turn in the front neck by 5/8 in and sew.'],
    ['turned twice', 'Turn in twice the front neck by 5/8 in and sew.'],
    ['rolled', 'Roll the front neck.'],
    ['faced', 'Face the front neck.'],
    ['banded', 'Sew the band to the front neck.'],
  ] as const)('%s', (finish, said) => {
    const jobs = jobsOf(shiftWith({ 'front.neck': { finish } }));
    expect(jobs.map(j => j.text)).toContain(said);
  });
});

describe('topstitching', () => {
  test('of a seam is said with the seam', () => {
    const jobs = jobsOf(shiftWith({ 'back.shoulder': { topstitch: 6.35 } }));
    expect(jobs[placeOf(jobs, 'seam shoulder')]!.text).toMatch(
      /\. Press, and topstitch the back shoulder 1\/4 in from the seam\.$/,
    );
    expect(jobs.some(j => j.job.startsWith('topstitch'))).toBe(false);
  });

  test('of a hem and of a finished edge is theirs; alone it is a job', () => {
    const jobs = jobsOf(
      shiftWith({
        'front.neck': { finish: 'bound', topstitch: 3.175 },
        'back.neck': { topstitch: 3.175 },
        hem: { topstitch: 25.4 },
      }),
    );
    const said = jobs.map(j => j.text);
    expect(said).toContain('Bind the front neck and topstitch at 1/8 in.');
    expect(said).toContain('Topstitch the back neck at 1/8 in.');
    expect(said.filter(text => /^Turn up .*hem.* and topstitch at 1 in\.$/.test(text))).not.toEqual([]);
  });
});

test('a strip of interfacing is fused along its edge before anything is sewn there', () => {
  const jobs = jobsOf(shiftWith({ 'back.shoulder': { interfacing: 31.75 } }));
  const fused = placeOf(jobs, 'fuse back.shoulder');
  expect(jobs[fused]!.text).toBe(
    'Fuse a strip of interfacing, 1 1/4 in wide, along the shoulder of the back.',
  );
  expect(fused).toBeLessThan(placeOf(jobs, 'seam shoulder'));
});

describe('hooks and snaps', () => {
  const along = { piece: 'back', edge: 'neck', reversed: false };
  test('are sewn on last, as many as are said or as the spacing gives', () => {
    const jobs = jobsOf(
      shiftWith({}, [
        { name: 'hook', kind: 'hooks', along, count: 1 },
        { name: 'row', kind: 'snaps', along: { ...along, part: { from: 0, to: 60 } }, spacing: 20 },
      ]),
    );
    expect(jobs.slice(-2).map(j => j.text)).toEqual([
      'Sew a hook and eye to the neck of the back.',
      'Sew 4 snaps to the neck of the back.',
    ]);
  });

  test('in German', async () => {
    const pattern = shiftWith({ 'front.neck': { finish: 'bound' } }, [
      { name: 'hook', kind: 'hooks', along, count: 2 },
    ]);
    const words = wordsOf(await catalogueOf('de'), 'in');
    const said = orderOfWork(pattern, [], []).order.map(({ text }) => words.sentence(text));
    expect(said).toContain('„front neck“ einfassen.');
    expect(said).toContain('2 Haken mit Ösen annähen: Kante „neck“ von „back“.');
  });
});
