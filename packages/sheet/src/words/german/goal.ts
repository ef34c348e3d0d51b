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
    message: `Mit ${amount(facts, say)} bei „${inSheet(field)}“ misst: ${say.saying(measure)} ${figure(facts, say)}.`,
    remedy: 'Schreiben Sie dieses Maß selbst hin, wenn es bleiben soll, auch wenn der Schnitt sich ändert.',
  }),
  'goal-not-reached': ({ field, measure, ...facts }, say) => ({
    message: `Kein mögliches Maß für „${inSheet(field)}“ ergibt das Gewünschte: ${say.saying(measure)}. Am nächsten kommt ${figure(facts, say)}, mit ${amount(facts, say)}.`,
    remedy: `Schreiben Sie is: ${rangeRound(facts, say.unit)}, um das Nächste zu bekommen.`,
  }),
  'too-many-goals': ({ fields, most }, say) => ({
    message: `${fields.length} Maße eines Schritts sind durch das gegeben, was sie bewirken sollen: ${say.list(fields.map(f => `„${inSheet(f)}“`))}.`,
    remedy: `Geben Sie alle bis auf ${most} davon als Zahl an.`,
  }),
  'goal-level-unknown': ({ level, levels }, say) => ({
    message: `Der Schnitt hat keine Höhenlinie ${say.written(level)}, an der ein Umfang zu messen wäre.`,
    remedy: instead(level, levels, 'Höhenlinien', say),
  }),
  'goal-body-unknown': ({ level }, say) => ({
    message: `Der Körperumfang an der Linie ${say.written(level)} ist nicht angegeben, also auch die Zugabe dort nicht bekannt.`,
    remedy: `Geben Sie ${say.written(`${level} girth`)} unter wearer an, oder verlangen Sie den Umfang selbst: girth at ${level}.`,
  }),
  'goal-hem-unknown': (edge, say) => ({
    message: capital(`${say.thing(edge)} ist kein Saum, dort läuft also nichts rundherum.`),
    remedy: `Verlangen Sie die Länge: length of ${edge.piece}.${edge.edge}.`,
  }),
};

export const measures: Sentences<GoalSentences> = {
  'measure-girth': ({ level }, say) => `Umfang an der Linie ${say.name(level)}`,
  'measure-ease': ({ level }, say) => `Bequemlichkeitszugabe an der Linie ${say.name(level)}`,
  'measure-seam': ({ seam }, say) => `Länge, ${say.thing({ seam })}`,
  'measure-seam-ease': ({ seam }, say) => `Mehrweite, ${say.thing({ seam })}`,
  'measure-edges': ({ edges }, say) => `Länge, ${say.things(edges)}`,
  'measure-sweep': ({ edge }, say) => `Saumweite, ${say.thing(edge)}`,
  'measure-neck': () => 'Halsausschnitt',
  'measure-height': ({ piece }, say) => `Höhe, ${say.thing({ piece })}`,
  'measure-width': ({ piece }, say) => `Breite, ${say.thing({ piece })}`,
  'measure-area': ({ piece }, say) => `Fläche, ${say.thing({ piece })}`,
};
