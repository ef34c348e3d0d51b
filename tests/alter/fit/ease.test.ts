import { easeFindings, girthsBesideBody } from '@paperhinge/alter';
import { bodyGirth, wovenEaseMinima } from '@paperhinge/alter/fit';
import { type Fabric, levelGirths, type Pattern } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { level, patternOf, rectangle, seam } from '../../support/polygon-piece.js';
import { toldFinding } from '../../support/told.js';

/** A tube of cloth `girth` mm round at a level, from cloth of the stretch given in per cent. */
function tube(girth: number, name = 'bust', stretch?: number): Pattern {
  const main: Fabric = {
    name: 'main',
    role: 'main',
    ...(stretch === undefined ? {} : { stretch: { across: stretch } }),
  };
  const piece = rectangle('front', girth, 300, { lines: [level(name, [0, 100], [girth, 100])] });
  return patternOf([piece], [], { fabrics: [main] });
}
const codes = (pattern: Pattern, wearer: Record<string, number>) =>
  easeFindings(pattern, wearer).map(f => f.code);

// check-values.md §3 [derived]: bust 36, hip 38 in, bodice 37½, hip 40 in: +1.5 in (minimum met), +2 in (met).
test('the girths of the record are body, before, after and ease', () => {
  const inches = (x: number) => x * 25.4;
  const girths = girthsBesideBody(
    tube(inches(37)),
    { 'bust girth': inches(36) },
    levelGirths(tube(inches(37))),
    levelGirths(tube(inches(37.5))),
  );
  expect(Object.keys(girths.bust!)).toEqual(['bodyMm', 'beforeMm', 'afterMm', 'easeMm']);
  expect(girths.bust!.easeMm).toBeCloseTo(inches(1.5), 9);
  expect(codes(tube(inches(37.5)), { 'bust girth': inches(36) })).toEqual([]);
  expect(codes(tube(inches(40), 'hip'), { 'hip girth': inches(38) })).toEqual([]);
});

test('a level is compared by what it is on the body, whatever it is called', () => {
  const called = (name: string) => codes(tube(900, name), { 'bust girth': 920 });
  for (const name of ['bust', 'Brust', 'poitrine', 'busto'])
    expect(called(name)).toEqual(['girth-too-small']);
  expect(codes(tube(940, 'Brust'), { 'bust girth': 920 })).toEqual(['ease-below-usual']);
  const german = girthsBesideBody(tube(900, 'Brust'), { 'bust girth': 920 }, {}, { Brust: 900 });
  expect(german).toEqual({ Brust: { bodyMm: 920, afterMm: 900, easeMm: -20 } });
  // Of what nobody knows nothing is compared, and that is told.
  expect(called('qxz')).toEqual(['measures-without-level']);
  const { pieces, ...rest } = tube(900, 'qxz');
  const known = {
    ...rest,
    pieces: pieces.map(p => ({ ...p, lines: p.lines.map(line => ({ ...line, role: 'bust' as const })) })),
  };
  expect(codes(known, { 'bust girth': 920 })).toEqual(['girth-too-small']);
});

test('a level beside the one that was measured is not compared with it', () => {
  const beside = (level: string, measure: string) => codes(tube(500, level), { [measure]: 600 });
  expect(beside('mid thigh', 'thigh girth')).toEqual(['measures-without-level']);
  expect(beside('high hip', 'hip girth')).toEqual(['measures-without-level']);
  expect(beside('obere Hüfte', 'hip girth')).toEqual(['measures-without-level']);
  expect(beside('Hüfte', 'hip girth')).toEqual(['girth-too-small']);
});

test('a level whose girth on the body is not known has no ease', () => {
  expect(girthsBesideBody(tube(880, 'waist'), {}, { waist: 900 }, { waist: 880, hip: 1000 })).toEqual({
    waist: { beforeMm: 900, afterMm: 880 },
    hip: { afterMm: 1000 },
  });
  expect(easeFindings(tube(500), {})).toEqual([]);
});

test('a level finds its ISO 8559-1 measurement with or without a hyphen', () => {
  expect(bodyGirth({ 'upper-arm girth': 300 }, 'upper arm')).toBe(300);
  expect(bodyGirth({ 'bust girth': 900 }, 'constructor')).toBeUndefined();
});

