import type { VerbTellings } from '@paperhinge/alter/sayings';
import { inSheet } from '@paperhinge/alter/verb';
import type { Say, Tellings } from '../catalogue.js';
import { list } from './grammar.js';
import { instead } from './instead.js';

/** What each kind of field holds. */
export const fieldKinds: Readonly<Record<string, string>> = {
  piece: 'the name of a piece',
  pieces: 'names of pieces',
  edge: 'the name of an edge',
  dart: 'the name of a dart',
  pleat: 'the name of a pleat',
  line: 'the name of a line',
  mark: 'the name of a mark',
  marks: 'names of marks',
  notch: 'the name of a notch',
  seam: 'the name of a seam',
  cloth: 'the name of a cloth',
  'edge-of-piece': 'an edge with its piece, such as front.neck',
  'edges-of-pieces': 'edges with their pieces, such as front.neck',
  place: 'a place on an edge, such as 1/3 or 60 mm from shoulder',
  places: 'a place on an edge, or two of them',
  length: 'a length',
  range: 'two places on an edge, such as [1/4, 3/4]',
  lengths: 'a length, or two of them: one for either end',
  ease: 'a length or a percentage with its sign',
  'new-name': 'a name of up to 100 letters, digits, spaces and signs',
  angle: 'an angle in degrees',
  share: 'a percentage with its sign, such as 80 %',
  count: 'a whole number',
  'yes-or-no': 'yes or no',
  group: 'fields of its own',
  groups: 'a list, each with these fields',
};

export const verb: Tellings<VerbTellings> = {
  'fields-expected': ({ verb, fields }) => ({
    message: `"${verb}" has no fields.`,
    remedy: `Give it ${list(fields.map(f => `"${inSheet(f)}"`))}, as far as they are needed.`,
  }),
  'field-missing': ({ verb, fields }) => ({
    message: `"${verb}" does not say ${list(fields.map(f => `"${inSheet(f)}"`))}${fields.length > 1 ? `, one of the ${fields.length === 2 ? 'two' : fields.length}` : ''}.`,
    remedy: `Add ${fields.map(f => `"${inSheet(f)}"`).join(' or ')}.`,
  }),
  'field-unknown': ({ verb, field, fields }, say) => ({
    message: `"${verb}" has no field ${say.written(field)}.`,
    remedy: instead(field, fields.map(inSheet), 'fields', say),
  }),
  'field-not-usable': ({ verb, field, kind, words }) => ({
    message: `What "${inSheet(field)}" of "${verb}" holds cannot be used.`,
    remedy:
      kind === 'choice'
        ? `Give one of these: ${words!.join(', ')}.`
        : `Give ${[...(words ?? []).map(w => `"${w}"`), fieldKinds[kind] ?? 'a name'].join(' or ')}.`,
  }),
  'field-out-of-range': ({ verb, field, kind, value, least, most, over }, say) => ({
    message: `"${inSheet(field)}" of "${verb}" is ${figure(value, kind, say)}.`,
    remedy: over
      ? `Give more than ${figure(least, kind, say)}, up to ${figure(most, kind, say)}.`
      : `Give ${figure(least, kind, say)} to ${figure(most, kind, say)}.`,
  }),
  'fields-exclude': ({ verb, fields }) => ({
    message: `"${verb}" has both ${list(fields.map(f => `"${inSheet(f)}"`))}.`,
    remedy: 'Keep one of the two.',
  }),
  'choice-unknown': ({ field, given, words }, say) => ({
    message: `"${inSheet(field)}" cannot be ${say.written(given)}.`,
    remedy: instead(given, words, 'words', say),
  }),
};

function figure(value: number, kind: string, say: Say): string {
  if (kind === 'share') return say.percent(value * 100);
  if (kind === 'angle') return say.angle((value * 180) / Math.PI);
  if (kind !== 'length') return say.number(value, 0);
  return value > 0 ? say.atMost(value) : say.length(value);
}
