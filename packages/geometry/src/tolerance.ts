// Every tolerance of the library, each with its reason. Nothing else in the code decides how near is near.

/** In rad. */
const degrees = (count: number): number => (count * Math.PI) / 180;

/** mm. A tenth of the 1e-7 promised on a metre, so that ten segments of one edge still keep it. */
export const lengthTolerance = 1e-8;
/** mm. Proven error of one quadrature panel: even a curve of two cusps takes fewer than 20, and keeps within 1e-9. */
export const quadratureTolerance = 5e-11;
/** mm. Two points this near are one point: a hundredth of what an SVG file of six decimals can tell apart. */
export const coincidenceTolerance = 1e-6;
/** mm. Ten coincidences: a smaller outline cannot be told from a point. */
export const leastOutline = 10 * coincidenceTolerance;
/**
 * mm. Curves this near touch: a hundredth of `coincidenceTolerance`, so that a touch stays one after any rounding
 * (5e-11 mm at 100 m), yet a gap of a thousandth of a millimetre is a gap.
 */
export const contactTolerance = 1e-8;
/** mm. Stretches longer than this are halved before a touch is looked for: shorter, flat ones are straight to 1e-12. */
export const touchingLength = 0.01;
/** mm. Largest distance of a fitted curve from what it stands for: half the 0.01 mm promised of a cutting line. */
export const fitTolerance = 0.005;
/** mm. Two fitted lines, each within its tolerance, may lie so much nearer to one another than they should. */
export const clearSlack = 2 * fitTolerance;
/** mm. Of the bends of a smaller outline, handles and all, a parallel that keeps its tolerance tells nothing. */
export const leastCurved = 10 * fitTolerance;
/** mm. Ends of edges this near are joined on reading: below a pen line, above what an editor's snapping leaves. */
export const joiningGap = 0.05;
/** mm. 1/32 in, the finest step a maker can sew: two sides of a seam that differ by less match. */
export const seamTolerance = 0.8;
/** mm. An edge that changed its length by less, as truing does, leaves a slit or a zip in it where the maker expects it. */
export const openingNoticed = 5;
/** mm. An amount is found when it brings what is wanted this near: a hundredth of what a maker could see. */
export const goalTolerance = 1e-3;
/** mm². The same of an area: a square of a millimetre. */
export const areaGoalTolerance = 1;
/** mm. Half the finest pencil line: what is lost, steps or differs by less, no maker sees. */
export const visibleLength = 0.1;
/** mm. Legs of a dart that differ by up to this are read as drawn, with a finding; beyond it, refused. */
export const dartLegTolerance = 1;
/** mm. 100 m: longer than a roll of cloth, and rounding stays far below `lengthTolerance`. */
export const largestCoordinate = 1e5;
/** mm. Twice `largestCoordinate`: what is turned, moved or run on from a sound drawing may lie a little beyond it. */
export const farthestCoordinate = 2 * largestCoordinate;
/** mm. A 3 m train and its hem, twice over: a piece longer than this was most likely read in the wrong unit. */
export const largestLikelyPiece = 6000;
/** rad (20 degrees). A tangent turn above this on a piece drawn as one closed path is a corner. */
export const cornerTurn = /* @__PURE__ */ degrees(20);
/** rad (60 degrees). An edge that turns away from a pleat's mouth by more than this does not lie under its cloth. */
export const steepestPleat = /* @__PURE__ */ degrees(60);
/** mm. A line that goes out and comes back within this was not meant to; common practice, no source. */
export const longestSpur = 2;
/** rad (150 degrees). A turn above this within `longestSpur` comes back; teeth and points of lace are blunter. */
export const spurTurn = /* @__PURE__ */ degrees(150);
/** rad (5 degrees). Joined lines that bend by more than this at a seam show it in the garment. */
export const joinedCorner = /* @__PURE__ */ degrees(5);
/** rad (1 degree). A bend above this at a smooth place of an edge shows, and is trued (trade-notes §3). */
export const kinkTurn = /* @__PURE__ */ degrees(1);
/** rad (2 degrees). A line may meet a fold this far from square: it doubles in the garment and still hangs straight. */
export const squareTurn = /* @__PURE__ */ degrees(2);
/** mm. A straight bridge up to this long that turns one way and back is a step, not a line; common practice, no source. */
export const stepReach = 15;
/** mm. A broken corner is drawn fair within this of it, so that the rest of the line stays; common practice, no source. */
export const blendReach = 30;
/** rad (3 degrees). A kink below this shows on paper, hardly on cloth: told with others of its size, in one note. */
export const slightKink = /* @__PURE__ */ degrees(3);
/** mm. A difference that a maker could just see beside a ruler; what is less is not told. */
export const leastSeen = 0.1;
/** mm. A seam longer than this wants a notch in its middle (trade-notes §5). */
export const longestWithoutNotch = 300;
/** mm. A lone notch this near to a crossing seam was meant for it: 1 in, as far as a cap's top is shifted for ease. */
export const notchReach = 25.4;
/**
 * mm. A level across a limb that ends this near to the top of the limb's seam was drawn from there: 1 in, more than
 * letting out or taking in a limb moves its corner, less than the hip lies above the crotch.
 */
