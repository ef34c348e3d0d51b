import { type EdgeRef, edgeNamed, neighboursAtEnds, type Pattern, pieceNamed } from '@paperhinge/geometry';
import { edgesBeside, isShoulder } from './gather-jobs.js';
import { type Constraint, edgeLabel, holdsEdge, type Job, type JobKind } from './jobs.js';
import { sleeveSeams } from './sleeve.js';

/**
 * What the trade says of the jobs of a pattern (trade-notes §10, common practice, no source): each job with what
 * must be done before it, and why.
 */
export function constrained(pattern: Pattern, jobs: readonly Job[]): readonly Job[] {
  const sleeves = sleeveSeams(pattern);
  const rules: readonly Rule[] = [
    stayFirst,
    dartBeforeCrossing,
    openingBeforeEdgeRound(pattern),
    crossingSeamFirst(pattern, new Set(sleeves.flatMap(s => s.closing.map(c => pair(c.name, s.seam.name))))),
    shoulderBeforeNeck,
    ...sleeves.map(
      ({ seam, closing, flat, because }): Rule =>
        (job, other) => {
          const closes = (j: Job) => closing.some(c => j.job === `seam ${c.name}`);
          const sets = (j: Job) => j.job === `seam ${seam.name}`;
          return (flat ? closes(job) && sets(other) : sets(job) && closes(other)) ? because : undefined;
        },
    ),
  ];
  const passes = sleeves
    .filter(s => s.flat && s.closing.length > 1)
    .map(s => s.closing.map(c => `seam ${c.name}`));
  return jobs.map(job => {
    const found = jobs.flatMap((other): readonly Constraint[] => {
      const because =
        other === job ? undefined : rules.map(rule => rule(job, other)).find(r => r !== undefined);
      return because === undefined ? [] : [{ job: other.job, because }];
    });
    const pass = passes.find(p => p.includes(job.job))?.filter(name => name !== job.job);
    const text = pass ? `${job.text.replace(/\.$/, '')}, in one pass with ${pass.join(' and ')}.` : job.text;
    return {
      ...job,
      text,
      after: [...job.after, ...found.filter(f => !job.after.some(a => a.job === f.job))],
    };
  });
}

/** Why `job` must wait for `other`; undefined where it need not. */
type Rule = (job: Job, other: Job) => string | undefined;

const sewsAn = (job: Job, ...kinds: readonly JobKind[]): boolean => kinds.includes(job.kind);
const shared = (job: Job, other: Job) => job.edges.find(e => holdsEdge(other.edges, e));
const pair = (closing: string, set: string): string => JSON.stringify([closing, set]);

const stayFirst: Rule = (job, other) => {
  const edge = other.kind === 'stay' && !sewsAn(job, 'stay', 'dart') ? shared(job, other) : undefined;
  return (
    edge && `it keeps ${edgeLabel(edge)} from growing, so it is there before anything is sewn to that edge`
  );
};

const dartBeforeCrossing: Rule = (job, other) => {
  const edge = other.kind === 'dart' && !sewsAn(job, 'dart', 'stay') ? shared(job, other) : undefined;
  return edge && `it opens into ${edgeLabel(edge)}, and must lie closed and pressed before that edge is sewn`;
};

const openingBeforeEdgeRound =
  (pattern: Pattern): Rule =>
  (job, other) => {
    if (!sewsAn(other, 'inset', 'opening'))
      return other.kind === 'seam' && job.kind === 'opening' && shared(job, other)
        ? 'the rest of the seam is sewn before its opening is closed or finished'
        : undefined;
    if (!sewsAn(job, 'band', 'facing') && !(other.kind === 'inset' && job.kind === 'seam')) return undefined;
    const beside = other.edges.flatMap(e => [e, ...edgesBeside(pattern, e)]);
    const edge = job.edges.find(e => holdsEdge(beside, e));
    return edge && `${other.edges.map(edgeLabel).join(', ')} is finished before the edge round it`;
  };

/**
 * A seam that ends at an edge on both its sides crosses that edge; what runs along the edge is sewn across it. At a
 * hem one side is enough: the other may have been faced or bound.
 */
const crossingSeamFirst =
  (pattern: Pattern, left: ReadonlySet<string>): Rule =>
  (job, other) => {
    if (other.kind !== 'seam' || !sewsAn(job, 'seam', 'band', 'facing', 'hem', 'hang')) return undefined;
    const seam = pattern.seams.find(s => `seam ${s.name}` === other.job);
    const across = pattern.seams.find(s => `seam ${s.name}` === job.job);
    if (!seam || (across && left.has(pair(seam.name, across.name)))) return undefined;
    const sides = across ? [across.a, across.b] : [job.edges];
    const isHem = ({ piece, edge }: EdgeRef): boolean =>
      edgeNamed(pieceNamed(pattern, piece), edge).kind === 'hem';
    const crossed = neighboursAtEnds(pattern, seam).find(({ first, second }) =>
      sides.some(side => {
        const held = [first, second].filter(end => holdsEdge(side, end));
        return held.length === 2 || (!across && held.some(isHem));
      }),
    );
    return (
      crossed &&
      `it crosses ${[...new Set([edgeLabel(crossed.first), edgeLabel(crossed.second)])].join(' and ')}`
    );
  };

const shoulderBeforeNeck: Rule = (job, other) => {
  if (other.kind !== 'seam' || !other.edges.every(e => isShoulder(e.edge)) || job === other) return undefined;
  const neck = job.edges.find(e => /^neck/i.test(e.edge) && other.edges.some(o => o.piece === e.piece));
  return neck && sewsAn(job, 'seam', 'band', 'facing')
    ? 'the neck is a whole round only once the shoulders are sewn'
    : undefined;
};
