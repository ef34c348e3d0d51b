import type { Finding, Pattern } from '@paperhinge/geometry';
import type { Derived, MakingNote } from '../alteration.js';
import { gatherJobs } from './gather-jobs.js';
import { type Job, type JobKind, job } from './jobs.js';
import { constrained } from './rules.js';
import { sorted } from './sort.js';

/** One line of the order of work: what to do, and why here. */
export interface OrderedJob {
  readonly job: string;
  readonly text: string;
  /** At least one reason each: what it comes after and why, or why it may come so early. */
  readonly because: readonly string[];
}

/**
 * The order in which a garment is sewn: the jobs its pattern and its derived pieces call for, with the notes that the
 * alterations left, sorted so that each comes after what it waits for (a partial order; of jobs that are free, the
 * one a sewing room lists first). Jobs that wait for each other in a circle are a fault that names them.
 */
export function orderOfWork(
  pattern: Pattern,
  derived: readonly Derived[],
  making: readonly MakingNote[],
): { readonly order: readonly OrderedJob[]; readonly findings: readonly Finding[] } {
  const jobs = withNotes(constrained(pattern, withNotedJobs(gatherJobs(pattern, derived), making)), making);
  const { order, trapped } = sorted(
    jobs.map(j => ({ ...j, after: j.after.map(a => a.job), reasons: j.after })),
  );
  const names = new Set(jobs.map(j => j.job));
  return {
    order: order.map(({ job, kind, text, reasons }) => {
      const given = reasons.filter(r => names.has(r.job)).map(r => `after ${r.job}: ${r.because}`);
      return { job, text, because: given.length > 0 ? given : [early[kind]] };
    }),
    findings: trapped.length > 0 ? [trap(trapped)] : [],
  };
}

/** Why a job that waits for nothing stands where it stands. */
const early: Readonly<Record<JobKind, string>> = {
  stay: 'an edge is stayed before anything is sewn to it',
  dart: 'darts come first, while the piece lies flat',
  opening: 'an opening is easiest while the piece lies flat',
  inset: 'an inset is finished before the edge round it',
  turn: 'a part that is turned is sewn while the band is still open at its ends',
  seam: 'nothing has to be sewn before it',
  ring: 'nothing has to be sewn before it',
  band: 'no seam crosses its edge',
  facing: 'no seam crosses its edge',
  hang: 'no seam crosses the hem',
  hem: 'no seam crosses it; hems come late, when the length is sure',
  buttonhole: 'closures come last',
  button: 'closures come last',
  other: 'nothing has to be sewn before it',
};

/** Where jobs that only a note knows are listed: at the end of those of their kind, by the first word of their name. */
const kindOrder: readonly JobKind[] = [
  'stay',
  'dart',
  'inset',
  'opening',
  'seam',
  'turn',
  'ring',
  'band',
  'facing',
  'other',
  'hang',
  'hem',
  'buttonhole',
  'button',
];

function withNotedJobs(jobs: readonly Job[], notes: readonly MakingNote[]): readonly Job[] {
  const known = (name: string) => jobs.some(j => isCalled(j, name));
  const added = [...new Map(notes.filter(n => !known(n.job)).map(n => [n.job, n])).values()];
  const all = [...jobs, ...added.map(n => job(kindOf(n.job), n.job, n.text))];
  // A stable sort: jobs keep their order within a kind.
  return added.length === 0
    ? jobs
    : all.toSorted((p, q) => kindOrder.indexOf(p.kind) - kindOrder.indexOf(q.kind));
}

const kindOf = (name: string): JobKind =>
  kindOrder.find(k => name === k || name.startsWith(`${k} `)) ?? 'other';

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

function trap(trapped: readonly { readonly job: string }[]): Finding {
  const names = trapped.map(t => t.job);
  return {
    severity: 'fault',
    code: 'order-trapped',
    where: {},
    message:
      names.length === 1
        ? `${names[0]} would have to be done before itself.`
        : `These trap each other, each must come before the next and the last before the first: ${names.join(', ')}.`,
    figures: { count: names.length },
    remedy: 'Leave one of them open until the others are done, or sew that part in another way.',
  };
}
