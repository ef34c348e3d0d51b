import type { Point } from '../../vector.js';
import { type Colour, evenedFloor, logs, placeAt, softened } from './evened-floor.js';
import { cellAt, type FloorMap } from './floor-map.js';
import { type LightField, lightFields, type SeenSample } from './light-field.js';

/** How unlike the ground each cell is: the distance of its three channels' logarithms from the ground's, light evened. */
export interface Unlikeness {
  readonly values: Float32Array;
  /** What noise makes of it, typically. */
  readonly noise: number;
  /** The logarithms of a cell's channels over the ground's there. */
  readonly colour: (cell: number) => Colour;
  /** The same of all cells, three figures each. */
  readonly floor: Float32Array;
}

/** What is known of the floor before it is looked at. */
export interface FloorKnown {
  /** Floor points that are white paper, in the order of their sheets. */
  readonly white: readonly Point[];
  /** Floor points near the sheets that are not paper, by sheet: most of them ground. */
  readonly beside: readonly (readonly Point[])[];
  /** What each cell is known to be; 0 where nothing is known. */
  readonly codes: Uint8Array;
}

/** In logarithms: colours nearer than this are one colour in light evened by the sheets alone. */
const oneColour = 0.14;
/** Rounds of fitting the light to what is taken for ground: nearness to the ground's colour and degree of the field. */
const rounds = [
  { near: 0.3, degree: 2 },
  { near: 0.2, degree: 3 },
  { near: 0.14, degree: 4 },
  { near: 0.1, degree: 4 },
] as const;
/** White samples that settle a field of the second degree. */
const enoughWhite = 40;
/** mm between the cells that light is fitted to. */
const stride = 7;

/**
 * Evens out the light, first by the white of the sheets, then by the ground itself, and tells how unlike the ground
 * each cell is. The ground is the colour that lies beside most sheets. Undefined if it is not to be seen.
 */
export function unlikeGround(map: FloorMap, known: FloorKnown): Unlikeness | undefined {
  const soft = softened(map);
  const sample = (cell: number): SeenSample => ({
    ...placeOf(map, cell),
    picture: map.from[cell]!,
    log: [logs[soft[3 * cell]!]!, logs[soft[3 * cell + 1]!]!, logs[soft[3 * cell + 2]!]!],
  });
  const seen = (p: Point): SeenSample | undefined => {
    const cell = cellAt(map, p);
    return cell >= 0 && map.from[cell] !== 0 ? sample(cell) : undefined;
  };
  const white = known.white.map(seen).filter(s => s !== undefined);
  const pictures = map.from.reduce((most, picture) => Math.max(most, picture), 0);
  const byPaper = lightFields(white, pictures, white.length < enoughWhite * pictures ? 1 : 2);
  const ground = commonest(
    known.beside.map(list => list.map(seen).filter(s => s !== undefined)),
    byPaper,
  );
  if (!ground) return undefined;
  const spread = spreadSamples(map, known.codes, sample);
  let fields = byPaper,
    colour = ground;
  for (const { near, degree } of rounds) {
    const alike = spread.filter(s => apart(evened(s, fields), colour) < near);
    if (alike.length < 50) return undefined;
    fields = lightFields(alike, pictures, degree);
    // From here on the fields hold the ground's own colour.
    colour = [0, 0, 0];
  }
  const alike = spread.map(s => apart(evened(s, fields), colour)).filter(d => d < rounds.at(-1)!.near * 2);
  const noise = alike.sort((a, b) => a - b)[alike.length >> 1]!;
  const floor = evenedFloor(map, soft, fields);
  const values = new Float32Array(map.from.length);
  for (let cell = 0, k = 0; cell < values.length; cell++, k += 3)
    values[cell] = Math.sqrt(floor[k]! ** 2 + floor[k + 1]! ** 2 + floor[k + 2]! ** 2);
  return {
    values,
    noise,
    colour: cell => [floor[3 * cell]!, floor[3 * cell + 1]!, floor[3 * cell + 2]!],
    floor,
  };
}

const placeOf = (map: FloorMap, cell: number): { readonly x: number; readonly y: number } => {
  const row = Math.floor(cell / map.width);
  return placeAt(map, cell - row * map.width, row);
};

const evened = ({ x, y, log, picture }: SeenSample, fields: readonly LightField[]): Colour => {
  const field = fields[picture]!;
  return [log[0] - field.at(x, y, 0), log[1] - field.at(x, y, 1), log[2] - field.at(x, y, 2)];
};

const apart = (a: Colour, b: Colour): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The colour that most sheets have beside them, each sheet with one voice. */
function commonest(
  beside: readonly (readonly SeenSample[])[],
  fields: readonly LightField[],
): Colour | undefined {
  const groups = beside.map(list => list.map(s => evened(s, fields))).filter(list => list.length > 0);
  let best: { readonly votes: number; readonly colours: readonly Colour[] } | undefined;
  for (const group of groups)
    for (let i = 0; i < group.length; i += Math.max(1, Math.floor(group.length / 24))) {
      const like = groups.map(list => list.filter(c => apart(c, group[i]!) < oneColour));
      const votes = like.reduce((sum, list, k) => sum + list.length / groups[k]!.length, 0);
      if (!best || votes > best.votes) best = { votes, colours: like.flat() };
    }
  if (!best) return undefined;
  const { colours } = best;
  const mean = (c: 0 | 1 | 2) => colours.reduce((sum, colour) => sum + colour[c], 0) / colours.length;
  return [mean(0), mean(1), mean(2)];
}

/** Samples all over the map, clear of the paper. */
function spreadSamples(
  map: FloorMap,
  codes: Uint8Array,
  sample: (cell: number) => SeenSample,
): readonly SeenSample[] {
  const step = Math.max(1, Math.round(stride / map.cell));
  const out: SeenSample[] = [];
  for (let j = step >> 1; j < map.height; j += step)
    for (let i = step >> 1; i < map.width; i += step) {
      const cell = j * map.width + i;
      if (map.from[cell] !== 0 && codes[cell] === 0) out.push(sample(cell));
    }
  return out;
}
