import {
  bandStretch,
  cautionsFor,
  changedSeams,
  easeFindings,
  measured,
  orderOfWork,
  overTheHead,
  verbs,
} from '@paperhinge/alter';
import {
  blendSizes,
  checkPattern,
  cuttingLine,
  levelGirths,
  measurePattern,
  type Pattern,
  PatternError,
  readPattern,
  validatePattern,
  walkSeam,
  walkSeams,
  writePattern,
} from '@paperhinge/geometry';
import {
  bodyPieces,
  edgeTruing,
  facingEdges,
  girthsAtLevels,
  hemSweep,
  joinedLinesAcrossFolds,
  joinedLinesOf,
  lengthInGarment,
  levelNames,
  sidesOfSeam,
  weldedLines,
} from '@paperhinge/geometry/measure';
import { renamed, sizeDifferences } from '@paperhinge/geometry/pattern';
import { writeSizes } from '@paperhinge/geometry/svg';
import { printPattern, projectorSheet, reportHtml } from '@paperhinge/print';
import { layCloths } from '@paperhinge/print/cloth';
import { drawPattern, drawPiece, namedEdgesSvg } from '@paperhinge/print/drawing';
import { dxfBlocks, dxfFindings, patternDxf } from '@paperhinge/print/dxf';
import {
  applyStep,
  doJob,
  laidOver,
  namingSheet,
  patternOfSheet,
  readSheet,
  runSheet,
  runSteps,
  stateOf,
} from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';
import { withValueAt } from '../support/places-within.js';
import { shiftPattern } from '../support/shift.js';
import { refusalOf, told } from '../support/told.js';

const sound = shiftPattern();
const sheet = readSheet('pattern: shift.svg\nsteps:\n  - shorten: { pieces: [front], at: hem, by: 20 }\n', {
  file: 'sheet.yaml',
});
const measure = { width: () => 10 };
const [side] = sound.seams;
const hem = { piece: 'front', edge: 'hem' };
const step = sheet.steps[0]!;
const shortenVerb = verbs.find(({ verb }) => verb === 'shorten')!;

/** All that is asked of a pattern, or of a piece of it, whatever it is. */
const doors: readonly (readonly [string, (given: Pattern) => unknown])[] = [
  ['measurePattern', measurePattern],
  ['walkSeams', walkSeams],
  ['walkSeam', given => walkSeam(given, side!)],
  ['sidesOfSeam', given => sidesOfSeam(given, side!)],
  ['checkPattern', checkPattern],
  ['levelGirths', levelGirths],
  ['girthsAtLevels', girthsAtLevels],
  ['hemSweep', hemSweep],
  ['lengthInGarment', given => lengthInGarment(given, hem)],
  ['facingEdges', facingEdges],
  ['bodyPieces', bodyPieces],
  ['joinedLinesOf', given => joinedLinesOf(given, side!, 0)],
  ['joinedLinesAcrossFolds', given => joinedLinesAcrossFolds(given, sound.pieces[0]!)],
  ['weldedLines', given => weldedLines(given, sound.pieces[0]!)],
  ['cuttingLine', given => cuttingLine(sound.pieces[0]!, given ?? (null as never))],
  ['validatePattern', validatePattern],
  ['writePattern', writePattern],
  ['writeSizes', given => writeSizes([given])],
  ['blendSizes', given => blendSizes(sound, given, 0.5)],
  ['sizeDifferences', given => sizeDifferences(given, sound)],
  ['renamed', given => renamed(given, {})],
  ['orderOfWork', given => orderOfWork(given, [], [])],
  ['cautionsFor', given => cautionsFor({ pattern: given })],
  ['easeFindings', given => easeFindings(given, {})],
  ['overTheHead', given => overTheHead({ pattern: given, wearer: {}, derived: [] })],
  ['bandStretch', given => bandStretch(given, [])],
  ['changedSeams, before', given => changedSeams(given, sound, { verb: 'shorten', canMatch: false })],
  ['changedSeams, after', given => changedSeams(sound, given, { verb: 'shorten', canMatch: false })],
  ['measured', given => measured(given, { kind: 'seam', seam: 'side' } as never)],
  ['layCloths', layCloths],
  ['printPattern', given => printPattern(given, { paper: 'a4' })],
  ['printPattern, before', given => printPattern(sound, { paper: 'a4', before: given ?? (null as never) })],
  ['projectorSheet', given => projectorSheet(given, { ground: 'dark' })],
  ['reportHtml', given => reportHtml({ pattern: given })],
  ['reportHtml, before', given => reportHtml({ pattern: sound, before: given ?? (null as never) })],
  ['drawPattern', given => drawPattern(given, measure)],
  ['drawPiece', given => drawPiece(sound.pieces[0]!, given, measure)],
  ['namedEdgesSvg', given => namedEdgesSvg(given)],
  ['patternDxf', patternDxf],
  ['dxfFindings', dxfFindings],
  ['dxfBlocks', dxfBlocks],
  ['stateOf', stateOf],
  ['runSteps', given => runSteps({ ...stateOf(sound), pattern: given }, [step])],
  ['applyStep', given => applyStep({ ...stateOf(sound), pattern: given }, step, shortenVerb)],
  ['laidOver', given => laidOver(given, sheet)],
  ['runSheet', given => runSheet(sheet, given)],
  ['doJob', given => doJob(sheet, given)],
  ['namingSheet', given => namingSheet(given, { pieces: [], seams: [] }, { file: 'a', sentence: () => '' })],
];

