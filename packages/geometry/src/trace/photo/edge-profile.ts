import type { Point } from '../../vector.js';
import { brightnessAt, type Grey } from './picture.js';

/** Light across an edge from the light side to the dark, an odd number of levels at even steps about its middle. */
export interface EdgeProfile {
  readonly levels: Float64Array;
  /** Dots from one level to the next. */
  readonly step: number;
  /** Levels at the two ends. */
  readonly light: number;
  readonly dark: number;
}

/** Steps across an edge to a dot. */
const finer = 2;
/** Of 255: what counts as an edge. */
const leastStep = 12;

/** The profile at a point, square to the edge, `reach` dots to each side; undefined where there is no edge. */
export function profileAt(grey: Grey, p: Point, inward: Point, reach: number): EdgeProfile | undefined {
  const steps = Math.max(4, Math.round(reach * finer));
  const step = reach / steps;
  const levels = new Float64Array(2 * steps + 1);
  for (let k = -steps; k <= steps; k++)
    levels[k + steps] = brightnessAt(grey, p.x + inward.x * k * step, p.y + inward.y * k * step);
  const profile = withEnds(levels, step);
  return profile.light - profile.dark < leastStep ? undefined : profile;
}

function withEnds(levels: Float64Array, step: number): EdgeProfile {
  const n = levels.length,
    end = Math.max(2, Math.round(n / 6));
  let light = 0,
    dark = 0;
  for (let k = 0; k < end; k++) {
    light += levels[k]! / end;
    dark += levels[n - 1 - k]! / end;
  }
  return { levels, step, light, dark };
}

/** A profile of a picture's figures in step with light: light = figure ^ tone. */
export const inLight = ({ levels, step }: EdgeProfile, tone: number): EdgeProfile =>
  withEnds(
    levels.map(v => (v / 255) ** tone),
    step,
  );

/**
 * Where the edge lies, in dots from the profile's middle towards the dark: what the light adds up to says so, whatever
 * the blur, as long as that is even to both sides.
 */
export function edgeByArea({ levels, step, light, dark }: EdgeProfile): number {
  let lit = 0;
  for (const level of levels) lit += (level - dark) / (light - dark);
  return (lit - levels.length / 2) * step;
}
