import type { SheetTellings } from '../../tellings.js';
import type { Say, Tellings } from '../catalogue.js';
import { ofEither } from '../of-either.js';
import { command } from './command.js';
import { instead } from './instead.js';
import { pattern } from './pattern.js';
import { sheetFields } from './sheet-fields.js';
import { sheetText } from './sheet-text.js';
import { sheetValues } from './sheet-values.js';

type Names = 'dart' | 'pleat' | 'line' | 'mark' | 'notch' | 'neighbour';

const lacks =
  (no: string, many: string) =>
  ({ name, names, piece }: SheetTellings[`unknown-${Names}`], say: Say) => ({
    message: `${say.thing({ piece })} hat ${no} ${say.written(name)}.`,
    remedy: instead(name, names, many, say),
  });

const draftAgain = (piece: string, say: Say) =>
  `Zeichnen Sie ${say.thing({ piece })} nach dem Schritt neu, der die Kante geändert hat.`;

type Made = 'made-for-edge-gone' | 'made-for-edge-reshaped' | 'made-for-edge-changed';

const things: Pick<
  Tellings<SheetTellings>,
  `unknown-${Names | 'seam' | 'fabric'}` | Made | 'opening-too-long' | 'wearer-figure-doubted'
> = {
  'unknown-dart': lacks('keinen Abnäher', 'Abnäher'),
  'unknown-pleat': lacks('keine Falte', 'Falten'),
  'unknown-line': lacks('keine Linie', 'Linien'),
  'unknown-mark': lacks('keinen Punkt', 'Punkte'),
  'unknown-notch': lacks('kein Passzeichen', 'Passzeichen'),
  'unknown-neighbour': lacks('weder Kante noch Abnäher', 'Kanten und Abnäher'),
  'unknown-seam': ({ name, names }, say) => ({
    message: `Der Schnitt hat keine Naht ${say.written(name)}.`,
    remedy: instead(name, names, 'Nähte', say),
  }),
  'unknown-fabric': ({ name, names }, say) => ({
    message: `Der Schnitt hat keinen Stoff ${say.written(name)}.`,
    remedy: instead(name, names, 'Stoffe', say),
  }),
  'opening-too-long': ({ edgeMm }, say) => ({
    message: `Der Schlitz ist länger als seine Kante, die ${say.length(edgeMm)} misst.`,
    remedy:
      'Geben Sie eine Länge innerhalb der Kante an; ein Schlitz über zwei Kanten wird für jede angegeben.',
  }),
  'wearer-figure-doubted': ({ measurement, bodyMm, figure, likely }, say) => ({
    message: `Das Körpermaß ${say.written(measurement)} ist ${say.length(bodyMm)}: So misst niemand.`,
    remedy:
      likely.length > 0
        ? `Schreiben Sie ${likely.map(unit => `${figure} ${unit}`).join(' oder ')}, wenn Sie das meinen; „unit:“ neben den Körpermaßen gilt für alle.`
        : 'Messen Sie noch einmal, oder lassen Sie es weg.',
  }),
  'made-for-edge-gone': ({ piece, edges }, say) => ({
    message: `${say.thing({ piece })} war für ${say.things(edges)} gemacht, die es nicht mehr gibt.`,
    remedy: `Zeichnen Sie ${say.thing({ piece })} neu, oder entfernen Sie es.`,
  }),
  'made-for-edge-reshaped': ({ piece, edges, offMm }, say) => ({
    message: `${say.thing({ piece })} war nach der Form von ${say.things(edges)} geschnitten, die nun anders ist, um bis zu ${say.slight(offMm)}.`,
    remedy: draftAgain(piece, say),
  }),
  'made-for-edge-changed': ({ piece, edges, differenceMm }, say) => ({
    message: `${say.thing({ piece })} war für ${say.things(edges)} gemacht, im Kleidungsstück nun ${say.slight(Math.abs(differenceMm))} ${differenceMm > 0 ? 'länger' : 'kürzer'}.`,
    remedy: draftAgain(piece, say),
  }),
};

const own = { ...sheetText, ...sheetFields, ...sheetValues, ...things, ...command };

export const sheet: Tellings<SheetTellings> = { ...own, ...ofEither(own, pattern) };
