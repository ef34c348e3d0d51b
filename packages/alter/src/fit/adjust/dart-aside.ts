import { type Dart, type Pattern, type Piece, pathLength, pieceNamed } from '@paperhinge/geometry';
import { dartsOf, edgesOfRole, partsOfEdge } from '@paperhinge/geometry/pattern';
import { moveDart } from '../../operations/move-dart.js';
import type { Part } from './in-steps.js';
import { acrossAt, edgeFor } from './landmarks.js';
import type { Recipe } from './recipe.js';

/**
 * A recipe done with the shoulders of these pieces whole: a dart in one is closed and opened at the side first, on the
 * level of its point, or in the armhole where its point lies above the underarm; afterwards it is moved back to its place.
 * So a cutter folds a dart away before she slashes through it.
 */
export const withShoulderWhole =
  (pieces: (pattern: Pattern) => readonly Piece[], recipe: Recipe): Recipe =>
  (pattern, by) => {
    const darts = pieces(pattern).flatMap(piece =>
      dartsInShoulder(piece).map(dart => ({ piece: piece.name, dart })),
    );
    if (darts.length === 0) return recipe(pattern, by);
    const aside = darts.map(
      ({ piece, dart }): Part =>
        now =>
          moveDart(now, { piece, dart: dart.name, to: placeAside(pieceNamed(now, piece), dart) }),
    );
    const back = darts.map(({ piece, dart }): Part => {
      const to = placeInShoulder(pieceNamed(pattern, piece), dart);
      return now => moveDart(now, { piece, dart: dart.name, to });
    });
    // The recipe looks for darts and places when it is made: with the shoulder whole.
    const whole = aside.reduce((now, part) => part(now).pattern, pattern);
    return [...aside, ...recipe(whole, by), ...back];
  };

function dartsInShoulder(piece: Piece): readonly Dart[] {
  const shoulders = edgesOfRole(piece, 'shoulder');
  const { parts } = piece.outline;
  return dartsOf(piece).filter(dart => {
    const i = parts.indexOf(dart);
    return [parts.at(i - 1)!, parts[(i + 1) % parts.length]!].every(({ name }) => shoulders.includes(name));
  });
}

/** Where across from its point the dart meets the side, else the middle of the armhole. */
function placeAside(piece: Piece, dart: Dart) {
  try {
    const { edge, along } = acrossAt(piece, dart.apex, 'side');
    return { edge, at: { mm: along } };
  } catch {
    return { edge: edgeFor(piece, 'armhole'), at: { share: 0.5 } };
  }
}

/** Its place as a share of the shoulder, which may be longer or shorter by then. */
function placeInShoulder(piece: Piece, dart: Dart) {
  const edge = edgesOfRole(piece, 'shoulder')[0]!;
  const i = piece.outline.parts.indexOf(dart);
  const lengths = partsOfEdge(piece, edge).map(part => ({
    before: piece.outline.parts.indexOf(part) < i,
    mm: pathLength(part.path),
  }));
  const sum = (own: typeof lengths): number => own.reduce((all, { mm }) => all + mm, 0);
  return { edge, at: { share: sum(lengths.filter(({ before }) => before)) / sum(lengths) } };
}
