// Fullness put in: spreads and slashes, circles, flounces, godets, vents and slits. Every name is listed; nothing is exported by star.

export type { AddVent, LeaveSlit } from '../operations/add-vent.js';
export { addVent, leaveSlit } from '../operations/add-vent.js';
export type { DraftCircleSkirt } from '../operations/draft-circle-skirt.js';
export { draftCircleSkirt } from '../operations/draft-circle-skirt.js';
export type { DraftFlounce } from '../operations/draft-flounce.js';
export { draftFlounce } from '../operations/draft-flounce.js';
export type { DraftGodet } from '../operations/draft-godet.js';
export { draftGodet } from '../operations/draft-godet.js';
export { slash } from '../operations/slash.js';
export type { OneSlash, Slash, SlashEnd } from '../operations/slash-wish.js';
export type { Spread, SpreadEnd } from '../operations/spread.js';
export { spread } from '../operations/spread.js';
