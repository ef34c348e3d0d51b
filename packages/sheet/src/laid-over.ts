import { edgeNames, edgePath, type Fabric, type Pattern, pathLength, pieceNamed } from '@paperhinge/geometry';
import { oncePerAll, requireWhole } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { fabricRoles, withPiece } from '@paperhinge/geometry/pattern';
import { factsFor, withFacts } from './facts-over.js';
import { refuse } from './faults.js';
import { refusal as patternRefusal } from './pattern-refusal.js';
import { requireSheet } from './require-sheet.js';
import { type LaidOver, sewingFor, withSewing } from './seams-over.js';
import type { Sheet, SheetFabric, SheetOpening } from './sheet.js';
import { refusal } from './tellings.js';

/**
 * The pattern with what the sheet says laid over what its drawing says: unit and tolerance, cloths, pieces, openings,
 * seams and fastenings; as far as it is told of what stands before the first step.
 *
 * @throws PatternError `opening-too-long`: an opening longer than its edge; unknown edges of pieces that are there;
 *   what `toldSeams` refuses
 */
export function laidOver(pattern: Pattern, sheet: Sheet): LaidOver {
  requireWhole(pattern);
  requireSheet(sheet);
  const { tolerance } = sheet;
  const plain: Pattern = {
    ...pattern,
    unit: sheet.places.unit ? sheet.unit : pattern.unit,
    fabrics: fabricsOver(pattern.fabrics, sheet.fabrics),
    ...(tolerance === undefined ? {} : { tolerance }),
  };
  const factual = withFacts(plain, sheet, factsFor(sheet, pattern).now);
  const openings = sheet.openings.filter(opening => standsIn(pattern, opening));
  const opened = openings.reduce(withOpening(sheet.file), factual);
  return withSewing(opened, sheet, sewingFor(sheet, opened).now);
}

/**
 * What is told of pieces and edges that the steps make, laid over once those stand; of the same, the same pattern.
 * @throws SheetFaults `unknown-edge`, `unknown-piece` for what never came
 */
export const withLateFacts: (before: Pattern, altered: Pattern, sheet: Sheet) => LaidOver =
  /* @__PURE__ */ oncePerAll((before, altered, sheet) => {
    requireWhole(before);
    requireWhole(altered);
    requireSheet(sheet);
    return [before, altered, sheet];
  }, lateFactsOver);

function lateFactsOver(before: Pattern, altered: Pattern, sheet: Sheet): LaidOver {
  const factual = withFacts(altered, sheet, factsFor(sheet, before).later);
  const late = sheet.openings.filter(opening => !standsIn(before, opening));
  const names = factual.pieces.map(p => p.name);
  refuse(
    late
      .filter(opening => !standsIn(factual, opening))
      .map(({ piece, edge, place }) => {
        const owner = factual.pieces.find(p => p.name === piece);
        const where = { file: sheet.file, ...place, piece, edge };
        return owner
          ? patternRefusal('unknown-edge', { name: edge, names: edgeNames(owner), piece }, where)
          : patternRefusal('unknown-piece', { name: piece, names }, where);
      }),
  );
  const opened = late.reduce(withOpening(sheet.file), factual);
  return withSewing(opened, sheet, sewingFor(sheet, before).later);
}

const standsIn = (pattern: Pattern, { piece, edge }: SheetOpening): boolean =>
  pattern.pieces.some(p => p.name === piece && edgeNames(p).includes(edge));

const withOpening =
  (file: string) =>
  (pattern: Pattern, { piece, edge, length, place }: SheetOpening): Pattern => {
    const owner = pieceNamed(pattern, piece);
    const edgeMm = pathLength(edgePath(owner, edge));
    // As it is typed the length of an edge is rounded.
    if (length > edgeMm + tolerances.seamTolerance)
      throw refusal('opening-too-long', { edgeMm }, { file, ...place, piece, edge });
    const parts = owner.outline.parts.map(part =>
      part.type === 'edge' && part.name === edge ? { ...part, opening: Math.min(length, edgeMm) } : part,
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
const roleNamed = (name: string): Fabric['role'] => fabricRoles.find(role => role === name) ?? 'main';
