// Every tolerance of the library, each with its reason. Nothing else in the code decides how near is near.

/** mm. A tenth of the 1e-7 promised on a metre, so that ten segments of one edge still keep it. */
export const lengthTolerance = 1e-8;
/** mm. Two points this near are one point: a hundredth of what an SVG file of six decimals can tell apart. */
export const coincidenceTolerance = 1e-6;
/**
 * mm. Curves this near touch: a hundredth of `coincidenceTolerance`, so that a touch stays one after any rounding
 * (5e-11 mm at 100 m), yet a gap of a thousandth of a millimetre is a gap.
 */
export const contactTolerance = 1e-8;
/** mm. Largest distance of a fitted curve from what it stands for: half the 0.01 mm promised of a cutting line. */
export const fitTolerance = 0.005;
/** mm. Ends of edges this near are joined on reading: below a pen line, above what an editor's snapping leaves. */
export const joiningGap = 0.05;
/** mm. 1/32 in, the finest step a maker can sew: two sides of a seam that differ by less match. */
export const seamTolerance = 0.8;
/** mm. Legs of a dart that differ by up to this are read as drawn, with a finding; beyond it, refused. */
export const dartLegTolerance = 1;
/** mm. 100 m: longer than a roll of cloth, and rounding stays far below `lengthTolerance`. */
export const largestCoordinate = 1e5;
/** rad (20 degrees). A tangent turn above this on a piece drawn as one closed path is a corner. */
export const cornerTurn = (20 * Math.PI) / 180;
/** rad (5 degrees). Joined lines that bend by more than this at a seam show it in the garment. */
export const joinedCorner = (5 * Math.PI) / 180;
/** rad. Directions nearer than this are one direction: 1e-9 rad is 1e-4 mm at 100 m. */
export const angleTolerance = 1e-9;
