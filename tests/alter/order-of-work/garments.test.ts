// Garments the order was not built on, drawn by figures in demos/drafts; orders are common practice, no source.
import { orderOfWork } from '@paperhinge/alter';
import { unfold } from '@paperhinge/alter/seams';
import { checkPattern } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { demoPattern } from '../../support/demo-pattern.js';
import { sentence } from '../../support/told.js';

const ordered = (name: string) => {
  const { order, findings } = orderOfWork(demoPattern(name), [], []);
  expect(findings).toEqual([]);
  const jobs = order.map(o => o.job);
  return {
    jobs,
    words: order.map(o => sentence(o.text)),
    follow: (...names: readonly string[]) => {
      const places = names.map(n => jobs.indexOf(n));
      expect(places, `${names.join(' < ')} in ${jobs.join(', ')}`).not.toContain(-1);
      expect(places, jobs.join(', ')).toEqual([...places].sort((a, b) => a - b));
    },
  };
};

test.each(['shirt', 'smock', 'trousers', 'waistcoat', 'yoke-skirt'])('the %s sews as it is drawn', name => {
  expect(checkPattern(demoPattern(name)).filter(f => f.severity === 'fault')).toEqual([]);
});

test('a shirt: pleats, yoke and collar in their places, sleeves flat, buttonholes before buttons', () => {
  const { follow, words } = ordered('shirt');
  follow('fuse cuff', 'layers cuff', 'seam cuff');
  follow('pleat back.back', 'seam back yoke', 'seam armhole', 'seam side');
  follow('layers collar', 'seam collar');
  follow('seam shoulder', 'seam stand');
  follow('front front.front-edge', 'seam shoulder');
  follow('buttonholes', 'buttons');
  expect(words).toContain('Turn up the front edge by 36 mm and sew.');
  expect(words).toContain('Work the 7 buttonholes of the front and the cuff.');
  for (const said of words) expect(said).not.toMatch(/\w\.\w|undefined|front front/);
});

test('a smock: gathered before its yoke, slit before side, sleeves and hems last', () => {
  const { follow, words } = ordered('smock');
  follow('gather front.top', 'seam front yoke', 'seam armhole');
  follow('opening back.centre-back', 'seam side');
  expect(words).toContain('Gather the front top from 313.6 mm to 196 mm.');
});

test('trousers: pocket, fly and darts while the pieces lie flat, waistband after all that crosses it', () => {
  const { follow } = ordered('trousers');
  follow('dart back', 'seam waist');
  follow('pocket pocket', 'seam outseam', 'seam waist');
  follow('zip fly', 'seam front crotch', 'seam inseam', 'seam waist');
  follow('fuse waistband', 'seam waist');
});

test('a waistcoat lined to the edge is turned before its sides are closed', () => {
  const { follow, jobs } = ordered('waistcoat');
  follow('seam shoulder', 'seam lining shoulder', 'seam front edge');
  follow('seam armhole', 'seam hem', 'turn lining', 'seam side');
  expect(jobs).not.toContain('opening front lining.side');
});

test('a skirt lined to waist and hem is a fault that says which seam to leave open, and no fault once it is left', () => {
  const { pieces, ...pattern } = demoPattern('yoke-skirt');
  const lining = pieces
    .filter(p => p.name === 'front' || p.name === 'back')
    .map(p => ({
      ...p,
      name: `${p.name} lining`,
      role: 'lining' as const,
      cutting: { ...p.cutting, fabric: 'lining' },
    }));
  const run = (piece: string, edge: string) => ({ piece, edge, reversed: false });
  const seam = (name: string, a: string, b: string, edge: string) => ({
    name,
    a: [run(a, edge)],
    b: [run(b, edge)],
    ease: { mm: 0 },
  });
  const lined = {
    ...pattern,
    pieces: [...pieces, ...lining],
    seams: [
      ...pattern.seams,
      seam('lining side', 'front lining', 'back lining', 'side'),
      ...['front', 'back'].flatMap(name => [
        seam(`${name} top`, `${name} lining`, name, 'top'),
        seam(`${name} hem`, `${name} lining`, name, 'hem'),
      ]),
    ],
  };
  expect(orderOfWork(lined, [], []).findings).toMatchObject([
    { severity: 'fault', code: 'lining-cannot-be-turned', where: { seam: 'lining side' } },
  ]);
  const gap = {
    ...lined,
    pieces: lined.pieces.map(p =>
      p.name !== 'front lining'
        ? p
        : {
            ...p,
            outline: {
              parts: p.outline.parts.map(e =>
                e.type === 'edge' && e.name === 'side' ? { ...e, opening: 150 } : e,
              ),
            },
          },
    ),
  };
  expect(orderOfWork(gap, [], []).findings).toEqual([]);
});

test('a smock whose front yoke alone is drawn whole: both armholes after both shoulders, nothing trapped', () => {
  const { pattern } = unfold(demoPattern('smock'), { piece: 'front yoke' });
  const { order, findings } = orderOfWork(pattern, [], []);
  expect(findings).toEqual([]);
  const at = (name: string): number => order.map(o => o.job).indexOf(name);
  for (const side of ['', 'other '])
    for (const before of [`${side}shoulder`, 'side', 'underarm'])
      expect(at(`seam ${before}`), before).toBeLessThan(at(`seam ${side}armhole`));
});
