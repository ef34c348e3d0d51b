import {
  type EdgeRef,
  edgeNamed,
  type Pattern,
  type PieceRole,
  pieceNamed,
  pieceRoleOf,
  type Seam,
} from '@paperhinge/geometry';
import { neighboursAtEnds } from '@paperhinge/geometry/measure';
import { edgeParts, neighboursOf } from '@paperhinge/geometry/pattern';
import { holdsEdge } from '../edge-refs.js';
import { jobsBeside } from './beside.js';
import { collarBetween, collarWhole } from './collar-rules.js';
import { facedBeforeBand, facingsJoined } from './facing-rules.js';
import { asThing, asThings, type Constraint, type Job } from './jobs.js';
import { takenBetween } from './layers.js';
import type { Lining } from './lining.js';
import { closesBag, hangsBag, pocketFlat, pocketMouthFinished, pocketMouthFirst } from './pocket-rules.js';
import { rawEdgeFirst } from './raw-edge-jobs.js';
import { piecesOf, type Rule, roleAt, sewsAn, shared, sharesPiece } from './rule.js';
import { isShoulder } from './seam-jobs.js';
import { type SeamsThrough, seamsThrough } from './seams-through.js';
import { saying } from './sentences.js';
import { type SleeveSeam, sleeveSeams } from './sleeve.js';
import { tieCaughtIn } from './tie-rules.js';

/**
 * What the trade says of the jobs of a pattern (trade-notes §10, common practice, no source): each job with what
 * must be done before it, and why.
 */
export function constrained(
  pattern: Pattern,
  jobs: readonly Job[],
  lining: Lining | undefined,
): readonly Job[] {
  const sleeves = sleeveSeams(pattern);
  const waits = waitsBy(pattern, sleeves, lining);
  const passes = onePasses(pattern, sleeves, lining);
  const beside = jobsBeside(pattern, jobs);
  const ruled = jobs.map(job => {
    const found = beside(job).flatMap((other): readonly Constraint[] => {
      const because = other === job ? undefined : waits(job, other);
      return because === undefined ? [] : [{ job: other.job, because }];
    });
    return { ...job, after: withMore(job.after, found) };
  });
  return ruled.map(job => {
    const pass = passes.find(p => p.includes(job.job))?.filter(name => name !== job.job) ?? [];
    const others = ruled.filter(j => pass.includes(j.job));
    const theirs = others.flatMap(j => j.after).filter(a => a.job !== job.job && !pass.includes(a.job));
    return { ...job, text: inOnePass(job, others), after: withMore(job.after, theirs) };
  });
}

/** Why a job waits for another by the first rule of a pattern that has a reason. */
export function waitsBy(pattern: Pattern, sleeves: readonly SleeveSeam[], lining: Lining | undefined): Rule {
  const rules = rulesOf(pattern, sleeves, lining);
  return (job, other) => {
    for (const rule of rules) {
      const because = rule(job, other);
      if (because !== undefined) return because;
    }
    return undefined;
  };
}

/** What a job waits for, each other job once. */
const withMore = (after: readonly Constraint[], more: readonly Constraint[]): readonly Constraint[] =>
  [...after, ...more].filter((a, i, all) => i === all.findIndex(b => b.job === a.job));

/** Seams that are one line of stitches once others are sewn: side and underarm, the sides of a garment and its lining. */
function onePasses(
  pattern: Pattern,
  sleeves: readonly SleeveSeam[],
  lining: Lining | undefined,
): readonly (readonly string[])[] {
  const flat = sleeves.filter(s => s.flat).flatMap(s => s.closing);
  const names = [...new Set(flat.map(s => `seam ${s.name}`))];
  const through = seamsThrough(pattern).map(t => t.seams.map(s => `seam ${s.name}`));
  const left = (lining?.leftOpen ?? []).filter(s => pattern.seams.includes(s)).map(s => `seam ${s.name}`);
  return merged([names, left, ...through]).filter(pass => pass.length > 1);
}

/** Passes that share a seam are one. */
const merged = (passes: readonly (readonly string[])[]): readonly (readonly string[])[] =>
  passes.reduce<readonly (readonly string[])[]>((all, pass) => {
    const joined = all.filter(other => other.some(name => pass.includes(name)));
    return [...all.filter(other => !joined.includes(other)), [...new Set([...joined.flat(), ...pass])]];
  }, []);

function inOnePass({ text }: Job, others: readonly Job[]): Job['text'] {
  if (others.length === 0 || typeof text === 'string') return text;
  return { ...text, facts: { ...text.facts, onePassWith: others.map(o => o.called) } };
}

