import { type Dart, type LineRole, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { dartsOf, edgesOfRole, markRoleOf, neighboursOf } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import { matchEdge } from '../../operations/match-edge.js';
import { moveDartPoint } from '../../operations/move-dart-point.js';
import { moveSeam } from '../../operations/move-seam.js';
import { recutEdge } from '../../operations/recut-edge.js';
import { spread } from '../../operations/spread.js';
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
  type Where,
} from './landmarks.js';
import { swungSleeve } from './limb.js';
import { each, placeOn, type Recipe } from './recipe.js';
import { endTouching } from './seam-places.js';
import { slidShoulder } from './shoulder.js';
import { refusal } from './tellings.js';

// What is altered above the waist, and along a wedge from the centre.

export const bust =
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

export const bustLevel =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    each('front', (now, piece) => {
      const dart = bustDart(piece);
      if (!dart) throw refusal('adjust-needs-dart', { piece: { piece: piece.name } }, { piece: piece.name });
      return moveDartPoint(now, { piece: piece.name, dart: dart.name, up: sign * by });
    })(pattern);

/** The dart for the bust: that in the side, else the one in another edge than the lower whose point is nearest to it. */
function bustDart(piece: Piece): Dart | undefined {
  const mark = piece.marks.find(one => markRoleOf(one) === 'bust point');
  const { parts } = piece.outline;
  const bottom = bottomOf(piece);
  const above = dartsOf(piece).filter(dart => parts.at(parts.indexOf(dart) - 1)!.name !== bottom);
  const far = ({ apex }: Dart): number => (mark ? distance(apex, mark.at) : 0);
  return sideDart(piece) ?? above.toSorted((a, b) => far(a) - far(b))[0];
}

/** mm. What is drawn straight again moves by no more than what opened, and a little for lines that were curved. */
const slack = 10;

/** A wedge from the centre to nothing at the other side, across at a level; the centre is drawn straight again. */
export const wedge =
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
export const acrossChest =
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

/** Parallel from the middle of the shoulder straight down: as much at the hem as at the shoulder, which is eased or made good. */
export const acrossBack =
  (sign: 1 | -1): Recipe =>
  (pattern, by) => [
    ...each('back', (now, piece) => {
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
        // What the shoulder is longer by is eased to the front's.
        ...(sign > 0 ? { into: 'ease' as const } : {}),
      });
    })(pattern),
    ...(sign > 0 ? [] : each('back', shoulderAsLong)(pattern)),
  ];

/** A shoulder that an overlap made shorter is as long as its partner's again, at the armhole. */
function shoulderAsLong(pattern: Pattern, piece: Piece): ReturnType<Part> {
  const edge = edgeFor(piece, 'shoulder');
  const armhole = edgeFor(piece, 'armhole');
  const at = neighboursOf(piece, edge).end === armhole ? 'end' : 'start';
  return matchEdge(pattern, { edge: { piece: piece.name, edge }, at });
}

/** A wedge from the middle of the shoulder to the middle of the armhole; the shoulder is drawn straight to its new end. */
export const shoulderLength =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    (['front', 'back'] as const).flatMap(where => [
      ...each(where, (now, piece) => {
        const [shoulder, armhole] = [edgeFor(piece, 'shoulder'), edgeFor(piece, 'armhole')];
        return spread(now, {
          piece: piece.name,
          from: { edge: shoulder },
          to: { edge: armhole },
          angle: shoulderTurn(piece, shoulder, armhole, sign * by),
        });
      })(pattern),
      ...each(where, (now, piece) =>
        trueEdges(now, {
          edges: [{ piece: piece.name, edge: edgeFor(piece, 'shoulder') }],
          straight: true,
          within: by + slack,
        }),
      )(pattern),
    ]);

/** rad by which the outer shoulder turns about the middle of the armhole until its end is `by` mm farther from the neck. */
function shoulderTurn(piece: Piece, shoulder: string, armhole: string, by: number): number {
  const hinge = placeOn(piece, armhole, lengthOf(piece, armhole) / 2);
  const ends = [0, lengthOf(piece, shoulder)].map(along => placeOn(piece, shoulder, along));
  const [r, s] = ends.map(end => distance(end, hinge)) as [number, number];
  const long = distance(ends[0]!, ends[1]!);
  const angle = (mm: number): number => Math.acos((r * r + s * s - mm * mm) / (2 * r * s));
  const [least, most] = [Math.abs(r - s), r + s];
  if (long + by <= least || long + by >= most)
    throw refusal('adjust-too-much', {
      what: 'shoulder',
      byMm: Math.abs(by),
      mostMm: by > 0 ? most - long : long - least,
    });
  return angle(long + by) - angle(long);
}

export const slope =
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
export const forwardShoulder: Recipe = (pattern, by) => {
  const seam = seamFor(pattern, 'shoulder');
  const [front] = piecesFor(pattern, 'front');
  const atNeck = endTouching(pattern, seam, ['neck']);
  // A strip cannot run out to nothing at an end; a hair of it stays at the neck.
  const amounts = atNeck === 1 ? ([by, hair] as const) : ([hair, by] as const);
  return [now => moveSeam(now, { seam: seam.name, into: front!.name, by: amounts })];
};
/** mm. Less than a pencil line. */
const hair = 0.2;

export const upperArm =
  (sign: 1 | -1): Recipe =>
  (pattern, by) =>
    each('sleeve', (now, piece) => swungSleeve(now, piece, sign * by))(pattern);

export const neck: Recipe = (pattern, by) =>
  (['front', 'back'] as const).flatMap(where =>
    each(where, (now, piece) => recutEdge(now, { piece: piece.name, edge: edgeFor(piece, 'neck'), in: by }))(
      pattern,
    ),
  );
