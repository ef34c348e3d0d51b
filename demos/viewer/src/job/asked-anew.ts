import { type Accessor, createEffect, createSignal, on, onCleanup } from 'solid-js';
import type { View } from '../engine/view.js';

/** ms of quiet before a question is asked again. */
const quiet = 350;

/** What is answered to a question, asked anew after each change once it is quiet, while there is a question. */
export function createAnew<Q, A>(
  view: Accessor<View | undefined>,
  question: Accessor<Q | undefined>,
  ask: (question: Q) => Promise<A>,
): Accessor<A | undefined> {
  const [answer, setAnswer] = createSignal<A>();
  let asked = 0;
  createEffect(
    on([question, view], ([wanted, shown]) => {
      if (wanted === undefined || !shown) return;
      const mine = ++asked;
      const timer = setTimeout(async () => {
        const came = await ask(wanted);
        if (mine === asked) setAnswer(() => came);
      }, quiet);
      onCleanup(() => clearTimeout(timer));
    }),
  );
  return answer;
}
