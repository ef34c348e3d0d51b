/**
 * The layers of pattern interchange, as in ASTM D6673 (withdrawn 2019, still what the trade reads).
 * Source: check-values §12 [memory, agreed with a secondary description].
 */
export const layerOf = {
  boundary: '1',
  turnPoints: '2',
  curvePoints: '3',
  notches: '4',
  mirrorLine: '6',
  grain: '7',
  internalLines: '8',
  drillHoles: '13',
  sewLines: '14',
  annotation: '15',
} as const;

export type DxfLayer = (typeof layerOf)[keyof typeof layerOf];

/** Colours by the format's numbers (1 red, 2 yellow, 3 green …), so that a plain CAD program shows the layers apart: what is cut stands out. */
export const colours: readonly (readonly [layer: DxfLayer, colour: number])[] = [
  [layerOf.boundary, 7],
  [layerOf.turnPoints, 1],
  [layerOf.curvePoints, 5],
  [layerOf.notches, 1],
  [layerOf.mirrorLine, 6],
  [layerOf.grain, 3],
  [layerOf.internalLines, 4],
  [layerOf.drillHoles, 1],
  [layerOf.sewLines, 2],
  [layerOf.annotation, 8],
];
