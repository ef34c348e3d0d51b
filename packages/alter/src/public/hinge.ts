// The engine under slashes, darts and figure adjustments. Every name is listed; nothing is exported by star.

export type { Cut, CutEnd } from '../hinge/cut.js';
export type { CutPiece, Section } from '../hinge/cut-piece.js';
export { holdingSection } from '../hinge/holding.js';
export type { Opening } from '../hinge/joins.js';
export type { Mouth, NewDart, NewPleat } from '../hinge/mouth.js';
export { dartMouth, pleatMouth } from '../hinge/mouth.js';
export { cutApart, sectionAt } from '../hinge/sections.js';
export type { SwingWishes, Swung } from '../hinge/swing.js';
export { swing } from '../hinge/swing.js';
