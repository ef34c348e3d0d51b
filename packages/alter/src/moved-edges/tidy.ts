import {
  type Mark,
  type Path,
  type PatternError,
  type Piece,
  type PieceLine,
  pathLength,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { intersectPaths, pointAlong, subpath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { containsPoint, selfCrossings, signedArea } from '@paperhinge/geometry/regions';
import type { ThingBecame } from '../became/became.js';
import type { Reshaped } from './chains.js';

/**
 * What an edit cut away of the lines and marks drawn within a piece: lines are cut back to the new outline, those
 * wholly outside it and marks outside it go.
 * @param before the piece before the edit; what already lay outside it is left as it was
 */
export function tidied(before: Piece, { piece, became, findings }: Reshaped): Reshaped {
  const was = outlinePath(before.outline),
    is = outlinePath(piece.outline);
  const gone: ThingBecame[] = [];
  const lines = piece.lines.flatMap((drawn): readonly PieceLine[] => {
    const path = insidePart(drawn.path, is);
    if (path === drawn.path) return [drawn];
    if (path === undefined && insidePart(drawn.path, was) === undefined) return [drawn];
    if (path !== undefined)
      return insidePart(drawn.path, was) === drawn.path ? [{ ...drawn, path }] : [drawn];
    gone.push({ was: { piece: piece.name, line: drawn.name } });
    return [];
  });
  const marks = piece.marks.filter((mark: Mark) => {
    if (containsPoint(is, mark.at) || !containsPoint(was, mark.at)) return true;
    gone.push({ was: { piece: piece.name, mark: mark.name } });
    return false;
  });
  const things = [...became.things, ...gone];
  return { piece: { ...piece, lines, marks }, became: { ...became, things }, findings };
}

/** The longest stretch of a line that lies within an outline: the line itself where all of it does. */
function insidePart(path: Path, outline: Path): Path | undefined {
  const length = pathLength(path);
  const cuts = [0, ...intersectPaths(path, outline).map(c => c.alongA), length].sort((a, b) => a - b);
  let from = 0,
    to = 0,
    start: number | undefined;
  for (const [i, cut] of cuts.slice(1).entries()) {
    const last = cuts[i]!;
    const inside =
      cut - last <= tolerances.coincidenceTolerance ||
      containsPoint(outline, pointAlong(path, (last + cut) / 2));
    if (!inside) start = undefined;
    else {
      start ??= last;
      if (cut - start > to - from) [from, to] = [start, cut];
    }
  }
  if (to - from <= tolerances.coincidenceTolerance) return undefined;
  const whole = from <= tolerances.coincidenceTolerance && to >= length - tolerances.coincidenceTolerance;
  return whole ? path : subpath(path, from, to);
}

/** @throws PatternError the one that is made, where the outline crosses itself, is turned inside out or without area */
export function requireSimple(piece: Piece, error: () => PatternError): void {
  const outline = outlinePath(piece.outline);
  const turned = signedArea(outline) <= tolerances.coincidenceTolerance;
  if (turned || selfCrossings(outline).length > 0) throw error();
}
