import type { PhotoTellings, PlaceInPicture } from '@paperhinge/geometry/sayings';
import type { Tellings } from '../catalogue.js';

export const photo: Tellings<PhotoTellings> = {
  'no-target-found': ({ picture }) => ({
    message: `No sheet of a photo frame is to be seen in picture ${picture}.`,
    remedy:
      'Print the sheets (paperhinge print --photo-frame -o frame.pdf), lay them round the pieces, and photograph again from above.',
  }),
  'too-few-targets': ({ picture, sheets }) => ({
    message: `Only ${sheets === 1 ? '1 sheet' : `${sheets} sheets`} of the photo frame can be read in picture ${picture}.`,
    remedy: 'Lay at least four sheets round and between the pieces, nothing on them, and photograph again.',
  }),
  'picture-blurred': ({ picture }) => ({
    message: `Picture ${picture} is blurred: the sheets in it cannot be read.`,
    remedy: 'Photograph again in better light; hold the camera still and let it focus on the floor.',
  }),
  'picture-too-small': ({ picture, width, height }) => ({
    message: `Picture ${picture} is too small to measure by: ${width} × ${height} dots.`,
    remedy: 'Give the picture as the camera took it, not a copy made smaller for sending.',
  }),
  'pictures-share-no-sheets': ({ picture }) => ({
    message: `Picture ${picture} shares no sheets with the other pictures.`,
    remedy:
      'Let at least two sheets be seen in both of two pictures that follow each other, and move no sheet between.',
  }),
  'ground-not-seen': () => ({
    message: 'The floor itself cannot be told from what lies on it.',
    remedy:
      'Lay the pieces on a plain ground of another colour, with some of it to be seen round every sheet.',
  }),
  'scan-ground-not-seen': () => ({
    message: 'What lies on the scanner cannot be told from the ground behind it.',
    remedy: 'Lay a plain sheet of another colour behind the pieces, larger than they are, and scan again.',
  }),
  'no-piece-found': ({ faint, cutOff }) =>
    cutOff > 0
      ? {
          message:
            'The sheets were found; what lies beside them runs out of the picture, and nothing was traced.',
          remedy: 'Photograph again with all of every piece in the picture.',
        }
      : {
          message:
            faint === 0
              ? 'The sheets were found, but no piece beside them.'
              : 'The sheets were found; what lies beside them can hardly be told from the ground, and no piece was traced.',
          remedy:
            'Lay a sheet of another colour under the pieces, clear of the sheets, and photograph again.',
        },
  'no-piece-on-scan': ({ faint, cutOff }) =>
    cutOff > 0
      ? {
          message: 'What lies there is cut off by the edge of the scan; no piece was traced.',
          remedy: 'Scan whole pieces, or photograph them with the sheets of a photo frame.',
        }
      : {
          message:
            faint === 0
              ? 'No piece was found in the scan.'
              : 'What lies there can hardly be told from the ground; no piece was traced in the scan.',
          remedy:
            'Lay a sheet of another colour behind the pieces; for lines drawn on paper, give their corners.',
        },
  'too-few-clicks': ({ clicks }) => ({
    message: `${clicks === 1 ? '1 corner goes' : `${clicks} corners go`} round no piece.`,
    remedy: 'Give the corners of the piece in order, at least three.',
  }),
  'click-outside': ({ click }) => ({
    message: `Corner ${click} lies outside what the picture shows of the floor.`,
    remedy: 'Give corners in dots of the first picture: across, then down.',
  }),
  'no-line-between': ({ from, to }) => ({
    message: `No line leads from corner ${from} to corner ${to}.`,
    remedy:
      'Give the corners where the lines meet, each within 4 mm, and where a line is hard to see one more between them.',
  }),
  'size-not-drawn-there': ({ size, corner }, say) => ({
    message: `Near corner ${corner} no line of size ${say.written(size)} leads on.`,
    remedy: `Look how size ${say.written(size)} is drawn there and name its pen; or leave it out of --sizes and trace it by itself with --pen and corners of its own.`,
  }),
  'scan-scale-out-of-range': ({ dotsToMm }, say) => ({
    message: `A scan has no ${say.number(dotsToMm, 2)} dots to the millimetre.`,
    remedy: 'Give the resolution that the scanner was set to, such as 300 dpi.',
  }),
  'scan-cuts-off': ({ pieces }) => ({
    message: `${pieces === 1 ? 'Something is' : `${pieces} things are`} cut off by the edge of the scan and left out.`,
    remedy: 'Scan whole pieces, or photograph them with the sheets of a photo frame.',
  }),
  'scan-scale': ({ dotsToMm }, say) => ({
    message: `The scan was taken to have ${say.number(dotsToMm, 2)} dots to the millimetre everywhere; nothing in it says how true that is.`,
    remedy: 'Measure one long edge of a piece to be sure.',
  }),
  'trace-truth': ({ residualMm, worstMm, sheet }, say) => ({
    message: `The targets agree to ${fine(residualMm, say.number)} with each other; the worst, on sheet ${sheet}, is off by ${fine(worstMm, say.number)}.`,
    remedy: 'Measure one long edge of a piece to be sure.',
  }),
  'few-sheets': ({ sheets }) => ({
    message: `${sheets} sheets were read; the far ends of the pieces may be less true.`,
    remedy: 'Lay four to nine sheets, some beyond every end of the pieces.',
  }),
  'sheet-not-flat': ({ sheet, offMm }, say) => ({
    message: `Sheet ${sheet} does not lie flat, or was moved: parts of it are off by up to ${fine(offMm, say.number)}. They were left out.`,
    remedy: 'Press the sheet flat, or tape it down, and photograph again.',
  }),
  'sheet-laid-twice': ({ sheet }) => ({
    message: `Sheet ${sheet} lies there more than once. Each was measured by itself.`,
    remedy: 'Nothing need be done for one picture; for several pictures lay each sheet once.',
  }),
  'picture-aslant': ({ picture, tiltDeg }, say) => ({
    message: `Picture ${picture} was taken at a slant of ${say.angle(tiltDeg)}.`,
    remedy: 'Photograph from higher up, looking down as straight as you can.',
  }),
  'picture-coarse': ({ picture, dotMm }, say) => ({
    message: `A dot of picture ${picture} is ${fine(dotMm, say.number)} of floor.`,
    remedy: 'Go nearer, or take several pictures that share sheets.',
  }),
  'piece-cut-off': ({ at }) => ({
    message: `Something is cut off by the ${at} of the picture. It was left out.`,
    remedy: 'If it is a piece, photograph again with all of it in the picture.',
  }),
  'piece-beyond-sheets': ({ piece, beyondMm }, say) => ({
    message: `${say.written(piece)} reaches ${say.length(beyondMm)} beyond the sheets, where the picture is measured less truly.`,
    remedy: 'Lay a sheet beyond that end of the piece.',
  }),
  'pieces-counted': ({ pieces }) => ({
    message: `${pieces === 1 ? '1 piece was' : `${pieces} pieces were`} found.`,
    remedy:
      'If more lie there, lay a sheet of another colour under those that are missing and photograph again.',
  }),
  'piece-faint': ({ piece }, say) => ({
    message: `${say.written(piece)} can hardly be told from the ground; its outline may be off by more than half a millimetre, its corners by more.`,
    remedy: 'Lay a sheet of another colour under it, much lighter or darker, and photograph again.',
  }),
  'edge-faint': place => ({
    message: `Something ${spot(place)} of the picture can hardly be told from the ground. It was left out.`,
    remedy: 'If it is a piece, lay a sheet of another colour under it and photograph again.',
  }),
  'floor-too-bright': ({ sharePercent }, say) => ({
    message: `${say.number(sharePercent, 0)} % of the picture is so bright that nothing can be told from anything there.`,
    remedy: 'Photograph again without flash and out of the sun, with the camera set darker.',
  }),
  'piece-touches-sheet': ({ piece }, say) => ({
    message: `${say.written(piece)} lies on a sheet; its outline there is less sure.`,
    remedy: 'Lay the sheets clear of the pieces.',
  }),
};

const spot = ({ down, across }: PlaceInPicture): string =>
  down === 'middle'
    ? across === 'middle'
      ? 'in the middle'
      : `at the ${across}`
    : `at the ${down} ${across === 'middle' ? '' : across}`.trim();

/** Small lengths of a picture are millimetres in any unit: no ruler shows them. */
const fine = (mm: number, number: (value: number, decimals: number) => string): string =>
  `${number(mm, 2)} mm`;
