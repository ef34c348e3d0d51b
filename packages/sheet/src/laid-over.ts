import {
  edgeNames,
  edgePath,
  type Fabric,
  type Pattern,
  PatternError,
  pathLength,
  pieceNamed,
  quoted,
  suggestion,
  tolerances,
  withPiece,
} from '@paperhinge/geometry';
import { refuse } from './faults.js';
import type { Sheet, SheetFabric, SheetOpening } from './sheet.js';

/**
 * The pattern with what the sheet says of its cloths and openings laid over what it says itself, reported in the
 * sheet's unit if it names one.
 * @throws PatternError `opening-out-of-range`: an opening longer than its edge
 */
export function laidOver(pattern: Pattern, sheet: Sheet): Pattern {
  const openings = sheet.openings.filter(opening => standsIn(pattern, opening));
  return openings.reduce(withOpening(sheet.file), {
    ...pattern,
    unit: sheet.places.unit ? sheet.unit : pattern.unit,
    fabrics: fabricsOver(pattern.fabrics, sheet.fabrics),
  });
}

/** Openings in edges that the steps make are laid over once those stand. @throws SheetFaults `unknown-edge` */
export function withLateOpenings(before: Pattern, altered: Pattern, sheet: Sheet): Pattern {
  const late = sheet.openings.filter(opening => !standsIn(before, opening));
  refuse(
    late
      .filter(opening => !standsIn(altered, opening))
      .map(({ piece, edge, place }) => {
        const owner = altered.pieces.find(p => p.name === piece);
        const where = { file: sheet.file, ...place, piece, edge };
        const pieces = altered.pieces.map(p => p.name);
        return owner
          ? new PatternError('unknown-edge', {
              message: `Piece ${quoted(piece)} has no edge ${quoted(edge)}.`,
              remedy: suggestion(edge, edgeNames(owner), 'edges'),
              where,
            })
          : new PatternError('unknown-piece', {
              message: `The pattern has no piece ${quoted(piece)}.`,
              remedy: suggestion(piece, pieces, 'pieces'),
              where,
            });
      }),
  );
  return late.reduce(withOpening(sheet.file), altered);
}

const standsIn = (pattern: Pattern, { piece, edge }: SheetOpening): boolean =>
  pattern.pieces.some(p => p.name === piece && edgeNames(p).includes(edge));

const withOpening =
  (file: string) =>
  (pattern: Pattern, { piece, edge, length, place }: SheetOpening): Pattern => {
    const owner = pieceNamed(pattern, piece);
    const edgeMm = pathLength(edgePath(owner, edge));
    if (length > edgeMm + tolerances.coincidenceTolerance)
      throw new PatternError('opening-out-of-range', {
        message: `The opening is longer than its edge, which has ${edgeMm.toFixed(1)} mm.`,
        remedy: 'Give a length within the edge; an opening over two edges is given for each.',
        where: { file, ...place, piece, edge },
      });
    const parts = owner.outline.parts.map(part =>
      part.type === 'edge' && part.name === edge ? { ...part, opening: length } : part,
    );
    return withPiece(pattern, { ...owner, outline: { parts } });
  };

function fabricsOver(own: readonly Fabric[], given: readonly SheetFabric[]): readonly Fabric[] {
  const kept = own.map(fabric => ({ ...fabric, ...given.find(g => g.name === fabric.name) }));
  const added = given
    .filter(g => !own.some(fabric => fabric.name === g.name))
    .map(g => ({ ...g, role: g.role ?? roleNamed(g.name) }));
  return [...kept, ...added];
}

/** A cloth that goes by the name of a role has that role. */
const roleNamed = (name: string): Fabric['role'] => roles.find(role => role === name) ?? 'main';
const roles = ['main', 'contrast', 'lining', 'interfacing', 'stabiliser'] as const;
