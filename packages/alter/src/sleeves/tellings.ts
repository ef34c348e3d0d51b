import type { Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of sleeves. */
export interface SleeveTellings {
  'no-cap': { readonly piece: Thing };
  'cap-too-low': { readonly piece: Thing; readonly heightMm: number; readonly byMm: number };
  'seam-without-cap': { readonly seam: Thing };
  'cap-not-sewn': { readonly piece: Thing };
  'underarm-not-sewn': { readonly first: Thing; readonly second: Thing };
  'strips-too-wide': { readonly edge: Thing; readonly takenMm: number; readonly roomMm: number };
  'bend-too-far': { readonly piece: Thing; readonly byMm: number; readonly mostMm: number };
  'elbow-dart-too-deep': { readonly piece: Thing; readonly depthMm: number; readonly mostMm: number };
  'armhole-of-several': { readonly seam: Thing };
  'shoulder-not-sewn': { readonly first: Thing; readonly second: Thing };
  'shoulders-unlike': {
    readonly first: Thing;
    readonly firstMm: number;
    readonly second: Thing;
    readonly secondMm: number;
  };
  'sleeve-cut-unlike': { readonly piece: Thing; readonly sleeve: Thing };
  'raglan-off-edge': { readonly edge: Thing; readonly mostMm: number };
  'raglan-off-piece': { readonly piece: Thing };
  'raglan-through-dart': { readonly piece: Thing };
  'sleeve-without-middle': { readonly edge: Thing };
  'kimono-off-side': { readonly edge: Thing; readonly mostMm: number };
  'kimono-underarms-unlike': { readonly piece: Thing };
  'kimono-crosses': { readonly piece: Thing };
  'gusset-too-shallow': { readonly leastMm: number };
  'kimono-curve-too-wide': { readonly piece: Thing; readonly mostMm: number };
  'kimono-curve-and-gusset': { readonly seam: Thing };
  'cap-too-flat': { readonly piece: Thing };
  'cap-shorter-than-armhole': {
    readonly piece: Thing;
    readonly seam: Thing;
    readonly capMm: number;
    readonly armholeMm: number;
  };
}

/** What a step did to a sleeve. */
export interface SleeveSentences {
  'changed-cap': {
    readonly piece: Thing;
    readonly byMm: number;
    /** By how much the cap's seam and the sleeve's width changed. */
    readonly seamMm: number;
    readonly widthMm: number;
  };
  'bent-sleeve': {
    readonly piece: Thing;
    readonly byMm: number;
    readonly bendDeg: number;
    readonly dart: Thing;
    readonly depthMm: number;
  };
  'divided-sleeve': {
    readonly piece: Thing;
    readonly under: Thing;
    readonly foreArmMm: number;
    /** Of the under sleeve; the upper one's is longer by the ease. */
    readonly hindArmMm: number;
    readonly easeMm: number;
  };
  'cut-raglan': {
    readonly piece: Thing;
    readonly bodies: readonly Thing[];
    /** Of both raglan seams, from the underarm to the neck. */
    readonly seamsMm: readonly number[];
    readonly dartDeg: number;
    /** What the cap had of ease above the raglan lines. */
    readonly easeMm: number;
    readonly liftMm: number;
    /** The half of the sleeve that was cut off along the shoulder. */
    readonly half?: Thing;
  };
  'cut-kimono': {
    readonly sleeve: Thing;
    /** The front first. */
    readonly bodies: readonly Thing[];
    readonly slopesDeg: readonly number[];
    readonly underarmMm: number;
    /** Radius of the front's curve under the arm, where there is one. */
    readonly curveMm?: number;
    readonly gusset?: Thing;
  };
  'walked-cap': {
    readonly seam: Thing;
    readonly easeMm: number;
    readonly frontMm: number;
    readonly backMm: number;
  };
}

export const refusal: RefusalOf<SleeveTellings> = anyRefusal;
export const finding: FindingOf<SleeveTellings> = anyFinding;
export const saying: SayingOf<SleeveSentences> = anySaying;
