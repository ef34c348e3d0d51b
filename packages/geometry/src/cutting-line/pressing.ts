import { nearestOnPath } from '../path/nearest.js';
import { type Path, pathEnd, pathStart } from '../path/path.js';

import { centreEdgeOf, isCentreLine } from '../pattern/roles/roles.js';
import type { Dart, Piece } from '../pattern/types.js';
import { angleTolerance, coincidenceTolerance } from '../tolerance.js';
import { add, cross, dot, type Point, subtract, unit } from '../vector.js';

/**
 * Which way a dart's intake is pressed: as the dart says, else (trade-notes §2) a dart whose axis lies within 45° of
 * square to the grain goes down, towards the leg whose mouth end lies further down the grain; any other towards the
 * leg nearer the fold, else the edge or line named `centre ...`, else the leg met first.
 */
export function pressedTowards(dart: Dart, piece: Piece): 'start' | 'end' | 'open' {
  if (dart.pressed) return dart.pressed;
  const a = pathStart(dart.legs[0]),
    b = pathEnd(dart.legs[1]);
  const down = downTheGrain(piece);
  const axis = dartAxis(dart);
  if (Math.abs(dot(axis, down)) <= Math.abs(cross(axis, down)) + angleTolerance)
    return dot(subtract(b, a), down) > coincidenceTolerance ? 'end' : 'start';
  const centre = centreOf(piece);
  if (!centre) return 'start';
  const nearerBy = nearestOnPath(centre, a).distance - nearestOnPath(centre, b).distance;
  return nearerBy > coincidenceTolerance ? 'end' : 'start';
}

/** Unit direction from a dart's apex through the middle of its mouth: the bisector of its two chords. */
export function dartAxis({ legs, apex }: Dart): Point {
  return unit(add(unit(subtract(pathStart(legs[0]), apex)), unit(subtract(pathEnd(legs[1]), apex))));
}

/** The grain line carries no arrow in the model, so down is down the page; along a level grain, as it was drawn. */
function downTheGrain(piece: Piece): Point {
  const grain = piece.lines.find(l => l.kind === 'grain');
  if (!grain) return { x: 0, y: 1 };
  const along = unit(subtract(pathEnd(grain.path), pathStart(grain.path)));
  return along.y < -angleTolerance ? { x: -along.x, y: -along.y } : along;
}

const centreOf = (piece: Piece): Path | undefined =>
  centreEdgeOf(piece)?.path ?? piece.lines.find(isCentreLine)?.path;
