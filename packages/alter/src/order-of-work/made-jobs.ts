import type { Pattern } from '@paperhinge/geometry';
import { asThings, type Job, job } from './jobs.js';
import { isUnder, type MadePiece } from './pieces.js';
import { saying } from './sentences.js';

/** The jobs of a piece made for an edge: sewn on, as a ring if it is one, turned and understitched if it is a facing. */
export function madeJobs(pattern: Pattern, made: MadePiece): readonly Job[] {
  const { name, kind, along, joinMm, gapMm } = made;
  if (isUnder(kind)) return [];
  const piece = { piece: name };
  const called = (what: string) => saying('called-of-piece', { what, piece });
  const own = (runs: Pattern['seams'][number]['a']) => runs.every(r => r.piece === name);
  const seamsOf = (found: Pattern['seams']) => found.map(s => `seam ${s.name}`);
  const facts = { piece, edges: asThings(along) };
  const sewn = job(
    kind === 'facing' ? 'facing' : 'band',
    `${kind} ${name}`,
    { text: saying(kind === 'facing' ? 'job-facing' : 'job-band', facts), called: called('piece') },
    { edges: along, pieces: [name], alsoCalled: seamsOf(pattern.seams.filter(s => own(s.a) !== own(s.b))) },
  );
  if (kind === 'facing') return [sewn, understitchJob(sewn, name)];
  if (kind !== 'band' || joinMm === 0) return [sewn];
  const ring = job(
    'ring',
    `ring ${name}`,
    { text: saying('job-ring', { piece }), called: called('ring') },
    { alsoCalled: seamsOf(pattern.seams.filter(s => own(s.a) && own(s.b))) },
  );
  const last = { ...sewn, after: [{ job: ring.job, because: saying('because-sewn-as-ring', {}) }] };
  if (gapMm === 0) return [ring, last];
  const turn = job('turn', `turn ${name}`, {
    text: saying('job-turn', { piece, gapMm }),
    called: called('gap'),
  });
  const because = saying('because-turned-first', {});
  return [turn, { ...ring, after: [{ job: turn.job, because }] }, last];
}

const understitchJob = (facing: Job, name: string): Job =>
  job(
    'understitch',
    `understitch ${name}`,
    {
      text: saying('job-understitch', { pieces: [{ piece: name }] }),
      called: saying('called-of-piece', { what: 'understitching', piece: { piece: name } }),
    },
    { pieces: [name], after: [{ job: facing.job, because: saying('because-sewn-before-turned', {}) }] },
  );
