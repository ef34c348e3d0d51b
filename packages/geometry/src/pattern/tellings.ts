import { type NoFacts, sayingsOf, type Thing } from '../sayings.js';
import type { EdgeRole } from './types.js';

/** A name that is not there, and the names that are. */
interface Unknown {
  readonly name: string;
  readonly names: readonly string[];
}

/** What is told of patterns as such: lengths and places as written, names, and what cannot be a pattern. */
export interface PatternTellings {
  'length-not-understood': NoFacts;
  'length-out-of-range': NoFacts;
  /** `write`: what the maker may have meant, ready to be written. */
  'percent-not-understood': { readonly write?: string; readonly lacksSign: boolean };
  /** `form`: what it may be instead. */
  'position-not-understood': { readonly form: 'from-nothing' | 'share-or-length' | 'any' };
  'position-off-edge': { readonly edge?: Thing; readonly alongMm?: number; readonly edgeMm?: number };
  'ambiguous-end': { readonly edge: Thing; readonly from: string };
  'not-a-neighbour': { readonly edge: Thing; readonly from: string; readonly neighbours: readonly string[] };
  'unknown-piece': Unknown & { readonly seam?: string };
  'unknown-edge': Unknown & { readonly piece: string; readonly seam?: string; readonly notch?: boolean };
  'name-missing': { readonly what: 'piece' | 'seam' | 'fabric' | 'edge' };
  'duplicate-piece': { readonly name: string };
  'duplicate-seam': { readonly name: string };
  'duplicate-fabric': { readonly name: string };
  'duplicate-edge': { readonly name: string };
  'cut-count': { readonly most: number };
  'piece-without-outline': NoFacts;
  'edge-without-length': NoFacts;
  'open-outline': { readonly gapMm: number; readonly between?: readonly string[] };
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
  'role-guessed': { readonly edge: Thing; readonly role: EdgeRole };
}

export const { refusal, finding } = sayingsOf<PatternTellings>();
