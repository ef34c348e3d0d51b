import { measurePattern, type Pattern, type ToldFinding } from '@paperhinge/geometry';
import { type RecordFigures, reportHtml } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { patternOf, rectangle } from '../simple-pieces.js';

const before = shiftPattern();
const after = shiftPattern({ length: 700 });
const finding: ToldFinding = {
  severity: 'warning',
  code: 'kink',
  where: { piece: 'back', edge: 'hem', step: 3 },
  message: 'The hem has a kink.',
  remedy: 'True it.',
};
const record = (changes: Partial<RecordFigures> = {}): RecordFigures => ({
  sheet: 'top.yaml',
  steps: [{ step: 1, did: 'shortened front and back', findings: [] }],
  before: measurePattern(before),
  after: measurePattern(after),
  derived: { neckband: { lengthMm: 489.2, widthMm: 56 } },
  findings: [finding],
  girths: { bust: { bodyMm: 1020, beforeMm: 1116, afterMm: 1116, easeMm: 96 } },
  orderOfWork: [{ text: 'Sew the shoulders.', because: ['before the neck'] }],
  ...changes,
});
const report = (changes: Partial<RecordFigures> = {}, pattern: Pattern = after) =>
  reportHtml({ pattern, before, record: record(changes), cautions: ['Measure the square.'] });

test('tells what was done, what to cut, what was found and in which order to sew', () => {
  const html = report();
  for (const words of [
    'Woven shift',
    'shortened front and back',
    'Sew the shoulders.',
    'before the neck',
    'The hem has a kink.',
    'True it.',
    'Measure the square.',
    '1 on fold',
  ])
    expect(html).toContain(words);
});

describe('figures are in the unit of the pattern alone', () => {
  test('a band in millimetres', () => {
    const html = report();
    for (const figure of ['489.2 mm', '56 mm']) expect(html).toContain(figure);
    expect(html).not.toMatch(/\d in\b/);
  });

  test('a band in eighths of an inch', () => {
    const html = report({}, { ...after, unit: 'in' });
    for (const figure of ['19 1/4 in', '2 1/4 in']) expect(html).toContain(figure);
    expect(html).not.toMatch(/\d mm\b|\d\.\d+ in/);
  });
});

test('tables are found and scrolled by keyboard, their headings marked up', () => {
  const html = report();
  expect(html.match(/<div class="scroll" role="group" tabindex="0" aria-label="[^"]+"><table/g)).toHaveLength(
    html.match(/<table/g)!.length,
  );
  expect(html).toContain('<caption>Cutting list</caption>');
  expect(html).toContain('<th scope="col"');
  expect(html).toContain('<th scope="row">');
  expect(html).toContain('prefers-color-scheme: dark');
});

test('another language is complete: no English word of the report is left', () => {
  const html = reportHtml({ pattern: after, before, record: record(), language: 'de' });
  expect(html).toContain('<html lang="de">');
  for (const word of [
    'Cutting list',
    'Order of work',
    'Checks',
    'Before',
    'Edges',
    'Seam<',
    'Measure',
    'Warning',
  ])
    expect(html).not.toContain(word);
  expect(html).toContain('Zuschneideliste');
});

test('gives every edge before and after, and its change', () => {
  const html = report();
  expect(html).toContain('−180 mm');
  expect(html).toContain('<td>hem</td>');
});

test('says in one line whether it sews', () => {
  expect(report()).toContain('5 of 5 seams match; 1 warning to look at.');
  expect(report({ findings: [] })).toContain('5 of 5 seams match.');
  expect(report({ findings: [{ ...finding, severity: 'fault' }] })).toContain(
    'One thing will not sew or fit yet',
  );
});

describe('a hostile file', () => {
  const evil = "\"><script>alert(1)</script><img src=x onerror='y'>&amp;\u202e\u0000";
  const html = reportHtml({
    pattern: patternOf(
      rectangle(evil, 100, 100, 10, {
        title: evil,
        cutting: { count: 1, mirrored: false, fabric: evil, note: evil },
      }),
    ),
    before: patternOf(rectangle(evil, 100, 120, 10)),
    record: record({
      title: evil,
      sheet: evil,
      steps: [{ step: 1, did: evil, findings: [] }],
      derived: { [evil]: { lengthMm: 1, widthMm: 1 } },
      findings: [{ ...finding, message: evil, remedy: evil, where: { piece: evil, edge: evil } }],
      girths: { [evil]: {} },
      orderOfWork: [{ text: evil, because: [evil] }],
    }),
    cautions: [evil],
    wearer: evil,
    date: evil,
  });

  test('adds no element, attribute or script', () => {
    expect(html).not.toMatch(/<script|<img|onerror='|onerror="/i);
    expect(html).not.toContain('\u202e');
    expect(html).not.toContain('\u0000');
    expect(html).toContain('&lt;script&gt;');
    // Every tag is one of the report's own.
    const tags = new Set([...html.matchAll(/<\/?([a-z0-9]+)/gi)].map(m => m[1]!.toLowerCase()));
    const own =
      'html head meta title style body main header h1 p nav a section h2 h3 div figure svg g text path figcaption table caption thead tbody tr th td ol li ul b span footer'.split(
        ' ',
      );
    expect([...tags].filter(t => !own.includes(t))).toEqual([]);
  });

  test('the page may run no script and fetch nothing', () => {
    expect(html).toContain(`default-src 'none'`);
    expect(html.replace(/xmlns="[^"]*"/g, '')).not.toMatch(/https?:|url\(|@import|src=(?!x)/);
  });
});

test('a pattern alone is reported by its pieces and cutting list', () => {
  const html = reportHtml({ pattern: before });
  expect(html).toContain('Cutting list');
  expect(html).not.toContain('What was altered');
});

test('the same record gives the same page', () => {
  expect(report()).toBe(report());
});
