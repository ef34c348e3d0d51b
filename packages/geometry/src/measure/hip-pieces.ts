import { oncePer } from '../once-per.js';
import { pieceNamed } from '../pattern/outline.js';
import { pieceRoleOf } from '../pattern/roles/roles.js';
import type { EdgeRun, Pattern } from '../pattern/types.js';

/**
 * The pockets' pieces that are a part of the garment's outside: the side piece behind a slanting mouth, which a seam
 * takes in on one side with the piece that it goes on from. The bags of a pocket in a seam lie on both its sides.
 */
export const hipPieces: (pattern: Pattern) => ReadonlySet<string> = /* @__PURE__ */ oncePer(
  (pattern: Pattern) => {
    const isPocket = ({ piece }: EdgeRun): boolean => pieceRoleOf(pieceNamed(pattern, piece)) === 'pocket';
    const sides = pattern.seams.flatMap(({ a, b }) => [[a, b] as const, [b, a] as const]);
    return new Set(
      sides
        .filter(([side, other]) => !side.every(isPocket) && !other.some(isPocket))
        .flatMap(([side]) => side.filter(isPocket).map(run => run.piece)),
    );
  },
);
