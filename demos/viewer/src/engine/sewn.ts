import type { OrderedJob } from '@paperhinge/alter';
import type { Sewn } from './pictures.js';
import { spokenOf } from './spoken-of.js';
import { joinedBy } from './whole.js';
import type { Worked } from './work.js';

/** What is joined once a job of the order of work is done, of the pieces that it is done to. */
export function sewnOf({ concluded, states }: Worked, at: number): Sewn | undefined {
  const { order } = concluded();
  const job = order[at];
  if (!job) return undefined;
  const { pattern } = states.at(-1)!;
  const lit = spokenOf(job.text, pattern);
  const done = new Set(order.slice(0, at + 1).flatMap(seamOf));
  const touched = new Set(lit.map(name => name.slice(0, name.indexOf('.'))));
  return { pieces: joinedBy(pattern, done, touched), lit };
}

/** The seam that a job sews. */
const seamOf = ({ job }: OrderedJob): readonly string[] => (job.startsWith('seam ') ? [job.slice(5)] : []);
