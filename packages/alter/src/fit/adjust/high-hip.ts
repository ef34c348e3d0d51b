import {
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { intersectPaths, pointAlong } from '@paperhinge/geometry/paths';
import { edgesOfRole, foldEdgeOf, outlinePath } from '@paperhinge/geometry/pattern';
import { dot, subtract } from '@paperhinge/geometry/plane';
import { freeName } from '../../dividing/joined-ring.js';
import { grainOrVertical, middleOf, upAlongGrain } from '../../moved-edges/grain.js';
import { lineThrough, reachOf } from '../../moved-edges/meet.js';
import { separatePair } from '../../operations/separate-pair.js';
import { spread } from '../../operations/spread.js';
import { unfold } from '../../operations/unfold.js';
import type { Part } from './in-steps.js';
import { levelPoint, piecesFor } from './landmarks.js';
import type { Recipe } from './recipe.js';
import { refusal } from './tellings.js';

/**
 * One hip higher than the other. Left and right differ, so a half on the fold is opened out first, and a pair made two
 * pieces. On paper: front and back are slashed across at the hip from the side that is higher, hinged at the other side (at
 * the centre where a seam parts the halves), and opened there by so much. Rigid: what lies above and below the slash.
 * Source: common practice, no source.
 *
 * @param side the wearer's, as she wears it; pieces are drawn with the right side of the cloth up
 */
export const highHip =
  (side: 'left' | 'right'): Recipe =>
  (pattern, by) =>
    (['skirt front', 'skirt back'] as const).flatMap(where =>
      piecesFor(pattern, where).flatMap(({ name }) => {
        // Looked at from the outside a front's left is on the right of the page, and a back's on the left.
        const onRight = (where === 'skirt front') === (side === 'left');
        return [apart(name), raised(name, onRight, by)];
      }),
    );

/** Left and right as cloth of their own. */
const apart =
  (name: string): Part =>
  now => {
    const piece = pieceNamed(now, name);
    if (foldEdgeOf(piece)) return unfold(now, { piece: name });
    if (sidesOf(piece).length > 1) return { pattern: now, did: '', findings: [] };
    return separatePair(now, { piece: name, name: otherName(now, name) });
  };

const otherName = (pattern: Pattern, name: string): string =>
  freeName(`other ${name}`, new Set(pattern.pieces.map(piece => piece.name)));

const raised =
  (name: string, onRight: boolean, by: number): Part =>
  now => {
    const own = pieceNamed(now, name);
    const halves = [own, ...now.pieces.filter(piece => piece.name.startsWith(`other ${name}`))];
    const slashes = halves.flatMap(piece =>
      sidesOf(piece)
        .filter(edge => liesOnRight(piece, edge) === onRight)
        .flatMap(edge => slashAcross(piece, edge)),
    );
    const [slash] = slashes;
    if (!slash) throw refusal('adjust-needs-edge', { piece: { piece: name }, role: 'side' }, { piece: name });
    return spread(now, { ...slash, by });
  };

const sidesOf = (piece: Piece): readonly string[] => edgesOfRole(piece, 'side', 'outseam');

/** Whether an edge lies on the right of its piece's middle, up being up. */
function liesOnRight(piece: Piece, edge: string): boolean {
  const up = upAlongGrain(piece);
  const path = edgePath(piece, edge);
  const middle = pointAlong(path, pathLength(path) / 2);
  return dot(subtract(middle, middleOf(piece)), { x: -up.y, y: up.x }) > 0;
}

/**
 * Across at the hip from one edge to what lies opposite; none where the hip lies above or below the edge.
 * @throws PatternError `adjust-needs-level`
 */
function slashAcross(piece: Piece, side: string) {
  const point: Point = levelPoint(piece, ['hip', 'abdomen']);
  const { grain } = grainOrVertical(piece);
  const line = lineThrough(point, { x: -grain.y, y: grain.x }, reachOf(outlinePath(piece.outline)));
  const places = edgeNames(piece).flatMap(edge => {
    const [met] = intersectPaths(line, edgePath(piece, edge));
    return met ? [{ edge, along: met.alongA, at: { mm: met.alongB } }] : [];
  });
  const own = places.find(({ edge }) => edge === side);
  if (!own) return [];
  const far = ({ along }: (typeof places)[number]): number => Math.abs(along - own.along);
  const [opposite] = places.filter(({ edge }) => edge !== side).toSorted((a, b) => far(b) - far(a));
  if (!opposite) return [];
  const end = ({ edge, at }: (typeof places)[number]) => ({ edge, at });
  return [{ piece: piece.name, from: end(own), to: end(opposite) }];
}
