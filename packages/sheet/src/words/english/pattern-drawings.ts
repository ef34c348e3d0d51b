import type { Thing } from '@paperhinge/geometry';
import type { SvgTellings } from '@paperhinge/geometry/sayings';
import { capital } from '../capital.js';
import type { Say, Tellings } from '../catalogue.js';
import { shownName } from '../names.js';
import type { drawings } from './drawings.js';
import { instead, oneOf } from './instead.js';

/** What is told of drawings of patterns: their attributes, their pieces, and the block of seams and cloths. */
export const patternDrawings: Tellings<Omit<SvgTellings, keyof typeof drawings>> = {
  'role-not-known': ({ near, words }, say) => ({
    message: 'The word in "data-role" is not known; what it stands on was judged by its name and place.',
    remedy: oneOf(near, words, say),
  }),
  'attribute-misplaced': ({ attribute, places }, say) => ({
    message: `${say.written(attribute)} says nothing where it stands.`,
    remedy: `Move it to ${say.list(places.map(place => onPlaces[place] ?? place))}.`,
  }),
  'attribute-unknown': ({ attribute, near }, say) => ({
    message: `${say.written(attribute)} is not known and was not read.`,
    remedy:
      near === undefined
        ? 'Nothing needs to be done if another program wrote it.'
        : `Did you mean ${say.written(near)}?`,
  }),
  'attribute-misspelt': ({ attribute, near }, say) => ({
    message: `The pattern cannot be read, most likely because ${say.written(attribute)} is misspelt.`,
    remedy: `Write ${say.written(near)}.`,
  }),
  'also-cut-not-understood': () => ({
    message: 'What the piece is cut from besides ("data-also-cut") was not understood.',
    remedy: 'Write how many of which cloth, as in "2 lining, 1 interfacing".',
  }),
  'version-not-known': ({ version }, say) => ({
    message: `The drawing says it is of version ${say.number(version)} of our way of drawing patterns; version 2 is read here.`,
    remedy: 'Look at the findings that follow, or use a newer paperhinge.',
  }),
  'copies-count-now': ({ piece, count, before }, say) => ({
    message: capital(
      `${say.thing(piece)} counts ${times(count, say)} in its seams now; when this file was written it counted ${times(before, say)}.`,
    ),
    remedy: 'Check how often it is cut; saving the pattern again makes this note go.',
  }),
  'no-pieces': () => ({
    message: 'The drawing has no pattern pieces.',
    remedy: 'Give the group of each piece data-piece="name", or name its outline in the sheet (pieces:).',
  }),
  'piece-left-out': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} shows nothing and was left out: it is empty or hidden.`),
    remedy: 'Show its layer in the drawing program, or remove it.',
  }),
  'outside-piece': ({ what }) => ({
    message: `A ${things[what]} stands outside every piece and was left out.`,
    remedy: 'Put it into the group of its piece.',
  }),
  'duplicate-outline': ({ piece }, say) => ({
    message: `The sheet names one outline for two pieces, one of them ${say.thing(piece)}.`,
    remedy: 'Give each piece an outline of its own.',
  }),
  'unknown-outline': ({ piece, id, ids }, say) => ({
    message: `The drawing shows no shape with the id ${say.written(id)}, which the sheet gives as the outline of ${say.thing(piece)}.`,
    remedy: instead(id, ids, 'ids', say),
  }),
  'two-outlines': () => ({
    message: 'The piece has both edges and a closed outline.',
    remedy: 'Keep its edges (data-edge) or the closed path (data-outline), not both.',
  }),
  'second-outline-left-out': () => ({
    message: 'The piece has a second closed outline, which was left out.',
    remedy: 'Give it a piece of its own.',
  }),
  'inner-outline-left-out': ({ count }) => ({
    message: `Within the outline of the piece there ${count === 1 ? 'is 1 more line, which was' : `are ${count} more lines, which were`} left out.`,
    remedy: 'Draw slits and holes as lines (data-line="placement").',
  }),
  'too-many-edges': ({ most }, say) => ({
    message: `The piece has over ${say.number(most)} edges.`,
    remedy: 'Join edges that are sewn as one.',
  }),
  'too-many-notches': () => ({
    message: 'The piece has too many notches for so many points in its outline.',
    remedy: 'Simplify its paths in the drawing program.',
  }),
  'nothing-drawn': ({ what, name }, say) => ({
    message: `The ${called(what, name, say)} draws nothing and was left out.`,
    remedy: 'Draw it, or remove it.',
  }),
  'not-displayed': ({ what, name }, say) => ({
    message: `The ${called(what, name, say)} is hidden and was left out.`,
    remedy: 'Show it in the drawing program, or remove it.',
  }),
  'short-side-dropped': ({ lengthMm }, say) => ({
    message: `The outline ends in a line of ${say.slight(lengthMm)}; it was left out, as the outline was closed already.`,
    remedy: 'Join its two last points in the drawing program.',
  }),
  'drawing-not-read': ({ count }) => ({
    message: `${count === 1 ? 'One shape of the piece carries' : `${count} shapes of the piece carry`} no meaning and ${count === 1 ? 'was' : 'were'} left out.`,
    remedy: 'Say what they are (data-line, data-mark, data-notch), or leave them as decoration.',
  }),
  'fold-not-straight': ({ edge, bowMm }, say) => ({
    message: capital(`${say.thing(edge)} is a fold, but bows by ${say.slight(bowMm)}.`),
    remedy: 'Draw it straight, or make it a seam.',
  }),
  'allowance-not-given': ({ edge, attribute }, say) => ({
    message: capital(`${say.thing(edge)} is given no allowance; none was added.`),
    remedy: `Write ${attribute} on the edge, on its piece or on the whole drawing; 0 if it has none.`,
  }),
  'metadata-not-json': ({ reason, character }, say) => ({
    message: `The block of seams and cloths (metadata) is damaged: ${reason === 'character-expected' ? `${say.written(character ?? '')} was expected` : json[reason]}.`,
    remedy: 'Mend it there, or remove the block.',
  }),
  'metadata-not-understood': ({ part, of, key, near, words }, say) => ({
    message: capital(`${subject(of, key, say)} was not understood.`),
    remedy: words === undefined ? forms[part] : oneOf(near, words, say),
  }),
  'metadata-not-read': ({ key, keys, of }, say) => ({
    message: `${say.written(key)}${of === undefined ? '' : ` of ${say.thing(of)}`} is not known and was not read.`,
    remedy: instead(key, keys, 'words', say),
  }),
  'run-direction-not-given': ({ seam, edge, ends }, say) => ({
    message: capital(
      `${say.thing(seam)} does not say at which end of ${say.thing(edge)} it begins; the first clockwise was taken.`,
    ),
    remedy: `Write "from ${shownName(ends[0])}" or "from ${shownName(ends[1])}".`,
  }),
  'name-not-writable': ({ name }, say) => ({
    message: `The name ${say.written(name)} holds a character that a drawing cannot carry.`,
    remedy: 'Leave out control characters.',
  }),
};

const times = (count: number, say: Say): string =>
  count === 1 ? 'once' : count === 2 ? 'twice' : `${say.number(count)} times`;

const things = {
  notch: 'notch',
  dart: 'dart',
  pleat: 'pleat',
  edge: 'edge',
  line: 'line',
  mark: 'mark',
  outline: 'outline',
} as const;

const called = (what: keyof typeof things, name: string | undefined, say: Say): string =>
  name === undefined ? things[what] : `${things[what]} ${say.written(name)}`;

const onPlaces: Readonly<Record<string, string>> = {
  root: 'the drawing itself (svg)',
  piece: 'a piece (data-piece)',
  notch: 'a notch (data-notch)',
  dart: 'a dart (data-dart)',
  pleat: 'a pleat (data-pleat)',
  edge: 'an edge (data-edge)',
  line: 'a line (data-line)',
  mark: 'a mark (data-mark)',
  outline: 'an outline (data-outline)',
};

const json = {
  'character-expected': '',
  'value-expected': 'a value was expected',
  'text-expected': 'a text in quotation marks was expected',
  'key-twice': 'a name stands twice',
  'nested-too-deep': 'it is nested too deep',
  'text-after-end': 'something follows its end',
} as const;

const forms = {
  object: 'Write it in braces, as in { "name": ... }.',
  run: 'Write it as "piece.edge from neighbour".',
  ease: 'Write it as "12 mm" or "-3 %".',
  length: 'Write a length such as "150 cm".',
  percentage: 'Write a percentage such as "35 %".',
  stretch: 'Write { "across": "35 %", "along": "20 %" }.',
  nap: 'Write true or false.',
  count: 'Write a whole number, such as 7.',
  word: 'Write a word in quotation marks.',
  part: 'Write two places, as in "60 mm to 220 mm".',
} as const;

function subject(of: Thing | undefined, key: string | undefined, say: Say): string {
  if (of === undefined)
    return key === undefined ? 'the block of seams and cloths (metadata)' : say.written(key);
  return key === undefined ? say.thing(of) : `${say.written(key)} of ${say.thing(of)}`;
}
