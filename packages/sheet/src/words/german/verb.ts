import type { VerbTellings } from '@paperhinge/alter/sayings';
import { inSheet } from '@paperhinge/alter/verb';
import type { Say, Tellings } from '../catalogue.js';
import { grammar } from './grammar.js';
import { instead } from './instead.js';

const kinds: Readonly<Record<string, string>> = {
  piece: 'den Namen eines Teils',
  pieces: 'Namen von Teilen',
  edge: 'den Namen einer Kante',
  dart: 'den Namen eines Abnähers',
  pleat: 'den Namen einer Falte',
  line: 'den Namen einer Linie',
  mark: 'den Namen eines Punkts',
  marks: 'Namen von Punkten',
  notch: 'den Namen eines Passzeichens',
  seam: 'den Namen einer Naht',
  cloth: 'den Namen eines Stoffs',
  'edge-of-piece': 'eine Kante mit ihrem Teil, etwa front.neck',
  'edges-of-pieces': 'Kanten mit ihren Teilen, etwa front.neck',
  place: 'eine Stelle auf einer Kante, etwa 1/3 oder 60 mm from shoulder',
  places: 'eine Stelle auf einer Kante oder zwei',
  length: 'eine Länge',
  range: 'zwei Stellen auf einer Kante, etwa [1/4, 3/4]',
  lengths: 'eine Länge oder zwei: eine für jedes Ende',
  ease: 'eine Länge oder einen Prozentwert mit Zeichen',
  'new-name': 'einen Namen aus höchstens 100 Buchstaben, Ziffern, Leerzeichen und Zeichen',
  angle: 'einen Winkel in Grad',
  share: 'einen Prozentwert mit Zeichen, etwa 80 %',
  count: 'eine ganze Zahl',
  'yes-or-no': 'yes oder no',
  group: 'eigene Felder',
  groups: 'eine Liste, jedes davon mit eigenen Feldern',
};
const quoted = (field: string): string => `„${inSheet(field)}“`;

export const verb: Tellings<VerbTellings> = {
  'fields-expected': ({ verb, fields }) => ({
    message: `„${verb}“ hat keine Felder.`,
    remedy: `Geben Sie ${grammar.list(fields.map(quoted))} an, soweit nötig.`,
  }),
  'field-missing': ({ verb, fields }) => ({
    message: `„${verb}“ nennt nicht ${fields.map(quoted).join(' oder ')}.`,
    remedy: `Fügen Sie ${fields.map(quoted).join(' oder ')} hinzu.`,
  }),
  'field-unknown': ({ verb, field, fields }, say) => ({
    message: `„${verb}“ hat kein Feld ${say.written(field)}.`,
    remedy: instead(field, fields.map(inSheet), 'Felder', say),
  }),
  'field-not-usable': ({ verb, field, kind, words }) => ({
    message: `Was in ${quoted(field)} von „${verb}“ steht, ist nicht zu gebrauchen.`,
    remedy:
      kind === 'choice'
        ? `Geben Sie eines davon an: ${words!.join(', ')}.`
        : `Geben Sie ${[...(words ?? []).map(w => `„${w}“`), kinds[kind] ?? 'einen Namen'].join(' oder ')} an.`,
  }),
  'field-out-of-range': ({ verb, field, kind, value, least, most, over }, say) => ({
    message: `${quoted(field)} von „${verb}“ ist ${figure(value, kind, say)}.`,
    remedy: over
      ? `Geben Sie mehr als ${figure(least, kind, say)} an, höchstens ${figure(most, kind, say)}.`
      : `Geben Sie ${figure(least, kind, say)} bis ${figure(most, kind, say)} an.`,
  }),
  'fields-exclude': ({ verb, fields }) => ({
    message: `„${verb}“ hat zugleich ${grammar.list(fields.map(quoted))}.`,
    remedy: 'Behalten Sie eines davon.',
  }),
  'choice-unknown': ({ field, given, words }, say) => ({
    message: `${quoted(field)} kann nicht ${say.written(given)} sein.`,
    remedy: instead(given, words, 'Wörter', say),
  }),
};

function figure(value: number, kind: string, say: Say): string {
  if (kind === 'share') return say.percent(value * 100);
  if (kind === 'angle') return say.angle((value * 180) / Math.PI);
  if (kind !== 'length') return say.number(value, 0);
  return value > 0 ? say.atMost(value) : say.length(value);
}