const part = ['pieces', '0', 'outline', 'parts', '0'];
const changed = (place: readonly string[], value: unknown): unknown => withValueAt(sound, place, value);

/** What is no pattern, with what is told of it. */
const broken: readonly (readonly [string, unknown, string])[] = [
  ['nothing', undefined, 'pattern-not-usable'],
  ['null', null, 'pattern-not-usable'],
  ['a number', 7, 'pattern-not-usable'],
  ['a text', '<svg/>', 'pattern-not-usable'],
  ['a list', [sound], 'pattern-not-usable'],
  ['an empty object', {}, 'pattern-not-usable'],
  ['no pieces', { ...sound, pieces: undefined }, 'pattern-not-usable'],
  ['no name', { ...sound, name: undefined }, 'pattern-not-usable'],
  ['no piece in the place of one', { ...sound, pieces: [null] }, 'pattern-not-usable'],
  ['a piece without its marks', changed(['pieces', '1', 'marks'], undefined), 'pattern-not-usable'],
  ['an edge without its path', changed([...part, 'path'], undefined), 'pattern-not-usable'],
  [
    'a coordinate of no number',
    changed([...part, 'path', 'segments', '0', '0', 'x'], NaN),
    'coordinate-out-of-range',
  ],
  [
    'a coordinate without end',
    changed([...part, 'path', 'segments', '0', '1', 'y'], 1 / 0),
    'coordinate-out-of-range',
  ],
  ['an allowance of no number', changed([...part, 'allowance'], NaN), 'allowance-out-of-range'],
  ['a notch at no number', changed(['pieces', '0', 'notches', '0', 'at'], NaN), 'pattern-not-usable'],
  ['ease of no number', changed(['seams', '0', 'ease'], { mm: NaN }), 'length-out-of-range'],
  ['no ease', changed(['seams', '0', 'ease'], null), 'pattern-not-usable'],
  ['an unknown kind of edge', changed([...part, 'kind'], 'nonsense'), 'word-not-understood'],
  ['an unknown part of an outline', changed([...part, 'type'], 'nonsense'), 'pattern-not-usable'],
  ['an unknown unit', { ...sound, unit: 'ell' }, 'word-not-understood'],
  ['an unknown role', changed(['pieces', '0', 'role'], 'nonsense'), 'word-not-understood'],
  ['no count of copies', changed(['pieces', '0', 'cutting', 'count'], 0), 'cut-count'],
  [
    'a cloth without end',
    { ...sound, fabrics: [{ name: 'main', role: 'main', width: 1 / 0 }] },
    'length-not-positive',
  ],
];

