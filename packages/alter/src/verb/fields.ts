import type { EdgeRef, SeamEase } from '@paperhinge/geometry';
import type { EdgePosition } from '@paperhinge/geometry/pattern';
import { groupCheck, groupsCheck } from './check-fields.js';
import * as checks from './checks.js';
import type { Check, Field, FieldKind, Fields, FieldsOf } from './field.js';

type Needed<T> = Field<T, 'needed'>;
const needed = <T>(
  kind: FieldKind,
  check: Check,
  more: Omit<Field<T>, 'kind' | 'giving' | 'check'> = {},
): Needed<T> => ({ kind, giving: 'needed', check, ...more });

/** The name of a piece. */
export const piece = (): Needed<string> => needed('piece', checks.name);
/** Names of pieces. */
export const pieces = (): Needed<readonly string[]> => needed('pieces', checks.names);
/** An edge of the piece that the field `of` names. */
export const edge = (of = 'piece'): Needed<string> => needed('edge', checks.name, { of });
/** An edge with its piece: `front.neck`. */
export const edgeOfPiece = (): Needed<EdgeRef> => needed('edge-of-piece', checks.edgeRef);
/** Edges with their pieces. */
export const edgesOfPieces = (): Needed<readonly EdgeRef[]> => needed('edges-of-pieces', checks.edgeRefs);
/** Edges by name, or one of these words for all of a sort. */
export const edgesOr = <const W extends string>(...words: readonly W[]): Needed<readonly EdgeRef[] | W> =>
  needed('edges-of-pieces', checks.edgeRefs, { words });
/** A dart of the piece that the field `of` names. */
export const dart = (of = 'piece'): Needed<string> => needed('dart', checks.name, { of });
/** A pleat of the piece that the field `of` names. */
export const pleat = (of = 'piece'): Needed<string> => needed('pleat', checks.name, { of });
/** A line of the piece, or of each piece; `words` may stand instead. */
export const drawnLine = (of = 'piece', words: readonly string[] = []): Needed<string> =>
  needed('line', checks.name, { of, words });
/** A mark of the piece that the field `of` names. */
export const mark = (of = 'piece'): Needed<string> => needed('mark', checks.name, { of });
/** Marks of the piece that the field `of` names. */
export const marks = (of = 'piece'): Needed<readonly string[]> => needed('marks', checks.names, { of });
/** The name of a seam. */
export const seam = (): Needed<string> => needed('seam', checks.name);
/** A place on the edge (or seam) that the field `of` names. */
export const place = (of: string): Needed<EdgePosition> => needed('place', checks.place, { of });
/** One place, or a range of them. */
export const places = (of: string): Needed<EdgePosition | readonly [EdgePosition, EdgePosition]> =>
  needed('places', checks.places, { of });

/** Two places, between which something is done. */
export const range = (of: string): Needed<readonly [EdgePosition, EdgePosition]> =>
  needed('range', checks.twoPlaces, { of });

interface Bounds {
  readonly least?: number;
  readonly most?: number;
  /** More than the least, not equal to it. */
  readonly over?: boolean;
}
/** mm, from 0 unless the bounds say otherwise. */
export const length = ({ least = 0, most = checks.longestLength, over }: Bounds = {}): Needed<number> =>
  needed('length', checks.figure, { least, most, ...(over ? { over } : {}) });
/** mm, more than 0. */
export const size = (): Needed<number> => length({ over: true });
/** mm, either way. */
export const signedLength = (): Needed<number> => length({ least: -checks.longestLength });
/** mm, 0 or more: one for the whole, or one at either end. */
export const lengths = (): Needed<number | readonly [number, number]> =>
  needed('lengths', checks.figures, { least: 0, most: checks.longestLength });
/** What is wanted of a difference: a length or a percentage, either way. */
export const ease = (): Needed<SeamEase> => needed('ease', checks.ease);
/** rad, less than half a turn either way. */
export const angle = (): Needed<number> => needed('angle', checks.figure, { least: -Math.PI, most: Math.PI });
/** 0 to 1 unless the bounds say otherwise. */
export const share = ({ least = 0, most = 1, over }: Bounds = {}): Needed<number> =>
  needed('share', checks.figure, { least, most, ...(over ? { over } : {}) });
/** A whole number from 1. */
export const count = (most: number): Needed<number> =>
  needed('count', checks.wholeFigure, { least: 1, most });
/** One of these words. */
export const choice = <const W extends string>(...words: readonly W[]): Needed<W> =>
  needed('choice', checks.oneOfItsWords, { words });
/** Yes or no. */
export const yesOrNo = (): Needed<boolean> => needed('yes-or-no', checks.yesOrNo);
/** The name of a cloth. */
export const cloth = (): Needed<string> => needed('cloth', checks.name);
/** A name that the step gives. */
export const newName = (): Needed<string> => needed('new-name', checks.newName);
/** Fields of its own. */
export const group = <T>(fields: FieldsOf<T>): Needed<T> =>
  needed('group', groupCheck, { fields: fields as Fields });
/** Several, each with fields of its own. */
export const groups = <T>(fields: FieldsOf<T>, most: number): Needed<readonly T[]> =>
  needed('groups', groupsCheck, { fields: fields as Fields, least: 1, most });

/** May be left out. */
export const optional = <T>(field: Field<T>): Field<T, 'optional'> => ({ ...field, giving: 'optional' });
/** Takes this value where it is left out. */
export const usually = <T>(field: Field<T>, usual: T): Field<T, 'usual'> => ({
  ...field,
  giving: 'usual',
  usual,
});

/** How a sheet writes a field's name: `halfWidth` is `half width`. */
export const inSheet = (name: string): string =>
  name.replace(/[A-Z]/g, capital => ` ${capital.toLowerCase()}`);
