import type { CurveTellings } from '../curve/tellings.js';
import type { PatternTellings, WordFacts } from '../pattern/tellings.js';
import { anyFinding, anyRefusal, type FindingOf, type NoFacts, type RefusalOf } from '../sayings.js';
import type { Thing } from '../telling.js';
import type { Meaning } from './vocabulary.js';

/** What a file is that was given for a drawing. */
export type OtherFile = 'pdf' | 'picture' | 'archive' | 'page' | 'json' | 'text' | 'nothing';

/** Why a number, a path or an attribute of a drawing cannot be used. */
export type FaultReason =
  | 'command-expected'
  | 'begins-without-move'
  | 'number-expected'
  | 'ends-early'
  | 'number-after-comma'
  | 'arc-flag'
  | 'number-too-large'
  | 'no-length'
  | 'negative'
  | 'not-understood';

/** Why the metadata cannot be read as JSON. */
export type JsonReason =
  | 'character-expected'
  | 'value-expected'
  | 'text-expected'
  | 'key-twice'
  | 'nested-too-deep'
  | 'text-after-end';

/** The part of the metadata that was not understood, and so how it is written. */
export type MetadataPart =
  | 'object'
  | 'run'
  | 'ease'
  | 'length'
  | 'percentage'
  | 'stretch'
  | 'nap'
  | 'count'
  | 'word'
  | 'part';

/** An element of the drawing: its SVG name, and its id where it has one. */
interface ElementFacts {
  readonly element: string;
  readonly id?: string;
}

/** What is told of files and drawings as such, before they are looked at as patterns. */
interface DrawingTellings {
  'file-too-large': NoFacts;
  'file-compressed': NoFacts;
  'encoding-unknown': NoFacts;
  'encoding-broken': NoFacts;
  'not-a-drawing': { readonly is: OtherFile };
  'not-xml': NoFacts;
  'not-svg': NoFacts;
  'too-many-elements': { readonly most: number };
  'entity-not-expanded': NoFacts;
  'too-many-instances': NoFacts;
  'too-many-segments': { readonly of: 'drawing' | 'pattern' | 'piece'; readonly most?: number };
  'viewbox-empty': NoFacts;
  'scale-unsure': { readonly attribute: string };
  'style-rule-left-out': NoFacts;
  'reference-outside': ElementFacts;
  'reference-missing': ElementFacts;
  'reference-loop': ElementFacts;
  'reference-too-deep': { readonly most: number };
  'path-data-broken': ElementFacts & { readonly reason: FaultReason; readonly drawnSoFar: boolean };
  'attribute-not-understood': ElementFacts & {
    readonly attribute: string;
    readonly reason: FaultReason;
    readonly leftOut: boolean;
  };
  'shape-empty': ElementFacts;
  'hidden-left-out': { readonly count: number };
  'text-left-out': { readonly count: number };
  'more-of-a-kind': { readonly more: number; readonly kind: string };
}

/** What is told of a drawing's scale and sizes. */
interface ScaleTellings {
  /** The size that either would have by the other and the viewBox. */
  'size-out-of-proportion': { readonly widthMm: number; readonly heightMm: number };
  /** `isNothing`: it is 0 or less. */
  'unit-not-known': { readonly attribute: string; readonly isNothing: boolean };
  'scale-not-known': { readonly because: 'viewbox' | 'percent' };
  'scale-assumed': { readonly piece: string; readonly reachMm: number; readonly hasSize: boolean };
  'scale-out-of-range': NoFacts;
  'piece-very-large': { readonly piece: Thing; readonly reachMm: number };
  'unknown-size': { readonly size: string; readonly sizes: readonly string[] };
  'size-not-read': { readonly size: string };
  'size-not-chosen': { readonly size: string; readonly sizes: readonly string[] };
}

/** What is told of the attributes of a pattern drawing. */
interface AttributeTellings {
  'role-not-known': WordFacts;
  'attribute-misplaced': { readonly attribute: string; readonly places: readonly string[] };
  'attribute-unknown': { readonly attribute: string; readonly near?: string };
  'attribute-misspelt': { readonly attribute: string; readonly near: string };
  'also-cut-not-understood': NoFacts;
  'version-not-known': { readonly version: number };
  'copies-count-now': { readonly piece: Thing; readonly count: number; readonly before: number };
}

/** What is told of pieces as they are drawn. */
interface PieceTellings {
  'no-pieces': NoFacts;
  'piece-left-out': { readonly piece: Thing };
  'outside-piece': { readonly what: Meaning };
  'duplicate-outline': { readonly piece: Thing };
  'unknown-outline': { readonly piece: Thing; readonly id: string; readonly ids: readonly string[] };
  'two-outlines': NoFacts;
  'second-outline-left-out': NoFacts;
  'inner-outline-left-out': { readonly count: number };
  'too-many-edges': { readonly most: number };
  'too-many-notches': NoFacts;
  'nothing-drawn': { readonly what: Meaning; readonly name?: string };
  'not-displayed': { readonly what: Meaning; readonly name?: string };
  'short-side-dropped': { readonly lengthMm: number };
  'drawing-not-read': { readonly count: number };
  'fold-not-straight': { readonly edge: Thing; readonly bowMm: number };
  'allowance-not-given': { readonly edge: Thing; readonly attribute: string };
}

/** What is told of the JSON block: seams, fabrics, fastenings. */
interface MetadataTellings {
  'metadata-not-json': { readonly reason: JsonReason; readonly character?: string };
  'metadata-not-understood': {
    readonly part: MetadataPart;
    readonly of?: Thing;
    readonly key?: string;
    readonly near?: string;
    readonly words?: readonly string[];
  };
  'metadata-not-read': { readonly key: string; readonly keys: readonly string[]; readonly of?: Thing };
  'run-direction-not-given': {
    readonly seam: Thing;
    readonly edge: Thing;
    readonly ends: readonly [string, string];
  };
  'name-not-writable': { readonly name: string };
}

/** What is told of drawings that are read and written. */
export interface SvgTellings
  extends DrawingTellings,
    ScaleTellings,
    AttributeTellings,
    PieceTellings,
    MetadataTellings {}

/** All that may be said while a drawing is read. */
export type ReadingTellings = SvgTellings & PatternTellings & CurveTellings;

export const refusal: RefusalOf<ReadingTellings> = anyRefusal;
export const finding: FindingOf<ReadingTellings> = anyFinding;
