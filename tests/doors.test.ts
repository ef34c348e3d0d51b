import { readFileSync } from 'node:fs';
import * as alter from '@paperhinge/alter';
import * as became from '@paperhinge/alter/became';
import * as fit from '@paperhinge/alter/fit';
import * as hinge from '@paperhinge/alter/hinge';
import * as model from '@paperhinge/geometry';
import { at, PatternError, type Seam } from '@paperhinge/geometry';
import * as curves from '@paperhinge/geometry/curves';
import * as cuttingLines from '@paperhinge/geometry/cutting-line';
import * as measure from '@paperhinge/geometry/measure';
import * as paths from '@paperhinge/geometry/paths';
import * as ofPatterns from '@paperhinge/geometry/pattern';
import { identity } from '@paperhinge/geometry/plane';
import * as regions from '@paperhinge/geometry/regions';
import * as svg from '@paperhinge/geometry/svg';
import * as trace from '@paperhinge/geometry/trace';
import * as print from '@paperhinge/print';
import * as cloth from '@paperhinge/print/cloth';
import * as drawing from '@paperhinge/print/drawing';
import * as dxf from '@paperhinge/print/dxf';
import * as place from '@paperhinge/print/place';
import * as sheets from '@paperhinge/sheet';
import * as words from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { deepFinite, hostile, replacedNumbers } from './support/hostile-values.js';
import { shiftPattern } from './support/shift.js';
import { told } from './support/told.js';

// Doors of curves, paths, regions and cutting lines: geometry/public-doors.test.ts. What each verb is given:
// alter/verb/hostile.test.ts. Here: every other door of every package.
const doors: Readonly<Record<string, unknown>> = {
  ...model,
  ...measure,
  ...ofPatterns,
  ...svg,
  ...trace,
  ...alter,
  ...became,
  ...fit,
  ...hinge,
  ...print,
  ...cloth,
  ...drawing,
  ...dxf,
  ...place,
  ...sheets,
  ...words,
};

const shift = shiftPattern();
const pattern = {
  ...shift,
  pieces: shift.pieces.filter(p => p.name === 'front' || p.name === 'back'),
  seams: shift.seams.filter(s => [...s.a, ...s.b].every(r => r.piece === 'front' || r.piece === 'back')),
};
const front = pattern.pieces.find(p => p.name === 'front')!;
const hem = model.edgeNamed(front, 'hem');
const seam = pattern.seams[0] as Seam;
const ref = { piece: 'front', edge: 'hem' };
const text = 'pattern: shift.svg\nsteps:\n  - shorten: { pieces: [front, back], at: hem, by: 20 }\n';
const sheet = sheets.readSheet(text, { file: 'shift.yaml' });
const drawn = readFileSync(new URL('../demos/patterns/yoke-skirt.svg', import.meta.url), 'utf8');
const wearer = { 'bust girth': 900, 'hip girth': 960, 'head girth': 570, 'hand girth': 200 };
const bandLengths = { name: 'band', edgeMm: 450, lengthMm: 400, joinMm: 7, gapMm: 0 };
const band = {
  ...bandLengths,
  kind: 'band' as const,
  widthMm: 50,
  fabric: 'main',
  along: [{ piece: 'front', edge: 'neck' }],
  figures: { joinMm: 7, gapMm: 0 },
};
const cuts = [{ from: { edge: 'hem', along: 100 }, to: { dart: 'bust' } }];
const picture = { width: 4, height: 4, rgba: new Uint8Array(64) };
const letters = { width: () => 5 };
const shapes = [{ polygons: [[at(0, 0), at(100, 0), at(0, 100)]] }];
const spec = { name: 'p', pieces: [front] };
const verb = alter.verbs.find(v => v.verb === 'shorten')!;
const english = await words.catalogueOf('en');

