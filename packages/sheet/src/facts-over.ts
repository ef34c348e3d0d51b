import { type Edge, edgeNames, type Pattern, type Piece, type Where } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { refusal as patternRefusal } from './pattern-refusal.js';
import type { EdgeFacts, PieceFacts } from './piece-fields.js';
import type { Sheet } from './sheet.js';

/** Names of the pieces that a sheet says something of and that stand in a pattern, and of those that do not yet. */
export function factsFor(sheet: Sheet, pattern: Pattern) {
  const stands = (name: string) => pattern.pieces.some(p => p.name === name);
  const names = Object.keys(sheet.facts);
  return { now: names.filter(stands), later: names.filter(name => !stands(name)) };
}

/**
 * The pattern with what a sheet says of these pieces laid over what the drawing says of them.
 * @throws PatternError `unknown-piece`, `unknown-edge` where the sheet names it
 */
export const withFacts = (pattern: Pattern, sheet: Sheet, names: readonly string[]): Pattern =>
  names.reduce((so, name) => {
    const where = placeOf(sheet, name);
    const piece = so.pieces.find(p => p.name === name);
    if (!piece)
      throw patternRefusal(
        'unknown-piece',
        { name, names: so.pieces.map(p => p.name) },
        { ...where, piece: name },
      );
    return withPiece(so, withOwnFacts(piece, sheet.facts[name]!, where));
  }, pattern);

/** Where the sheet speaks of a piece, or of a field of it: `front`, `front.edges.neck`. */
export const placeOf = ({ file, places, names }: Sheet, path: string): Where => {
  const [name, ...field] = path.split('.');
  const drawn = Object.keys(names).find(old => names[old]!.name === name) ?? name;
  const whole = ['pieces', drawn, ...field].join('.');
  const inside = Object.keys(places).find(path => path === whole || path.startsWith(`${whole}.`));
  return { file, ...(inside === undefined ? {} : places[inside]) };
};

function withOwnFacts(piece: Piece, facts: PieceFacts, where: Where): Piece {
  const { cutting, edges, ...own } = facts;
  const unknown = Object.keys(edges).find(edge => !edgeNames(piece).includes(edge));
  if (unknown !== undefined)
    throw patternRefusal(
      'unknown-edge',
      { name: unknown, names: edgeNames(piece), piece: piece.name },
      { ...where, piece: piece.name, edge: unknown },
    );
  const parts = piece.outline.parts.map(part =>
    part.type === 'edge' && Object.hasOwn(edges, part.name) ? withEdgeFacts(part, edges[part.name]!) : part,
  );
  return {
    ...piece,
    ...own,
    cutting: { ...piece.cutting, ...cutting },
    outline: Object.keys(edges).length > 0 ? { parts } : piece.outline,
  };
}

/** A fold and a raw edge have no allowance. */
function withEdgeFacts(edge: Edge, facts: EdgeFacts): Edge {
  const bare = facts.kind === 'fold' || facts.kind === 'raw';
  return { ...edge, ...facts, ...(bare ? { allowance: 0 } : {}) };
}
