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
  length: 'eine Länge',
  share: 'einen Prozentsatz',
  angle: 'einen Winkel',
  number: 'eine reine Zahl',
} as const;

export const sheetValues: Pick<Tellings<SheetTellings>, Values | Goals> = {
  'include-not-here': ({ sheet }, say) => ({
    message: `Das Blatt ${say.written(sheet)}, das eingefügt werden soll, ist nicht da.`,
    remedy: 'Geben Sie an, wo es liegt, vom Ordner des Blatts aus, in das es eingefügt wird.',
  }),
  'include-in-itself': ({ sheet }, say) => ({
    message: `${say.written(sheet)} fügt sich selbst ein oder steckt in zu vielen Blättern.`,
    remedy: 'Lassen Sie diesen Schritt weg, oder schreiben Sie die Schritte selbst.',
  }),
  'sum-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist weder eine Zahl noch eine Rechnung.`,
    remedy:
      'Schreiben Sie ein Maß wie 210 mm oder 80 %, oder eine Rechnung mit Leerzeichen um ihre Zeichen: hem drop / 2 + 1 cm.',
  }),
  'value-unknown': ({ name, names, ...of }, say) => ({
    message: `${spokenOf(of, say)} nennt ${say.written(name)}; unter diesem Namen steht kein Maß.`,
    remedy: isMeasurement(name)
      ? `Ergänzen Sie ${say.written(name)} unter wearer.`
      : instead(name, names, 'Maße', say),
  }),
  'value-needs-itself': ({ name }, say) => ({
    message: `${say.written(name)} lässt sich nicht ausrechnen, da es sich selbst braucht.`,
    remedy: 'Geben Sie eines der Maße, aus denen es besteht, als Zahl an.',
  }),
  'figures-not-together': ({ one, sign, other, ...of }, say) => ({
    message: `${spokenOf(of, say)} enthält ${figures[one]} ${sign} ${figures[other]}, und das ergibt kein Maß.`,
    remedy:
      sign === '/' || sign === '*'
        ? 'Nehmen Sie mal oder teilen Sie durch eine reine Zahl oder einen Prozentsatz, der nicht 0 ist.'
        : 'Zählen Sie nur Gleiches zusammen.',
  }),
  'value-of-other-kind': ({ is, wanted, ...of }, say) => ({
    message: `${spokenOf(of, say)} braucht ${figures[wanted]}, gegeben ist etwas anderes.`,
    remedy:
      is === 'number'
        ? 'Schreiben Sie die Zahl mit ihrem Zeichen, etwa 80 %.'
        : `Schreiben Sie ${figures[wanted]}.`,
  }),
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