/** A sound call of each door; every number and every word in it is made hostile in turn. */
const soundCalls: Readonly<Record<string, readonly unknown[]>> = {
  blendSizes: [pattern, pattern, 0.5],
  checkPattern: [pattern],
  definePattern: [spec],
  definePiece: [{ name: 'front', outline: front.outline.parts }],
  edgeNamed: [front, 'hem'],
  edgePath: [front, 'hem'],
  formatLength: [12, 'mm'],
  isPatternDrawing: [drawn],
  levelGirths: [pattern],
  measurePattern: [pattern],
  nearestEighth: [12],
  parseLength: [12, 'mm'],
  pieceNamed: [pattern, 'front'],
  readPattern: [drawn, { file: 'skirt.svg' }],
  readShapes: [drawn, { file: 'skirt.svg' }],
  sizesOf: [drawn],
  validatePattern: [pattern],
  validatePiece: [front],
  walkSeam: [pattern, seam],
  walkSeams: [pattern],
  writePattern: [pattern],
  writeSizes: [
    [
      { ...pattern, size: '12' },
      { ...pattern, size: '14' },
    ],
  ],
  writeTrace: [{ patterns: [pattern], bothLines: false }, 'cutting'],
  bodyPieces: [pattern],
  hipPieces: [pattern],
  looseEnds: [pattern],
  centreOf: [front],
  edgeTruing: [front, 'hem'],
  facingEdges: [pattern],
  girthsAtLevels: [pattern],
  hemSweep: [pattern],
  joinedLinesAcrossFolds: [pattern, front],
  joinedLinesOf: [pattern, seam, 0],
  lengthInGarment: [pattern, ref],
  levelAcross: [front, 'waist'],
  neighboursAtEnds: [pattern, seam],
  weldedLines: [pattern, front],
  edgesOfRole: [front, 'hem'],
  goRoundTogether: [front],
  guessFindings: [front, ['hem']],
  neighboursOf: [front, 'hem'],
  parsePercent: ['40 %'],
  parsePosition: [60, 'mm'],
  partsOfEdge: [front, 'hem'],
  resolvePosition: [front, 'hem', { mm: 60 }],
  sizeDifferences: [pattern, pattern],
  drawingOfSvg: [drawn, { file: 'skirt.svg' }],
  readDxf: ['0\nSECTION\n2\nENTITIES\n0\nLINE\n8\n1\n10\n0\n20\n0\n11\n9\n21\n9\n0\nENDSEC\n0\nEOF\n', 'mm'],
  proposeNames: [pattern],
  sidesOfSeam: [pattern, seam],
  renamed: [pattern, { front: { name: 'fore' } }],
  drawPathData: ['M0 0L1 1', svgPen()],
  parsePathData: ['M0 0L1 1', identity],
  toPathData: [hem.path],
  toldRun: [pattern, { text: 'front.hem from start' }, { seam: 'side' }, 'mm'],
  toldSeams: [pattern, [], 'mm'],
  transformPathData: ['M0 0L1 1', identity],
  tracePhotos: [[picture]],
  traceScan: [picture, { dotsToMm: 11.8 }],
  measuredPiece: [
    {
      name: 'patch',
      points: { a: at(0, 0), b: at(100, 0), c: at(0, 100) },
      edges: [{ name: 'top', through: ['a', 'b', 'c', 'a'] }],
    },
  ],
  alterSoThat: [verb, pattern, { pieces: ['front'], at: 'hem', by: 10 }],
  perform: [verb, pattern, { pieces: ['front'], at: 'hem', by: 10 }],
  bandStretch: [pattern, [band]],
  cautionsFor: [{ pattern, wearer, derived: [band] }],
  easeFindings: [pattern, wearer],
  girthsBesideBody: [pattern, wearer, { bust: 900 }, { bust: 950 }],
  measured: [pattern, { of: 'ease', level: 'bust', wearer }],
  orderOfWork: [pattern, [band], []],
  overTheHead: [{ pattern, wearer, derived: [band] }],
  bandStretchFindings: [bandLengths, 40],
  bodyGirth: [wearer, 'bust'],
  hasEdge: [pattern, ref],
  neckOpening: [pattern, [band]],
  stillThere: [pattern, [band]],
  stretchOfBand: [bandLengths],
  cutApart: [front, cuts],
  loadTypefaces: [{}],
  paperOf: ['a4'],
  photoFrame: [{ paper: 'a4', sheets: 4 }],
  printPattern: [
    pattern,
    { paper: 'a4', margins: 10, overlap: 10, unit: 'mm', turning: 'half', language: 'en' },
  ],
  projectorSheet: [pattern, { ground: 'dark', language: 'en' }],
  drawPattern: [pattern, letters, { unit: 'mm', notches: 'snips' }],
  drawPiece: [front, pattern, letters, { unit: 'mm' }],
  namedEdgesSvg: [pattern],
  dxfBlocks: [pattern],
  dxfFindings: [pattern],
  patternDxf: [pattern],
  layCloths: [pattern],
  clothFindings: [cloth.layCloths(pattern)],
  arrange: [shapes, { width: 200, height: 280, overlap: 10 }],
  applyStep: [sheets.stateOf(pattern), sheet.steps[0], verb],
  laidOver: [pattern, sheet],
  patternOfSheet: [sheet, drawn, 'skirt.svg'],
  readPrintWishes: [{ paper: 'a4', margins: '10' }],
  readSheet: [text, { file: 'shift.yaml' }],
  runSheet: [sheet, pattern],
  stateOf: [pattern],
  wordsOf: [english, 'mm'],
};
function svgPen() {
  const nothing = (): void => undefined;
  return {
    moveTo: nothing,
    lineTo: nothing,
    cubicTo: nothing,
    quadraticTo: nothing,
    arcTo: nothing,
    close: nothing,
  };
}

