/** Sizes as they are typed: `S=red, M=green, L=blue`; more than three are counted. */
export const typedSizes = (layers: readonly string[]): string =>
  layers.map((layer, i) => `${layers.length > 3 ? i + 1 : 'SML'[i]}=${layer}`).join(', ');
