import type { SvgTellings } from '@paperhinge/geometry/sayings';
import { capital } from '../capital.js';
import type { Say, Tellings } from '../catalogue.js';

type Drawings = Pick<
  SvgTellings,
  | 'file-too-large'
  | 'file-compressed'
  | 'encoding-unknown'
  | 'encoding-broken'
  | 'not-a-drawing'
  | 'not-xml'
  | 'not-svg'
  | 'too-many-elements'
  | 'entity-not-expanded'
  | 'too-many-instances'
  | 'too-many-segments'
  | 'viewbox-empty'
  | 'scale-unsure'
  | 'style-rule-left-out'
  | 'reference-outside'
  | 'reference-missing'
  | 'reference-loop'
  | 'reference-too-deep'
  | 'path-data-broken'
  | 'attribute-not-understood'
  | 'shape-empty'
  | 'hidden-left-out'
  | 'text-left-out'
  | 'more-of-a-kind'
  | 'unit-not-known'
  | 'size-out-of-proportion'
  | 'scale-not-known'
  | 'scale-assumed'
  | 'scale-out-of-range'
  | 'piece-very-large'
  | 'unknown-size'
  | 'size-not-read'
  | 'size-not-chosen'
>;

/** What is told of files and drawings as such. */
export const drawings: Tellings<Drawings> = {
  'file-too-large': () => ({
    message: 'The drawing is over 32 MB.',
    remedy: 'Remove pictures from it, or save the pattern pieces alone.',
  }),
  'file-compressed': () => ({
    message: 'The drawing is compressed (svgz).',
    remedy: 'Save it as plain SVG.',
  }),
  'encoding-unknown': () => ({
    message: 'The drawing is written in a character encoding that is not read.',
    remedy: 'Save it as UTF-8.',
  }),
  'encoding-broken': () => ({
    message: 'The drawing holds bytes that its character encoding does not allow.',
    remedy: 'Save it again as UTF-8.',
  }),
  'not-a-drawing': ({ is }) => otherFiles[is],
  'not-xml': () => ({
    message: 'The drawing is damaged: from this place on it cannot be read.',
    remedy: 'Open it in a drawing program and save it as plain SVG.',
  }),
  'not-svg': () => ({
    message: 'The file is not an SVG drawing.',
    remedy: 'Save the pattern as plain SVG.',
  }),
  'too-many-elements': ({ most }, say) => ({
    message: `The drawing has over ${say.number(most)} elements.`,
    remedy: 'Save the pattern pieces alone, or split the drawing into several files.',
  }),
  'entity-not-expanded': () => ({
    message: 'The file uses abbreviations of its own (entities); they were left as they stand.',
    remedy: 'If something is missing, save the drawing as plain SVG.',
  }),
  'too-many-instances': () => ({
    message: 'The drawing shows too many copies of its parts.',
    remedy: 'Turn its clones (use) into drawings of their own.',
  }),
  'too-many-segments': ({ of, most }, say) => ({
    message:
      most === undefined
        ? 'The lines of the drawing have millions of points.'
        : `The lines of the ${of} have over ${say.number(most)} segments.`,
    remedy: 'Simplify its paths in the drawing program.',
  }),
  'viewbox-empty': () => ({
    message: 'The viewBox of the drawing has no size, so nothing would be shown.',
    remedy: 'Give the drawing a viewBox that holds it; it was read as if it had none.',
  }),
  'scale-unsure': ({ attribute }, say) => ({
    message: `The ${say.written(attribute)} of the drawing was not understood; it was measured as if it had none.`,
    remedy: 'Save it again with its width and height in mm, cm or in.',
  }),
  'style-rule-left-out': () => ({
    message: 'A style sheet hides or moves shapes in a way that is not followed.',
    remedy: 'Check that nothing hidden was read; if it was, save as plain SVG with inline styles.',
  }),
  'reference-outside': (facts, say) => ({
    message: capital(`${named(facts, say)} shows something that is not in this file.`),
    remedy: 'Copy it into the drawing.',
  }),
  'reference-missing': (facts, say) => ({
    message: capital(`${named(facts, say)} shows something that does not exist.`),
    remedy: 'Remove it, or give what it shows that id.',
  }),
  'reference-loop': (facts, say) => ({
    message: capital(`${named(facts, say)} shows itself.`),
    remedy: 'Remove the inner clone (use).',
  }),
  'reference-too-deep': ({ most }) => ({
    message: `A clone shows a clone, and so on, over ${most} deep.`,
    remedy: 'Simplify the drawing.',
  }),
  'path-data-broken': ({ reason, drawnSoFar, ...facts }, say) => ({
    message: capital(
      `the line of ${named(facts, say)} breaks off: ${faults[reason]}.${drawnSoFar ? ' It is drawn up to there.' : ''}`,
    ),
    remedy: 'Draw the line again.',
  }),
  'attribute-not-understood': ({ attribute, reason, leftOut, ...facts }, say) => ({
    message: capital(
      `the ${say.written(attribute)} of ${named(facts, say)} cannot be used: ${faults[reason]}.${leftOut ? ' It is left out.' : ''}`,
    ),
    remedy: 'Write it as SVG does, or remove it.',
  }),
  'shape-empty': (facts, say) => ({
    message: capital(`${named(facts, say)} draws nothing.`),
    remedy: 'Remove it if it is not wanted.',
  }),
  'hidden-left-out': ({ count }) => ({
    message: `What is hidden was left out (${count}).`,
    remedy: 'Show it in the drawing program if it is wanted.',
  }),
  'text-left-out': ({ count }) => ({
    message: `Texts and pictures were left out (${count}): they have no outline to measure.`,
    remedy: 'Turn text into paths in the drawing program if it is wanted.',
  }),
  'more-of-a-kind': ({ more }, say) => ({
    message: `There are ${say.number(more)} more findings like those above.`,
    remedy: 'Mend the first ones; the others are like them.',
  }),
  'unit-not-known': ({ attribute, isNothing }) => ({
    message: `How large the drawing is cannot be known: its ${attribute} is ${isNothing ? '0 or less' : 'in no unit that a drawing has'}.`,
    remedy: 'Write width and height in mm, cm or in.',
  }),
  'scale-not-known': ({ because }) => ({
    message:
      because === 'viewbox'
        ? 'How large the drawing is cannot be known: its viewBox is not four numbers of which the last two are over 0.'
        : 'How large the drawing is cannot be known: its width and height are percentages.',
    remedy:
      because === 'viewbox'
        ? 'Mend it, as in width="600mm" height="800mm" viewBox="0 0 600 800", or save the drawing again with its size in mm, cm or in.'
        : 'Save it again with its width and height in mm, cm or in.',
  }),
  'size-out-of-proportion': ({ widthMm, heightMm }) => ({
    message:
      'The width and height of the drawing do not go with its viewBox, so that one of them is wrong; it was read by the one that makes it smaller.',
    remedy: `If its height is right, write width="${inMm(widthMm)}"; if its width is, height="${inMm(heightMm)}".`,
  }),
  'scale-assumed': ({ piece, reachMm, hasSize }, say) => ({
    message: `The drawing ${hasSize ? 'gives its size in pixels' : 'does not say how large it is'}; it was read at 96 to the inch. That makes its largest piece, ${say.thing({ piece })}, ${say.length(reachMm)} long.`,
    remedy:
      'If that is right, save the drawing with its size in mm, cm or in. If not, write scale: in the sheet: "scale: 1/4" for a drawing at a quarter.',
  }),
  'scale-out-of-range': () => ({
    message: 'A scale must be over 0.',
    remedy: 'Write scale: 1/4 for a drawing at a quarter, or leave it out.',
  }),
  'piece-very-large': ({ piece, reachMm }, say) => ({
    message: capital(`${say.thing(piece)} is ${say.length(reachMm)} long.`),
    remedy: 'Check the unit the drawing was saved in.',
  }),
  'unknown-size': ({ size, sizes }, say) => ({
    message: `The drawing has no size ${say.written(size)}.`,
    remedy:
      sizes.length === 0
        ? 'It holds one size only: leave size: out.'
        : `Choose one of its sizes: ${sizes.map(say.name).join(', ')}.`,
  }),
  'size-not-read': ({ size }, say) => ({
    message: `The size ${say.name(size)} of the drawing cannot be read.`,
    remedy: `Choose it (size: ${say.name(size)}) to hear why.`,
  }),
  'size-not-chosen': ({ size, sizes }, say) => ({
    message: `The drawing holds the sizes ${say.list(sizes.map(say.name))}; ${say.name(size)} was read.`,
    remedy: `Write size: ${say.name(size)} in the sheet, or the one you want.`,
  }),
};