/** They hand on what they are given, or look at names and kinds alone, and read no number. */
const unread = [
  ...[
    'PatternError',
    'SheetFaults',
    'at',
    'edgeNames',
    'pieceRoleOf',
    'roleOf',
    'levelNames',
    'centreEdgeOf',
  ],
  ...[
    'copiesInGarment',
    'dartsOf',
    'edgeParts',
    'foldEdgeOf',
    'isCentreEdge',
    'isCentreLine',
    'isLimb',
    'isTie',
  ],
  ...['lineRoleOf', 'markRoleOf', 'outlinePath', 'pathsOfPart', 'pieceWithRoles', 'pleatsOf', 'runLabel'],
  ...[
    'withPiece',
    'withRoles',
    'codeCells',
    'targetCorners',
    'targetIndex',
    'patternOfTrace',
    'patternsOfTrace',
    'follow',
  ],
  ...['followThrough', 'formOf', 'goalsIn', 'inWords', 'isGoal', 'verbFrom', 'verbOf', 'inTurn', 'settled'],
  ...[
    'isKnit',
    'stretchOf',
    'holdingSection',
    'swing',
    'sectionAt',
    'reportHtml',
    'drawingSvg',
    'letteringBox',
  ],
  ...[
    'movedDrawing',
    'penOf',
    'catalogueOf',
    'doJob',
    'jobTold',
    'printedOn',
    'withLateFacts',
    'faultsIn',
    'pageOptions',
    'paperWord',
    'runSteps',
  ],
  ...[
    'sheetJsonSchema',
    'sheetOfRecord',
    'sheetReader',
    'verbWordsOf',
    'choiceWordsOf',
    'measureWordsOf',
    'commandRefusal',
    'commandSaying',
  ],
  ...[
    'refuseSheet',
    'changedSeams',
    'saidByNames',
    'namingSheet',
    'piecesOfDrawing',
    'joinedPages',
    'sizesOfDrawing',
    'concludeRun',
  ],
  ...['dartMouth', 'pleatMouth'],
];
/** Curves, paths, regions and cutting lines are asked elsewhere, and so is every verb: two share a door with checks. */
const askedElsewhere = new Set<unknown>([
  ...Object.values({ ...curves, ...paths, ...regions, ...cuttingLines }),
  ...[model.cuttingLine, model.line, model.pathLength, model.pathOf, model.polyline],
  ...[fit.adjust, fit.refit],
]);

