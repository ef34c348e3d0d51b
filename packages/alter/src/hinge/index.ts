// The engine under slashes, darts and figure adjustments. Every name is listed; nothing is exported by star.

export type { Cut, CutEnd } from './cut.js';
export type { CutPiece, Section } from './cut-piece.js';
export { holdingSection } from './holding.js';
export type { Opening } from './joins.js';
export type { Mouth, NewDart, NewPleat } from './mouth.js';
export { dartMouth, pleatMouth } from './mouth.js';
export { cutApart, sectionAt } from './sections.js';
export type { SwingWishes, Swung } from './swing.js';
export { swing } from './swing.js';
