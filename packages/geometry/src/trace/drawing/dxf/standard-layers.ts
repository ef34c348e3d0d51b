import type { LineMeaning } from '../drawing.js';

/**
 * What the layers of pattern interchange mean, as in ASTM D6673 (withdrawn 2019, still what the trade writes).
 * Source: check-values §12 [memory, agreed with a secondary description].
 */
const meanings: Readonly<Record<string, LineMeaning>> = {
  '1': 'cut',
  '2': 'corner',
  '3': 'corner',
  '4': 'notch',
  '6': 'fold',
  '7': 'grain',
  '8': 'inside',
  '11': 'inside',
  '13': 'drill',
  '14': 'sew',
};

/** The meaning of a layer where all layers of a file are the standard's figures. */
export const meaningsOf = (layers: ReadonlySet<string>): ((layer: string) => LineMeaning | undefined) =>
  layers.has('1') && [...layers].every(layer => /^\d{1,3}$/.test(layer))
    ? layer => meanings[layer]
    : () => undefined;
