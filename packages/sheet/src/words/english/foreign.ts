import type { DrawingTellings } from '@paperhinge/geometry/sayings';
import type { Tellings } from '../catalogue.js';

const count = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${n} ${many}`);

/** What is said of drawings of other origins. */
export const foreign: Tellings<DrawingTellings> = {
  'no-outline-in-drawing': ({ lines }) => ({
    message:
      lines === 0
        ? 'There are no lines in this drawing.'
        : `None of the ${count(lines, 'line', 'lines')} of this drawing goes round a piece.`,
    remedy: 'If ends of lines lie apart, say how far they may: --gap 1 mm, up to 2 mm.',
  }),
  'line-not-shut': ({ lengthMm, gapMm }, say) => ({
    message: `A line ${say.length(lengthMm)} long nearly comes home: its ends lie ${say.length(gapMm)} apart.`,
    remedy: `If it is a piece, join its ends in the drawing, or say how far ends may lie apart: --gap.`,
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
    remedy: `Choose one by its layer or colour: ${say.list(layers.map(layer => `--layer ${say.written(layer)}`))}.`,
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
  'grain-guessed': ({ piece }, say) => ({
    message: `The upright line in ${say.thing(piece)} was taken for its grain; it has no arrow.`,
    remedy: 'Draw an arrow’s head at its end, or take the line away.',
  }),
  'lines-left-out': ({ count: n }) => ({
    message: `${count(n, 'thing', 'things')} in this drawing ${n === 1 ? 'is' : 'are'} of a kind that no piece is drawn with, and ${n === 1 ? 'was' : 'were'} left out.`,
    remedy: 'Nothing to do, unless a line is missing: turn it into plain lines in the drawing.',
  }),
  'not-dxf': ({ binary }) => ({
    message: binary ? 'This is a DXF file in binary.' : 'This is no DXF file.',
    remedy: binary ? 'Save it as DXF in ASCII, R12 or later.' : 'Give a DXF file in ASCII.',
  }),
  'unit-not-told': ({ longestMm }, say) => ({
    message: `The file does not say what its units are; read as millimetres it reaches ${say.length(longestMm)}.`,
    remedy: 'If that is not so, say the unit: --unit in, or --unit cm.',
  }),
};
