import type { Finding, Pattern, Saying } from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import type { Derived, MakingNote } from '../alteration.js';
import { inWords } from '../in-words.js';
import { withFacingsJoined } from './drawn-facings.js';
import { finishJobs, topstitchJobs } from './finish-jobs.js';
import { flatJobs } from './flat-jobs.js';
import { type Job, type JobKind, job, jobKinds } from './jobs.js';
import { lateJobs } from './late-jobs.js';
import { type Lining, liningOf, turnOutJobs } from './lining.js';
import { madeJobs } from './made-jobs.js';
import { madePieces, withoutInterfacing } from './pieces.js';
import { rawEdgeJobs } from './raw-edge-jobs.js';
import { constrained } from './rules.js';
import { seamJobs } from './seam-jobs.js';
import { saying } from './sentences.js';
import { sorted } from './sort.js';
import { finding } from './tellings.js';

/** One line of the order of work: what to do, and why here. */
export interface OrderedJob {
  readonly job: string;
  readonly text: Saying | string;
  /** At least one reason each: what it comes after and why, or why it may come so early. */
  readonly because: readonly Saying[];
}

/**
 * The order in which a garment is sewn: the jobs its pattern and its derived pieces call for, with the notes that the
 * alterations left, sorted so that each comes after what it waits for (a partial order; of jobs that are free, the
 * one a sewing room lists first). Jobs that wait for each other in a circle, and a lining that could not be turned,
 * are faults that name them.
 * @throws PatternError `pattern-not-usable` and others of what is no pattern
 */
export function orderOfWork(
  given: Pattern,
  derived: readonly Derived[],
  making: readonly MakingNote[],
): { readonly order: readonly OrderedJob[]; readonly findings: readonly Finding[] } {
  requireWhole(given);
  const { pattern, lining, called, findings } = calledFor(given, derived, making);
  const jobs = withNotes(constrained(pattern, called, lining), making);
  const { order, trapped } = sorted(
    jobs.map(j => ({ ...j, after: j.after.map(a => a.job), reasons: j.after })),
  );
  const byName = new Map(jobs.map(j => [j.job, j]));
  return {
    order: order.map(({ job, kind, text, reasons }) => {
      const given = reasons.flatMap(({ job: name, because }) => {
        const other = byName.get(name);
        return other ? [{ job: other.called, because: asSaying(because) }] : [];
      });
      return { job, text, because: given.length > 0 ? grouped(given) : [saying('because-free', { kind })] };
    }),
    findings: [...findings, ...(lining?.findings ?? []), ...(trapped.length > 0 ? [trap(trapped)] : [])],
  };
}

/** The jobs that a pattern, its derived pieces and the notes call for, none waiting for another by any rule yet. */
export function calledFor(
  given: Pattern,
  derived: readonly Derived[],
  making: readonly MakingNote[],
): {
  readonly pattern: Pattern;
  readonly lining: Lining | undefined;
  readonly called: readonly Job[];
  readonly findings: readonly Finding[];
} {
  const made = madePieces(given, derived);
  const { pattern, findings } = withFacingsJoined(withoutInterfacing(given));
  const lining = liningOf(pattern);
  const turnsOut = lining ? turnOutJobs(pattern, lining) : [];
  const jobs: readonly Job[] = [
    ...flatJobs(pattern, made),
    ...rawEdgeJobs(pattern, made),
    ...seamJobs(pattern, made, { turnsOut: turnsOut.length > 0 }),
    ...made.flatMap(piece => madeJobs(pattern, piece)),
    ...turnsOut,
    ...finishJobs(pattern, made),
    ...topstitchJobs(pattern),
    ...lateJobs(pattern, made),
  ];
  return { pattern, lining, called: withNotedJobs(jobs, making), findings };
}

/** Jobs that are waited for with one reason, told in one line. */
function grouped(given: readonly { readonly job: Saying; readonly because: Saying }[]): readonly Saying[] {
  const lines = new Map<string, { readonly jobs: readonly Saying[]; readonly because: Saying }>();
  for (const { job, because } of given) {
    const key = JSON.stringify(because);
    lines.set(key, { jobs: [...(lines.get(key)?.jobs ?? []), job], because });
  }
  return [...lines.values()].map(line => saying('after-job', line));
}

const asSaying = (words: Saying | string): Saying => (typeof words === 'string' ? inWords(words) : words);

function withNotedJobs(jobs: readonly Job[], notes: readonly MakingNote[]): readonly Job[] {
  const known = (name: string) => jobs.some(j => isCalled(j, name));
  const added = [...new Map(notes.filter(n => !known(n.job)).map(n => [n.job, n])).values()];
  const all = [
    ...jobs,
    ...added.map(n => job(kindOf(n.job), n.job, { text: n.text, called: inWords(n.job) })),
  ];
  // A stable sort: jobs keep their order within a kind.
  return added.length === 0
    ? jobs
    : all.toSorted((p, q) => jobKinds.indexOf(p.kind) - jobKinds.indexOf(q.kind));
}

/** A job that only a note knows is listed with those of its kind, by the first word of its name. */
const kindOf = (name: string): JobKind =>
  jobKinds.find(k => name === k || name.startsWith(`${k} `)) ?? 'other';

const isCalled = (job: Job, name: string): boolean => job.job === name || job.alsoCalled.includes(name);

/** Jobs with what the notes add: their own words, and what else must come first, under the names the jobs have here. */
function withNotes(jobs: readonly Job[], notes: readonly MakingNote[]): readonly Job[] {
  return jobs.map(job => {
    const own = notes.filter(n => isCalled(job, n.job));
    const after = own
      .flatMap(n => n.after)
      .flatMap(({ job: name, because }) =>
        jobs.filter(j => isCalled(j, name)).map(j => ({ job: j.job, because })),
      );
    const fresh = after.filter(
      (a, i) =>
        a.job !== job.job &&
        !job.after.some(b => b.job === a.job) &&
        i === after.findIndex(b => b.job === a.job),
    );
    return { ...job, text: own.at(-1)?.text ?? job.text, after: [...job.after, ...fresh] };
  });
}

const trap = (trapped: readonly Job[] | readonly { readonly called: Saying }[]): Finding =>
  finding('fault', 'order-trapped', {}, { jobs: trapped.map(t => t.called), count: trapped.length });
