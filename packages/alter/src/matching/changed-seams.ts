import { type EdgeRef, type Finding, type Pattern, type Seam, walkSeam } from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { distinctEdges } from '../edge-refs.js';
import { lengthOfEdge } from './edge-length.js';
import { finding } from './tellings.js';

/**
 * What a step did to one side of a seam and not to the other, so that the two no longer match: told of the step, with
 * what mends it.
 *
 * @param step its verb, and whether it would carry the change to the other side if it were asked to
 */
export function changedSeams(
  before: Pattern,
  after: Pattern,
  step: { readonly verb: string; readonly canMatch: boolean },
): readonly Finding[] {
  requireWhole(before);
  requireWhole(after);
  return after.seams.flatMap(seam => {
    const was = before.seams.find(s => s.name === seam.name);
    return was ? (changedSeam({ pattern: before, seam: was }, { pattern: after, seam }, step) ?? []) : [];
  });
}

interface Sewn {
  readonly pattern: Pattern;
  readonly seam: Seam;
}

function changedSeam(
  before: Sewn,
  after: Sewn,
  { verb, canMatch }: { readonly verb: string; readonly canMatch: boolean },
): Finding | undefined {
  const [then, now] = [before, after].map(({ pattern, seam }) => walkSeam(pattern, seam)) as [
    ReturnType<typeof walkSeam>,
    ReturnType<typeof walkSeam>,
  ];
  if (!then.matches || now.matches) return undefined;
  const [aMm, bMm] = [now.aMm - then.aMm, now.bMm - then.bMm];
  if (Math.max(Math.abs(aMm), Math.abs(bMm)) <= tolerances.leastSeen) return undefined;
  const [changed, partners] =
    Math.abs(aMm) >= Math.abs(bMm) ? [after.seam.a, after.seam.b] : [after.seam.b, after.seam.a];
  const edges = distinctEdges(changed.filter(ref => lengthChanged(before.pattern, after.pattern, ref)));
  const drafted = partners.find(({ piece }) => after.pattern.pieces.some(p => p.name === piece && p.madeFor));
  const thing = ({ piece, edge }: EdgeRef) => ({ piece, edge });
  return finding(
    'warning',
    'sewn-edge-changed',
    { seam: after.seam.name },
    {
      seam: { seam: after.seam.name },
      edges: (edges.length > 0 ? edges : distinctEdges(changed)).map(thing),
      partners: distinctEdges(partners).map(thing),
      changeMm: Math.abs(aMm) >= Math.abs(bMm) ? aMm : bMm,
      verb,
      canMatch,
      ...(drafted
        ? { drafted: { piece: drafted.piece }, refreshes: hasRecipe(after.pattern, drafted.piece) }
        : {}),
    },
  );
}

function lengthChanged(before: Pattern, after: Pattern, ref: EdgeRef): boolean {
  const [then, now] = [lengthOfEdge(before, ref), lengthOfEdge(after, ref)];
  return then === undefined || now === undefined || Math.abs(now - then) > tolerances.leastSeen;
}

/** Whether a step before drafted the piece, so that it can be drafted again by its measures. */
const hasRecipe = ({ pieces }: Pattern, name: string): boolean =>
  pieces.some(piece => piece.name === name && piece.recipe !== undefined);
