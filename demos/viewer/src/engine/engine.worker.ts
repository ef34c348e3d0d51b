import { type AnyVerb, verbs } from '@paperhinge/alter';
import { PatternError } from '@paperhinge/geometry';
import { catalogueOf, faultsIn, runSheet, type Words, wordsOf } from '@paperhinge/sheet';
import { heldOf } from './handles.js';
import type { Answer, Ask, TakeAway } from './view.js';
import { type Worked, work } from './work.js';

let worked: Worked | undefined;
let waiting: Ask | undefined;

const answer = (message: Answer) => self.postMessage(message);

// The page needs no operation to write a sentence, only what is declared of it.
answer({
  id: 0,
  verbs: verbs.map(({ verb, does, fields, oneOf, sentence, startsAt }: AnyVerb) => ({
    verb,
    does,
    fields,
    sentence,
    startsAt,
    ...(oneOf ? { oneOf } : {}),
  })),
});

/** Only the latest question is answered: what came in while one was worked out replaces what came before it. */
self.onmessage = ({ data }: MessageEvent<Ask | TakeAway>) => {
  if ('take' in data) void takeAway(data);
  else {
    if (!waiting) setTimeout(() => void next());
    waiting = data;
  }
};

async function next(): Promise<void> {
  const catalogue = await catalogueOf(waiting!.language);
  const ask = waiting!;
  waiting = undefined;
  try {
    const done = work(ask, catalogue);
    worked = done.worked;
    answer({ id: ask.id, view: done.view });
    setTimeout(() => handles(ask), 0);
  } catch (error) {
    answer({ id: ask.id, refused: told(error, wordsOf(catalogue, ask.unit)) });
  }
}

/** What can be taken hold of, once nothing else is waiting. */
function handles({ id, open, needle }: Ask): void {
  if (!worked || waiting) return;
  const { states, steps } = worked;
  if (open === undefined || open >= needle) answer({ id, held: { handles: [], points: [] } });
  else answer({ id, held: heldOf(states, steps, open, () => waiting !== undefined) });
}

/** In a maker's words; a fault of ours keeps its own. */
function told(error: unknown, words: Words): string {
  if (!(error instanceof PatternError)) return error instanceof Error ? error.message : String(error);
  return faultsIn(error)
    .map(fault => {
      const { message, remedy } = words.error(fault);
      const place = fault.where.line === undefined ? '' : `Line ${fault.where.line}: `;
      return `${place}${message} ${remedy}`;
    })
    .join('\n');
}

async function takeAway({ id, take, paper = 'a4' }: TakeAway): Promise<void> {
  try {
    if (!worked) throw new Error('There is nothing on the table yet.');
    const { sheet, before, readFindings, words } = worked;
    const run = runSheet(sheet, before, { readFindings, words });
    const text = new TextEncoder();
    const named = (sheet.title ?? before.name).toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
    const file = async () => {
      if (take === 'svg') return { name: `${named}.svg`, type: 'image/svg+xml', bytes: text.encode(run.svg) };
      if (take === 'record')
        return {
          name: `${named}.json`,
          type: 'application/json',
          bytes: text.encode(JSON.stringify(run.record, null, 2)),
        };
      const { printPattern, reportHtml } = await import('@paperhinge/print');
      const source = { before: run.before, record: run.record };
      if (take === 'report')
        return {
          name: `${named}.html`,
          type: 'text/html',
          bytes: text.encode(reportHtml({ pattern: run.altered, ...source })),
        };
      const { pdf } = await printPattern(run.altered, { paper, ...source });
      return { name: `${named}-${paper}.pdf`, type: 'application/pdf', bytes: pdf };
    };
    answer({ id, file: await file() });
  } catch (error) {
    const refused = worked ? told(error, worked.words) : String(error);
    answer({ id, refused });
  }
}
