export type Pair = readonly [number, number];
export type Outline = readonly (readonly Pair[])[];
/** A printed page as grey pixels, 0 black. */
export interface PagePicture {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
  readonly perMm: number;
}
export interface LaidSheet {
  readonly page: PagePicture;
  readonly at: Pair;
  readonly angle: number;
  readonly scale?: Pair;
  readonly onTop?: boolean;
}
export interface LaidPiece {
  readonly outline: Outline;
  readonly colour: readonly [number, number, number];
}
export interface Pose {
  readonly eye: readonly number[];
  readonly axis: readonly number[];
  readonly right: readonly number[];
  readonly down: readonly number[];
}
export interface SceneCamera {
  readonly width: number;
  readonly height: number;
  readonly focal: number;
  readonly centre: Pair;
  readonly k1: number;
  readonly k2: number;
  readonly pose: Pose;
}
export interface Light {
  readonly across: number;
  readonly down: number;
  readonly vignette: number;
  readonly lamp: number;
  readonly at: Pair;
}
export interface Scene {
  readonly camera: SceneCamera;
  readonly floor: {
    readonly width: number;
    readonly height: number;
    readonly origin: Pair;
    readonly sheets: readonly LaidSheet[];
    readonly pieces: readonly LaidPiece[];
    /** Dots to a mm. */
    readonly fine?: number;
  };
  readonly ground: readonly [number, number, number];
  readonly pieces: readonly LaidPiece[];
  readonly light: Light;
  readonly blur: number;
  readonly noise: number;
  readonly seed: number;
  readonly gamma?: number;
  readonly parts?: number;
}
export function chance(seed: number): () => number;
export function flattened(outline: Outline): readonly Pair[];
export function laid(outline: Outline, at: Pair, angle: number): Outline;
export function aim(how: {
  readonly over: Pair;
  readonly distance: number;
  readonly tilt: number;
  readonly towards: number;
  readonly roll: number;
}): Pose;
export function seenAt(camera: SceneCamera, x: number, y: number): Pair;
export function photograph(scene: Scene): {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
};
