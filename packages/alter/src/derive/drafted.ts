import type { EdgeRef } from '@paperhinge/geometry';
import type { Leaves } from '../verb/form.js';

/** Names that a draft along edges leaves: a facing or stay of several pieces is one for each; a ring is joined. */
export function drafted({
  name,
  along,
}: {
  readonly name: string;
  readonly along: readonly EdgeRef[];
}): Leaves {
  const made = [name, ...along.map(ref => `${name} ${ref.piece}`)];
  return { pieces: made, seams: [...made, `${name} join`] };
}
