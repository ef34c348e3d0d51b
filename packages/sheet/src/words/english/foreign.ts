import type { DrawingTellings } from '@paperhinge/geometry/sayings';
import type { Tellings } from '../catalogue.js';
import { typedSizes } from '../typed-sizes.js';

const count = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${n} ${many}`);

const leftOut = (others: number): string =>
  others > 0 ? `; ${count(others, 'other page was', 'other pages were')} left out` : '';

/** What is said of drawings of other origins. */
export const foreign: Tellings<DrawingTellings> = {
  'no-outline-in-drawing': ({ lines }) => ({
    message:
      lines === 0
        ? 'There are no lines in this drawing.'
        : `None of the ${count(lines, 'line', 'lines')} of this drawing goes round a piece.`,
    remedy:
      lines === 0
        ? 'Save it again with the outlines of the pieces as lines, not with its writing alone.'
        : 'If ends of lines lie apart, say how far they may: --gap "1 mm", up to 2 mm.',
  }),
  'line-not-shut': ({ lengthMm, gapMm }, say) => ({
    message: `A line ${say.length(lengthMm)} long nearly comes home: its ends lie ${say.length(gapMm)} apart.`,
    remedy: `If it is a piece, join its ends in the drawing, or say how far ends may lie apart: --gap.`,
  }),
  'long-lines-left': ({ lines, lengthMm }, say) => ({
    message: `${count(lines, 'long line goes', 'long lines go')} round no piece, ${say.length(lengthMm)} in all; what they are of was left out.`,
    remedy: 'If a piece is missing, join its lines in the drawing, or say how far ends may lie apart: --gap.',
  }),
  'lines-told-apart': ({ pieces, leastMm, mostMm }, say) => ({
    message: `${count(pieces, 'piece shows', 'pieces show')} two lines beside one another: the inner was taken for the stitching line, with ${leastMm === mostMm ? say.allowance(leastMm) : `${say.allowance(leastMm)} to ${say.allowance(mostMm)}`} of allowance.`,
    remedy: 'Compare the allowances with what the pattern says.',
  }),
  'one-line-drawn': ({ pieces }) => ({
    message: `${count(pieces, 'piece shows', 'pieces show')} one outline only: whether it is cut or sewn along is not to be seen, and allowances are not known.`,
    remedy: 'If it is what is cut, say so: --line cutting. Set allowances with set allowance.',
  }),
  'outlines-nested': ({ layers }, say) => ({
    message: 'Three or more outlines lie one within another: they seem to be sizes.',
    remedy:
      layers.length > 1
        ? `Choose one by its layer or colour: ${say.list(layers.map(layer => `--layer ${say.written(layer)}`))}; all of them: --sizes "${typedSizes(layers)}".`
        : 'Draw each size in a colour, dashes or a layer of its own; then one can be chosen, or all of them taken.',
  }),
  'sizes-too-few': () => ({
    message: 'One size alone is no nest.',
    remedy: 'Name each size with its layer or colour: --sizes "S=red, M=green"; one alone: --layer red.',
  }),
  'sizes-alike': ({ name }, say) => ({
    message: `${say.written(name)} stands for two sizes.`,
    remedy: 'Give each size another name, and another layer, colour or dashes: --sizes "S=red, M=green".',
  }),
  'layer-not-there': ({ name, names }, say) => ({
    message: `Nothing is drawn in ${say.written(name)}.`,
    remedy: `Choose from ${say.list(names.map(say.written))}.`,
  }),
  'signs-taken': ({ darts, notches, grains, folds }, say) => ({
    message: `Taken from the drawing: ${say.list([
      ...(darts > 0 ? [count(darts, 'dart', 'darts')] : []),
      ...(notches > 0 ? [count(notches, 'notch', 'notches')] : []),
      ...(grains > 0 ? [count(grains, 'grain line', 'grain lines')] : []),
      ...(folds > 0 ? [count(folds, 'fold', 'folds')] : []),
    ])}.`,
    remedy: 'Look them over: paperhinge check PATTERN --picture P.svg.',
  }),
  'grain-guessed': ({ pieces }) => ({
    message: `In ${count(pieces, 'piece', 'pieces')} the upright line was taken for the grain, though it has no arrow.`,
    remedy: 'Draw an arrow’s head at its end, or take the line away.',
  }),
  'lines-left-out': ({ count: n }) => ({
    message: `${count(n, 'thing', 'things')} in this drawing ${n === 1 ? 'is' : 'are'} of a kind that no piece is drawn with, and ${n === 1 ? 'was' : 'were'} left out.`,
    remedy: 'Nothing to do, unless a line is missing: turn it into plain lines in the drawing.',
  }),
  'pages-without-lines': ({ pages }) => ({
    message: `${pages === 1 ? 'The page holds' : `The ${pages} pages hold`} no lines: it is a scan, or words alone.`,
    remedy: 'Save the pages as pictures (PNG, 300 dpi), and trace those: paperhinge trace PICTURE --dpi 300.',
  }),
  'pages-not-joined': ({ pages }) => ({
    message: `Nothing tells how the ${pages} pages lie beside one another.`,
    remedy: 'Say how many stand in a row, and how far they overlap: --columns 4 --overlap "10 mm".',
  }),
  'pages-lie-otherwise': ({ columns, overlapMm, isOverlapAlone, toldMm }, say) => {
    const [told, better] = [toldMm, overlapMm].map(mm => `${say.number(mm, 2)} mm`);
    return {
      message: isOverlapAlone
        ? `Lines do not run on truly from page to page where pages overlap by ${told}, but where they overlap by ${better}.`
        : `Lines do not run on from page to page in these columns, but where ${columns} pages stand in a row and overlap by ${better}.`,
      remedy: `If that is how they lie, say so: --columns ${columns} --overlap "${better}"; else look at the pages again.`,
    };
  },
  'pages-do-not-run-on': ({ joins, ends }) => ({
    message: `The pages do not lie so: of ${ends} places where a line reaches the edge of a page, it runs on in the next at ${joins === 0 ? 'none' : joins}.`,
    remedy: 'Look at the columns and the overlap again, such as --columns 4 --overlap "10 mm".',
  }),
  'pages-laid': ({ pages, others, joins, residualMm, worstMm }, say) => ({
    message: `${pages} pages laid in rows; ${count(joins, 'line runs', 'lines run')} on across joins, to within ${say.number(residualMm, 2)} mm (at worst ${say.number(worstMm, 2)} mm)${leftOut(others)}.`,
    remedy: 'If that is too much, look at the columns and the overlap again.',
  }),
  'pages-laid-by-themselves': (
    { pages, others, by, columns, overlapMm, joins, residualMm, worstMm },
    say,
  ) => ({
    message: `${pages} pages laid ${by === 'marks' ? 'by the letters at their edges' : 'so that their lines run on'}, ${columns} in a row${overlapMm > 0 ? `, ${say.number(overlapMm, 1)} mm over one another` : ''}; ${count(joins, 'line runs', 'lines run')} on across joins, to within ${say.number(residualMm, 2)} mm (at worst ${say.number(worstMm, 2)} mm)${leftOut(others)}.`,
    remedy: 'If that is not how they lie, say it: --columns 4 --overlap "10 mm".',
  }),
  'pages-of-one-sheet': ({ pages, others }) => ({
    message: `${pages} pages are windows onto one sheet, and were joined by the lines that they share${leftOut(others)}.`,
    remedy: 'Nothing to do, unless a piece is missing.',
  }),
  'no-test-square': () => ({
    message: 'No test square was found on the pages, so their scale is taken as it stands.',
    remedy: 'Measure a piece whose size you know: paperhinge measure PATTERN.',
  }),
  'test-square-true': ({ saidMm }, say) => ({
    message: `The test square of ${say.length(saidMm)} is drawn true.`,
    remedy: 'Nothing to do.',
  }),
  'test-square-off': ({ acrossMm, downMm, saidMm }, say) => ({
    message: `The test square said to be ${say.length(saidMm)} is drawn ${say.number(acrossMm, 2)} mm across and ${say.number(downMm, 2)} mm down: the file was scaled.`,
    remedy: 'Get the file as its maker sells it, or say the scale in a sheet: scale.',
  }),
  'not-dxf': ({ binary }) => ({
    message: binary ? 'This is a DXF file in binary.' : 'This is no DXF file.',
    remedy: binary ? 'Save it as DXF in ASCII, R12 or later.' : 'Give a DXF file in ASCII.',
  }),
  'work-stopped': () => ({
    message: 'The work was stopped; nothing was written.',
    remedy: 'Begin again whenever you like.',
  }),
  'unit-not-told': ({ longestMm }, say) => ({
    message: `The file does not say what its units are; read as millimetres it reaches ${say.length(longestMm)}.`,
    remedy: 'If that is not so, say the unit: --unit in, or --unit cm.',
  }),
};
