import {
  blendSizes,
  definePattern,
  type Pattern,
  PatternError,
  type PatternReading,
  readPattern,
  type Where,
} from '@paperhinge/geometry';
import { renamed, withRoles } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import { type MeasuredPiece, type MeasuredReading, measuredPiece } from '@paperhinge/geometry/trace';
import { placeOf } from './facts-over.js';
import { requireSheet } from './require-sheet.js';
import type { Sheet } from './sheet.js';

/**
 * The pattern that a sheet is for: from its drawing, read with the sheet's `pieces` and `scale`, in the size that it
 * asks for, or between two of them; with the pieces that the sheet gives by measured points.
 *
 * @param source the drawing; undefined where the sheet names none
 * @param file the drawing's name, for findings and errors
 * @throws PatternError what `readPattern`, `blendSizes`, `measuredPiece` and `definePattern` refuse
 */
export function patternOfSheet(
  sheet: Sheet,
  source: Uint8Array | string | undefined,
  file: string,
): PatternReading {
  requireSheet(sheet);
  const drawn = source === undefined ? noDrawing(sheet) : calledBy(sheet, drawnPattern(sheet, source, file));
  if (sheet.measured.length === 0) return drawn;
  const measured = sheet.measured.map(piece => measuredIn(sheet, piece));
  const { pattern, findings, sizes } = drawn;
  const pieces = [...pattern.pieces, ...measured.map(({ piece }) => piece)];
  return {
    pattern: locating({ file: sheet.file }, () => definePattern({ ...pattern, pieces })),
    findings: [...findings, ...measured.flatMap(one => one.findings)],
    sizes,
  };
}

function noDrawing({ title, file, unit }: Sheet): PatternReading {
  const own = file.replace(/^.*[\\/]/, '').replace(/\.[^.]*$/, '');
  return {
    pattern: { name: title ?? own, unit, pieces: [], seams: [], fabrics: [] },
    findings: [],
    sizes: [],
  };
}

function drawnPattern(sheet: Sheet, source: Uint8Array | string, file: string): PatternReading {
  const { pieces, scale, size } = sheet;
  const options = { file, pieces, ...(scale === undefined ? {} : { scale }) };
  if (size === undefined) return readPattern(source, options);
  if (typeof size === 'string') return readPattern(source, { ...options, size });
  const [first, second] = size.between.map(one => readPattern(source, { ...options, size: one }));
  const pattern: Pattern = blendSizes(first!.pattern, second!.pattern, size.share);
  return { ...first!, pattern };
}

/** The pattern with its pieces and edges called as the sheet calls them. */
function calledBy(sheet: Sheet, reading: PatternReading): PatternReading {
  if (Object.keys(sheet.names).length === 0) return reading;
  const { pattern } = reading;
  try {
    return { ...reading, pattern: withRoles(renamed(pattern, sheet.names)) };
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    return locating(placeOf(sheet, error.where.piece ?? ''), () => {
      throw error;
    });
  }
}

/** A measured piece; what is told of it is told where the sheet speaks of its edge or of itself. */
function measuredIn(sheet: Sheet, measured: MeasuredPiece): MeasuredReading {
  const { name } = measured;
  const whereOf = ({ edge }: Where): Where =>
    placeOf(sheet, edge === undefined ? `${name}.points` : `${name}.edges.${edge}`);
  try {
    const { piece, findings } = measuredPiece(measured);
    return {
      piece,
      findings: findings.map(found => ({ ...found, where: { ...whereOf(found.where), ...found.where } })),
    };
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    return locating(whereOf(error.where), () => {
      throw error;
    });
  }
}
