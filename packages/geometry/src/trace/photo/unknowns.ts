import { type Affine, rotation } from '../../affine.js';
import { photoSteps } from '../../tolerance.js';
import { type Camera, matrixOf } from './camera.js';
import type { SheetPlace } from './first-pose.js';

/** Everything that is solved for together. */
export interface Arrangement {
  /** One for each picture. */
  readonly cameras: readonly Camera[];
  /** One for each sheet; the first stays where it is. */
  readonly places: readonly SheetPlace[];
  /** Dots by which ink and the picture's own tones move the edges of black outwards. */
  readonly bleed: number;
}

/** Unknowns of one camera: log of the focal length, centre, bend, turn, shift. */
export const ofCamera = 12;
/** Unknowns of one sheet. */
const ofSheet = 3;

/** Where in the list a camera's, a sheet's and the bleed's unknowns stand. */
export const cameraAt = (i: number): number => i * ofCamera;
export const sheetAt = (i: number, cameras: number): number => cameras * ofCamera + i * ofSheet;
export const bleedAt = (cameras: number, sheets: number): number => sheetAt(sheets, cameras);

/** As one list of figures. */
export function listed({ cameras, places, bleed }: Arrangement): Float64Array {
  return Float64Array.from([
    ...cameras.flatMap(c => [Math.log(c.focal), c.centre.x, c.centre.y, ...c.bend, ...c.turn, ...c.shift]),
    ...places.flatMap(({ x, y, angle }) => [x, y, angle]),
    bleed,
  ]);
}

/** Back from a list. */
export function arranged(list: Float64Array, cameras: number, sheets: number): Arrangement {
  return {
    cameras: Array.from({ length: cameras }, (_, i) => cameraFrom(list, cameraAt(i))),
    places: Array.from({ length: sheets }, (_, i) => {
      const k = sheetAt(i, cameras);
      return { x: list[k]!, y: list[k + 1]!, angle: list[k + 2]! };
    }),
    bleed: list[bleedAt(cameras, sheets)]!,
  };
}

function cameraFrom(list: Float64Array, k: number): Camera {
  const three = (from: number) => [list[from]!, list[from + 1]!, list[from + 2]!] as const;
  return {
    focal: Math.exp(list[k]!),
    centre: { x: list[k + 1]!, y: list[k + 2]! },
    bend: three(k + 3),
    turn: three(k + 6),
    shift: three(k + 9),
  };
}

/** Changes of each unknown, in the order of the list: derivatives are taken over them. */
export const stepsOf = (cameras: number, sheets: number): readonly number[] => [
  ...Array.from({ length: cameras }, () => {
    const { focal, centre, bend, turn, shift } = photoSteps;
    return [focal, centre, centre, bend, bend, bend, turn, turn, turn, shift, shift, shift];
  }).flat(),
  ...Array.from({ length: sheets }, () => [photoSteps.shift, photoSteps.shift, photoSteps.sheetTurn]).flat(),
  photoSteps.bleed,
];

/** Where a point of a sheet, its x and y in mm, is seen, straight from the list of unknowns; written to `out`. */
export function seenFrom(
  list: Float64Array,
  camera: number,
  sheet: number,
  on: { readonly x: number; readonly y: number },
  out: Float64Array,
): void {
  const angle = list[sheet + 2]!;
  const cos = Math.cos(angle),
    sin = Math.sin(angle);
  const x = list[sheet]! + cos * on.x - sin * on.y,
    y = list[sheet + 1]! + sin * on.x + cos * on.y;
  const m = matrixOf([list[camera + 6]!, list[camera + 7]!, list[camera + 8]!]);
  const w = m[6] * x + m[7] * y + list[camera + 11]!;
  const p = (m[0] * x + m[1] * y + list[camera + 9]!) / w,
    q = (m[3] * x + m[4] * y + list[camera + 10]!) / w;
  const r2 = p * p + q * q;
  const k =
    Math.exp(list[camera]!) *
    (1 + r2 * (list[camera + 3]! + r2 * (list[camera + 4]! + r2 * list[camera + 5]!)));
  // What lies behind the camera is no picture.
  out[0] = w > 0 ? list[camera + 1]! + k * p : Number.NaN;
  out[1] = w > 0 ? list[camera + 2]! + k * q : Number.NaN;
}

/** A sheet's place as a map from the sheet to the floor. */
export const mapOf = ({ x, y, angle }: SheetPlace): Affine => ({ ...rotation(angle), e: x, f: y });
