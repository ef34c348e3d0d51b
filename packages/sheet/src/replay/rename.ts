import { isGoal, type Measure } from '@paperhinge/alter';
import type { Field, Fields } from '@paperhinge/alter/verb';
import type { EdgeRef } from '@paperhinge/geometry';
import type { EdgePosition } from '@paperhinge/geometry/pattern';
import type { Parameters } from '../fields/of-verb.js';

/** Names of one pattern by those of another. What lies on a piece goes by `piece.name`, both as the steps have them. */
export interface NameMap {
  readonly pieces: Readonly<Record<string, string>>;
  readonly edges: Readonly<Record<string, string>>;
  readonly darts: Readonly<Record<string, string>>;
  readonly lines: Readonly<Record<string, string>>;
  readonly marks: Readonly<Record<string, string>>;
  readonly seams: Readonly<Record<string, string>>;
  readonly fabrics: Readonly<Record<string, string>>;
}

/** The fields of a step with every name put into that of another pattern; a name that is not in the map stays. */
export const renamed = (fields: Fields, parameters: Parameters, names: NameMap): Parameters =>
  inFields({ fields, parameters }, names);

interface Scope {
  readonly fields: Fields;
  readonly parameters: Parameters;
  readonly outer?: Scope;
}

const inFields = (scope: Scope, names: NameMap): Parameters =>
  Object.fromEntries(
    Object.entries(scope.parameters).map(([key, value]) => {
      const field = scope.fields[key];
      return [key, field && value !== undefined ? inField(field, value, scope, names) : value];
    }),
  );

function inField(field: Field, value: unknown, scope: Scope, names: NameMap): unknown {
  const { kind } = field;
  if (isGoal(value)) return { ...value, soThat: inMeasure(value.soThat, names) };
  if (Array.isArray(value)) return value.map(one => inField(field, one, scope, names));
  if (typeof value === 'string' && field.words?.includes(value)) return value;
  switch (kind) {
    case 'piece':
    case 'pieces':
    case 'new-name':
      return to(names.pieces, value as string);
    case 'seam':
      return to(names.seams, value as string);
    case 'cloth':
      return to(names.fabrics, value as string);
    case 'edge-of-piece':
    case 'edges-of-pieces':
      return inEdge(value as EdgeRef, names);
    case 'group':
    case 'groups':
      return inFields({ fields: field.fields!, parameters: value as Parameters, outer: scope }, names);
    case 'marks':
      return to(names.marks, value as string, pieceOf(field, scope));
    case 'edge':
    case 'dart':
    case 'line':
    case 'mark':
      return to(names[`${kind}s`], value as string, pieceOf(field, scope));
    case 'place':
    case 'places':
    case 'range':
      return inPlace(value as EdgePosition, pieceOf(field, scope), names);
    default:
      return value;
  }
}

/** What a name has become; of a thing on a piece, under that piece's. */
function to(map: Readonly<Record<string, string>>, name: string, piece?: string): string {
  const key = piece === undefined ? name : `${piece}.${name}`;
  return Object.hasOwn(map, key) ? map[key]! : name;
}

const inEdge = ({ piece, edge }: EdgeRef, names: NameMap): EdgeRef => ({
  piece: to(names.pieces, piece),
  edge: to(names.edges, edge, piece),
});

/** What a place is counted from is an edge or a dart of the piece. */
function inPlace(place: EdgePosition, piece: string | undefined, names: NameMap): EdgePosition {
  const { from } = place;
  if (from === undefined) return place;
  const edge = to(names.edges, from, piece);
  return { ...place, from: edge === from ? to(names.darts, from, piece) : edge };
}

function inMeasure(measure: Measure, names: NameMap): Measure {
  switch (measure.of) {
    case 'seam':
    case 'seam-ease':
      return { ...measure, seam: to(names.seams, measure.seam) };
    case 'edges':
      return { ...measure, edges: measure.edges.map(edge => inEdge(edge, names)) };
    case 'sweep':
      return { ...measure, edge: inEdge(measure.edge, names) };
    case 'height':
    case 'width':
    case 'area':
      return { ...measure, piece: to(names.pieces, measure.piece) };
    default:
      return measure;
  }
}

/** The piece that a field's thing lies on, as the steps name it: through the edge, for a place on one. */
function pieceOf({ of }: Field, scope: Scope | undefined): string | undefined {
  if (of === undefined || scope === undefined) return undefined;
  if (!Object.hasOwn(scope.fields, of)) return pieceOf({ of } as Field, scope.outer);
  const owner = scope.fields[of]!;
  if (owner.kind === 'piece' || owner.kind === 'pieces')
    return ([scope.parameters[of]].flat() as readonly string[])[0];
  return pieceOf(owner, scope);
}