test('a level that only the front has is told, not taken for the girth', () => {
  const half = (name: string, levels: string[]) =>
    rectangle(name, 450, 300, { lines: levels.map(l => level(l, [0, 100], [450, 100])) });
  const seams = [
    seam('side', ['front.right'], ['back.left']),
    seam('other side', ['front.left'], ['back.right']),
  ];
  const fabrics: Fabric[] = [{ name: 'main', role: 'main' }];
  const both = patternOf([half('front', ['bust']), half('back', ['bust'])], seams, { fabrics });
  const one = patternOf([half('front', ['bust']), half('back', [])], seams, { fabrics });
  expect(codes(both, { 'bust girth': 950 })).toEqual(['girth-too-small']);
  const [finding] = easeFindings(one, { 'bust girth': 850 });
  expect(finding).toMatchObject({ severity: 'warning', code: 'level-not-all-round' });
  expect(toldFinding(finding!).remedy).toBe('Draw the bust level on the back, too.');
  // A sleeve set in at that height need not have it.
  const sleeve = rectangle('sleeve', 300, 300);
  const armhole = seam('armhole', ['front.right'], ['sleeve.top']);
  const sleeved = patternOf([half('front', ['bust']), sleeve], [armhole], { fabrics });
  expect(codes(sleeved, { 'bust girth': 400 })).toEqual([]);
});

// check-values.md §3 [read: S. Robinson, costume text ch. 16]: 38.1 mm is inside 1½-2 in, 38.0 mm is below.
test('the least usual ease of woven cloth has a sharp edge', () => {
  expect(codes(tube(938.1), { 'bust girth': 900 })).toEqual([]);
  const [finding] = easeFindings(tube(938), { 'bust girth': 900 });
  expect(finding).toMatchObject({ severity: 'warning', code: 'ease-below-usual' });
  expect(finding!.figures!.easeMm).toBeCloseTo(38, 9);
});

// check-values.md §3: abdomen and seat of a woven garment with less than 1 in: warn.
test.each(['abdomen', 'seat'])('the %s of a woven garment has an inch at least', name => {
  expect(codes(tube(1025.4, name), { [`${name} girth`]: 1000 })).toEqual([]);
  expect(codes(tube(1025.3, name), { [`${name} girth`]: 1000 })).toEqual(['ease-below-usual']);
});

test('every row of the ease table names its source', () => {
  expect(wovenEaseMinima.every(m => /\[(read|memory)\]|no source/.test(m.source))).toBe(true);
});

test('woven cloth smaller than the body is a fault with the missing millimetres', () => {
  const [finding] = easeFindings(tube(889, 'waist'), { 'waist girth': 900 });
  expect(finding).toMatchObject({ severity: 'fault', code: 'girth-too-small' });
  expect(finding!.figures!.missingMm).toBeCloseTo(11, 9);
  expect(toldFinding(finding!).remedy).toContain('Add at least 11 mm at the waist');
});

// trade-notes §6, common practice, no source: never beyond half the cloth's stretch. 1000 × (1 − 0.4 / 2) = 800.
test('knit may be smaller than the body by half its stretch and no more', () => {
  expect(codes(tube(800, 'hip', 40), { 'hip girth': 1000 })).toEqual([]);
  const [finding] = easeFindings(tube(799, 'hip', 40), { 'hip girth': 1000 });
  expect(finding).toMatchObject({ severity: 'fault', code: 'girth-too-small' });
  expect(finding!.figures!.missingMm).toBeCloseTo(1, 6);
});

test('the piece whose cloth gives least decides', () => {
  const stiff = rectangle('back', 400, 300, {
    lines: [level('hip', [0, 100], [400, 100])],
    cutting: { fabric: 'stable' },
  });
  const knit = tube(450, 'hip', 60);
  const fabrics: Fabric[] = [...knit.fabrics, { name: 'stable', role: 'contrast', stretch: { across: 20 } }];
  const pattern = { ...knit, pieces: [...knit.pieces, stiff], fabrics };
  expect(codes(pattern, { 'hip girth': 850 / 0.9 })).toEqual([]);
  expect(codes(pattern, { 'hip girth': 851 / 0.9 })).toEqual(['girth-too-small']);
});

test('a tab caught in a side seam need not have the levels that cross it', () => {
  const half = (name: string) => rectangle(name, 450, 300, { lines: [level('bust', [0, 100], [450, 100])] });
  const seams = [
    seam('side', ['front.right'], ['-back.left']),
    seam('other side', ['front.left'], ['-back.right']),
    seam('tab', ['tab.right'], ['front.right']),
  ];
  const pattern = patternOf([half('front'), half('back'), rectangle('tab', 80, 20)], seams, {
    fabrics: [{ name: 'main', role: 'main' }],
  });
  expect(codes(pattern, { 'bust girth': 850 })).toEqual([]);
});

test('a level that is not drawn all round is noted though nothing is compared with it', () => {
  const half = (name: string, levels: readonly string[]) =>
    rectangle(name, 450, 300, { lines: levels.map(l => level(l, [0, 100], [450, 100])) });
  const pattern = patternOf(
    [half('front', ['bust']), half('back', [])],
    [seam('side', ['front.right'], ['-back.left']), seam('other side', ['front.left'], ['-back.right'])],
  );
  expect(easeFindings(pattern, {})).toMatchObject([{ severity: 'note', code: 'level-not-all-round' }]);
});
