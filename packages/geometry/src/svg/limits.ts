// What one file may ask of the reader. A file is somebody else's: each limit turns a bomb into a typed error.

/** Characters. Ten times the largest pattern file we know of kin; read in about a second. */
export const largestFile = 32_000_000;
/** Elements shown through `use`, beyond those in the file itself: far above any drawing, far below a second's work. */
export const mostInstances = 100_000;
/** Segments made through `use`: a million take about a quarter of a gigabyte. */
export const mostInstancedSegments = 1_000_000;
/** A `use` of a `use` of a `use` ...: deeper than any drawing made by hand or by program. */
export const deepestUse = 100;
/** Findings of one code that are listed one by one; the rest are counted in a last one. */
export const mostFindingsOfAKind = 50;
/** Levels in the JSON of the metadata. */
export const deepestJson = 32;
