import {
  edgeNames,
  edgePath,
  type LineRole,
  type Pattern,
  type Piece,
  type Point,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pointAlong } from '@paperhinge/geometry/paths';
import { edgesOfRole, lineRoleOf } from '@paperhinge/geometry/pattern';
import { distance, dot, subtract } from '@paperhinge/geometry/plane';
import { grainOrVertical } from '../../moved-edges/grain.js';
import { moveDartPoint } from '../../operations/move-dart-point.js';
import { moveSeam } from '../../operations/move-seam.js';
import { recutEdge } from '../../operations/recut-edge.js';
import { lengthen, shorten } from '../../operations/shorten.js';
import { spread } from '../../operations/spread.js';
import { letOut, takeIn } from '../../operations/take-in.js';
import { trueEdges } from '../../operations/true-edges.js';
import { sideDart, swungBust } from './bust.js';
import type { Part } from './in-steps.js';
import {
  acrossAt,
  alongGrainAt,
  bottomOf,
  bustMarkOf,
  bustPointOf,
  edgeFor,
  lengthOf,
  levelPoint,
  piecesFor,
  seamFor,
  seamsFor,
  type Where,
} from './landmarks.js';
import { swungLeg, swungSleeve } from './limb.js';
import type { Adjustment } from './names.js';
import { endTouching, shareAtLevel } from './seam-places.js';
import { slidShoulder } from './shoulder.js';
import { refusal } from './tellings.js';

/** The steps of an adjustment, for a pattern and an amount in mm, 0 or more. */
type Recipe = (pattern: Pattern, by: number) => readonly Part[];

/** A step for each piece of a part of the body, by its name, as the piece is when its turn comes. */
const each =
  (where: Where, part: (pattern: Pattern, piece: Piece) => ReturnType<Part>) =>
  (pattern: Pattern): readonly Part[] =>
    piecesFor(pattern, where).map(
      ({ name }) =>
        now =>
          part(now, pieceNamed(now, name)),
    );

const bust =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    piecesFor(pattern, 'front').flatMap((piece): readonly Part[] => {
      const { name } = piece;
      // Half of what the garment gains is each half's.
      const swing: Part = now => swungBust(now, pieceNamed(now, name), (sign * by) / 2);
      const dart = sideDart(piece);
      const back = dart ? distance(dart.apex, bustPointOf(piece)) : 0;
      if (!dart || back < tolerances.coincidenceTolerance) return [swing];
      // The dart turns about the bust point itself; its stitched point is set back again as it was.
      return [
        now => moveDartPoint(now, { piece: name, dart: dart.name, to: bustMarkOf(piece) }),
        swing,
        now => moveDartPoint(now, { piece: name, dart: dart.name, deeper: -back }),
      ];
    });

const bustLevel =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    each('front', (now, piece) => {
      const dart = sideDart(piece);
      if (!dart) throw refusal('adjust-needs-dart', { piece: { piece: piece.name } }, { piece: piece.name });
      return moveDartPoint(now, { piece: piece.name, dart: dart.name, up: sign * by });
    })(pattern);

/** mm. What is drawn straight again moves by no more than what opened, and a little for lines that were curved. */
const slack = 10;

/** A wedge from the centre to nothing at the other side, across at a level; the centre is drawn straight again. */
const wedge =
  (where: Where, levels: readonly LineRole[], sign: 1 | -1): Recipe =>
  (pattern, by) => [
    ...each(where, (now, piece) => {
      const at = levelPoint(piece, levels);
      const centre = acrossAt(piece, at, edgesOfRole(piece, 'crotch').length > 0 ? 'crotch' : 'centre');
      const hinge = acrossAt(piece, at, edgesOfRole(piece, 'outseam').length > 0 ? 'outseam' : 'side');
      return spread(now, {
        piece: piece.name,
        from: { edge: centre.edge, at: { mm: centre.along } },
        to: { edge: hinge.edge, at: { mm: hinge.along } },
        by: sign * by,
      });
    })(pattern),
    ...each(where, (now, piece) => straightCentre(now, piece, by + slack))(pattern),
  ];

/** A centre that a wedge bent is drawn straight; a crotch keeps its curve. */
function straightCentre(pattern: Pattern, piece: Piece, within: number): ReturnType<Part> {
  const crotch = edgesOfRole(piece, 'crotch')[0];
  if (crotch !== undefined)
    return trueEdges(pattern, { edges: [{ piece: piece.name, edge: crotch }], within });
  return trueEdges(pattern, {
    edges: [{ piece: piece.name, edge: edgeFor(piece, 'centre') }],
    straight: true,
    within,
  });
}

/** A wedge from the centre, half way down the armhole, to nothing at the armhole. */
const acrossChest =
  (where: 'front' | 'back', sign: 1 | -1): Recipe =>
  (pattern, by) => [
    ...each(where, (now, piece) => {
      const armhole = edgeFor(piece, 'armhole');
      const along = lengthOf(piece, armhole) / 2;
      const centre = acrossAt(piece, placeOn(piece, armhole, along), 'centre');
      return spread(now, {
        piece: piece.name,
        from: { edge: centre.edge, at: { mm: centre.along } },
        to: { edge: armhole, at: { mm: along } },
        by: sign * by,
      });
    })(pattern),
    ...each(where, (now, piece) => straightCentre(now, piece, by + slack))(pattern),
  ];

