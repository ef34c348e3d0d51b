import { anyFinding, anyRefusal, type FindingOf, type NoFacts, type RefusalOf } from '../sayings.js';
import type { Thing } from '../telling.js';
import type { LengthTellings } from '../units.js';
import type { EdgeRole } from './types.js';

/** A name that is not there, and the names that are. */
interface Unknown {
  readonly name: string;
  readonly names: readonly string[];
}

/** What two sizes of one pattern must have alike, in the order in which it is looked at. */
export type SizePart = 'pieces' | 'outline' | 'kinds' | 'notches' | 'lines' | 'marks' | 'seams';

/** A word that is none of those allowed: the one most likely meant, and all there are. */
export interface WordFacts {
  readonly near?: string;
  readonly words: readonly string[];
}

/** What carries a name. */
export type NamedThing =
  | 'piece'
  | 'seam'
  | 'fabric'
  | 'edge'
  | 'dart'
  | 'pleat'
  | 'line'
  | 'mark'
  | 'notch'
  | 'outline'
  | 'fastening';

/** What is told of patterns as such: lengths and places as written, names, and what cannot be a pattern. */
export interface PatternTellings extends LengthTellings {
  /** `write`: what the maker may have meant, ready to be written. */
  'percent-not-understood': { readonly write?: string; readonly lacksSign: boolean };
  /** `form`: what it may be instead. */
  'position-not-understood': { readonly form: 'from-nothing' | 'share-or-length' | 'any' };
  'position-off-edge': { readonly edge?: Thing; readonly alongMm?: number; readonly edgeMm?: number };
  'ambiguous-end': { readonly edge: Thing; readonly from: string };
  'not-a-neighbour': { readonly edge: Thing; readonly from: string; readonly neighbours: readonly string[] };
  /** `at`: the names of what holds the fault, from the outside in, with dots between them. */
  'pattern-not-usable': { readonly at: string };
  'unknown-piece': Unknown & { readonly seam?: string };
  'unknown-edge': Unknown & { readonly piece: string; readonly seam?: string; readonly notch?: boolean };
  'name-missing': { readonly what: NamedThing };
  'duplicate-piece': { readonly name: string };
  'duplicate-seam': { readonly name: string };
  'duplicate-fabric': { readonly name: string };
  'duplicate-edge': { readonly name: string };
  'cut-count': { readonly most: number };
  'piece-without-outline': NoFacts;
  'edge-without-length': NoFacts;
  'open-outline': { readonly gapMm?: number; readonly between?: readonly string[] };
  'outline-in-parts': { readonly name: string };
  'edge-names-do-not-fit': { readonly edges: number; readonly names: number };
  'dart-without-apex': NoFacts;
  'self-crossing': { readonly xMm: number; readonly yMm: number; readonly edges: readonly string[] };
  'edge-in-parts': { readonly name: string };
  'allowance-out-of-range': { readonly mostMm: number };
  'allowance-on-fold': NoFacts;
  'opening-out-of-range': NoFacts;
  'dart-legs-differ': {
    readonly dart: Thing;
    readonly firstMm: number;
    readonly secondMm: number;
    readonly limitMm: number;
  };
  'outline-without-area': NoFacts;
  'outline-anticlockwise': NoFacts;
  'notch-off-edge': { readonly alongMm: number; readonly edgeMm: number };
  'empty-seam': { readonly name: string };
  'word-not-understood': WordFacts & { readonly attribute: string; readonly readAs?: string };
  'length-not-positive': { readonly attribute: string };
  'stretch-out-of-range': { readonly most: number };
  'sizes-differ': {
    readonly part: SizePart;
    readonly sizes: readonly [string, string];
    readonly piece?: Thing;
  };
  'share-out-of-range': NoFacts;
  'unknown-level': { readonly level: string; readonly names: readonly string[] };
  'role-guessed': { readonly edge: Thing; readonly role: EdgeRole };
}

export const refusal: RefusalOf<PatternTellings> = anyRefusal;
export const finding: FindingOf<PatternTellings> = anyFinding;