function rulesOf(
  pattern: Pattern,
  sleeves: readonly SleeveSeam[],
  lining: Lining | undefined,
): readonly Rule[] {
  // A sleeve set in the round crosses what closes it; one that goes in flat, and a lining's edge, are crossed by it.
  const free = new Set([
    ...sleeves.flatMap(s => s.closing.map(c => pair(c.name, s.seam.name))),
    ...(lining?.leftOpen ?? []).flatMap(open => lining!.sewingIn.map(s => pair(open.name, s.name))),
  ]);
  return [
    stayFirst,
    fuseFirst,
    rawEdgeFirst,
    foldBeforeCrossing,
    openingFlat(pattern),
    finishedBeforeEdgeRound(pattern),
    pocketFlat(pattern),
    pocketMouthFirst(pattern),
    gatherFirst,
    layersFirst(pattern),
    betweenLayers(pattern),
    tieCaughtIn(pattern),
    collarBetween(pattern),
    collarWhole(pattern),
    facingsJoined(pattern),
    facedBeforeBand(pattern),
    crossingSeamFirst(pattern, free),
    pocketMouthFinished(pattern),
    topstitchedLast,
    shoulderBeforeNeck(pattern),
    casingFirst,
    ...sleeves.map(sleeveRule),
    throughRule(seamsThrough(pattern)),
    ...(lining ? [liningRule(lining)] : []),
  ];
}

const pair = (closing: string, set: string): string => JSON.stringify([closing, set]);

const stayFirst: Rule = (job, other) => {
  const edge = other.kind === 'stay' && !sewsAn(job, 'stay', 'dart', 'fuse') ? shared(job, other) : undefined;
  return edge && saying('because-stayed', { edge: asThing(edge) });
};

const fuseFirst: Rule = (job, other) =>
  other.kind === 'fuse' && !sewsAn(job, 'stay', 'fuse') && sharesPiece(job, other)
    ? saying('because-fused', { piece: { piece: other.pieces[0]! } })
    : undefined;

const foldBeforeCrossing: Rule = (job, other) => {
  if (!sewsAn(other, 'dart', 'pleat') || sewsAn(job, 'dart', 'pleat', 'stay', 'fuse')) return undefined;
  const edge = shared(job, other);
  if (!edge) return undefined;
  const facts = { edge: asThing(edge) };
  return other.kind === 'dart' ? saying('because-dart-crosses', facts) : saying('because-folded', facts);
};

/**
 * A zip, placket or fly is made while its piece lies flat: before any seam of it. But a fly's facing is on before the
 * zip that is sewn to it, and its shield lies behind the zip.
 */
const openingFlat =
  (pattern: Pattern): Rule =>
  (job, other) => {
    const lies = (seam: Job, opening: Job, role: PieceRole) =>
      seam.kind === 'seam' &&
      opening.kind === 'opening' &&
      shared(opening, seam) !== undefined &&
      seam.edges.some(e => pieceRoleOf(pieceNamed(pattern, e.piece)) === role);
    const facingSeam = pattern.seams.find(s => other.kind === 'understitch' && s.name === other.seam);
    const isTurned =
      job.kind === 'opening' &&
      facingSeam !== undefined &&
      [...facingSeam.a, ...facingSeam.b].some(r => holdsEdge(job.edges, r));
    if (isTurned || lies(other, job, 'facing')) return saying('because-zip-on-facing', {});
    if (other.kind !== 'opening' || job.kind !== 'seam' || !sharesPiece(job, other)) return undefined;
    if (lies(job, other, 'facing')) return undefined;
    return lies(job, other, 'placket') ? saying('because-behind-zip', {}) : saying('because-flat', {});
  };

const finishedBeforeEdgeRound =
  (pattern: Pattern): Rule =>
  (job, other) => {
    if (!sewsAn(other, 'inset', 'opening')) return undefined;
    if (!sewsAn(job, 'band', 'facing', 'finish') && !(other.kind === 'inset' && job.kind === 'seam'))
      return undefined;
    const beside = other.edges.flatMap(e => [e, ...edgesBeside(pattern, e)]);
    return job.edges.some(e => holdsEdge(beside, e))
      ? saying('because-edge-round', { edges: asThings(other.edges) })
      : undefined;
  };

/** An edge is topstitched once whatever makes it is sewn and turned. */
const topstitchedLast: Rule = (job, other) => {
  if (job.kind !== 'topstitch' || !sewsAn(other, 'layers', 'facing', 'understitch', 'opening', 'turn-out'))
    return undefined;
  return shared(job, other) || other.pieces.some(p => piecesOf(job).includes(p))
    ? saying('because-topstitched', {})
    : undefined;
};

const gatherFirst: Rule = (job, other) =>
  other.kind === 'gather' &&
  sewsAn(job, 'seam', 'band', 'facing') &&
  other.edges.every(e => holdsEdge(job.edges, e))
    ? saying('because-gathered', {})
    : undefined;

