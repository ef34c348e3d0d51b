import type { Fabric, Finding, LengthUnit, Pattern } from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import { arrange } from '../place/arrange.js';
import { placed } from '../place/arrangement.js';
import { boxOf, type Polygon } from '../plane/polygon.js';
import { finding } from '../tellings.js';
import { type ClothWay, type CutShape, cutShapes } from './cut-shapes.js';

/** Something cut, where it lies on the cloth: mm from the left selvedge (or fold) and from the cut end. */
export interface LaidShape {
  readonly piece: string;
  /** Numbered from 1 among those of the piece. */
  readonly copy: number;
  readonly outline: Polygon;
}

/** A cloth laid one way, and what of it all pieces take. */
export interface ClothLay {
  readonly way: ClothWay;
  /** mm across: what pieces may lie on, the selvedges left out. */
  readonly acrossMm: number;
  /** mm that the pieces reach along the cloth. */
  readonly lengthMm: number;
  /** mm to buy: that, a repeat more for each piece where the cloth repeats, 5 % over, rounded up as cloth is sold. */
  readonly buyMm: number;
  readonly laid: readonly LaidShape[];
}

/** What there is to buy of one cloth. */
export interface ClothNeeded {
  readonly cloth: string;
  readonly widthMm: number;
  /** The ways in which all pieces find room, the one that needs least first. */
  readonly lays: readonly ClothLay[];
  /** Pieces that no cloth of this width holds, and mm that each is across. */
  readonly tooWide: readonly { readonly piece: string; readonly acrossMm: number }[];
}

/** mm at either side that are not cut into (common practice, no source). */
export const selvedge = 15;
/** Over what lies there, for shrinkage and slips of the scissors (common practice, no source). */
export const spare = 1.05;
/** mm in which cloth is sold: 5 cm, or an eighth of a yard (common practice, no source). */
export const soldBy = (unit: LengthUnit): number => (unit === 'in' ? 114.3 : 50);
/** Orders tried, times the shapes: more saves a centimetre now and then, and takes seconds. */
const tries = 60;
/** mm: longer than any lay. */
const longest = 1e5;

/**
 * What there is to buy of each cloth whose width is known: all pieces laid with their grain along it, folded in two
 * layers and opened out in one; tops all one way where it has a nap. Laid by 5 mm cells with a cell between, so that
 * the lay is one that can be cut, not the shortest there is. Same input, same answer.
 * @throws PatternError what a piece's cutting line refuses
 */
export function layCloths(pattern: Pattern): readonly ClothNeeded[] {
  requireWhole(pattern);
  return pattern.fabrics.flatMap(fabric => {
    const { name, width } = fabric;
    if (width === undefined) return [];
    const open = cutShapes(pattern, name, 'open');
    if (open.length === 0) return [];
    const tooWide = widerThan(open, width - 2 * selvedge);
    const lays = tooWide.length > 0 ? [] : bothWays(pattern, fabric, width, open);
    return [{ cloth: name, widthMm: width, lays, tooWide }];
  });
}

function bothWays(
  pattern: Pattern,
  fabric: Fabric,
  width: number,
  open: readonly CutShape[],
): readonly ClothLay[] {
  const across = { folded: width / 2 - selvedge, open: width - 2 * selvedge };
  const folded = cutShapes(pattern, fabric.name, 'folded');
  const lays = [laid('open', open, across.open, fabric, pattern.unit)];
  if (widerThan(folded, across.folded).length === 0)
    lays.unshift(laid('folded', folded, across.folded, fabric, pattern.unit));
  return lays.sort((a, b) => a.lengthMm - b.lengthMm);
}

function laid(
  way: ClothWay,
  shapes: readonly CutShape[],
  acrossMm: number,
  { nap, repeat = 0 }: Fabric,
  unit: LengthUnit,
): ClothLay {
  const field = { width: acrossMm, height: longest, overlap: 0 };
  const turning = nap ? 'none' : 'half';
  const { placings, length } = arrange(shapes, field, { shortest: true, tries, turning });
  const step = soldBy(unit);
  return {
    way,
    acrossMm,
    lengthMm: length,
    buyMm: Math.ceil(((length + repeat * shapes.length) * spare) / step) * step,
    laid: shapes.map(({ piece, copy, polygons }, i) => ({
      piece,
      copy,
      outline: placed(polygons[0]!, placings[i]!),
    })),
  };
}

/** Each piece once that reaches farther across than the cloth does. */
function widerThan(shapes: readonly CutShape[], acrossMm: number): ClothNeeded['tooWide'] {
  const wide = shapes.flatMap(({ piece, polygons }) => {
    const { width } = boxOf(polygons);
    return width > acrossMm ? [{ piece, acrossMm: width }] : [];
  });
  return wide.filter((w, i) => wide.findIndex(v => v.piece === w.piece) === i);
}

/** A piece that no cloth of the given width holds, with its grain along the cloth. */
export const clothFindings = (needed: readonly ClothNeeded[]): readonly Finding[] =>
  needed.flatMap(({ cloth, widthMm, tooWide }) =>
    tooWide.map(({ piece, acrossMm }) =>
      finding('warning', 'wider-than-cloth', { piece }, { cloth, acrossMm, mostMm: widthMm - 2 * selvedge }),
    ),
  );
