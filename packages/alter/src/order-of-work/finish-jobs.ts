import {
  type Edge,
  type EdgeRef,
  edgeNamed,
  type Finish,
  type Pattern,
  pieceNamed,
  roleOf,
} from '@paperhinge/geometry';
import { edgeParts } from '@paperhinge/geometry/pattern';
import { holdsEdge, isSewn } from '../edge-refs.js';
import { asThings, edgeLabel, type Job, job } from './jobs.js';
import { isLining, isUnder, type MadePiece } from './pieces.js';
import { saying } from './sentences.js';

/** Edges that nothing is sewn to and that are no hems, as they are to be finished: those alike are one job. */
export function finishJobs(pattern: Pattern, made: readonly MadePiece[]): readonly Job[] {
  const covered = made.filter(d => !isUnder(d.kind)).flatMap(d => d.along);
  const free = edgesOf(pattern).filter(
    ({ ref, edge }) =>
      edge.finish !== undefined && edge.kind === 'seam' && !isSewn(pattern, ref) && !holdsEdge(covered, ref),
  );
  const alike = new Map<string, FinishedEdge[]>();
  for (const one of free) {
    const key = JSON.stringify([one.edge.finish, roleOf(one.edge) ?? edgeLabel(one.ref), one.edge.topstitch]);
    alike.set(key, [...(alike.get(key) ?? []), one]);
  }
  return [...alike.values()].map(finishJob);
}

/** An edge of a piece, by its name and as it is drawn. */
export interface FinishedEdge {
  readonly ref: EdgeRef;
  readonly edge: Edge;
}

function finishJob(group: readonly FinishedEdge[]): Job {
  const { finish, allowance, topstitch } = group[0]!.edge;
  const refs = group.map(one => one.ref);
  const edges = asThings(refs);
  const text = saying('job-finish', {
    edges,
    finish: finish as Finish,
    ...(allowance > 0 ? { depthMm: allowance } : {}),
    ...(topstitch === undefined ? {} : { topstitchMm: topstitch }),
  });
  const called = saying('called-of-edges', { what: 'edge', edges });
  return job('finish', `finish ${refs.map(edgeLabel).join(' + ')}`, { text, called }, { edges: refs });
}

/** Edges that are topstitched where neither a seam, a hem nor a finish says so already. */
export function topstitchJobs(pattern: Pattern): readonly Job[] {
  return edgesOf(pattern)
    .filter(
      ({ ref, edge }) =>
        edge.topstitch !== undefined &&
        edge.kind !== 'hem' &&
        edge.finish === undefined &&
        !isSewn(pattern, ref),
    )
    .map(({ ref, edge }) => {
      const edges = asThings([ref]);
      const text = saying('job-topstitch', { edges, topstitchMm: edge.topstitch! });
      const called = saying('called-of-edges', { what: 'topstitching', edges });
      return job('topstitch', `topstitch ${edgeLabel(ref)}`, { text, called }, { edges: [ref] });
    });
}

/** The topstitching of a sewn seam, edge by edge. */
export const topstitchedIn = (pattern: Pattern, edges: readonly EdgeRef[]) =>
  edges.flatMap(ref => {
    const topstitchMm = edgeNamed(pieceNamed(pattern, ref.piece), ref.edge).topstitch;
    return topstitchMm === undefined ? [] : [{ edge: asThings([ref])[0]!, topstitchMm }];
  });

/** The edges of the garment's own pieces, each once; a lining's are sewn apart. */
export const edgesOf = (pattern: Pattern): readonly FinishedEdge[] =>
  pattern.pieces
    .filter(piece => !isLining(pattern, piece))
    .flatMap(piece =>
      edgeParts(piece)
        .filter((edge, i, all) => i === all.findIndex(e => e.name === edge.name))
        .map(edge => ({ ref: { piece: piece.name, edge: edge.name }, edge })),
    );
