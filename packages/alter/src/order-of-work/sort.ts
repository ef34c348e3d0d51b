/** A job and the names of the jobs that must be done before it. */
export interface Ranked {
  readonly job: string;
  readonly after: readonly string[];
}

/**
 * Stable topological order: of the jobs that are free, the one given first comes next (Kahn, "Topological sorting of
 * large networks", 1962, with the list's own order among free jobs). Names in `after` that are no job are passed over.
 * Jobs caught in a cycle, and those that wait for them, cannot be ordered: `trapped` holds one cycle, each job before
 * the one that waits for it, and the jobs stand at the end in the order given.
 */
export function sorted<T extends Ranked>(
  jobs: readonly T[],
): { readonly order: readonly T[]; readonly trapped: readonly T[] } {
  const names = new Set(jobs.map(j => j.job));
  const done = new Set<string>();
  const order: T[] = [];
  let waiting = [...jobs];
  for (;;) {
    const next = waiting.find(j => j.after.every(a => done.has(a) || !names.has(a)));
    if (!next) break;
    done.add(next.job);
    order.push(next);
    waiting = waiting.filter(j => j !== next);
  }
  return { order: [...order, ...waiting], trapped: cycleAmong(waiting) };
}

/** One cycle among jobs of which each waits for another of them: follow what each waits for until one comes again. */
function cycleAmong<T extends Ranked>(waiting: readonly T[]): readonly T[] {
  if (waiting.length === 0) return [];
  const byName = new Map(waiting.map(j => [j.job, j]));
  const seen: T[] = [];
  let job: T = waiting[0]!;
  while (!seen.includes(job)) {
    seen.push(job);
    job = byName.get(job.after.find(a => byName.has(a))!)!;
  }
  return seen.slice(seen.indexOf(job)).reverse();
}
