import type { SheetTellings } from '../../tellings.js';
import type { Tellings } from '../catalogue.js';
import { spokenOf } from './field-name.js';

type Goals = 'measure-not-understood' | 'range-not-understood' | 'area-not-understood';

export const sheetValues: Pick<Tellings<SheetTellings>, Goals> = {
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