/** Parallel from the middle of the shoulder straight down: as much at the hem as at the shoulder. */
const acrossBack =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    each('back', (now, piece) => {
      const shoulder = edgeFor(piece, 'shoulder'),
        bottom = bottomOf(piece);
      const along = lengthOf(piece, shoulder) / 2;
      const below = alongGrainAt(piece, placeOn(piece, shoulder, along), bottom);
      if (below === undefined)
        throw refusal(
          'adjust-needs-edge',
          { piece: { piece: piece.name }, role: 'hem' },
          { piece: piece.name },
        );
      return spread(now, {
        piece: piece.name,
        from: { edge: shoulder, at: { mm: along } },
        to: { edge: bottom, at: { mm: below } },
        by: (sign * by) / 2,
        hinge: 'none',
      });
    })(pattern);

const shoulderLength =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    (['front', 'back'] as const).flatMap(where =>
      each(where, (now, piece) =>
        spread(now, {
          piece: piece.name,
          from: { edge: edgeFor(piece, 'shoulder') },
          to: { edge: edgeFor(piece, 'armhole') },
          by: sign * by,
        }),
      )(pattern),
    );

const slope =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    (['front', 'back'] as const).flatMap(where => [
      ...each(where, (now, piece) => slidShoulder(now, piece, sign * by))(pattern),
      ...each(where, (now, piece) =>
        trueEdges(now, {
          edges: [{ piece: piece.name, edge: edgeFor(piece, 'shoulder') }],
          straight: true,
          within: by + slack,
        }),
      )(pattern),
    ]);

/** The shoulder seam comes forward at the armhole, and stays at the neck. */
const forwardShoulder: Recipe = (pattern, by) => {
  const seam = seamFor(pattern, 'shoulder');
  const [front] = piecesFor(pattern, 'front');
  const atNeck = endTouching(pattern, seam, ['neck']);
  // A strip cannot run out to nothing at an end; a hair of it stays at the neck.
  const amounts = atNeck === 1 ? ([by, hair] as const) : ([hair, by] as const);
  return [now => moveSeam(now, { seam: seam.name, into: front!.name, by: amounts })];
};
/** mm. Less than a pencil line. */
const hair = 0.2;

const upperArm =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    each('sleeve', (now, piece) => swungSleeve(now, piece, sign * by))(pattern);

/** At the line drawn for it, else at the waist; both halves alike. */
const torso =
  (change: typeof lengthen): Recipe =>
  (pattern, by) =>
    (['front', 'back'] as const).flatMap(where =>
      each(where, (now, piece) => change(now, { pieces: [piece.name], at: lineFor(piece, ['waist']), by }))(
        pattern,
      ),
    );

const crotchDepth =
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
const hips =
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
const waist =
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
const thigh =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    each('trousers', (now, piece) => swungLeg(now, piece, (sign * by) / 2))(pattern);

/** The crotch points reach farther under the body, and the inseam runs to nothing at the knee. */
const crotchPoint =
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
const abdomen: Recipe = (pattern, by) =>
  each('skirt front', (now, piece) => {
    const bottom = bottomOf(piece);
    const at = lengthOf(piece, bottom) / 2;
    const from = placeOn(piece, bottom, at);
    const top = topAbove(piece, from, bottom);
    const above = placeOn(piece, top.edge, top.along);
    const level = acrossSlash(from, above, piece);
    return spread(now, {
      piece: piece.name,
      from: { edge: bottom, at: { mm: at } },
      to: { edge: top.edge, at: { mm: top.along } },
      // So near to the top a wedge would swing the hem out: the skirt is widened evenly instead.
      by: level > steepest ? by / 2 : (by / 2) * level,
      hinge: level > steepest ? 'none' : 'to',
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

const neck: Recipe = (pattern, by) =>
  (['front', 'back'] as const).flatMap(where =>
    each(where, (now, piece) => recutEdge(now, { piece: piece.name, edge: edgeFor(piece, 'neck'), in: by }))(
      pattern,
    ),
  );

const placeOn = (piece: Piece, edge: string, along: number): Point =>
  pointAlong(edgePath(piece, edge), along);

/** The adjustments by the names that makers give them. */
export const recipes: Readonly<Record<Adjustment, Recipe>> = {
  'full bust': bust(1),
  'small bust': bust(-1),
  'high bust': bustLevel(1),
  'low bust': bustLevel(-1),
  'full abdomen': abdomen,
  'sway back': wedge('back', ['waist'], -1),
  'full seat': wedge('skirt back', ['hip'], 1),
  'flat seat': wedge('skirt back', ['hip'], -1),
  'broad back': acrossBack(1),
  'narrow back': acrossBack(-1),
  'round back': acrossChest('back', 1),
  'hollow chest': acrossChest('front', -1),
  'square shoulder': slope(1),
  'sloping shoulder': slope(-1),
  'forward shoulder': forwardShoulder,
  'broad shoulder': shoulderLength(1),
  'narrow shoulder': shoulderLength(-1),
  'full upper arm': upperArm(1),
  'thin upper arm': upperArm(-1),
  'full thigh': thigh(1),
  'thin thigh': thigh(-1),
  'long torso': torso(lengthen),
  'short torso': torso(shorten),
  'long crotch': crotchDepth(lengthen),
  'short crotch': crotchDepth(shorten),
  'long crotch point': crotchPoint(letOut),
  'short crotch point': crotchPoint(takeIn),
  'full hips': hips(letOut),
  'narrow hips': hips(takeIn),
  'full waist': waist(letOut),
  'narrow waist': waist(takeIn),
  'full neck': neck,
};
