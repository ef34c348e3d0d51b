// What became of what, in full. Every name is listed; nothing is exported by star.

export type { EdgeSpan, SpanBecame, ThingBecame } from '../became/became.js';
export type { EdgeCorner, Followable } from '../became/follow.js';
export { inTurn } from '../became/in-turn.js';
export { saidByNames } from '../became/said-by-names.js';
export { settled } from '../settled.js';
