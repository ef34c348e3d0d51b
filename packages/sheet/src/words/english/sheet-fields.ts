import { nearestName } from '@paperhinge/geometry/sayings';
import type { SheetTellings } from '../../tellings.js';
import type { Tellings } from '../catalogue.js';
import { far, spokenOf } from './field-name.js';
import { instead, oneOf } from './instead.js';

const lengthForms = 'Write a length such as 12, 12 mm, 1.2 cm, 3/8 in or 2 7/8".';

type Figures =
  | 'length-not-understood'
  | 'length-out-of-range'
  | 'percent-not-understood'
  | 'percent-out-of-range';
type MoreFigures =
  | 'angle-not-understood'
  | 'angle-out-of-range'
  | 'count-not-understood'
  | 'count-out-of-range';

const figures: Pick<Tellings<SheetTellings>, Figures | MoreFigures | 'scale-not-understood'> = {
  'length-not-understood': ({ write, ...of }, say) => ({
    message: `${spokenOf(of, say)} is not a length.`,
    remedy: write === undefined ? lengthForms : `Write ${write}, with a point.`,
  }),
  'length-out-of-range': ({ givenMm, leastMm = 0, mostMm = 0, over = false, opposite, ...of }, say) => {
    const who = spokenOf(of, say);
    if (givenMm === undefined) return { message: `${who} is beyond any garment.`, remedy: 'Check its unit.' };
    if (givenMm > mostMm)
      return {
        message: `${who} is over ${far(mostMm, say)}.`,
        remedy: `Give at most ${say.atMost(mostMm)}; check its unit.`,
      };
    if (givenMm === 0 && over) return { message: `${who} is nothing.`, remedy: 'Give a length over 0.' };
    const how = givenMm < 0 ? 'is negative' : `is under ${far(leastMm, say)}`;
    const least = over ? 'Give a length over 0' : 'Give 0 or more';
    return {
      message: `${who} ${how}.`,
      remedy:
        leastMm !== 0
          ? `Give ${say.atLeast(leastMm)} to ${say.atMost(mostMm)}.`
          : opposite === undefined
            ? `${least}.`
            : `${least}, or use ${say.written(opposite)}.`,
    };
  },
  'percent-not-understood': ({ write, lacksSign, ...of }, say) => ({
    message: `${spokenOf(of, say)} is not a percentage with its sign.`,
    remedy:
      lacksSign && write !== undefined
        ? `Write ${write}, if that is what you mean.`
        : 'Write a percentage with its sign, such as 80 %.',
  }),
  'percent-out-of-range': ({ givenPercent, leastPercent, mostPercent, over, ...of }, say) => {
    const [least, most] = [say.percent(leastPercent), say.percent(mostPercent)];
    const how =
      givenPercent > mostPercent
        ? `is over ${most}`
        : givenPercent < 0 && leastPercent >= 0
          ? 'is negative'
          : over && givenPercent === leastPercent
            ? `is ${least}`
            : `is under ${least}`;
    return {
      message: `${spokenOf(of, say)} ${how}.`,
      remedy: over ? `Give more than ${least}, up to ${most}.` : `Give ${least} to ${most}.`,
    };
  },
  'angle-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is not an angle.`,
    remedy: 'Write degrees, such as 12, 12° or 12 deg.',
  }),
  'angle-out-of-range': (of, say) => ({
    message: `${spokenOf(of, say)} is half a turn or more.`,
    remedy: 'Give less than 180 degrees.',
  }),
  'count-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is not a whole number.`,
    remedy: 'Write a whole number.',
  }),
  'count-out-of-range': ({ least, most, ...of }, say) => ({
    message: `${spokenOf(of, say)} is out of range.`,
    remedy: `Give ${least} to ${most}.`,
  }),
  'scale-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is not a scale.`,
    remedy: 'Write 1/4 for a drawing at a quarter, or what one unit of it is, such as 1 mm.',
  }),
};

type Words =
  | 'position-not-understood'
  | 'position-off-edge'
  | 'edge-not-understood'
  | 'choice-not-understood';
type Names =
  | 'name-not-understood'
  | 'one-name-expected'
  | 'name-not-printable'
  | 'point-not-understood'
  | 'pair-expected';

