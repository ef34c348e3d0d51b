import { createEffect, createSignal, For } from 'solid-js';
import type { Row } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { HeadingRead } from './HeadingRead.jsx';
import { JobPicture } from './JobPicture.jsx';
import { Together } from './Together.jsx';

/** The order of work, each line with its reason. */
export function HowToMakeIt(props: { readonly garment: Garment }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  /** The job pointed at, else the one the keys have come to: what it is done to lights up on the table. */
  const [pointed, point] = createSignal<Row>();
  const [reached, reach] = createSignal<Row>();
  createEffect(() => {
    const job = pointed() ?? reached();
    garment.setLit(job && new Set(job.lights));
    const at = job ? (garment.engine.proof()?.making.indexOf(job) ?? -1) : -1;
    garment.setJob(at < 0 ? undefined : at);
  });
  // Keys that reach a job scroll it into sight under a hand that lies still: that hand points at nothing.
  const reachByKeys = (job: Row) => {
    point(undefined);
    reach(job);
  };
  return (
    <section aria-labelledby="making">
      <HeadingRead garment={garment} heading="making">
        {say().making}
      </HeadingRead>
      <ol class="making" aria-busy={!garment.engine.isProved()}>
        <For each={garment.engine.proof()?.making}>
          {(job, i) => (
            <li onPointerMove={() => point(job)} onPointerLeave={() => point(undefined)}>
              <JobPicture garment={garment} at={i()} />
              <button type="button" onFocus={() => reachByKeys(job)} onBlur={() => reach(undefined)}>
                <Together text={job.text} />
              </button>
              <small>
                <Together text={job.detail} />
              </small>
            </li>
          )}
        </For>
      </ol>
      <ul class="cautions" aria-busy={!garment.engine.isProved()}>
        <For each={garment.engine.proof()?.cautions}>{caution => <li>{caution}</li>}</For>
      </ul>
    </section>
  );
}
