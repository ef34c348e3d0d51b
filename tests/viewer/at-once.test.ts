// What is answered at once and what once the hand rests; that the latest wins, and that nothing stale is shown as true.
import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { createAnswering } from '../../demos/viewer/src/engine/answering.js';
import type { Answer, Ask } from '../../demos/viewer/src/engine/questions.js';
import { nothingShown, type Shown, shownAfter } from '../../demos/viewer/src/job/shown.js';

const demo = (path: string) => readFileSync(new URL(`../../demos/${path}`, import.meta.url), 'utf8');
const pattern = demo('patterns/woven-shift.svg');
const sheetWith = (by: number) => `pattern: woven-shift.svg
unit: mm
wearer: { head girth: 572, hip girth: 1080 }
steps:
  - shorten: { pieces: [front, back], at: hem, by: ${by} }
  - close dart: { piece: front, dart: bust, into: hem }
`;
const ask = (id: number, sheet: string, more: Partial<Ask> = {}): Ask => ({
  id,
  sheet,
  pattern,
  patternName: 'woven-shift.svg',
  needle: Number.POSITIVE_INFINITY,
  open: undefined,
  unit: 'mm',
  language: 'en',
  ...more,
});

/** An engine whose time is in our hands: turns pass by themselves, the hand rests when it is told to. */
function engineInHand() {
  const answers: Answer[] = [];
  let resting: (() => void) | undefined;
  const question = createAnswering({
    answer: message => answers.push(structuredClone(message)),
    turn: () => new Promise(resolve => setImmediate(resolve)),
    atRest: call => {
      resting = call;
      return () => {
        if (resting === call) resting = undefined;
      };
    },
  });
  /** All that goes on by itself has come to its end: nothing was answered for some turns. */
  const quiet = async () => {
    for (let still = 0, had = -1; still < 20; still = had === answers.length ? still + 1 : 0) {
      had = answers.length;
      await new Promise(resolve => setImmediate(resolve));
    }
  };
  return {
    answers,
    question,
    quiet,
    isToRest: () => resting !== undefined,
    rest: () => {
      resting?.();
      resting = undefined;
    },
  };
}
const kinds = (answers: readonly Answer[]) =>
  answers.map(a => `${a.id} ${['view', 'proof', 'held', 'refused'].find(kind => kind in a) ?? 'other'}`);
const shownAfterAny = (had: Shown, answer: Answer): Shown => shownAfter(had, answer);
const shownOf = (answers: readonly Answer[]): Shown => answers.reduce(shownAfterAny, nothingShown);

describe('the engine', () => {
  let engine: ReturnType<typeof engineInHand>;
  beforeEach(() => {
    engine = engineInHand();
  });

  test('draws at once, and proves once the hand rests; handles come last', async () => {
    engine.question(ask(1, sheetWith(100), { open: 0 }));
    await engine.quiet();
    expect(kinds(engine.answers)).toEqual(['1 view']);
    engine.rest();
    await engine.quiet();
    expect(kinds(engine.answers)).toEqual(['1 view', '1 proof', '1 held']);
    const { view, proof, held } = shownOf(engine.answers);
    expect(view!.pieces.map(p => p.name)).toEqual(['front', 'back', 'sleeve', 'neckband']);
    expect(view!.steps.map(s => s.did)).toEqual([
      expect.stringMatching(/100 mm/),
      expect.stringMatching(/bust/),
    ]);
    expect(Object.keys(view!)).not.toContain('verdict');
    expect(proof!.verdict[0]).toMatchObject({ strong: '5 of 5', tone: 'sound' });
    expect(proof!.making.length).toBeGreaterThan(5);
    expect(held.handles.map(h => h.way.join('.'))).toContain('by');
  });

  test('of questions that come in a row only the latest is worked out', async () => {
    for (const id of [1, 2, 3]) engine.question(ask(id, sheetWith(100 + id)));
    await engine.quiet();
    expect(kinds(engine.answers)).toEqual(['3 view']);
    expect(shownOf(engine.answers).view!.steps[0]!.did).toContain('103 mm');
  });

  test('nothing is proved of what another question has followed', async () => {
    engine.question(ask(1, sheetWith(100)));
    await engine.quiet();
    engine.question(ask(2, sheetWith(101)));
    // The hand has not rested: what was to be proved of the first is given up at once.
    expect(engine.isToRest()).toBe(false);
    await engine.quiet();
    engine.rest();
    await engine.quiet();
    expect(kinds(engine.answers)).toEqual(['1 view', '2 view', '2 proof', '2 held']);
  });

  test('a proof that is being worked out is given up for a question that comes in meanwhile', async () => {
    engine.question(ask(1, sheetWith(100)));
    await engine.quiet();
    engine.rest();
    engine.question(ask(2, sheetWith(101)));
    await engine.quiet();
    expect(kinds(engine.answers)).toEqual(['1 view', '2 view']);
  });

  test('a question about what stands is answered from the latest view, though that is not worked out yet', async () => {
    engine.question(ask(1, sheetWith(100)));
    engine.question({ id: 2, whole: true });
    await engine.quiet();
    expect(kinds(engine.answers)).toEqual(['1 view', '2 other']);
  });

  test('what is the same is not sent again, and is the same object where it arrives', async () => {
    engine.question(ask(1, sheetWith(100)));
    await engine.quiet();
    engine.rest();
    await engine.quiet();
    const first = shownOf(engine.answers);
    engine.question(ask(2, sheetWith(101)));
    await engine.quiet();
    engine.rest();
    await engine.quiet();
    const second = shownOf(engine.answers);
    const named = (shown: Shown, name: string) => shown.view!.pieces.find(p => p.name === name)!;
    const sent = engine.answers.find(a => a.id === 2 && 'view' in a) as Extract<Answer, { view: unknown }>;
    // Front and back are shortened; sleeve and neckband are told by their places.
    expect(sent.view.pieces.map(p => typeof p)).toEqual(['object', 'object', 'number', 'number']);
    expect(named(second, 'front').cutting).not.toBe(named(first, 'front').cutting);
    expect(second.view!.names).toEqual(first.view!.names);
    const again = engineInHand();
    again.question(ask(1, sheetWith(101)));
    await again.quiet();
    again.rest();
    await again.quiet();
    const afresh = shownOf(again.answers);
    expect({ ...second.view, milliseconds: 0 }).toEqual({ ...afresh.view, milliseconds: 0 });
    expect({ ...second.proof, milliseconds: 0 }).toEqual({ ...afresh.proof, milliseconds: 0 });
  });

  test('a sheet that cannot be read is refused, and what stood stays', async () => {
    engine.question(ask(1, sheetWith(100)));
    engine.question({ ...ask(2, 'unit: parsec') });
    await engine.quiet();
    expect(kinds(engine.answers)).toEqual(['2 refused']);
  });
});

