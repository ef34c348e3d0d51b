import type { SheetTellings } from '../../tellings.js';
import type { Tellings } from '../catalogue.js';
import { spokenOf } from './field-name.js';

type Goals = 'measure-not-understood' | 'range-not-understood' | 'area-not-understood';

export const sheetValues: Pick<Tellings<SheetTellings>, Goals> = {
  'measure-not-understood': ({ forms, ...of }, say) => ({
    message: `${spokenOf(of, say)} ist nichts, was sich messen lässt.`,
    remedy: `Schreiben Sie eines davon, mit Ihren eigenen Namen: ${forms.join('; ')}.`,
  }),
  'range-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist weder eine Zahl noch zwei.`,
    remedy: 'Schreiben Sie eine Zahl, oder die kleinste und die größte: [580 mm, 600 mm].',
  }),
  'area-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist keine Fläche.`,
    remedy: 'Schreiben Sie sie mit ihrer Einheit, etwa 150 cm2 oder 24 in2.',
  }),
};
