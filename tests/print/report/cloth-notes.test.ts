import type { Fabric, Pattern, Piece } from '@paperhinge/geometry';
import { reportHtml } from '@paperhinge/print';
import { expect, test } from 'vitest';
import { writtenReport } from '../../../packages/print/src/report/written.js';
import { patternOf, rectangle } from '../simple-pieces.js';

const cut = (name: string, changes: Partial<Piece['cutting']>, also: Piece['alsoCut'] = []): Piece =>
  rectangle(name, 100, 100, 10, {
    cutting: { count: 1, mirrored: false, fabric: 'main', ...changes },
    alsoCut: also,
  });
const garment = (...fabrics: readonly Fabric[]): Pattern => ({
  ...patternOf(
    cut('front', { count: 1 }),
    cut('sleeve', { count: 2, mirrored: true }, [{ count: 2, mirrored: true, fabric: 'lining' }]),
  ),
  fabrics,
});
const notes = (pattern: Pattern, language: 'en' | 'de' = 'en', unit: 'cm' | 'in' = 'cm') =>
  writtenReport({ pattern, language, unit })
    .sections.find(s => s.id === 'cutting')!
    .blocks.flatMap(b => (b.kind === 'text' ? [b.text] : []));

test('a cloth with a nap has its pieces laid one way, said with the cutting list', () => {
  const velvet = garment({ name: 'main', role: 'main', nap: true });
  expect(notes(velvet)).toEqual([
    'Main fabric has a nap: lay all its pieces one way, their tops towards the same end.',
  ]);
  expect(notes(velvet, 'de')).toEqual([
    'Oberstoff hat Strich: alle Teile in einer Richtung auflegen, oben immer am selben Ende.',
  ]);
  expect(reportHtml({ pattern: velvet })).toContain('Main fabric has a nap');
});

test('a cloth that repeats is matched, and one repeat more reckoned for each piece of it', () => {
  // Three copies of 4 cm; two of the lining, of 64 mm or 2.52 in.
  const checked = garment(
    { name: 'main', role: 'main', repeat: 40 },
    { name: 'lining', role: 'lining', repeat: 64 },
  );
  expect(notes(checked)).toEqual([
    'Main fabric repeats every 4 cm: match it at the notches of the seams. By common practice that takes one repeat more for each piece that must match, 12 cm if all 3 must.',
    'Lining repeats every 6.4 cm: match it at the notches of the seams. By common practice that takes one repeat more for each piece that must match, 12.8 cm if both must.',
  ]);
  expect(notes(checked, 'de')[0]).toMatch(
    /^Oberstoff hat einen Rapport von 4 cm: .*, 12 cm, wenn alle 3 passen müssen\.$/,
  );
  expect(notes(checked, 'en', 'in')[1]).toMatch(/^Lining repeats every 2 1\/2 in: .*, 5 in if both must\.$/);
});

test('of plain cloth, and of cloth that nothing is cut from, nothing is said', () => {
  expect(notes(garment({ name: 'main', role: 'main', nap: false }))).toEqual([]);
  expect(notes(garment({ name: 'velvet', role: 'contrast', nap: true, repeat: 40 }))).toEqual([]);
});
