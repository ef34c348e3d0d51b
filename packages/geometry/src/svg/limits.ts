// What one file may ask of the reader. A file is somebody else's: each limit turns a bomb into a typed error.

/** Characters. Ten times the largest pattern file we know of kin; read in about a second. */
export const largestFile = 32_000_000;
/** Elements: with five attributes each they take half a gigabyte and three seconds. */
export const mostElements = 300_000;
/**
 * Points of all large shapes together: a line has one, a cubic three, a stroke's beginning three. Lines take about
 * 200 bytes each, cubics 450. Short arcs are the bomb: thirteen characters make 45 cubics.
 */
export const mostShapePoints = 4_000_000;
/** Points of a shape that is not large: its memory is free again before long. */
export const smallShapePoints = 100_000;
/** Segments of all shapes together: each is measured, about a second a million. As many as 50,000 circles. */
export const mostDrawnSegments = 2_500_000;
/** Elements shown through `use`, beyond those in the file itself: far above any drawing, far below a second's work. */
export const mostInstances = 100_000;
/** Segments made through `use`: a million take about a quarter of a gigabyte. */
export const mostInstancedSegments = 1_000_000;
/** A `use` of a `use` of a `use` ...: deeper than any drawing made by hand or by program. */
export const deepestUse = 100;
/** Sizes of one drawing that are held against the one that is read: more than any range of sizes. */
export const mostSizesCompared = 30;
/** Findings of one code that are listed one by one; the rest are counted in a last one. */
export const mostFindingsOfAKind = 50;
/** Levels in the JSON of the metadata. */
export const deepestJson = 32;
/** Edges of one piece, darts included: twice the scallops of a long lace hem. */
export const mostEdges = 1_000;
/** Segments of one outline: at worst each is held against each other. A 2 m outline in chords of 0.4 mm. */
export const mostOutlineSegments = 5_000;
/** Segments of all lines that mean something in a pattern. */
export const mostPatternSegments = 25_000;
/** Notches of a piece times segments of its outline: each notch is held against each segment. */
export const mostNotchChecks = 5_000_000;
