// What a sheet may ask of us. A sheet is somebody else's file: each bound is far beyond honest use and ends the rest.

/** Characters. Sheets are a few thousand long; this many are read and judged within a second or two. */
export const largestSheet = 250_000;
/** Levels of mappings and lists within each other; the grammar itself needs seven. */
export const deepestNesting = 24;
/** Aliases (`*name`) followed in one sheet; each repeats what it stands for, so few of them can make much. */
export const mostAliases = 64;
/** Values in one sheet, aliases followed. */
export const mostValues = 200_000;
/** Steps in one sheet. */
export const mostSteps = 500;
/** Sheets within each other; a sheet of sheets of sheets is the most that anyone keeps track of. */
export const deepestIncludes = 8;
/** Sheets included in one reading, each time it is. */
export const mostIncludes = 64;
/** Faults told at once; beyond it only their number is told. */
export const mostFaults = 50;
/** mm. 10 m: longer than any one piece of a garment, shorter than what a slipped unit makes of a centimetre. */
export const longestLength = 10_000;
/** mm. Smaller than any part of a newborn that is measured. */
export const smallestBody = 20;
/** mm. Taller and wider than anyone. */
export const largestBody = 4000;
/** Copies that one piece is cut in: more than a skirt has gores or a coat has tabs. */
export const mostCopies = 200;
/** mm by which the sides of a seam may differ, at most: beyond it nobody would call them alike. */
export const largestTolerance = 20;
/** Buttons, hooks or snaps of one fastening. */
export const mostButtons = 1000;
