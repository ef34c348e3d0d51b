import {
  edgeNames,
  type LineRole,
  type Pattern,
  type Piece,
  type Point,
  type Seam,
} from '@paperhinge/geometry';
import { edgesOfRole, lineRoleOf } from '@paperhinge/geometry/pattern';
import { dot, subtract } from '@paperhinge/geometry/plane';
import { grainOrVertical } from '../../moved-edges/grain.js';
import type { lengthen } from '../../operations/shorten.js';
import { spread } from '../../operations/spread.js';
import type { letOut } from '../../operations/take-in.js';
import { acrossAt, alongGrainAt, bottomOf, lengthOf, levelPoint, seamFor, seamsFor } from './landmarks.js';
import { swungLeg } from './limb.js';
import { each, placeOn, type Recipe } from './recipe.js';
import { endTouching, shareAtLevel } from './seam-places.js';
import { refusal } from './tellings.js';

// What is altered in length, and from the waist down.

/** At the line drawn for it, else at the waist; both halves alike. */
export const torso =
  (change: typeof lengthen): Recipe =>
  (pattern, by) =>
    (['front', 'back'] as const).flatMap(where =>
      each(where, (now, piece) => change(now, { pieces: [piece.name], at: lineFor(piece, ['waist']), by }))(
        pattern,
      ),
    );

export const crotchDepth =
  (change: typeof lengthen): Recipe =>
  (pattern, by) =>
    each('trousers', (now, piece) => change(now, { pieces: [piece.name], at: lineFor(piece, ['hip']), by }))(
      pattern,
    );

function lineFor(piece: Piece, roles: readonly LineRole[]): string {
  const drawn =
    piece.lines.find(line => line.kind === 'lengthen-shorten') ??
    piece.lines.find(line => line.kind === 'level' && roles.some(role => lineRoleOf(line) === role));
  if (drawn) return drawn.name;
  throw refusal('adjust-needs-level', { piece: { piece: piece.name }, levels: roles }, { piece: piece.name });
}

const outer = (pattern: Pattern): 'side' | 'outseam' =>
  pattern.pieces.some(piece => edgesOfRole(piece, 'outseam').length > 0) ? 'outseam' : 'side';

/** Full from the hip down, and to nothing at the waist. */
export const hips =
  (change: typeof letOut): Recipe =>
  (pattern, by) => {
    const role = outer(pattern);
    const seams = seamsFor(pattern, role);
    const hipOf = (seam: Seam) => shareAtLevel(pattern, seam, ['hip', 'abdomen'], role);
    const seam = seams.find(one => hipOf(one) !== undefined);
    if (!seam)
      throw refusal('adjust-needs-level', { piece: { piece: seams[0]!.a[0]!.piece }, levels: ['hip'] });
    const top = shareAtLevel(pattern, seam, ['waist'], role) ?? endTouching(pattern, seam, ['waist']) ?? 0;
    return [now => change(now, { seam: seam.name, by, from: { share: hipOf(seam)! }, to: { share: top } })];
  };

/** Full at the waist, to nothing at the hip, and above at the bust or armhole where the garment goes on. */
export const waist =
  (change: typeof letOut): Recipe =>
  (pattern, by) => {
    const role = outer(pattern);
    const seam = seamFor(pattern, role);
    const level = shareAtLevel(pattern, seam, ['waist'], role);
    const hip = shareAtLevel(pattern, seam, ['hip', 'abdomen'], role);
    const end = endTouching(pattern, seam, ['waist']);
    if (end !== undefined)
      return [
        now => change(now, { seam: seam.name, by, from: { share: end }, to: { share: hip ?? 1 - end } }),
      ];
    if (level === undefined)
      throw refusal('adjust-needs-level', { piece: { piece: seam.a[0]!.piece }, levels: ['waist'] });
    // As far below the waist as above it, so that all of it is at the waist.
    const reach = Math.min(level, 1 - level, hip === undefined ? 1 : Math.abs(hip - level)) * 0.98;
    return [
      now =>
        change(now, { seam: seam.name, by, between: [{ share: level - reach }, { share: level + reach }] }),
    ];
  };

/** Half of what the leg gains is each piece's. */
export const thigh =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    each('trousers', (now, piece) => swungLeg(now, piece, (sign * by) / 2))(pattern);

/** The crotch points reach farther under the body, and the inseam runs to nothing at the knee. */
export const crotchPoint =
  (change: typeof letOut): Recipe =>
  (pattern, by) => {
    const inseam = seamFor(pattern, 'inseam');
    const top = endTouching(pattern, inseam, ['crotch']) ?? 0;
    const knee = shareAtLevel(pattern, inseam, ['knee'], 'inseam') ?? 1 / 2;
    return [now => change(now, { seam: inseam.name, by, from: { share: top }, to: { share: knee } })];
  };

/**
 * A wedge from the hem, hinged above the abdomen: at the waist, or in one piece with a bodice at the side there; as wide
 * at the level as asked.
 */
export const abdomen: Recipe = (pattern, by) =>
  each('skirt front', (now, piece) => {
    const bottom = bottomOf(piece);
    const at = lengthOf(piece, bottom) / 2;
    const from = placeOn(piece, bottom, at);
    const top = topAbove(piece, from, bottom);
    const above = placeOn(piece, top.edge, top.along);
    const level = acrossSlash(from, above, piece);
    const onSkirt = edgesOfRole(piece, 'shoulder').length === 0;
    const even = onSkirt && level > steepest;
    return spread(now, {
      piece: piece.name,
      from: { edge: bottom, at: { mm: at } },
      to: { edge: top.edge, at: { mm: top.along } },
      // So near to the top a wedge would swing the hem out: the skirt is widened evenly instead.
      by: even ? by / 2 : (by / 2) * level,
      hinge: even ? 'none' : 'to',
    });
  })(pattern);

/** Times as wide at the hem as at the level: beyond it a skirt would stand out. */
const steepest = 3;

/** Where a wedge from the hem hinges: straight up the grain, or at the side of the waist of a piece that goes on above. */
function topAbove(
  piece: Piece,
  from: Point,
  bottom: string,
): { readonly edge: string; readonly along: number } {
  if (edgesOfRole(piece, 'shoulder').length > 0) return acrossAt(piece, levelPoint(piece, ['waist']), 'side');
  const named = edgesOfRole(piece, 'waist');
  const edges = named.length > 0 ? named : edgeNames(piece).filter(edge => edge !== bottom);
  for (const edge of edges) {
    const along = alongGrainAt(piece, from, edge);
    if (along !== undefined) return { edge, along };
  }
  throw refusal('adjust-needs-edge', { piece: { piece: piece.name }, role: 'waist' }, { piece: piece.name });
}

/** How much wider a wedge is at the hem than at the abdomen, or the hip: as its slash is longer. */
function acrossSlash(from: Point, above: Point, piece: Piece): number {
  const { grain } = grainOrVertical(piece);
  const whole = dot(subtract(from, above), grain);
  const level = dot(subtract(levelPoint(piece, ['abdomen', 'hip']), above), grain);
  return Math.abs(whole / level);
}
