import type { EdgeRun, NotchStyle } from '../../pattern/types.js';

/** An edge as notches are looked for along it. */
export interface MarkedEdge {
  readonly name: string;
  readonly lengthMm: number;
  /** mm from its clockwise beginning. */
  readonly notches: readonly { readonly at: number; readonly style: NotchStyle }[];
}

/** The edges of a piece by which runs are looked up. */
export interface MarkedEdges {
  readonly piece: { readonly name: string };
  readonly marks: readonly MarkedEdge[];
}

/** What a maker can lay on what along a side of a seam. */
export interface SideMarks {
  readonly lengthMm: number;
  /** mm from where the side begins. */
  readonly notches: readonly { readonly at: number; readonly style: NotchStyle }[];
  /** mm to where one run ends and the next begins: at a seam that crosses, or at a fold. */
  readonly crossings: readonly number[];
}

/** Notches and crossings of the runs of a side, by the lines that they belong to. */
export function marksOf(runs: readonly EdgeRun[], lines: readonly MarkedEdges[]): SideMarks {
  const notches: { at: number; style: NotchStyle }[] = [];
  const crossings: number[] = [];
  let from = 0;
  for (const run of runs) {
    const edge = lines
      .find(({ piece, marks }) => piece.name === run.piece && marks.some(({ name }) => name === run.edge))
      ?.marks.find(({ name }) => name === run.edge);
    if (!edge) continue;
    if (from > 0) crossings.push(from);
    for (const { at, style } of edge.notches)
      notches.push({ at: from + (run.reversed ? edge.lengthMm - at : at), style });
    from += edge.lengthMm;
  }
  return { lengthMm: from, notches, crossings };
}

/** Of notches on lines that are sewn, so many meet one of the other side or a seam that crosses; common practice, no source. */
const mostlyMet = 0.8;
/** A notch of one style meets one of another so much more seldom. */
const otherStyle = 0.3;
/** mm, and of the length where it is gathered: how far off notches that meet lie. */
const near = 3,
  nearGathered = 0.06;
/** Of the longer side: what differs by more is gathered or stretched. */
const plainly = 0.03;
/** Marks make a seam so many times likelier at most, or less likely. */
const mostTelling = 60,
  leastTelling = 0.01;
export const atMostTelling = (marks: number): number => Math.min(mostTelling, Math.max(leastTelling, marks));

/** Of a notch that meets nothing on what is pleated. */
const pleated = 0.9;

/** How much likelier it is that two sides are sewn, begun where they begin, by where their notches lie. */
export const agreementOfMarks = (a: SideMarks, b: SideMarks): number => metBy(a, b) * metBy(b, a);

function metBy(own: SideMarks, other: SideMarks): number {
  return own.notches.reduce((all, notch) => all * chanceOf(notch, own, other), 1);
}

function chanceOf(notch: SideMarks['notches'][number], own: SideMarks, other: SideMarks): number {
  const off = Math.abs(own.lengthMm - other.lengthMm);
  const isPlain = off <= plainly * Math.max(own.lengthMm, other.lengthMm);
  const scale = other.lengthMm / own.lengthMm;
  const within = isPlain ? near + off : near + nearGathered * other.lengthMm;
  // What is eased or pleated in one place lies plain from its ends up to there.
  const plain = [notch.at, notch.at + other.lengthMm - own.lengthMm];
  const there = isPlain ? plain : [notch.at * scale, ...plain];
  const distanceTo = (at: number): number => Math.min(...there.map(place => Math.abs(place - at)));
  const met = other.notches.filter(({ at }) => distanceTo(at) <= within);
  const crossed = other.crossings.some(at => distanceTo(at) <= within);
  const places = other.notches.length + other.crossings.length;
  const byChance = Math.min(0.6, Math.max(0.04, (2 * within * places) / other.lengthMm));
  // On what is gathered or pleated into the other, notches tell where pleats are laid, too.
  if (met.length === 0 && !crossed)
    return !isPlain && own.lengthMm > other.lengthMm ? pleated : (1 - mostlyMet) / (1 - byChance);
  const alike = crossed || met.some(({ style }) => style === notch.style) ? 1 : otherStyle;
  const chance = (alike * mostlyMet) / byChance;
  // A notch that meets a notch is counted from both sides.
  return crossed ? chance : Math.sqrt(chance);
}
