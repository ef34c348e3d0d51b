export type { Alteration, Derived, DerivedKind, MakingNote } from './alteration.js';
