import type { SheetTellings } from '../../tellings.js';
import { isMeasurement } from '../../wearer-names.js';
import type { Tellings } from '../catalogue.js';
import { spokenOf } from './field-name.js';
import { instead } from './instead.js';

type Values =
  | 'include-not-here'
  | 'include-in-itself'
  | 'sum-not-understood'
  | 'value-unknown'
  | 'value-needs-itself'
  | 'figures-not-together'
  | 'value-of-other-kind';
type Goals = 'measure-not-understood' | 'range-not-understood' | 'area-not-understood';

const figures = {
  length: 'a length',
  share: 'a percentage',
  angle: 'an angle',
  number: 'a plain number',
} as const;

export const sheetValues: Pick<Tellings<SheetTellings>, Values | Goals> = {
  'include-not-here': ({ sheet }, say) => ({
    message: `There is no sheet ${say.written(sheet)} to include.`,
    remedy: 'Give where it lies, from the folder of the sheet that includes it.',
  }),
  'include-in-itself': ({ sheet }, say) => ({
    message: `${say.written(sheet)} includes itself, or stands in too many sheets.`,
    remedy: 'Leave this step out, or write the steps themselves.',
  }),
  'sum-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is neither a figure nor a sum.`,
    remedy:
      'Write a figure such as 210 mm or 80 %, or a sum with spaces round its signs: hem drop / 2 + 1 cm.',
  }),
  'value-unknown': ({ name, names, ...of }, say) => ({
    message: `${spokenOf(of, say)} speaks of ${say.written(name)}, and no figure is kept under that name.`,
    remedy: isMeasurement(name)
      ? `Add the wearer's ${say.written(name)} under wearer.`
      : instead(name, names, 'figures', say),
  }),
  'value-needs-itself': ({ name }, say) => ({
    message: `${say.written(name)} cannot be worked out, as it needs itself.`,
    remedy: 'Give one of the figures that it is made of as a figure.',
  }),
  'figures-not-together': ({ one, sign, other, ...of }, say) => ({
    message: `${spokenOf(of, say)} has ${figures[one]} ${sign} ${figures[other]}, which is nothing to measure by.`,
    remedy:
      sign === '/' || sign === '*'
        ? 'Multiply or divide by a plain number or a percentage that is not 0.'
        : 'Add and take away figures of one kind.',
  }),
  'value-of-other-kind': ({ is, wanted, ...of }, say) => ({
    message: `${spokenOf(of, say)} takes ${figures[wanted]}, and this is ${figures[is]}.`,
    remedy: is === 'number' ? 'Write the figure with its sign, such as 80 %.' : `Write ${figures[wanted]}.`,
  }),
  'measure-not-understood': ({ forms, ...of }, say) => ({
    message: `${spokenOf(of, say)} is nothing that can be measured.`,
    remedy: `Write one of these, with your own names: ${forms.join('; ')}.`,
  }),
  'range-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is neither a figure nor two of them.`,
    remedy: 'Write one figure, or the least and the most: [580 mm, 600 mm].',
  }),
  'area-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is not an area.`,
    remedy: 'Write it with its unit, such as 150 cm2 or 24 in2.',
  }),
};
