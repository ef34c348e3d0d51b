import {
  type EdgeRef,
  type EdgeRun,
  edgeNamed,
  edgeNames,
  edgePath,
  type Fastening,
  type MarkRole,
  type Pattern,
  pathLength,
  pieceNamed,
  pieceRoleOf,
  roleOf,
} from '@paperhinge/geometry';
import { hemSweep, levelAcross, levelNames, neighboursAtEnds } from '@paperhinge/geometry/measure';
import { markRoleOf } from '@paperhinge/geometry/pattern';
import { holdsEdge, sameEdge } from '../edge-refs.js';
import { isBias } from './bias.js';
import { isFrontTurning } from './flat-jobs.js';
import { asThing, asThings, edgeLabel, type Job, job } from './jobs.js';
import { isLining, isUnder, laidOnPieces, type MadePiece } from './pieces.js';
import { saying } from './sentences.js';

/** A hem that is longer than its piece's widest level by more than this is flared (common practice, no source). */
const flaredHem = 1.2;

/** What comes late: hems, elastics and cords, buttonholes and buttons. */
export const lateJobs = (pattern: Pattern, made: readonly MadePiece[]): readonly Job[] => [
  ...laidOnJobs(pattern),
  ...hemJobs(pattern, made),
  ...(pattern.fastenings ?? []).flatMap(fastening => drawnInJobs(pattern, fastening)),
  ...buttonJobs(pattern),
  ...(pattern.fastenings ?? []).flatMap(f => closureJobs(pattern, f)),
];

/** Loops, straps and the like that are sewn onto a finished piece where their place is marked. */
const laidOnJobs = (pattern: Pattern): readonly Job[] =>
  laidOnPieces(pattern)
    .filter(({ piece, on }) => on.length > 0 && !['pocket', 'placket'].includes(pieceRoleOf(piece) ?? ''))
    .map(({ piece: { name }, on }) => {
      const seams = pattern.seams.filter(({ a, b }) => [...a, ...b].some(r => on.includes(r.piece)));
      const because = saying('because-laid-on', {});
      return job(
        'other',
        `sew on ${name}`,
        {
          text: saying('job-pocket', { piece: { piece: name }, on: on.map(piece => ({ piece })) }),
          called: saying('called-of-piece', { what: 'piece', piece: { piece: name } }),
        },
        { pieces: [name], after: seams.map(s => ({ job: `seam ${s.name}`, because })) },
      );
    });

function hemJobs(pattern: Pattern, made: readonly MadePiece[]): readonly Job[] {
  const covered = [
    ...made.filter(d => !isUnder(d.kind)).flatMap(d => d.along),
    ...pattern.seams.flatMap(({ a, b }) => [...a, ...b]),
  ];
  return [...hemSweep(pattern).map(h => h.edges), ...liningHems(pattern)]
    .map(edges =>
      edges.filter(
        e => !holdsEdge(covered, e) && !isFrontTurning(edgeNamed(pieceNamed(pattern, e.piece), e.edge)),
      ),
    )
    .filter(edges => edges.length > 0)
    .flatMap(edges => hemJob(pattern, edges));
}

/** The hems of a lining, which is sewn apart from the garment. */
function liningHems(pattern: Pattern): readonly (readonly EdgeRef[])[] {
  const edges = pattern.pieces
    .filter(piece => isLining(pattern, piece))
    .flatMap(piece =>
      edgeNames(piece)
        .filter(edge => edgeNamed(piece, edge).kind === 'hem')
        .map(edge => ({ piece: piece.name, edge })),
    );
  return edges.length > 0 ? [edges] : [];
}

function hemJob(pattern: Pattern, edges: readonly EdgeRef[]): readonly Job[] {
  const names = edges.map(edgeLabel);
  const things = asThings(edges);
  const { finish, allowance, topstitch } = edgeNamed(pieceNamed(pattern, edges[0]!.piece), edges[0]!.edge);
  const text = saying('job-hem', {
    edges: things,
    ...(finish === undefined ? {} : { finish }),
    ...(allowance > 0 ? { depthMm: allowance } : {}),
    ...(topstitch === undefined ? {} : { topstitchMm: topstitch }),
  });
  const called = saying('called-of-edges', { what: 'hem', edges: things });
  const hem = job(
    'hem',
    `hem ${names.join(' + ')}`,
    { text, called },
    { alsoCalled: [...(names.length > 1 ? names.map(n => `hem ${n}`) : []), 'hem'], edges },
  );
  if (!edges.some(e => hangs(pattern, e))) return [hem];
  const hang = job(
    'hang',
    `hang ${names.join(' + ')}`,
    {
      text: saying('job-hang', { edges: things }),
      called: saying('called-of-edges', { what: 'hanging', edges: things }),
    },
    { edges },
  );
  return [hang, { ...hem, after: [{ job: hang.job, because: saying('because-hems-drop', {}) }] }];
}

