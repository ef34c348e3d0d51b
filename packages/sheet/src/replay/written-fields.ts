import { type Goal, isGoal } from '@paperhinge/alter';
import { type Field, type Fields, inSheet } from '@paperhinge/alter/verb';
import type { EdgeRef, SeamEase } from '@paperhinge/geometry';
import { coincidenceTolerance } from '@paperhinge/geometry/internal-tolerances';
import type { EdgePosition } from '@paperhinge/geometry/pattern';
import { perCent } from '../fields/figures.js';
import { measureText } from '../fields/measure.js';
import type { Parameters } from '../fields/of-verb.js';

/** A value as a sheet writes it. */
export type WrittenValue =
  | string
  | number
  | boolean
  | readonly WrittenValue[]
  | { readonly [name: string]: WrittenValue };

/** The fields of a step as a sheet writes them; read again, they are the same to the last digits of a figure. */
export const writtenFields = (
  fields: Fields,
  parameters: Parameters,
): { readonly [name: string]: WrittenValue } =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]): [string, WrittenValue][] => {
      const value = parameters[name];
      return value === undefined ? [] : [[inSheet(name), writtenValue(field, value)]];
    }),
  );

function writtenValue(field: Field, value: unknown): WrittenValue {
  const { kind } = field;
  if (isGoal(value)) return writtenGoal(value);
  if (Array.isArray(value)) return value.map(one => writtenValue(field, one));
  if (typeof value === 'string') return value;
  switch (kind) {
    case 'length':
    case 'lengths':
      return mm(value as number);
    case 'angle':
      return `${Number((((value as number) * 180) / Math.PI).toPrecision(14))}°`;
    case 'share':
      return `${perCent(value as number)} %`;
    case 'yes-or-no':
      return value === true ? 'yes' : 'no';
    case 'edge-of-piece':
    case 'edges-of-pieces':
      return `${(value as EdgeRef).piece}.${(value as EdgeRef).edge}`;
    case 'place':
    case 'places':
    case 'range':
      return writtenPlace(value as EdgePosition);
    case 'ease':
      return writtenEase(value as SeamEase);
    case 'group':
    case 'groups':
      return writtenFields(field.fields!, value as Parameters);
    default:
      return value as number;
  }
}

/** Without an exponent, which no sheet is read with. */
const mm = (length: number): string => `${plain(length)} mm`;
const plain = (figure: number): string =>
  String(Math.abs(figure) < coincidenceTolerance ? 0 : Number(figure.toPrecision(15))).replace(
    /(\.\d{15})\d+$/,
    '$1',
  );

const writtenEase = (ease: SeamEase): string => ('mm' in ease ? mm(ease.mm) : `${plain(ease.percent)} %`);

function writtenPlace(place: EdgePosition): string {
  const figure = 'share' in place ? `${perCent(place.share)} %` : mm(place.mm);
  return place.from === undefined ? figure : `${figure} from ${place.from}`;
}

function writtenGoal({ soThat, is }: Goal): WrittenValue {
  const figure = (one: number): string => (soThat.of === 'area' ? `${plain(one)} mm2` : mm(one));
  return { 'so that': measureText(soThat), is: typeof is === 'number' ? figure(is) : is.map(figure) };
}