export const cornerReach = 25.4;
/** rad. Directions nearer than this are one direction: 1e-9 rad is 1e-4 mm at 100 m. */
export const angleTolerance = 1e-9;
/** mm. About 12 in: deeper than any hem, so a larger allowance is a wrong unit. */
export const largestAllowance = 300;
/** mm. A fold edge that bows by more than a fold can be laid: half a pen line. */
export const foldTolerance = 0.25;
/**
 * mm. Ends of two neighbouring parallels this near are welded: a corner that editors' rounding leaves in a smooth
 * line makes no tip and no snip, and the weld moves neither by more than half of it.
 */
export const smoothJoint = 1e-3;
/** Of a segment's parameter: places nearer than this are one place; 1e-6 mm on a segment of a metre. */
export const parameterTolerance = 1e-9;
// Of the curve kernel: in parameters, or relative, as each says.

/** Parameter. Stretches of a curve narrower than this are shorter than rounding, even on a curve of 100 m. */
export const narrowestStretch = 1e-13;
/** Parameter. Two finds nearer than this on both curves, and at one point, are one; a loop's two passes are farther. */
export const sameParameter = 1e-4;
/** Parameter. A crossing where a curve was cut, to rounding, belongs to both pieces. */
export const cutSlack = 1e-12;
/** Parameter. Newton's steps square the error: after one below this the place is right to the last digit. */
export const settledStep = 1e-9;
/** Share of a stretch. So near to an end where a curve may rest, speed and direction are not asked for. */
export const restHair = 1e-6;
/** Share of a tolerance. Two pieces whose lengths together are less are near one another whatever they do. */
export const restShare = 1 / 4;
/** rad. A curve within this of straight is straight: it moves a parallel at 25 mm by a thousandth of the fit tolerance. */
export const straightAngle = 1e-7;
/** Relative. Two zeros of a speed nearer than this are one: the curve halts and goes on. */
export const doubleZero = 1e-9;
/** Relative. A cross product below this share of its terms is rounding. */
export const crossRounding = 1e-12;
/** Relative. Keeps the handles of a straight stretch, on which they have no say, where they are. */
export const handleDamping = 1e-9;
/** Of a fitted curve's length: handles are no shorter, so that the curve keeps its end directions. */
export const shortestHandle = 1e-4;
/** Relative to the longest control leg: below this a leg's direction is rounding noise. */
export const legRounding = 1e-12;
/** Relative. A share of 100 % may come out an ulp beyond the length it is taken of. */
export const shareRounding = 1e-12;
/** mm, or of a spacing. What rounding may add to a row of buttons that just fills its edge: its last is still placed. */
export const rowRounding = 1e-9;
/** mm. What a ruler and a tape leave between two readings of one distance on paper; common practice, no source. */
export const readByHand = 2;
/** Share of a line's length. Directions at a corner are looked for this far beside it: 0.1 mm on an edge of a metre. */
export const besideCorner = 1e-4;
/** Parameter. A touch lies this near to the stretch that pointed to it. */
export const touchingReach = 0.01;

// Of tracing photographs: what a dot of a picture, the dot of a printed target and least squares can tell.

/** Relative. A pivot below this share of the largest entry means that equations do not settle an unknown. */
export const leastPivot = 1e-13;
/** Relative. How far the first round of least squares leans towards steepest descent: hardly, as it starts near. */
export const firstDamping = 1e-4;
/** Relative. Damping falls no lower: below it the normal equations would lose their last digits anyway. */
export const leastDamping = 1e-12;
/** Relative. A round of least squares that gains less was the last: misfits then change by less than a thousandth. */
export const leastGained = 1e-6;
/** Focal lengths. A ray straightened to this is right to a millionth of a dot. */
export const settledRay = 1e-10;
/** rad. Below it the first terms of a turn's series are exact to the last digit. */
export const smallTurn = 1e-8;
/** mm and rad. The first sheet, which is the floor's frame, stays within a thousandth of any of this. */
export const frameHold = 1e-6;
/** Of a sample's weight. Keeps a field that no sample speaks of at nought, and moves no other. */
export const levelHold = 1e-9;
/** Sine of an angle. Lines nearer to parallel than 0.06 degrees cross nowhere in particular. */
export const parallelSine = 1e-3;
/** Sine of an angle. Below a turn of 2 degrees two arms of a corner are one line. */
export const oneLineSine = 0.035;
/**
 * Changes of what is unknown of a photograph that move a corner by about a hundredth of a dot; derivatives are taken
 * over them. Of the focal length's logarithm, the centre in dots, the bends of the lens, turns in rad, shifts in mm,
 * the turn of a sheet on the floor in rad and the bleed of the print in dots.
 */
export const photoSteps = {
  focal: 1e-5,
  centre: 1e-2,
  bend: 1e-5,
  turn: 1e-6,
  shift: 3e-3,
  sheetTurn: 1e-5,
  bleed: 1e-2,
} as const;
/** Weights of a spline that differ by less are one weight, written in decimals: it is plain. */
export const weightRounding = 1e-12;