/** Whether a hem is flared, or its piece cut on the bias. */
function hangs(pattern: Pattern, ref: EdgeRef): boolean {
  const piece = pieceNamed(pattern, ref.piece);
  const widest = Math.max(0, ...levelNames(piece).map(level => levelAcross(piece, level).lengthMm));
  return (widest > 0 && pathLength(edgePath(piece, ref.edge)) > flaredHem * widest) || isBias(piece);
}

function drawnInJobs(pattern: Pattern, { name, kind, along, relaxed }: Fastening): readonly Job[] {
  if (kind !== 'elastic' && kind !== 'drawcord') return [];
  const fastening = { fastening: name },
    edge = asThing(along);
  const text =
    kind === 'elastic'
      ? saying('job-elastic', {
          fastening,
          edge,
          ...(relaxed === undefined ? {} : { relaxedMm: relaxed }),
          ...(endsWithin(pattern, along) ? { endsFast: true } : {}),
        })
      : saying('job-cord', { fastening, edge });
  return [
    job(
      'elastic',
      `${kind} ${name}`,
      { text, called: saying('called-fastening', { fastening }) },
      { edges: [along] },
    ),
  ];
}

/** Whether an elastic goes along a part of the round only: across a seam its edge meets another kind of edge. */
function endsWithin(pattern: Pattern, along: EdgeRun): boolean {
  const edgeAt = ({ piece, edge }: EdgeRef) => edgeNamed(pieceNamed(pattern, piece), edge);
  const own = edgeAt(along);
  const isLike = (other: ReturnType<typeof edgeAt>): boolean =>
    other.kind === own.kind && (roleOf(other) === roleOf(own) || other.name === own.name);
  return (
    along.part !== undefined ||
    pattern.seams.some(seam =>
      neighboursAtEnds(pattern, seam).some(({ first, second }) =>
        [
          [first, second],
          [second, first],
        ].some(([here, there]) => sameEdge(here!, along) && !isLike(edgeAt(there!))),
      ),
    )
  );
}

/** Hooks and eyes, snaps. */
function closureJobs(pattern: Pattern, fastening: Fastening): readonly Job[] {
  const { kind, name, along } = fastening;
  if (kind !== 'hooks' && kind !== 'snaps') return [];
  const text = saying('job-closures', { kind, edge: asThing(along), count: buttonCount(pattern, fastening) });
  const called = saying('called-fastening', { fastening: { fastening: name } });
  return [job('closure', `${kind} ${name}`, { text, called }, { edges: [along] })];
}

/** Buttonholes first: as many as are marked on a piece or said along its edge, whichever is more. */
function buttonJobs(pattern: Pattern): readonly Job[] {
  const counted = (...roles: readonly MarkRole[]): readonly Counted[] =>
    pattern.pieces.map(piece => {
      const marked = piece.marks.filter(m => roles.includes(markRoleOf(m) ?? 'pocket')).length;
      const said = (pattern.fastenings ?? [])
        .filter(f => f.kind === 'buttons' && f.along.piece === piece.name)
        .reduce((sum, f) => sum + buttonCount(pattern, f), 0);
      return { name: piece.name, count: Math.max(marked, said) };
    });
  const holes = there(counted('buttonhole')),
    buttons = there(counted('button'));
  const jobs: Job[] = [];
  if (holes.length > 0) {
    const called = saying('called-plainly', { what: 'buttonholes' });
    jobs.push(job('buttonhole', 'buttonholes', { text: saying('job-buttonholes', facts(holes)), called }));
  }
  if (buttons.length > 0) {
    const called = saying('called-plainly', { what: 'buttons' });
    const after =
      holes.length > 0 ? [{ job: 'buttonholes', because: saying('because-through-buttonhole', {}) }] : [];
    jobs.push(job('button', 'buttons', { text: saying('job-buttons', facts(buttons)), called }, { after }));
  }
  return jobs;
}

interface Counted {
  readonly name: string;
  readonly count: number;
}
const there = (counted: readonly Counted[]) => counted.filter(c => c.count > 0);
const facts = (counted: readonly Counted[]) => ({
  pieces: [...new Set(counted.map(c => c.name))].map(piece => ({ piece })),
  count: counted.reduce((sum, c) => sum + c.count, 0),
});

/** As many as are said, or as the spacing gives along the edge, one at each end. */
function buttonCount(pattern: Pattern, { along, length, count, spacing }: Fastening): number {
  if (count !== undefined) return count;
  const edge = along.part
    ? along.part.to - along.part.from
    : pathLength(edgePath(pieceNamed(pattern, along.piece), along.edge));
  return spacing === undefined ? 1 : Math.floor((length ?? edge) / spacing) + 1;
}
