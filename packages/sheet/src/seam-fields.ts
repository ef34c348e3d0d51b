import type { Fastening, SeamEase, TakenUp } from '@paperhinge/geometry';
import { fasteningKinds, takenUpWays } from '@paperhinge/geometry/pattern';
import { count, length, size } from './fields/figures.js';
import type { Kind } from './fields/kind.js';
import { tell } from './fields/kind.js';
import { choice, name } from './fields/names.js';
import { ease } from './fields/of-verb.js';
import { mapping, needed, oneOrMore, optional } from './fields/shapes.js';
import { largestTolerance, mostButtons } from './limits.js';

/** A run as the drawing's own seams have it; which edge it is can only be told on the pattern. */
const run: Kind<string> = {
  schema: { type: 'string', description: 'PIECE.EDGE from NEIGHBOUR, such as front.side from hem.' },
  read: (tree, at) => {
    const text = name.read(tree, at);
    return text === undefined || text.includes('.') ? text : tell(at, 'edge-not-understood', {});
  },
};

/** A seam that a sheet tells: it adds to the drawing's, or is told instead of the one of that name. */
export const seamKind = mapping({
  a: needed(oneOrMore(run)),
  b: needed(oneOrMore(run)),
  ease: optional(ease),
  'taken up': optional(choice(takenUpWays)),
  tolerance: optional(length({ over: true, most: largestTolerance })),
});

/** A fastening that a sheet tells. */
export const fasteningKind = mapping({
  kind: needed(choice(fasteningKinds)),
  along: needed(run),
  length: optional(size),
  count: optional(count(mostButtons)),
  spacing: optional(size),
  size: optional(size),
  relaxed: optional(size),
  sort: optional(name),
  overlap: optional(size),
  underlap: optional(size),
});

/** A seam as a sheet tells it; its runs are found on the pattern. */
export interface SheetSeam {
  readonly name: string;
  readonly a: readonly string[];
  readonly b: readonly string[];
  readonly ease?: SeamEase;
  readonly takenUp?: TakenUp;
  /** mm. */
  readonly tolerance?: number;
}

/** A fastening as a sheet tells it; where it lies is found on the pattern. */
export type SheetFastening = Omit<Fastening, 'along'> & { readonly along: string };

type SeamRead = typeof seamKind extends Kind<infer T> ? T : never;
export const seamOf = ([seam, { 'taken up': takenUp, ...rest }]: readonly [string, SeamRead]): SheetSeam => ({
  name: seam,
  ...rest,
  ...(takenUp === undefined ? {} : { takenUp }),
});
