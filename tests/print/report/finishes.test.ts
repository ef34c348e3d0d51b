import { orderOfWork } from '@paperhinge/alter';
import { measurePattern } from '@paperhinge/geometry';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { expect, test } from 'vitest';
import { writtenReport } from '../../../packages/print/src/report/written.js';
import { finishedTrial } from '../../support/finished-trial.js';
import { patternOf, rectangle } from '../simple-pieces.js';

test('the raw edges of a seam that are bound stand in the report, with the binding they take', () => {
  const pattern = finishedTrial('trial-shirt', { 'front.side': 'bound', 'back.side': 'bound' });
  const words = wordsOf(english, 'cm');
  const measured = measurePattern(pattern);
  const { sections } = writtenReport({
    pattern,
    record: {
      steps: [],
      before: measured,
      after: measured,
      derived: {},
      findings: [],
      orderOfWork: orderOfWork(pattern, [], []).order.map(({ text, because }) => ({
        text: words.sentence(text),
        because: because.map(b => words.sentence(b)),
      })),
    },
  });
  const steps = sections
    .find(s => s.id === 'order')!
    .blocks.flatMap(b => (b.kind === 'steps' ? b.items : []));
  expect(steps.map(s => s.text)).toContain(
    'Bind the raw edges of the back side and the front side, 142.06 cm in all.',
  );
});

const cutColumn = (pattern: ReturnType<typeof patternOf>, language: 'en' | 'de' = 'en') =>
  writtenReport({ pattern, language })
    .sections.find(s => s.id === 'cutting')!
    .blocks.flatMap(b => (b.kind === 'table' ? b.rows.map(row => row[1]) : []));

test('the cutting list says which way of the cloth must stretch most, as the pages show it', () => {
  const pattern = patternOf(
    rectangle('leg', 100, 100, 10, { greatestStretch: 'along' }),
    rectangle('body', 100, 100, 10, { greatestStretch: 'across' }),
    rectangle('pocket', 100, 100, 10),
  );
  expect(cutColumn(pattern)).toEqual([
    '1, greatest stretch along the grain',
    '1, greatest stretch across the grain',
    '1',
  ]);
  expect(cutColumn(pattern, 'de')).toEqual([
    '1, größte Dehnung im Fadenlauf',
    '1, größte Dehnung quer zum Fadenlauf',
    '1',
  ]);
});

test('a piece of cloth that stretches says so once, on the cloth of the garment itself', () => {
  const knit = {
    ...patternOf(
      rectangle('front', 100, 100, 10, { alsoCut: [{ count: 1, mirrored: false, fabric: 'lining' }] }),
    ),
    fabrics: [{ name: 'main', role: 'main', stretch: { across: 0.4 } } as const],
  };
  expect(cutColumn(knit)).toEqual(['1, greatest stretch across the grain', '1']);
});
