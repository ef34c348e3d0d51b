import type { TraceSentences, TraceTellings } from '../../trace-sayings.js';
import type { Sentences, Tellings } from '../catalogue.js';

const kinds = {
  heic: 'a picture in HEIC or AVIF',
  tiff: 'a picture in TIFF or RAW',
  webp: 'a picture in WebP',
  pdf: 'a PDF, not a picture',
  other: 'not a picture',
} as const;

const kindNames = {
  picture: 'pictures',
  sheet: 'sheets of measured points',
  svg: 'SVG drawings',
  dxf: 'DXF files',
  pdf: 'PDF files',
} as const;

export const traceTellings: Tellings<TraceTellings> = {
  'not-a-picture': ({ looksLike }) => ({
    message: `This is ${kinds[looksLike]}.`,
    remedy:
      looksLike === 'heic'
        ? 'Save it as JPEG; on the telephone choose "most compatible".'
        : looksLike === 'pdf' || looksLike === 'other'
          ? 'Give a photograph or a scan as JPEG or PNG.'
          : 'Save it as JPEG or PNG.',
  }),
  'picture-damaged': () => ({
    message: 'The picture is damaged, or of a kind that cannot be read.',
    remedy: 'Save it again as an ordinary JPEG or PNG.',
  }),
  'picture-too-large': ({ mostMillions }) => ({
    message: `The picture has more than ${mostMillions} million dots.`,
    remedy: 'Make it smaller by halves: 12 million dots are plenty.',
  }),
  'traced-line-unknown': () => ({
    message: 'A piece is cut along its stitching line or its cutting line.',
    remedy: 'Write --line stitching or --line cutting.',
  }),
  'length-without-places': () => ({
    message: 'A known length lies between two places.',
    remedy: 'Give both, as in --known "300 mm" --between "412,880 2950,905".',
  }),
  'several-scales': () => ({
    message: 'Only one thing can say the scale.',
    remedy: 'Give one of --measured, --dpi and --known.',
  }),
  'several-scans': () => ({
    message: 'A scan is traced by itself.',
    remedy: 'Give one scan at a time.',
  }),
  'square-out-of-range': () => ({
    message: 'The square on the sheets measures 50 mm, or a little more or less.',
    remedy: 'Write what its sides measured, as in --measured 49.8 or --measured 49.8,50.1.',
  }),
  'dpi-out-of-range': ({ least, most }) => ({
    message: `A scan has from ${least} to ${most} dots to the inch.`,
    remedy: 'Write what the scanner was set to, as in --dpi 300.',
  }),
  'known-length-out-of-range': () => ({
    message: 'So long a way does not lie between these two places of the picture.',
    remedy:
      'Write the length with its unit, and two places that are apart in dots: --known "300 mm" --between "412,880 2950,905".',
  }),
  'gap-out-of-range': ({ mostMm }, say) => ({
    message: 'Ends of lines that lie so far apart do not meet.',
    remedy: `Give a gap of 0.05 mm to ${say.number(mostMm)} mm.`,
  }),
  'pdf-locked': () => ({
    message: 'This PDF is locked with a password.',
    remedy: 'Open it with its password, print it into a new PDF, and give that.',
  }),
  'pdf-damaged': () => ({
    message: 'This PDF cannot be read; it seems to be damaged.',
    remedy: 'Get the file again; if it opens elsewhere, print it into a new PDF and give that.',
  }),
  'pdf-too-long': ({ most }) => ({
    message: `This PDF has more than ${most} pages.`,
    remedy: 'Give the pages of the pattern alone.',
  }),
  'pen-not-understood': ({ colours }, say) => ({
    message:
      '--pen tells how the lines between the corners (--at) are drawn: a colour, dashed or solid, or both.',
    remedy: `Write one of ${say.list(colours)}, dashed or solid: --at "412,880 2950,905 2900,1800" --pen "red dashed".`,
  }),
  'sizes-of-picture-not-understood': ({ colours }, say) => ({
    message:
      'Of a picture, --sizes tells how the lines of each size are drawn, two sizes or more, each otherwise; --at their corners, once for all sizes.',
    remedy: `Write each with its pen, and the corners of the first of them: --sizes "S=red, M=blue dashed" --at "412,880 2950,905 2900,1800". Pens: ${say.list(colours)}, dashed, solid.`,
  }),
  'page-overlap-out-of-range': ({ mostMm }, say) => ({
    message: 'Pages do not overlap by so much.',
    remedy: `Give an overlap of 0 to ${say.number(mostMm)} mm, such as --overlap "10 mm".`,
  }),
  'overlap-without-columns': () => ({
    message: 'How far pages overlap says nothing without how many of them stand in a row.',
    remedy: 'Give both, such as --columns 4 --overlap "10 mm".',
  }),
  'layer-beside-sizes': () => ({
    message: 'One size is asked for, and several.',
    remedy: 'Give --layer for one of them, or --sizes for all.',
  }),
  'size-not-told': ({ name, names }, say) => ({
    message: `${say.written(name)} is none of the sizes that are told.`,
    remedy: `Choose from ${say.list(names.map(say.written))}, or tell it too: --sizes "${name}=red".`,
  }),
  'option-not-for-this': ({ option, kinds }, say) => ({
    message: `--${option} says nothing of what this file is.`,
    remedy: `Leave --${option} away: it is for ${say.list(kinds.map(kind => kindNames[kind]))}.`,
  }),
  'columns-out-of-range': () => ({
    message: 'So many pages do not stand in a row.',
    remedy: 'Give a whole number from 1, such as --columns 4.',
  }),
  'unit-unknown': () => ({
    message: 'This is no unit that a drawing is read in.',
    remedy: 'Give --unit mm, --unit cm or --unit in.',
  }),
  'options-of-pictures': () => ({
    message: 'A drawing, or a sheet of measured points, has its scale in its own figures.',
    remedy: 'Leave the options away that are for photographs and scans.',
  }),
  'places-not-understood': () => ({
    message: 'A place in a picture is two numbers with a comma between.',
    remedy: 'Write places with spaces between, as in "412,880 2950,905".',
  }),
};

const count = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;

export const traceSentences: Sentences<TraceSentences> = {
  'reading-pictures': () => 'Reading the pictures',
  'looking-for-sheets': () => 'Looking for the sheets',
  'measuring-floor': () => 'Measuring the floor',
  'flattening-picture': () => 'Flattening the picture',
  'reading-pages': () => 'Reading the pages',
  'laying-pages': () => 'Laying the pages beside one another',
  'tracing-pieces': () => 'Tracing the pieces',
  'pieces-traced': ({ pieces, sheets, residualMm }, say) =>
    residualMm === undefined
      ? count(pieces, 'piece')
      : `${count(pieces, 'piece')}, measured by ${count(sheets, 'sheet')} that agree to ${say.number(residualMm, 2)} mm,`,
  'frame-printed': ({ sheets, paper }) =>
    `${count(sheets, 'sheet')} of ${paper} (print at actual size, and measure the square on one)`,
};