describe('the page', () => {
  const view = { pattern: 'p', pieces: [], steps: [], names: [], errors: [], milliseconds: 1 };
  const proof = {
    verdict: [{ strong: '1 of 1', text: 'seams sew together', tone: 'sound' as const }],
    seams: [],
    girths: [],
    levels: [],
    findings: [],
    left: [],
    making: [],
    cautions: [],
    milliseconds: 1,
  };
  const held = { handles: [], points: [{ piece: 'front', at: [0, 0] as const }] };

  test('shows nothing as proved from a new view until its own proof', () => {
    const one = [
      { id: 1, view },
      { id: 1, proof },
    ].reduce<Shown>(shownAfterAny, nothingShown);
    expect(one).toMatchObject({ isProved: true, proof });
    const two = shownAfter(one, { id: 2, view });
    expect(two.isProved).toBe(false);
    // One that is late, of the view before.
    expect(shownAfter(two, { id: 1, proof })).toMatchObject({ isProved: false, of: 2 });
    expect(shownAfter(two, { id: 1, held }).held.points).toEqual([]);
    expect(shownAfter(two, { id: 2, proof }).isProved).toBe(true);
    expect(shownAfter(two, { id: 2, held }).held).toEqual(held);
  });

  test('leaves as proved what is asked again for another step in hand, and nothing else', () => {
    const one = ask(1, sheetWith(100));
    const proved = [{ id: 1, proof }].reduce<Shown>(
      shownAfterAny,
      shownAfter(nothingShown, { id: 1, view }, one),
    );
    expect(shownAfter(proved, { id: 2, view }, ask(2, sheetWith(100), { open: 1 })).isProved).toBe(true);
    // The drawing is the same, and yet its figures may not be: a wearer's head, say.
    expect(shownAfter(proved, { id: 2, view }, ask(2, sheetWith(101))).isProved).toBe(false);
    expect(shownAfter(proved, { id: 2, view }, ask(2, sheetWith(100), { unit: 'in' })).isProved).toBe(false);
  });

  test('keeps in step with what is sent by its place, though a late proof is not shown', () => {
    const row = { strong: '0 of 1', text: 'seams sew together', tone: 'fault' as const };
    const shown = [
      { id: 1, view },
      { id: 1, proof },
      { id: 2, view },
      // Late: of the first view again, with another row; what comes after it speaks of it by its place.
      { id: 1, proof: { ...proof, verdict: [0, row] } },
      { id: 2, proof: { ...proof, verdict: [1, 0] } },
    ].reduce<Shown>(shownAfterAny, nothingShown);
    expect(shown.proof!.verdict).toEqual([row, proof.verdict[0]]);
  });
});
