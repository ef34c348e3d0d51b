import { measurePattern, type Pattern, PatternError, readPattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { runSheet } from '../../packages/sheet/src/run-sheet.js';
import { shiftPattern } from '../support/shift.js';
import { told as inEnglish } from '../support/told.js';
import { faultsOf, read, withSteps } from './sheets.js';

const run = (text: string, pattern: Pattern = shiftPattern()) => runSheet(read(text), pattern);
const runSteps = (...steps: readonly string[]) => run(withSteps(...steps));
const codes = (findings: readonly { readonly code: string }[]) => findings.map(f => f.code);

const concertTop = `
wearer: { bust girth: 1020, waist girth: 860, hip girth: 1080, head girth: 572 }
fabrics: { main: { width: 1500, stretch: 40 % }, contrast: { width: 1400, stretch: 45 % } }
${withSteps(
  'shorten: { pieces: [front, back], at: hem, by: 210 }',
  'close dart: { piece: front, dart: bust, into: hem }',
  'spread: { piece: back, from: { edge: hem, at: 1/2 }, to: { edge: shoulder, at: 1/2 }, by: 60, hinge: to }',
  'true: { edges: [front.hem, back.hem] }',
  'recut neckline: { piece: front, shape: inset V, depth: 85, half width: 45 }',
  'shorten: { pieces: [sleeve], at: hem, by: 160 }',
  'set allowance: { edges: all seams, to: 7 }',
  'draft band: { name: neckband, along: [front.neck, back.neck], gap: front.inset, ratio: 80 %, width: 56, join: 7, fabric: contrast }',
  'draft stay: { name: inset stay, along: front.inset, width: 18, fabric: stabiliser }',
)}`;

describe('running a sheet', () => {
  test('steps are done in order, each with what it did', () => {
    const { record } = run(concertTop);
    expect(record.steps.map(s => [s.step, s.verb])).toEqual([
      [1, 'shorten'],
      [2, 'close dart'],
      [3, 'spread'],
      [4, 'true'],
      [5, 'recut neckline'],
      [6, 'shorten'],
      [7, 'set allowance'],
      [8, 'draft band'],
      [9, 'draft stay'],
    ]);
    for (const { did } of record.steps) expect(did.length).toBeGreaterThan(10);
  });

  test('the record measures the pattern before and after', () => {
    const { record } = run(concertTop);
    expect(record.before).toEqual(measurePattern(shiftPattern()));
    expect(record.after.pieces.front!.darts).toEqual({});
    expect(record.after.pieces.front!.edges.inset!.allowanceMm).toBe(7);
    expect(Object.keys(record.after.pieces)).toEqual(['front', 'back', 'sleeve', 'neckband', 'inset stay']);
  });

  test('girths stand beside the body, before and after', () => {
    const { bust } = run(concertTop).record.girths;
    expect(bust).toMatchObject({ bodyMm: 1020 });
    expect(bust!.easeMm).toBeCloseTo(bust!.afterMm! - 1020, 9);
  });

  test('the band is 0.8 of neck and gap and two joins long', () => {
    const { record } = run(concertTop);
    const { front, back } = record.after.pieces;
    const edge = 2 * (front!.edges.neck!.lengthMm + back!.edges.neck!.lengthMm);
    // The gap runs from the inset's outer end, 45 mm off the centre, to its mirror image.
    expect(record.derived.neckband).toMatchObject({ kind: 'band', fabric: 'contrast', widthMm: 56 });
    expect(record.derived.neckband!.lengthMm).toBeCloseTo(0.8 * (edge + 90) + 14, 6);
  });

  test('the order of work gives a reason for every job', () => {
    const { orderOfWork } = run(concertTop).record;
    expect(orderOfWork.length).toBeGreaterThan(5);
    for (const { because } of orderOfWork) expect(because.length).toBeGreaterThan(0);
  });

  test('the same sheet gives the same record, to the last character', () => {
    expect(JSON.stringify(run(concertTop).record)).toBe(JSON.stringify(run(concertTop).record));
  });

  test('the pattern given is left as it was', () => {
    const pattern = shiftPattern(),
      before = JSON.stringify(pattern);
    run(concertTop, pattern);
    expect(JSON.stringify(pattern)).toBe(before);
  });

  test('the same steps run on another size', () => {
    const larger = run(
      concertTop,
      shiftPattern({ quarterBust: 310, quarterHem: 335, neckHalfWidth: 120 }),
    ).record;
    expect(larger.after.pieces.front!.areaMm2).toBeGreaterThan(
      run(concertTop).record.after.pieces.front!.areaMm2,
    );
  });
});

describe('what is measured is what is written', () => {
  test.each([
    ['no step', withSteps()],
    ['the concert top', concertTop],
    [
      'a moved dart',
      withSteps('move dart: { piece: front, dart: bust, to: { edge: shoulder, at: 1/2 }, point back: 20 }'),
    ],
    ['a half closed dart', withSteps('close dart: { piece: front, dart: bust, into: hem, share: 50 % }')],
    [
      'many slashes',
      withSteps('spread: { piece: sleeve, from: { edge: hem }, to: { edge: cap }, by: 50, slashes: 5 }'),
    ],
    [
      'a round neck and a facing',
      withSteps(
        'recut neckline: { piece: front, shape: round, depth: 40, half width: 130 }',
        'draft facing: { name: facing, along: front.neck, width: 60 }',
      ),
    ],
    ['an unfolded back taken in', withSteps('unfold: { piece: back }', 'take in: { seam: side, by: 20 }')],
  ])('read back, the altered pattern measures the same: %s', (_, text) => {
    const { svg, record } = run(text);
    expect(measurePattern(readPattern(svg).pattern)).toEqual(record.after);
  });
});

describe('findings', () => {
  test('a seam that a step breaks is told with that step and its line', () => {
    const { record } = runSteps(
      'remove piece: { piece: neckband }',
      'shorten: { pieces: front, at: hem, by: 20 }',
    );
    expect(codes(record.steps[0]!.findings)).not.toContain('seam-does-not-match');
    expect(record.steps[1]!.findings).toContainEqual(
      expect.objectContaining({
        code: 'seam-does-not-match',
        severity: 'fault',
        where: expect.objectContaining({ file: 'top.yaml', step: 2, line: 4 }),
      }),
    );
    expect(record.findings.filter(f => f.code === 'seam-does-not-match')).toMatchObject([
      { where: { step: 2 } },
    ]);
  });

  test('a seam mended by a later step is told with its step only', () => {
    const { record } = runSteps(
      'shorten: { pieces: front, at: hem, by: 20 }',
      'shorten: { pieces: back, at: hem, by: 20 }',
    );
    expect(codes(record.steps[0]!.findings)).toContain('seam-does-not-match');
    expect(codes(record.steps[1]!.findings)).not.toContain('seam-does-not-match');
    expect(codes(record.findings)).not.toContain('seam-does-not-match');
  });

  test('a facing whose edge changed afterwards is found, and no longer once it is drafted again', () => {
    const facing = 'draft facing: { name: facing, along: front.neck, width: 60 }';
    const recut = 'recut neckline: { piece: front, shape: round, depth: 40, half width: 130 }';
    const { record } = runSteps(facing, recut);
    expect(record.steps[1]!.findings).toContainEqual(
      expect.objectContaining({
        code: 'made-for-edge-changed',
        severity: 'fault',
        where: expect.objectContaining({ piece: 'facing', step: 2 }),
      }),
    );
    expect(codes(record.findings)).toContain('made-for-edge-changed');
    expect(codes(runSteps(facing, recut, facing).record.findings)).not.toContain('made-for-edge-changed');
  });

  test('a facing or stay whose edge was bent without a change of length is found; a strip follows it', () => {
    const swing =
      'spread: { piece: front, from: { edge: hem, at: 1/2 }, to: { edge: neck, at: 1/2 }, by: 60, hinge: to }';
    const found = (verb: string) =>
      runSteps(`draft ${verb}: { name: made, along: front.neck, width: 20 }`, swing).findings.filter(f =>
        f.code.startsWith('made-for'),
      );
    for (const verb of ['facing', 'stay'])
      expect(found(verb)).toMatchObject([{ code: 'made-for-edge-reshaped', severity: 'warning' }]);
    expect(found('strip')).toEqual([]);
    const unfolded = runSteps(
      'draft stay: { name: s, along: front.neck, width: 20 }',
      'unfold: { piece: front }',
    );
    expect(codes(unfolded.findings).filter(c => c.startsWith('made-for'))).toEqual([]);
  });

  test('a band is still made for its edges when the piece between them is unfolded', () => {
    const { findings, record } = runSteps(
      'recut neckline: { piece: front, shape: inset V, depth: 85, half width: 45 }',
      'draft band: { name: ring, along: [front.neck, back.neck], gap: front.inset, ratio: 95 %, width: 50 }',
      'unfold: { piece: front }',
    );
    expect(codes(findings).filter(c => c.startsWith('made-for'))).toEqual([]);
    expect(record.derived.ring!.along).toEqual(['front.neck', 'back.neck', 'front.other neck']);
    expect(record.after.seams.ring!.matches).toBe(true);
  });

  test('a band whose edge is gone is found, and the run goes on', () => {
    const { findings } = runSteps(
      'draft band: { name: ring, along: [front.neck, back.neck], ratio: 90 %, width: 50, join: 7 }',
      'remove piece: { piece: front }',
    );
    expect(codes(findings)).toContain('made-for-edge-gone');
  });

  test('a facing whose edge is gone is found', () => {
    const { findings } = runSteps(
      'draft facing: { name: facing, along: front.neck, width: 60 }',
      'remove piece: { piece: front }',
    );
    expect(codes(findings).some(code => code === 'made-for-edge-gone' || code === 'made-for-gone')).toBe(
      true,
    );
  });

  test('what was found on reading is kept', () => {
    const onReading = {
      severity: 'note',
      code: 'allowance-not-given',
      where: { piece: 'front' },
      about: { edge: { piece: 'front', edge: 'neck' } },
    } as const;
    const [first] = runSheet(read(withSteps()), shiftPattern(), { readFindings: [onReading] }).record
      .findings;
    expect(first).toMatchObject({ severity: 'note', code: 'allowance-not-given', where: { piece: 'front' } });
    expect(first!.message).toContain('neck of the front');
  });
});

describe('the sheet laid over the pattern', () => {
  test('its fabrics complete and correct those of the pattern', () => {
    const { altered } = run(
      `fabrics: { main: { stretch: 40 % }, contrast: { width: 1400 } }\n${withSteps()}`,
    );
    expect(altered.fabrics.find(f => f.name === 'main')).toMatchObject({
      stretch: { across: 40 },
      role: 'main',
    });
    expect(altered.fabrics.find(f => f.name === 'contrast')).toEqual({
      name: 'contrast',
      width: 1400,
      role: 'contrast',
    });
  });

  test('its unit is that of the reports; without one they keep the unit of the pattern', () => {
    const inInches: Pattern = { ...shiftPattern(), unit: 'in' };
    expect(run(withSteps(), inInches).altered.unit).toBe('in');
    expect(run(`unit: cm\n${withSteps()}`, inInches).altered.unit).toBe('cm');
  });

  test('its openings lie in their edges, also in those that a step makes', () => {
    const { altered } = run(
      `opening: { back.centre-back: 120, front.inset: 30 }\n${withSteps('recut neckline: { piece: front, shape: inset V, depth: 85, half width: 45 }')}`,
    );
    const opening = (piece: string, edge: string) =>
      altered.pieces
        .find(p => p.name === piece)!
        .outline.parts.find(p => p.name === edge && p.type === 'edge');
    expect(opening('back', 'centre-back')).toMatchObject({ opening: 120 });
    expect(opening('front', 'inset')).toMatchObject({ opening: 30 });
  });

  test('an opening in an edge that never comes is refused', () => {
    expect(() => run(`opening: { back.center-back: 120 }\n${withSteps()}`)).toThrow(
      expect.objectContaining({
        code: 'unknown-edge',
        facts: expect.objectContaining({ name: 'center-back' }),
        where: { file: 'top.yaml', line: 1, column: 12, piece: 'back', edge: 'center-back' },
      }),
    );
  });
});

describe('names the pattern does not have', () => {
  const told = (...steps: readonly string[]) =>
    faultsOf(() => runSteps(...steps)).map(
      f =>
        `${f.where.line}:${f.where.column} ${f.where.step} ${inEnglish(f).message} | ${inEnglish(f).remedy}`,
    );

  test('are told all at once, each at its own place, with what was meant', () => {
    expect(
      told(
        'unfold: { piece: frnt }',
        'close dart: { piece: front, dart: bst, into: hemm, at: 1/2 from centre-frnt }',
        'true: { edges: [bck.hem, back.hm] }',
        'take in: { seam: sid, by: 4 }',
        'move dart: { piece: front, dart: bust, to: { edge: neck }, pivot: bust pont }',
        'draft stay: { name: stay, along: back.neck, width: 3, fabric: constrast }',
        'shorten: { pieces: back, at: waits, by: 3 }',
      ),
    ).toEqual([
      '3:22 1 The pattern has no piece "frnt". | Did you mean "front"?',
      '4:39 2 The front has no dart "bst". | Did you mean "bust"?',
      '4:50 2 The front has no edge "hemm". | Did you mean "hem"?',
      '4:60 2 The front has no edge or dart "centre-frnt". | Did you mean "centre-front"?',
      '5:21 3 The pattern has no piece "bck". | Did you mean "back"?',
      '5:30 3 The back has no edge "hm". | Did you mean "hem"?',
      '6:22 4 The pattern has no seam "sid". | Did you mean "side"?',
      '7:71 5 The front has no mark "bust pont". | Did you mean "bust point"?',
      '8:67 6 The pattern has no fabric "constrast". | Did you mean "contrast"?',
      '9:34 7 The back has no line "waits". | Did you mean "waist"?',
    ]);
  });

  test('a word that may stand instead of a name is meant as well as names', () => {
    expect(told('shorten: { pieces: front, at: hems, by: 20 }')).toEqual([
      '3:35 1 The front has no line "hems". | Did you mean "hem"?',
    ]);
  });

  test('a piece that an earlier step removed is missing', () => {
    expect(told('remove piece: { piece: back }', 'unfold: { piece: back }')).toEqual([
      '4:22 2 The pattern has no piece "back". | Choose from its pieces: front, sleeve, neckband.',
    ]);
  });

  test('a facing of several pieces and the join of a band go by the names they were given', () => {
    const facing = 'draft facing: { name: facing, along: [front.neck, back.neck], width: 50 }';
    const band =
      'draft band: { name: ring, along: [front.neck, back.neck], ratio: 90 %, width: 50, join: 7 }';
    expect(() => runSteps(facing, 'set allowance: { edges: facing front.neck, to: 6 }')).not.toThrow();
    expect(() => runSteps(band, 'take in: { seam: ring join, by: 4 }')).not.toThrow();
  });

  test('edges that a step makes may be used after it, not before', () => {
    const recut = 'recut neckline: { piece: front, shape: inset V, depth: 85, half width: 45 }';
    const stay = 'draft stay: { name: stay, along: front.inset, width: 18 }';
    expect(() => runSteps(recut, stay)).not.toThrow();
    expect(told(stay, recut)).toEqual([
      '3:38 1 The front has no edge "inset". | Choose from its edges: neck, shoulder, armhole, side-upper, side-lower, hem, centre-front.',
    ]);
    expect(told(recut, 'true: { edges: front.insat }')).toEqual([
      '4:20 2 The front has no edge "insat". | Did you mean "inset"?',
    ]);
  });

  test('edges and seams that unfolding makes may be used after it', () => {
    expect(() =>
      runSteps(
        'unfold: { piece: back }',
        'take in: { seam: other side, by: 10 }',
        'true: { edges: back.hem }',
      ),
    ).not.toThrow();
  });

  test('a dart that was closed is missing', () => {
    const close = 'close dart: { piece: front, dart: bust, into: hem }';
    expect(told(close, close)).toEqual([
      '4:39 2 The front has no dart "bust". | There are no darts yet: draw one in the pattern first, or leave it out.',
    ]);
  });
});

describe('what a step refuses', () => {
  test('an outline that a step would cross is refused at that step', () => {
    const [fault] = faultsOf(() =>
      runSteps(
        'unfold: { piece: back }',
        'spread: { piece: front, from: { edge: hem }, to: { edge: neck }, by: -290, hinge: none }',
      ),
    );
    expect(fault!.where).toMatchObject({ file: 'top.yaml', line: 4, step: 2, piece: 'front' });
  });

  test('an opening longer than its edge is refused at its line', () => {
    expect(() => run(`opening: { back.centre-back: 2000 }\n${withSteps()}`)).toThrow(
      expect.objectContaining({
        code: 'opening-too-long',
        where: expect.objectContaining({ file: 'top.yaml', line: 1, column: 12 }),
      }),
    );
  });

  test.each([
    ['a shortening longer than the piece', 'shorten: { pieces: front, at: hem, by: 2000 }'],
    ['a V deeper than the piece', 'recut neckline: { piece: front, shape: V, depth: 2000 }'],
    [
      'a half width beyond the shoulder',
      'recut neckline: { piece: front, shape: square, depth: 80, half width: 400 }',
    ],
    [
      'a band along edges that do not join',
      'draft band: { name: b, along: [front.neck, sleeve.hem], ratio: 90 %, width: 50 }',
    ],
  ])('%s names its step, file and line', (_, step) => {
    const [fault, ...more] = faultsOf(() => runSteps('true: { edges: front.hem }', step));
    expect(more).toEqual([]);
    expect(fault).toBeInstanceOf(PatternError);
    expect(fault!.where).toMatchObject({ file: 'top.yaml', line: 4, column: 5, step: 2 });
    expect(inEnglish(fault!).remedy.length).toBeGreaterThan(5);
  });
});
