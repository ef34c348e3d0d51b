import type { SheetTellings } from '../../tellings.js';
import { capital } from '../capital.js';
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
  (one: string, many: string) =>
  ({ name, names, piece }: SheetTellings[`unknown-${Names}`], say: Say) => ({
    message: capital(`${say.thing({ piece })} has no ${one} ${say.written(name)}.`),
    remedy: instead(name, names, many, say),
  });

const edgesOf = ({ edges }: SheetTellings['made-for-edge-gone'], say: Say): string => say.things(edges);
const draftAgain = (piece: string, say: Say) =>
  `Draft the ${say.name(piece)} again after the step that changed its edge.`;

type Made = 'made-for-edge-gone' | 'made-for-edge-reshaped' | 'made-for-edge-changed';

const things: Pick<
  Tellings<SheetTellings>,
  `unknown-${Names | 'seam' | 'fabric'}` | Made | 'opening-too-long' | 'wearer-figure-doubted'
> = {
  'unknown-dart': lacks('dart', 'darts'),
  'unknown-pleat': lacks('pleat', 'pleats'),
  'unknown-line': lacks('line', 'lines'),
  'unknown-mark': lacks('mark', 'marks'),
  'unknown-notch': lacks('notch', 'notches'),
  'unknown-neighbour': lacks('edge or dart', 'edges and darts'),
  'unknown-seam': ({ name, names: there }, say) => ({
    message: `The pattern has no seam ${say.written(name)}.`,
    remedy: instead(name, there, 'seams', say),
  }),
  'unknown-fabric': ({ name, names: there }, say) => ({
    message: `The pattern has no fabric ${say.written(name)}.`,
    remedy: instead(name, there, 'fabrics', say),
  }),
  'opening-too-long': ({ edgeMm }, say) => ({
    message: `The opening is longer than its edge, which has ${say.length(edgeMm)}.`,
    remedy: 'Give a length within the edge; an opening over two edges is given for each.',
  }),
  'wearer-figure-doubted': ({ measurement, bodyMm, figure, likely }, say) => ({
    message: `The wearer's ${measurement} is ${say.length(bodyMm)}, which is nobody's.`,
    remedy:
      likely.length > 0
        ? `Write ${likely.map(unit => `${figure} ${unit}`).join(' or ')}, if that is what you mean; "unit:" beside the wearer's figures holds for them all.`
        : 'Measure it again, or leave it out.',
  }),
  'made-for-edge-gone': (facts, say) => ({
    message: `The ${say.name(facts.piece)} was made for ${edgesOf(facts, say)}, which is no longer there.`,
    remedy: `Draft the ${say.name(facts.piece)} again, or remove it.`,
  }),
  'made-for-edge-reshaped': (facts, say) => ({
    message: `The ${say.name(facts.piece)} was cut to the shape of ${edgesOf(facts, say)}, which is another now, by up to ${say.slight(facts.offMm)}.`,
    remedy: draftAgain(facts.piece, say),
  }),
  'made-for-edge-changed': (facts, say) => ({
    message: `The ${say.name(facts.piece)} was made for ${edgesOf(facts, say)}, now ${say.slight(Math.abs(facts.differenceMm))} ${facts.differenceMm > 0 ? 'longer' : 'shorter'} in the garment.`,
    remedy: draftAgain(facts.piece, say),
  }),
};

const own = { ...sheetText, ...sheetFields, ...sheetValues, ...things, ...command };

export const sheet: Tellings<SheetTellings> = { ...own, ...ofEither(own, pattern) };
