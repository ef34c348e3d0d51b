import type { Point } from '../../vector.js';
import { cellAt, type FloorMap } from './floor-map.js';
import { type LightField, type LightSample, lightField } from './light-field.js';

/** How unlike the ground each cell is: the distance of its three channels' logarithms from the ground's, light evened. */
export interface Unlikeness {
  readonly values: Float32Array;
  /** What noise makes of it, typically. */
  readonly noise: number;
  /** The logarithms of a cell's channels over the ground's there. */
  readonly colour: (cell: number) => Colour;
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

/** Of 255: added before the logarithm, so that noise of black cloth stays small. */
const floorOfLog = 6;
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

const logs = Float32Array.from({ length: 256 }, (_, v) => Math.log(v + floorOfLog));

/**
 * Evens out the light, first by the white of the sheets, then by the ground itself, and tells how unlike the ground
 * each cell is. The ground is the colour that lies beside most sheets. Undefined if it is not to be seen.
 */
export function unlikeGround(map: FloorMap, known: FloorKnown): Unlikeness | undefined {
  const soft = softened(map);
  const sample = (cell: number): LightSample => ({
    ...placeOf(map, cell),
    log: [logs[soft[3 * cell]!]!, logs[soft[3 * cell + 1]!]!, logs[soft[3 * cell + 2]!]!],
  });
  const seen = (p: Point): LightSample | undefined => {
    const cell = cellAt(map, p);
    return cell >= 0 && map.from[cell] !== 0 ? sample(cell) : undefined;
  };
  const white = known.white.map(seen).filter(s => s !== undefined);
  const byPaper = lightField(white, white.length < enoughWhite ? 1 : 2);
  const ground = commonest(
    known.beside.map(list => list.map(seen).filter(s => s !== undefined)),
    byPaper,
  );
  if (!ground) return undefined;
  const spread = spreadSamples(map, known.codes, sample);
  let field: LightField = byPaper,
    colour = ground;
  for (const { near, degree } of rounds) {
    const alike = spread.filter(s => apart(evened(s, field), colour) < near);
    if (alike.length < 50) return undefined;
    field = lightField(alike, degree);
    // From here on the field holds the ground's own colour.
    colour = [0, 0, 0];
  }
  const alike = spread.map(s => apart(evened(s, field), colour)).filter(d => d < rounds.at(-1)!.near * 2);
  const noise = alike.sort((a, b) => a - b)[alike.length >> 1]!;
  return { values: distances(map, soft, field), noise, colour: cell => evened(sample(cell), field) };
}

/** Logarithms of red, green and blue. */
export type Colour = readonly [number, number, number];

const placeOf = ({ width, height }: FloorMap, cell: number): { readonly x: number; readonly y: number } => {
  const size = Math.max(width, height) / 2;
  const row = Math.floor(cell / width);
  return { x: (cell - row * width - width / 2) / size, y: (row - height / 2) / size };
};

const evened = ({ x, y, log }: LightSample, field: LightField): Colour => [
  log[0] - field.at(x, y, 0),
  log[1] - field.at(x, y, 1),
  log[2] - field.at(x, y, 2),
];

const apart = (a: Colour, b: Colour): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The colour that most sheets have beside them, each sheet with one voice. */
function commonest(beside: readonly (readonly LightSample[])[], field: LightField): Colour | undefined {
  const groups = beside.map(list => list.map(s => evened(s, field))).filter(list => list.length > 0);
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
  sample: (cell: number) => LightSample,
): readonly LightSample[] {
  const step = Math.max(1, Math.round(stride / map.cell));
  const out: LightSample[] = [];
  for (let j = step >> 1; j < map.height; j += step)
    for (let i = step >> 1; i < map.width; i += step) {
      const cell = j * map.width + i;
      if (map.from[cell] !== 0 && codes[cell] === 0) out.push(sample(cell));
    }
  return out;
}

/** Each cell with its eight neighbours, that noise counts for less. */
function softened({ width, height, rgb }: FloorMap): Uint8Array {
  const across = new Uint16Array(rgb.length),
    out = new Uint8Array(rgb.length);
  const row = 3 * width;
  for (let k = 3; k < rgb.length - 3; k++) across[k] = rgb[k - 3]! + rgb[k]! + rgb[k + 3]!;
  for (let k = row; k < rgb.length - row; k++)
    out[k] = (across[k - row]! + across[k]! + across[k + row]! + 4) / 9;
  for (let k = 0; k < row; k++) {
    out[k] = rgb[k]!;
    out[rgb.length - 1 - k] = rgb[rgb.length - 1 - k]!;
  }
  for (let j = 1; j < height - 1; j++)
    for (let c = 0; c < 3; c++) {
      out[j * row + c] = rgb[j * row + c]!;
      out[j * row + row - 3 + c] = rgb[j * row + row - 3 + c]!;
    }
  return out;
}

/** Cells between the nodes that the field is worked out at; between them it is taken as straight. */
const nodes = 16;

function distances(map: FloorMap, soft: Uint8Array, field: LightField): Float32Array {
  const { width, height } = map;
  const across = Math.ceil(width / nodes) + 1,
    down = Math.ceil(height / nodes) + 1;
  const grid = [0, 1, 2].map(channel =>
    Float32Array.from({ length: across * down }, (_, k) => {
      const j = Math.floor(k / across);
      const { x, y } = placeAt(map, (k - j * across) * nodes, j * nodes);
      return field.at(x, y, channel);
    }),
  );
  const values = new Float32Array(width * height);
  for (let j = 0, cell = 0; j < height; j++) {
    const v = j / nodes,
      top = Math.floor(v),
      b = v - top;
    for (let i = 0; i < width; i++, cell++) {
      if (map.from[cell] === 0) continue;
      const u = i / nodes,
        left = Math.floor(u),
        a = u - left,
        k = top * across + left;
      let square = 0;
      for (let c = 0; c < 3; c++) {
        const g = grid[c]!;
        const light =
          (g[k]! * (1 - a) + g[k + 1]! * a) * (1 - b) +
          (g[k + across]! * (1 - a) + g[k + across + 1]! * a) * b;
        const d = logs[soft[3 * cell + c]!]! - light;
        square += d * d;
      }
      values[cell] = Math.sqrt(square);
    }
  }
  return values;
}

const placeAt = (map: FloorMap, i: number, j: number): { readonly x: number; readonly y: number } => {
  const size = Math.max(map.width, map.height) / 2;
  return { x: (i - map.width / 2) / size, y: (j - map.height / 2) / size };
};
