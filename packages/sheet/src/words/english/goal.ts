import type { GoalSentences, GoalTellings } from '@paperhinge/alter/sayings';
import { inSheet } from '@paperhinge/alter/verb';
import { capital } from '../capital.js';
import type { Say, Sentences, Tellings } from '../catalogue.js';
import { rangeRound } from '../goal-range.js';
import { instead } from './instead.js';

type Amount = Pick<GoalTellings['amount-found'], 'amountMm' | 'amountDeg' | 'amountPercent'>;
const amount = ({ amountMm, amountDeg, amountPercent }: Amount, say: Say): string => {
  if (amountPercent !== undefined) return say.percent(amountPercent);
  return amountDeg === undefined ? say.length(amountMm!) : say.angle(amountDeg);
};
const figure = ({ isMm, isMm2 }: { isMm?: number; isMm2?: number }, say: Say): string =>
  isMm2 === undefined ? say.length(isMm!) : `${say.number(isMm2 / 100)} cm²`;

export const goal: Tellings<GoalTellings> = {
  'amount-found': ({ field, measure, ...facts }, say) => ({
    message: `With ${amount(facts, say)} for "${inSheet(field)}", ${say.saying(measure)} is ${figure(facts, say)}.`,
    remedy: 'Write this amount instead, if it is to stay when the pattern changes.',
  }),
  'goal-not-reached': ({ field, measure, ...facts }, say) => ({
    message: `No amount of "${inSheet(field)}" that can be done gives what is wanted of ${say.saying(measure)}. The nearest is ${figure(facts, say)}, with ${amount(facts, say)}.`,
    remedy: `Write is: ${rangeRound(facts, say.unit)} to have the nearest.`,
  }),
  'too-many-goals': ({ fields, most }, say) => ({
    message: `${fields.length} amounts of one step are given by what they are to bring about: ${say.list(fields.map(f => `"${inSheet(f)}"`))}.`,
    remedy: `Give figures for all but ${most} of them.`,
  }),
  'goal-level-unknown': ({ level, levels }, say) => ({
    message: `The pattern has no level ${say.written(level)} to measure a girth at.`,
    remedy: instead(level, levels, 'levels', say),
  }),
  'goal-body-unknown': ({ level }, say) => ({
    message: `The wearer's ${say.name(level)} girth is not given, so that the ease there cannot be told.`,
    remedy: `Write ${say.written(`${level} girth`)} under wearer, or ask for the girth itself: girth at ${level}.`,
  }),
  'goal-hem-unknown': (edge, say) => ({
    message: capital(`${say.thing(edge)} is no hem, so that nothing goes round there.`),
    remedy: `Ask for its length: length of ${edge.piece}.${edge.edge}.`,
  }),
};

export const measures: Sentences<GoalSentences> = {
  'measure-girth': ({ level }, say) => `the girth at the ${say.name(level)}`,
  'measure-ease': ({ level }, say) => `the ease at the ${say.name(level)}`,
  'measure-seam': ({ seam }, say) => `the length of ${say.thing({ seam })}`,
  'measure-seam-ease': ({ seam }, say) => `the ease of ${say.thing({ seam })}`,
  'measure-edges': ({ edges }, say) => `the length of ${say.things(edges)}`,
  'measure-sweep': ({ edge }, say) => `the hem round ${say.thing(edge)}`,
  'measure-neck': () => 'the neck opening',
  'measure-height': ({ piece }, say) => `the height of ${say.thing({ piece })}`,
  'measure-width': ({ piece }, say) => `the width of ${say.thing({ piece })}`,
  'measure-area': ({ piece }, say) => `the area of ${say.thing({ piece })}`,
};
