import { type LineRole, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { edgesOfRole } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
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
      const dart = sideDart(piece);
      if (!dart) throw refusal('adjust-needs-dart', { piece: { piece: piece.name } }, { piece: piece.name });
      return moveDartPoint(now, { piece: piece.name, dart: dart.name, up: sign * by });
    })(pattern);

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

/** Parallel from the middle of the shoulder straight down: as much at the hem as at the shoulder. */
export const acrossBack =
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

export const shoulderLength =
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
