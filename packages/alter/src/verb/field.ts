/** What a field of a verb holds. */
export type FieldKind =
  | 'piece'
  | 'pieces'
  | 'edge'
  | 'edge-of-piece'
  | 'edges-of-pieces'
  | 'dart'
  | 'pleat'
  | 'line'
  | 'mark'
  | 'marks'
  | 'notch'
  | 'seam'
  | 'place'
  | 'places'
  | 'range'
  | 'length'
  | 'lengths'
  | 'ease'
  | 'angle'
  | 'share'
  | 'count'
  | 'choice'
  | 'yes-or-no'
  | 'cloth'
  | 'new-name'
  | 'text'
  | 'group'
  | 'groups';

/** Whether a field must be given, may be left out, or has a usual value. */
export type Giving = 'needed' | 'optional' | 'usual';

/**
 * One field of a verb, from which its form in a sheet, its schema, the list to pick from, its handle on a drawing and
 * its check at the library's door are all derived. Lengths in mm, angles in rad, shares from 0 to 1.
 */
export interface Field<T = unknown, G extends Giving = Giving> {
  readonly kind: FieldKind;
  readonly giving: G;
  readonly usual?: T;
  /**
   * The field that names the piece (of an edge, dart, line, mark), or the edge or seam (of a place), that this one
   * belongs to; looked for in its own group first.
   */
  readonly of?: string;
  /** Bounds of a number; `over`: more than the least. */
  readonly least?: number;
  readonly most?: number;
  readonly over?: boolean;
  /** The words of a choice, or those that may stand instead of a name: `all seams`, `hem`. */
  readonly words?: readonly string[];
  /** The verb that takes several where this field takes one. */
  readonly several?: string;
  /** The fields of a group, or of each of several. */
  readonly fields?: Fields;
  /** What it takes at the library's door; a field that was not made by the functions below takes anything. */
  readonly check?: Check;
}

/** Fields by their name in the library (`halfWidth`); a sheet writes it in words (`half width`). */
export type Fields = { readonly [name: string]: Field };

/** A field for each parameter of an operation. */
export type FieldsOf<P> = { readonly [K in keyof P]-?: Field<NonNullable<P[K]>> };

/** Parameters with every usual value filled in. */
export type Filled<P, F> = Omit<P, UsualIn<F>> & {
  readonly [K in keyof P as K extends UsualIn<F> ? K : never]-?: NonNullable<P[K]>;
};

type UsualIn<F> = { [K in keyof F]: F[K] extends Field<infer _, 'usual'> ? K : never }[keyof F];

// What values each kind of field takes, each check by itself: a verb carries those of its own fields.

/** Of which field of which verb a value was given. */
export interface FieldAt {
  readonly verb: string;
  readonly name: string;
  readonly field: Field;
}

/** The value as it is taken. @throws PatternError where it is none of its kind */
export type Check = (value: unknown, at: FieldAt) => unknown;