const wordsAndPlaces: Pick<Tellings<SheetTellings>, Words | Names> = {
  'position-not-understood': ({ form, name, ...of }, say) => ({
    message: `${spokenOf(of, say)} is not a place on an edge.`,
    remedy: {
      'from-nothing': 'Name the edge after "from".',
      'share-or-length': 'Write 50 % or 1/2 for a share of the edge, 0.5 mm for a length.',
      any:
        name === undefined
          ? 'Write 1/3, 40 %, 1/3 from EDGE or 60 mm from EDGE.'
          : `Write 0 mm from ${name} for the end at that edge, 60 mm from ${name}, 1/3 or 40 %.`,
    }[form],
  }),
  'position-off-edge': (of, say) => ({
    message: `${spokenOf(of, say)} lies off its edge.`,
    remedy: 'Give a share from 0 to 100 % or a length within the edge.',
  }),
  'edge-not-understood': ({ withLength, ...of }, say) => ({
    message: `${spokenOf(of, say)} is not an edge of a piece.`,
    remedy: withLength
      ? 'Write PIECE.EDGE and a length, such as back.centre-back: 120 mm.'
      : 'Write PIECE.EDGE, such as front.neck.',
  }),
  'choice-not-understood': ({ given, words, ...of }, say) => ({
    message: `${spokenOf(of, say)} is none of its choices.`,
    remedy: oneOf(nearestName(given, words), words, say),
  }),
  'point-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} does not say where a point lies.`,
    remedy:
      'Write how far across and down, [12 cm, 4 cm]; or its distances, { from: { A: 12 cm, B: 9 cm } }; or { mirror: A, over: [B, C] }.',
  }),
  'pair-expected': (of, say) => ({
    message: `${spokenOf(of, say)} is not a list of two.`,
    remedy: 'Write two in brackets, such as [10, 25].',
  }),
  'name-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is not a name.`,
    remedy: 'Write a name; one made of digits needs quotes.',
  }),
  'one-name-expected': ({ given, instead: verb, ...of }, say) => ({
    message: `${spokenOf(of, say)} takes one name, not several.`,
    remedy:
      verb === undefined
        ? 'Write one of them.'
        : `Write one of them, or ${verb} instead, with among: [${given.map(edge => `{ edge: ${edge} }`).join(', ')}].`,
  }),
  'name-not-printable': ({ among, ...of }, say) => ({
    message: `${among === undefined ? spokenOf(of, say) : `A name in ${say.written(among)}`} is not a printable name of up to 100 characters.`,
    remedy: 'Write letters, digits, spaces and signs on one line.',
  }),
};

type Shapes = 'list-empty' | 'list-expected' | 'mapping-expected' | 'too-many-steps';
type Fields = 'missing-field' | 'unknown-field' | 'fields-conflict' | 'space-after-colon' | 'decimal-comma';
type Pages = 'paper-not-understood' | 'margins-not-understood' | 'square-not-understood';

const shapes: Pick<Tellings<SheetTellings>, Shapes | Fields | Pages> = {
  'list-empty': (of, say) => ({
    message: `${spokenOf(of, say)} names nothing.`,
    remedy: 'Name at least one.',
  }),
  'list-expected': (of, say) => ({
    message: `${spokenOf(of, say)} is not a list.`,
    remedy: 'Write each item on its own line after "- ".',
  }),
  'mapping-expected': ({ write, ...of }, say) => ({
    message: `${spokenOf(of, say)} has no fields.`,
    remedy:
      write === undefined || of.field === undefined
        ? 'Write its fields as "name: value".'
        : `Write ${of.field}: ${write}.`,
  }),
  'too-many-steps': ({ most, ...of }, say) => ({
    message: `${spokenOf(of, say)} has over ${most} steps.`,
    remedy: 'Divide the work among several sheets.',
  }),
  'missing-field': ({ fields, ...of }, say) => ({
    message: `${spokenOf(of, say)} lacks ${fields.map(say.written).join(' or ')}.`,
    remedy: fields.length > 1 ? `Add one of them.` : `Add ${fields.map(say.written).join()}.`,
  }),
  'unknown-field': ({ name, names, ...of }, say) => ({
    message: `${spokenOf(of, say)} has no field ${say.written(name)}.`,
    remedy: instead(name, names, 'fields', say),
  }),
  'fields-conflict': ({ fields, ...of }, say) => ({
    message: `${spokenOf(of, say)} has both ${say.list(fields.map(say.written))}.`,
    remedy: 'Keep one of the two.',
  }),
  'space-after-colon': ({ write }) => ({
    message: 'A space is missing after the colon.',
    remedy: `Write ${write.length > 40 ? 'a space after each colon' : `"${write}"`}.`,
  }),
  'decimal-comma': ({ write }) => ({
    message: 'A comma stands within a figure.',
    remedy: `Write ${write}, with a point.`,
  }),
  'paper-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is not a size of paper.`,
    remedy: 'Write a4, letter … or a size such as 600 x 900 mm.',
  }),
  'margins-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is neither one length nor four.`,
    remedy: 'Write one length, or four: [top, right, bottom, left].',
  }),
  'square-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} is not what a square measured both ways.`,
    remedy: 'Write two lengths, across and down: [49.5, 50.2] in a sheet, 49.5,50.2 after --measured.',
  }),
};

export const sheetFields: typeof figures & typeof wordsAndPlaces & typeof shapes = {
  ...figures,
  ...wordsAndPlaces,
  ...shapes,
};
