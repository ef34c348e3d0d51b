import {
  edgeNames,
  edgePath,
  type Fabric,
  type Pattern,
  pathLength,
  pieceNamed,
  tolerances,
  withPiece,
} from '@paperhinge/geometry';
import { refuse } from './faults.js';
import { refusal as patternRefusal } from './pattern-refusal.js';
import type { Sheet, SheetFabric, SheetOpening } from './sheet.js';
import { refusal } from './tellings.js';

/**
 * The pattern with what the sheet says of its cloths and openings laid over what it says itself, reported in the
 * sheet's unit if it names one.
 * @throws PatternError `opening-too-long`: an opening longer than its edge
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
  const names = altered.pieces.map(p => p.name);
  refuse(
    late
      .filter(opening => !standsIn(altered, opening))
      .map(({ piece, edge, place }) => {
        const owner = altered.pieces.find(p => p.name === piece);
        const where = { file: sheet.file, ...place, piece, edge };
        return owner
          ? patternRefusal('unknown-edge', { name: edge, names: edgeNames(owner), piece }, where)
          : patternRefusal('unknown-piece', { name: piece, names }, where);
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
      throw refusal('opening-too-long', { edgeMm }, { file, ...place, piece, edge });
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
