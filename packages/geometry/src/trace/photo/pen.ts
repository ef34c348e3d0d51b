/** Colours of pens that lines are told apart by. */
export const penColours = ['black', 'red', 'orange', 'green', 'blue', 'violet'] as const;
/** A colour that drawn lines are told apart by. */
export type PenColour = (typeof penColours)[number];

/** How the lines to be followed are drawn, where several sizes lie beside one another; what is left out may be any. */
export interface PenSeen {
  readonly colour?: PenColour;
  readonly dashed?: boolean;
}

/** A size of a nest drawn on paper, and how its lines are drawn. */
export interface SizeDrawn {
  readonly size: string;
  readonly pen: PenSeen;
}

/** How much of red, green and blue light each colour of ink takes from the paper, as one unit. */
const takes: Readonly<Record<PenColour, readonly [number, number, number]>> = {
  black: [1, 1, 1],
  red: [0.08, 1, 0.95],
  orange: [0.05, 0.55, 1],
  green: [1, 0.25, 0.8],
  blue: [1, 0.7, 0.1],
  violet: [0.6, 1, 0.25],
};
const units = penColours.map(colour => ({ colour, take: unit(takes[colour]) }));

function unit(v: readonly [number, number, number]): readonly [number, number, number] {
  const size = Math.hypot(...v) || 1;
  return [v[0] / size, v[1] / size, v[2] / size];
}

/**
 * The colour of pen that ink is nearest to.
 * @param taken logarithms of what the ink takes from the paper's red, green and blue
 */
export function penColourOf(taken: readonly [number, number, number]): PenColour {
  const own = unit(taken);
  const near = (take: readonly [number, number, number]): number =>
    own[0] * take[0] + own[1] * take[1] + own[2] * take[2];
  return units.reduce((a, b) => (near(b.take) > near(a.take) ? b : a)).colour;
}