const save = 'Save the pattern as plain SVG from the program it was drawn in.';
const otherFiles = {
  pdf: {
    message: 'This is a PDF, not an SVG drawing.',
    remedy: `Open it in a drawing program and save it as plain SVG.`,
  },
  picture: {
    message: 'This is a picture made of dots, not an SVG drawing.',
    remedy: 'A photo of a pattern is traced first; a drawing is saved as plain SVG.',
  },
  archive: {
    message: 'This is a packed file, not an SVG drawing.',
    remedy: 'Unpack it, and give the drawing in it.',
  },
  page: {
    message: 'This is a web page, not an SVG drawing.',
    remedy: 'Save the drawing itself, as plain SVG.',
  },
  json: { message: 'This is a record or a list of data, not an SVG drawing.', remedy: save },
  text: {
    message: 'This is a text, not an SVG drawing.',
    remedy: 'If it is an alteration sheet, give it to "paperhinge alter"; else give the drawing.',
  },
  nothing: { message: 'The file is empty.', remedy: save },
} as const;

/** "a path", "the path "hem"". */
const named = ({ element, id }: { readonly element: string; readonly id?: string }, say: Say): string =>
  id === undefined ? `a ${element}` : `the ${element} ${say.written(id)}`;

const faults = {
  'command-expected': 'a letter such as M or L was expected',
  'begins-without-move': 'it does not begin with M',
  'number-expected': 'a number was expected',
  'ends-early': 'it ends where a number was expected',
  'number-after-comma': 'a number was expected after a comma',
  'arc-flag': 'an arc has flags that are 0 or 1',
  'number-too-large': 'a number is too large',
  'no-length': 'it is not a length',
  negative: 'it is less than 0',
  'not-understood': 'it was not understood',
} as const;

/** As it is written in a drawing, whatever the unit of the pattern. */
const inMm = (mm: number): string => `${Math.round(mm * 100) / 100}mm`;