const layersFirst =
  (pattern: Pattern): Rule =>
  (job, other) => {
    if (
      other.kind !== 'layers' ||
      sewsAn(job, 'layers', 'fuse', 'stay', 'raw-edge') ||
      !sharesPiece(job, other)
    )
      return undefined;
    return takenBetween(pattern, other).some(seam => seam.name === job.seam)
      ? undefined
      : saying('because-layers-first', {});
  };

/** What lies between two layers is on one of them before they are sewn together over it: the fall of a collar in its stand. */
const betweenLayers =
  (pattern: Pattern): Rule =>
  (job, other) =>
    job.kind === 'layers' &&
    other.kind === 'seam' &&
    takenBetween(pattern, job).some(seam => seam.name === other.seam)
      ? saying('because-between-layers', {})
      : undefined;

/**
 * A seam that ends at an edge on both its sides crosses that edge; what runs along the edge is sewn across it. At a
 * hem one side is enough: the other may have been faced or bound.
 */
const crossingSeamFirst =
  (pattern: Pattern, free: ReadonlySet<string>): Rule =>
  (job, other) => {
    if (other.kind !== 'seam' || !sewsAn(job, 'seam', 'gather', 'band', 'facing', 'finish', 'hem', 'hang'))
      return undefined;
    const seam = pattern.seams.find(s => s.name === other.seam);
    const across = pattern.seams.find(s => s.name === job.seam);
    if (!seam || (across && free.has(pair(seam.name, across.name)))) return undefined;
    // A bag hangs from its mouth before it is closed.
    if (closesBag(pattern, other) && hangsBag(pattern, job)) return undefined;
    const sides = across && job.kind === 'seam' ? [across.a, across.b] : [job.edges];
    const isHem = ({ piece, edge }: EdgeRef): boolean =>
      edgeNamed(pieceNamed(pattern, piece), edge).kind === 'hem';
    const crossed = neighboursAtEnds(pattern, seam).find(({ first, second }) =>
      sides.some(side => {
        const held = [first, second].filter(end => holdsEdge(side, end));
        return held.length === 2 || (!across && held.some(isHem));
      }),
    );
    return crossed && saying('because-crosses', { edges: asThings([crossed.first, crossed.second]) });
  };

const shoulderBeforeNeck =
  (pattern: Pattern): Rule =>
  (job, other) => {
    const seam = pattern.seams.find(s => s.name === other.seam);
    if (other.kind !== 'seam' || !seam || !isShoulder(pattern, seam) || job === other) return undefined;
    if (seamsThrough(pattern).some(t => t.seams.includes(seam) && t.across.some(s => s.name === job.seam)))
      return undefined;
    const neck = job.edges.find(
      e => roleAt(pattern, e) === 'neck' && other.edges.some(o => o.piece === e.piece),
    );
    return neck && sewsAn(job, 'seam', 'band', 'facing', 'finish')
      ? saying('because-neck-is-round', {})
      : undefined;
  };

const casingFirst: Rule = (job, other) =>
  job.kind === 'elastic' && sewsAn(other, 'hem', 'band', 'facing', 'seam') && shared(job, other)
    ? saying('because-casing-first', {})
    : undefined;

const sleeveRule =
  ({ seam, closing, flat, because }: SleeveSeam): Rule =>
  (job, other) => {
    const closes = (j: Job) => closing.some(c => j.job === `seam ${c.name}`);
    const sets = (j: Job) => j.job === `seam ${seam.name}`;
    return (flat ? closes(job) && sets(other) : sets(job) && closes(other)) ? because : undefined;
  };

/** Seams that run on into one another across others are sewn in one pass, once those others lie flat. */
const throughRule =
  (through: readonly SeamsThrough[]): Rule =>
  (job, other) =>
    other.kind === 'seam' &&
    through.some(
      t =>
        t.seams.some(s => s.name === job.seam && job.kind === 'seam') &&
        t.across.some(s => s.name === other.seam),
    )
      ? saying('because-run-on', {})
      : undefined;

/** What was left open is closed once the lining has been turned. */
const liningRule =
  ({ leftOpen }: Lining): Rule =>
  (job, other) => {
    const isLeft = (seam: Seam) => job.job === `seam ${seam.name}`;
    return other.kind === 'turn-out' && leftOpen.some(isLeft)
      ? saying('because-lining-turns-through', {})
      : undefined;
  };

/** The edges that share a corner with an edge. */
function edgesBeside(pattern: Pattern, ref: EdgeRef): readonly EdgeRef[] {
  const piece = pieceNamed(pattern, ref.piece);
  const { start, end } = neighboursOf(piece, ref.edge);
  const names = new Set(edgeParts(piece).map(e => e.name));
  return [start, end].filter(n => names.has(n)).map(edge => ({ piece: ref.piece, edge }));
}