type Door = (...given: readonly unknown[]) => unknown;
const publicDoors = Object.entries(doors).filter(
  (entry): entry is [string, Door] => typeof entry[1] === 'function' && !askedElsewhere.has(entry[1]),
);

/** The same value with one word in it replaced, for each word in it. */
function replacedWords(value: unknown, by: string): readonly unknown[] {
  if (typeof value === 'string') return [by];
  if (Array.isArray(value))
    return value.flatMap((part, i) => replacedWords(part, by).map(bad => value.with(i, bad)));
  if (!isPlain(value)) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    replacedWords(part, by).map(bad => ({ ...value, [key]: bad })),
  );
}
const isPlain = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/** A dozen of them, from the first to the last: whole patterns have thousands of numbers. */
const some = <T>(all: readonly T[], most: number): readonly T[] =>
  all.length <= most
    ? all
    : Array.from({ length: most }, (_, i) => all[Math.floor((i * all.length) / most)]!);

/** They answer with the pattern they were given, or with parts of it, and read only some of its numbers. */
const handingOn = new Set([
  ...[
    'pieceNamed',
    'bodyPieces',
    'hipPieces',
    'stateOf',
    'laidOver',
    'perform',
    'alterSoThat',
    'applyStep',
    'runSheet',
  ],
  ...[
    'cutApart',
    'swing',
    'edgeNamed',
    'edgePath',
    'partsOfEdge',
    'centreOf',
    'renamed',
    'neighboursAtEnds',
    'definePattern',
    'definePiece',
  ],
]);
/** Of these a call takes a tenth of a second and more. */
const slow = new Set(['layCloths', 'printPattern', 'projectorSheet', 'photoFrame']);

describe('every public door', () => {
  test('is in the table of this test', () => {
    const asked = [...Object.keys(soundCalls), ...unread];
    expect([...new Set(asked)].sort()).toEqual(publicDoors.map(([name]) => name).sort());
  });

  describe.each(Object.entries(soundCalls))('%s', (name, sound) => {
    const door = doors[name] as Door;
    const answerTo = async (given: readonly unknown[]): Promise<unknown> => {
      try {
        return await door(...given);
      } catch (error) {
        return error;
      }
    };
    const isRefusal = (answer: unknown): boolean =>
      answer instanceof PatternError && told(answer).remedy !== '';

    test('is shut to what is no number', async () => {
      const bad = hostile.flatMap(value =>
        sound.flatMap((part, i) => replacedNumbers(part, value).map(worse => sound.with(i, worse))),
      );
      for (const given of some(bad, slow.has(name) ? 2 : 16)) {
        const answer = await answerTo(given);
        const isSound = !(answer instanceof Error) && (handingOn.has(name) || deepFinite(answer));
        expect(isRefusal(answer) || isSound, `gave ${String(answer)}`).toBe(true);
      }
    });

    test('is shut to words that it does not know', async () => {
      const bad = ['nonsense', '', '__proto__'].flatMap(word =>
        sound.flatMap((part, i) => replacedWords(part, word).map(worse => sound.with(i, worse))),
      );
      for (const given of some(bad, slow.has(name) ? 2 : 16)) {
        const answer = await answerTo(given);
        expect(isRefusal(answer) || !(answer instanceof Error), `gave ${String(answer)}`).toBe(true);
      }
    });
  });

  test.each([undefined, null, {}, []])('an empty field (%s) is no length, place or share', empty => {
    const given = empty as unknown as string;
    for (const read of [() => model.parseLength(given, 'mm'), () => ofPatterns.parsePosition(given, 'mm')])
      expect(read).toThrow(PatternError);
    expect(() => ofPatterns.parsePercent(given)).toThrow(PatternError);
    expect(() => print.paperOf(given)).toThrow(PatternError);
  });
});
