import type { AnyVerb } from '@paperhinge/alter';
import type { ToldFinding, Where } from '@paperhinge/geometry';

/** What is declared of a verb, without its doing: its sentence, fields and handles are made from it. */
export type Declared = Pick<AnyVerb, 'verb' | 'does' | 'fields' | 'oneOf' | 'sentence' | 'startsAt'>;

/** A thing on the table that can be touched. */
export interface Touched {
  readonly kind: 'piece' | 'edge' | 'corner' | 'dart' | 'pleat' | 'line' | 'mark' | 'notch' | 'table';
  readonly piece?: string;
  readonly name?: string;
}

/** One drawn part of a piece, as SVG path data in the piece's own mm. */
export interface Part {
  readonly kind: 'edge' | 'corner' | 'dart' | 'pleat' | 'line' | 'notch' | 'mark';
  readonly name: string;
  readonly path: string;
  /** What the slip says of it, in the reader's words. */
  readonly told: string;
  /** The seams an edge is sewn in. */
  readonly seams?: readonly string[];
  /** The two edges that meet in a corner. */
  readonly edges?: readonly string[];
  /** Where a point lies, in the piece's own mm. */
  readonly at?: readonly [number, number];
  /** Kind of an edge or line: `fold`, `hem`, `grain`, `level` … */
  readonly sort: string;
}

export type Box = readonly [x: number, y: number, width: number, height: number];

export interface PieceView {
  readonly name: string;
  readonly title: string;
  /** "cut 1 on the fold". */
  readonly cut: string;
  /** Of what is cut. */
  readonly box: Box;
  /** Room on the table: what is cut, and what it was before. */
  readonly room: Box;
  readonly cutting: string;
  readonly stitching: string;
  readonly parts: readonly Part[];
  /** Where its title stands. */
  readonly middle: readonly [number, number];
  /** mm to the nearest line there, what lies above and below counted nearer than what lies beside. */
  readonly middleRoom: number;
  /** The stitching line as it was before the steps; empty where it is new or unchanged. */
  readonly before: string;
  /** "0.3 m²" and the like. */
  readonly told: string;
}

/** What came of one step. */
export interface StepView {
  readonly did: string;
  /** Why it could not be done. */
  readonly fault?: string;
}

/** What stands at the foot of the sheet. */
export interface Verdict {
  readonly text: string;
  readonly strong: string;
  readonly tone: 'sound' | 'care' | 'fault';
  readonly where?: Where;
}

/** One line of a list that is read: a seam, a job of the making. */
export interface Row {
  readonly text: string;
  readonly detail: string;
  readonly tone: 'sound' | 'care' | 'fault';
  readonly where?: Where;
  /** A seam that can be walked. */
  readonly seam?: string;
  /** The level that a girth is taken at, by the line's name, and the body's own measure there. */
  readonly level?: string;
  readonly body?: string;
  /** What it speaks of, as it lights up on the table. */
  readonly lights?: readonly string[];
}

/** What is wrong with the sheet's text, in words, and at which line. */
export interface Fault {
  readonly line?: number;
  readonly text: string;
}

/** What is drawn, and what came of the steps: told at once. */
export interface View {
  readonly pattern: string;
  readonly pieces: readonly PieceView[];
  readonly steps: readonly StepView[];
  /** Names to choose from, by kind: what the pattern has before each step, and after the last. */
  readonly names: readonly Names[];
  /** What keeps steps from being done, each at its line. */
  readonly errors: readonly Fault[];
  /** That it took to work out. */
  readonly milliseconds: number;
}

/** What is found out of what is drawn, once the hand rests. */
export interface Proof {
  readonly verdict: readonly Verdict[];
  readonly seams: readonly Row[];
  /** The garment's girths beside the body's. */
  readonly girths: readonly Row[];
  /** The garment's girth at each level line that goes round it, in words. */
  readonly levels: readonly Level[];
  readonly findings: readonly ToldFinding[];
  /** For each step, what it left to look at and stands still. */
  readonly left: readonly Left[];
  readonly making: readonly Row[];
  readonly cautions: readonly string[];
  /** That it took to work out. */
  readonly milliseconds: number;
}

export interface Left {
  readonly findings: readonly ToldFinding[];
}

export interface Level {
  readonly line: string;
  /** "94 cm all round". */
  readonly told: string;
}

export interface Names {
  readonly pieces: readonly string[];
  readonly edges: Readonly<Record<string, readonly string[]>>;
  readonly darts: Readonly<Record<string, readonly string[]>>;
  readonly lines: Readonly<Record<string, readonly string[]>>;
  readonly marks: Readonly<Record<string, readonly string[]>>;
  readonly seams: readonly string[];
  readonly fabrics: readonly string[];
}

/** Where a figure of a step is taken hold of on the drawing. Places in the piece's own mm. */
export interface Handle {
  readonly step: number;
  /** The field's name as the sheet writes it, and those of the groups it stands in. */
  readonly way: readonly string[];
  readonly kind: 'length' | 'share' | 'angle';
  readonly piece: string;
  readonly at: readonly [number, number];
  /** mm that the handle goes for one unit of the figure. */
  readonly along: readonly [number, number];
  /** The figure that this is true of: mm, share or rad. */
  readonly value: number;
  /** Of a place on an edge: what it is counted from, and whether in mm. */
  readonly from?: string;
  readonly inMm?: boolean;
  readonly least: number;
  readonly most: number;
  /** It says where something lies, not how much of it there is. */
  readonly isPlace: boolean;
}

/** A corner, end or mark that a handle can be brought to, in its piece's own mm. */
export interface NamedPoint {
  readonly piece: string;
  readonly at: readonly [number, number];
}

export interface Held {
  readonly handles: readonly Handle[];
  readonly points: readonly NamedPoint[];
}

/** What the page has before its engine has started. */
export interface FirstView {
  readonly verbs: readonly Declared[];
  readonly view: View;
  readonly proof: Proof;
}
