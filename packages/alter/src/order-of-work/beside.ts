import type { Pattern } from '@paperhinge/geometry';
import type { Job } from './jobs.js';
import { piecesOf } from './rule.js';

/**
 * For each job those that a rule could make it wait for, in their order. Rules speak of jobs that work on one piece, the
 * seam that a job makes ready being worked on too; but a patch pocket may be meant to go anywhere, and a job that only a
 * note knows, or that works on the whole garment, names no piece at all. Of many pieces most have nothing to do with one
 * another: to hold all pairs against all rules takes four fifths of the time of an order of work.
 */
export function jobsBeside(pattern: Pattern, jobs: readonly Job[]): (job: Job) => readonly Job[] {
  const anywhere: number[] = [];
  const on = new Map<string, number[]>();
  for (const [i, job] of jobs.entries()) {
    const pieces = workedOn(pattern, job);
    if (pieces.size === 0 || job.kind === 'pocket') anywhere.push(i);
    for (const piece of pieces) on.set(piece, [...(on.get(piece) ?? []), i]);
  }
  return job => {
    const pieces = workedOn(pattern, job);
    if (pieces.size === 0) return jobs;
    const near = new Set([...anywhere, ...[...pieces].flatMap(piece => on.get(piece) ?? [])]);
    return [...near].sort((p, q) => p - q).map(i => jobs[i]!);
  };
}

function workedOn({ seams }: Pattern, job: Job): ReadonlySet<string> {
  const seam = seams.find(s => s.name === job.seam);
  return new Set([...piecesOf(job), ...(seam ? [...seam.a, ...seam.b].map(run => run.piece) : [])]);
}
