import type { EdgeRole, EdgeRun, PieceRole, Seam } from '../types.js';
import type { EdgeRoles } from './shape.js';

/** What is known of a piece while its edges' roles are being guessed. */
export interface Guessing {
  readonly role: PieceRole | undefined;
  readonly edges: EdgeRoles;
}

/** Pieces sewn along another's edge without sharing what that edge is. */
const applied: readonly PieceRole[] = [
  'band',
  'strip',
  'binding',
  'cuff',
  'collar',
  'pocket',
  'placket',
  'stay',
  'facing',
];

/** Roles that both sides of a seam share. */
const shared: readonly EdgeRole[] = [
  'shoulder',
  'side',
  'waist',
  'crotch',
  'inseam',
  'outseam',
  'panel',
  'yoke',
  'underarm',
];

/** Roles that seams tell: what is sewn to a shoulder is a shoulder, to an armhole a cap, a sleeve's own seam its underarm. */
export function rolesBySeams(
  seams: readonly Seam[],
  pieces: ReadonlyMap<string, Guessing>,
): ReadonlyMap<string, EdgeRoles> {
  const found = new Map([...pieces].map(([name, { edges }]) => [name, new Map(edges)]));
  const tell = (run: EdgeRun, role: EdgeRole): void => {
    const edges = found.get(run.piece);
    const piece = pieces.get(run.piece);
    if (edges && !edges.has(run.edge) && !(piece?.role && applied.includes(piece.role)))
      edges.set(run.edge, role);
  };
  for (const { a, b } of seams)
    for (const [side, other] of [
      [a, b],
      [b, a],
    ] as const) {
      const roles = new Set(other.flatMap(run => pieces.get(run.piece)?.edges.get(run.edge) ?? []));
      const [role] = roles;
      if (role === undefined || roles.size > 1) continue;
      for (const run of side) {
        const partner = partnerRole(role, pieces.get(run.piece));
        if (partner) tell(run, partner);
      }
    }
  for (const { a, b } of seams)
    for (const run of [...a, ...b])
      if (isOwnSeam([...a, ...b], run.piece) && isSleeve(pieces.get(run.piece), found.get(run.piece)))
        tell(run, 'underarm');
  return found;
}

function partnerRole(role: EdgeRole, piece: Guessing | undefined): EdgeRole | undefined {
  if (shared.includes(role)) return role;
  if (role === 'armhole') return piece?.role === 'sleeve' ? 'cap' : 'armhole';
  if (role === 'cap') return 'armhole';
  return undefined;
}

const isOwnSeam = (runs: readonly EdgeRun[], piece: string): boolean =>
  runs.every(run => run.piece === piece);

const isSleeve = (piece: Guessing | undefined, edges: EdgeRoles | undefined): boolean =>
  piece?.role === 'sleeve' || [...(edges?.values() ?? [])].includes('cap');