async function refusalBy(work: () => unknown): Promise<PatternError> {
  try {
    await work();
  } catch (error) {
    expect(error).toBeInstanceOf(PatternError);
    return error as PatternError;
  }
  throw new Error('Nothing was refused.');
}

describe('what is no pattern', () => {
  test.each(doors)('is refused by %s', async (door, ask) => {
    for (const [what, given, code] of broken) {
      const error = await refusalBy(() => ask(given as Pattern));
      expect([door, what, error.code]).toEqual([door, what, code]);
      const { message, remedy } = told(error);
      expect(message).not.toMatch(/undefined|NaN|\[object/);
      expect(remedy).not.toBe('');
    }
  });

  test('has no pieces that are cut or looked at', () => {
    for (const given of [undefined, null, 7, 'front', [], {}, { ...sound.pieces[0], outline: null }])
      for (const ask of [
        () => cuttingLine(given as never),
        () => edgeTruing(given as never, 'hem'),
        () => levelNames(given as never),
        () => joinedLinesAcrossFolds(sound, given as never),
        () => weldedLines(sound, given as never),
        () => drawPiece(given as never, sound, measure),
      ])
        expect(refusalOf(ask).code).toBe('pattern-not-usable');
  });
});

test('a sound pattern passes every door that wants no more than it', async () => {
  for (const [, ask] of doors.filter(([door]) => !/printPattern|doJob|projector|measured/.test(door)))
    await ask(sound);
});

test('what is no drawing is refused by the reader, and what is no sheet by all who do sheets', async () => {
  for (const given of [undefined, null, 7, '', 'x', [], {}, new Map()])
    expect(refusalOf(() => readPattern(given as never)).remedy).not.toBe('');
  for (const given of [undefined, null, 7, '', '7', '{', [], {}])
    expect(refusalOf(() => readSheet(given as never, { file: 'a.yaml' })).remedy).not.toBe('');
  const noSheets = [
    undefined,
    null,
    7,
    'pattern: a.svg',
    [],
    {},
    { ...sheet, steps: undefined },
    { ...sheet, steps: [null] },
    { ...sheet, steps: [{ verb: 'shorten' }] },
    { ...sheet, print: {} },
    { ...sheet, fabrics: {} },
    { ...sheet, wearer: { bust: Number.NaN } },
  ];
  for (const given of noSheets) {
    expect(refusalOf(() => runSheet(given as never, sound)).code).toBe('not-a-sheet');
    expect(refusalOf(() => laidOver(sound, given as never)).code).toBe('not-a-sheet');
    expect(refusalOf(() => patternOfSheet(given as never, '', 'a.svg')).code).toBe('not-a-sheet');
    expect((await refusalBy(() => doJob(given as never, sound))).code).toBe('not-a-sheet');
  }
  for (const given of [undefined, null, {}, 'shorten', [null], ['shorten'], [{ verb: 7, parameters: {} }]])
    expect(refusalOf(() => runSteps(stateOf(sound), given as never)).code).toBe('not-a-sheet');
  for (const given of [undefined, null, 7, {}, { ...stateOf(sound), made: undefined }])
    expect(refusalOf(() => runSteps(given as never, [step])).code).toBe('pattern-not-usable');
  expect(refusalOf(() => runSteps(stateOf(sound), [{ verb: 'nonsense', parameters: {} }])).code).toBe(
    'unknown-verb',
  );
  const noNumber = { verb: 'shorten', parameters: { ...step.parameters, by: Number.NaN } };
  expect(refusalOf(() => runSteps(stateOf(sound), [noNumber])).code).toBe('field-not-usable');
});
