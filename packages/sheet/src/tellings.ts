import type { EdgeRef, LengthUnit } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  type FindingOf,
  type NoFacts,
  type RefusalOf,
} from '@paperhinge/geometry/sayings';
import type { CommandTellings } from './command-sayings.js';
import type { FileKind } from './file-kind.js';

/** What a fault of a sheet speaks of: a field, or an item of its list, else the verb, else the sheet. */
export interface OfField {
  /** As the sheet writes it. */
  readonly field?: string;
  /** From 1. */
  readonly item?: number;
  readonly verb?: string;
}

/** A name that is not there, and the names that are. */
export interface Unknown {
  readonly name: string;
  readonly names: readonly string[];
}
export interface UnknownOnPiece extends Unknown {
  readonly piece: string;
}

/** What is told of the text of a sheet before its fields are looked at. */
interface DocumentTellings {
  'sheet-too-large': { readonly mostCharacters?: number };
  'sheet-too-deep': { readonly mostLevels: number };
  'sheet-not-read': { readonly fault: SyntaxFault };
  'sheet-empty': NoFacts;
  'not-a-sheet': { readonly looksLike?: FileKind };
  'too-many-aliases': { readonly most: number };
  'unknown-alias': NoFacts;
  'tag-refused': NoFacts;
  'duplicate-key': { readonly name: string };
  'more-faults': { readonly more: number };
}
/** Ways in which a text is no YAML. */
export type SyntaxFault =
  | 'any'
  | 'tab'
  | 'several-documents'
  | 'sign-missing'
  | 'colon-missing'
  | 'not-closed'
  | 'indentation'
  | 'backslash'
  | 'two-on-a-line'
  | 'key'
  | 'too-deep'
  | 'long-key';

/** What a figure that is kept under a name may be. */
type Figure = 'length' | 'share' | 'angle' | 'number';

/** What is told of the value of a field. Lengths in mm. */
interface ValueTellings {
  /** `write`: what may have been meant. */
  'length-not-understood': OfField & { readonly write?: string };
  /** Without a figure: beyond anything that can be sewn. `opposite`: the verb that does the contrary. */
  'length-out-of-range': OfField & {
    readonly givenMm?: number;
    readonly leastMm?: number;
    readonly mostMm?: number;
    readonly over?: boolean;
    readonly opposite?: string;
  };
  'percent-not-understood': OfField & { readonly write?: string; readonly lacksSign: boolean };
  'percent-out-of-range': OfField & {
    readonly givenPercent: number;
    readonly leastPercent: number;
    readonly mostPercent: number;
    readonly over: boolean;
  };
  /** `name`: where an edge's name stands alone. */
  'position-not-understood': OfField & {
    readonly form: 'from-nothing' | 'share-or-length' | 'any';
    readonly name?: string;
  };
  'position-off-edge': OfField & object;
  'edge-not-understood': OfField & { readonly withLength?: boolean };
  'name-not-understood': OfField & object;
  /** `instead`: the verb that takes several. */
  'one-name-expected': OfField & { readonly given: readonly string[]; readonly instead?: string };
  'point-not-understood': OfField & object;
  'pair-expected': OfField & object;
  /** `among`: it is a key of that field. */
  'name-not-printable': OfField & { readonly among?: string };
  'sum-not-understood': OfField & object;
  'value-unknown': OfField & Unknown;
  'value-needs-itself': { readonly name: string };
  'figures-not-together': OfField & { readonly one: Figure; readonly sign: string; readonly other: Figure };
  'value-of-other-kind': OfField & { readonly is: Figure; readonly wanted: Figure };
  'measure-not-understood': OfField & { readonly forms: readonly string[] };
  'range-not-understood': OfField & object;
  'area-not-understood': OfField & object;
  'angle-not-understood': OfField & object;
  'angle-out-of-range': OfField & object;
  'count-not-understood': OfField & object;
  'count-out-of-range': OfField & { readonly least: number; readonly most: number };
  'choice-not-understood': OfField & { readonly given: string; readonly words: readonly string[] };
  'list-empty': OfField & object;
  'list-expected': OfField & object;
  /** `write`: the fields that may have been meant. */
  'mapping-expected': OfField & { readonly write?: string };
  'paper-not-understood': OfField & object;
  'margins-not-understood': OfField & object;
  'square-not-understood': OfField & object;
  'scale-not-understood': OfField & object;
}

/** What is told of fields that are there and not there. */
interface FieldTellings {
  /** More than one: any of them would do. */
  'missing-field': OfField & { readonly fields: readonly string[] };
  'unknown-field': OfField & Unknown;
  'fields-conflict': OfField & { readonly fields: readonly string[] };
  'space-after-colon': OfField & { readonly write: string };
  'decimal-comma': OfField & { readonly write: string };
  'too-many-steps': OfField & { readonly most: number };
  /** No other sheet is there by that path, or none can be read where this one is. */
  'include-not-here': { readonly sheet: string };
  'include-in-itself': { readonly sheet: string };
  'step-not-understood': { readonly key?: string; readonly indented?: boolean };
  'unknown-verb': Unknown;
}

/** What is told of names that the pattern does not have. */
interface NameTellings {
  'unknown-dart': UnknownOnPiece;
  'unknown-pleat': UnknownOnPiece;
  'unknown-line': UnknownOnPiece;
  'unknown-mark': UnknownOnPiece;
  'unknown-notch': UnknownOnPiece;
  'unknown-neighbour': UnknownOnPiece;
  'unknown-seam': Unknown;
  'unknown-fabric': Unknown;
  'opening-too-long': { readonly edgeMm: number };
  /** `figure`: as it is counted in the unit that it is in; `likely`: units in which it would be a person's. */
  'wearer-figure-doubted': {
    readonly measurement: string;
    readonly bodyMm: number;
    readonly figure: number;
    readonly likely: readonly LengthUnit[];
  };
}

/** A piece made for edges: a band, facing, lining or stay. */
export interface OfMade {
  readonly piece: string;
  readonly edges: readonly EdgeRef[];
}
interface MadeForTellings {
  'made-for-edge-gone': OfMade;
  'made-for-edge-reshaped': OfMade & { readonly offMm: number };
  'made-for-edge-changed': OfMade & {
    readonly madeForMm: number;
    readonly nowMm: number;
    readonly differenceMm: number;
  };
}

/** What is told of the alteration sheet and the files of a job. */
export interface SheetTellings
  extends DocumentTellings,
    ValueTellings,
    FieldTellings,
    NameTellings,
    MadeForTellings,
    CommandTellings {}

export const refusal: RefusalOf<SheetTellings> = anyRefusal;
export const finding: FindingOf<SheetTellings> = anyFinding;
