import {
  edgeNames,
  type Fabric,
  type Pattern,
  PatternError,
  quoted,
  suggestion,
  withPiece,
} from '@paperhinge/geometry';
import { refuse } from './faults.js';
import type { Sheet, SheetFabric, SheetOpening } from './sheet.js';

/** The pattern with what the sheet says of its cloths and openings laid over what it says itself. */
export function laidOver(pattern: Pattern, sheet: Sheet): Pattern {
  const openings = sheet.openings.filter(opening => standsIn(pattern, opening));
  return openings.reduce(withOpening, { ...pattern, fabrics: fabricsOver(pattern.fabrics, sheet.fabrics) });
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
  return late.reduce(withOpening, altered);
}

const standsIn = (pattern: Pattern, { piece, edge }: SheetOpening): boolean =>
  pattern.pieces.some(p => p.name === piece && edgeNames(p).includes(edge));

function withOpening(pattern: Pattern, { piece, edge, length }: SheetOpening): Pattern {
  const owner = pattern.pieces.find(p => p.name === piece)!;
  const parts = owner.outline.parts.map(part =>
    part.type === 'edge' && part.name === edge ? { ...part, opening: length } : part,
  );
  return withPiece(pattern, { ...owner, outline: { parts } });
}

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
