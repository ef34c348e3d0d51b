import { createAnswering } from './answering.js';
import type { Question } from './questions.js';

/** ms without another question, after which the hand rests: three frames, and more than a held key lets pass. */
const rest = 50;

/** A message to itself comes after all that were sent before it, and sooner than any timer. */
const { port1, port2 } = new MessageChannel();
const turns: (() => void)[] = [];
port2.onmessage = () => turns.shift()?.();

const answering = createAnswering({
  answer: message => self.postMessage(message),
  turn: () =>
    new Promise(resolve => {
      turns.push(resolve);
      port1.postMessage(undefined);
    }),
  atRest: call => {
    const timer = setTimeout(call, rest);
    return () => clearTimeout(timer);
  },
});

self.onmessage = ({ data }: MessageEvent<Question>) => answering(data);
