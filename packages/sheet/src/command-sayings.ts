import type { PatternError, Saying, Where } from '@paperhinge/geometry';
import {
  anyRefusal,
  anySaying,
  type NoFacts,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';
import type { ClothWay } from '@paperhinge/print/cloth';
import type { FileKind } from './file-kind.js';
import type { NamingSentences } from './naming-sayings.js';
import type { TraceSentences, TraceTellings } from './trace-sayings.js';

/** What a file given to the command is to be. */
export type Wanted = 'sheet' | 'pattern' | 'picture' | 'record';
interface OfInput {
  readonly what: Wanted;
}

/** What is told of the files and arguments of the command. */
export interface CommandTellings extends TraceTellings {
  'file-not-found': OfInput;
  'file-not-readable': OfInput & { readonly system?: string };
  'not-a-file': OfInput & { readonly folder: boolean };
  'input-too-large': OfInput & { readonly mostMegabytes: number };
  'file-empty': OfInput;
  'not-utf-8': OfInput;
  'not-a-pattern': { readonly looksLike: FileKind };
  'not-a-record': NoFacts;
  'output-not-a-folder': { readonly onTheWay: boolean };
  'output-is-a-folder': NoFacts;
  'input-would-be-overwritten': NoFacts;
  'output-not-written': { readonly system: string };
  'folder-unnamed': NoFacts;
  /** `such`: a name that would do. */
  'output-unnamed': { readonly such: string };
  /** `write`: the name with an ending that says what it is. */
  'output-of-another-kind': {
    readonly holds: 'pages' | 'frame' | 'drawing' | 'picture' | 'sheet';
    readonly ending: string;
    readonly write: string;
  };
  'folder-named-as-file': { readonly ending: string };
  'dxf-has-no-paper': NoFacts;
  'no-pattern-to-print': NoFacts;
  'photo-frame-of-no-pattern': NoFacts;
  /** As the reader of the arguments says it. */
  arguments: { readonly said: string };
  'answer-not-written': { readonly system: string };
}

/** What the command says while it works and when it is done. */
export interface CommandSentences extends NamingSentences, TraceSentences {
  'reading-sheet': NoFacts;
  'reading-pattern': NoFacts;
  altering: NoFacts;
  'laying-out': { readonly on: readonly string[] };
  'laying-out-one-sheet': NoFacts;
  'flattening-lines': NoFacts;
  writing: NoFacts;
  /** Where an error lies, beside its line. */
  'in-brackets': { readonly step?: number; readonly piece?: string; readonly edge?: string };
  severity: { readonly severity: 'note' | 'warning' | 'fault' };

  'steps-done': {
    readonly title: string;
    readonly steps: number;
    readonly sheet: string;
    readonly off: number;
  };
  'edges-as-drawn': NoFacts;
  before: NoFacts;
  after: NoFacts;
  new: NoFacts;
  gone: NoFacts;
  'no-edge-changed': NoFacts;
  'more-edges': { readonly more: number };
  'cut-size': {
    readonly piece: string;
    readonly kind: string;
    readonly lengthMm: number;
    readonly widthMm: number;
    readonly fabric: string;
    readonly stretchPercent?: number;
  };
  /** The cheaper way to lay it. */
  'cloth-to-buy': {
    readonly cloth: string;
    readonly widthMm: number;
    readonly buyMm: number;
    readonly laid: ClothWay;
  };
  'hem-sweep': { readonly edges: readonly { readonly piece: string; readonly edge: string }[] } & Change;
  'girth-at': { readonly level: string };
  'girth-figures': Change & { readonly bodyMm?: number; readonly easeMm?: number };
  'seams-matching': { readonly matching: number; readonly seams: number };
  'more-findings': { readonly more: number };
  'notes-in-report': { readonly notes: number };
  'more-cautions': { readonly more: number };
  'files-in': { readonly folder: string; readonly files: readonly string[] };
  'not-of-this-run': { readonly files: readonly string[] };
  'inches-rounded': NoFacts;

  seam: NoFacts;
  'one-side': NoFacts;
  'other-side': NoFacts;
  difference: NoFacts;
  'ease-wanted': { readonly easeMm: number };
  matches: NoFacts;
  'does-not-match': NoFacts;
  'no-seams': NoFacts;
  'will-not-sew': NoFacts;
  'nothing-in-the-way': NoFacts;
  'seams-not-checked': NoFacts;

  'each-piece-as-drawn': { readonly pattern: string };
  'within-stitching-line': { readonly piece: string; readonly areaMm2: number };
  'with-allowance': { readonly allowanceMm: number };
  'dart-named': { readonly dart: string };
  'with-legs': { readonly firstMm: number; readonly secondMm: number };
  'no-shapes': NoFacts;
  'shape-headings': NoFacts;
  'open-shape': NoFacts;

  'pages-of': { readonly pages: number; readonly paper: string };
  'projector-page': { readonly widthMm: number; readonly heightMm: number };
  'wrote-sheet': { readonly steps: number; readonly file: string };
  'pieces-written': { readonly pieces: number };
  'in-files': { readonly what: readonly Saying[]; readonly files: readonly string[] };
  'fails-check': { readonly faults: number };
}
interface Change {
  readonly beforeMm?: number;
  readonly afterMm?: number;
}

/** An error of the command's files and arguments. */
export const commandRefusal: RefusalOf<CommandTellings> = anyRefusal;
/** A sentence of the command's, to be worded. */
export const commandSaying: SayingOf<CommandSentences> = anySaying;

/** A file given as a sheet that begins like something else. */
export const refuseSheet = (looksLike: FileKind, where: Where): PatternError =>
  sheetRefusal('not-a-sheet', { looksLike }, where);
const sheetRefusal: RefusalOf<{ 'not-a-sheet': { readonly looksLike: FileKind } }> = anyRefusal;
