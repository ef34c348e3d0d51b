import type { Where } from '@paperhinge/geometry';
import { createSignal, For, Index, onCleanup, onMount, Show } from 'solid-js';
import { createDropped } from './job/dropped.js';
import { createGarment } from './job/garment.js';
import { AndThen } from './sheet/AndThen.jsx';
import { AsText } from './sheet/AsText.jsx';
import { Drawer } from './sheet/Drawer.jsx';
import { DoesItSew, ForWhom, HowToMakeIt, OfWhatCloth } from './sheet/Headings.jsx';
import { Step } from './sheet/Step.jsx';
import { ToTakeAway } from './sheet/TakeAway.jsx';
import { Thread } from './sheet/Thread.jsx';
import { Projector } from './table/Projector.jsx';
import { Table } from './table/Table.jsx';
import { pageWords } from './words.js';

/** One written sheet, one table. */
export function App() {
  const garment = createGarment();
  const say = () => pageWords[garment.language()];
  const view = garment.engine.view;
  let list: HTMLOListElement | undefined;
  const [asText, setAsText] = createSignal(false);
  const [drawer, setDrawer] = createSignal(0.58);
  const [projecting, setProjecting] = createSignal(false);
  let fly: (where: Where) => void = () => {};
  /** A seam is walked; any other thing is flown to. */
  const goTo = (where: Where) => {
    if (where.seam !== undefined && view()?.seams.some(row => row.seam === where.seam))
      garment.setWalking(where.seam);
    else fly(where);
  };
  const title = () => String(garment.values().title ?? view()?.pattern ?? '');
  const keys = (event: KeyboardEvent) => {
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    if (event.target instanceof HTMLTextAreaElement || event.target instanceof HTMLInputElement) return;
    event.preventDefault();
    if (event.shiftKey) garment.history.redo();
    else garment.history.undo();
  };
  onMount(() => document.addEventListener('keydown', keys));
  onCleanup(() => document.removeEventListener('keydown', keys));
  const dropped = createDropped(garment);

  return (
    <div
      class="page"
      style={{ '--drawer': `${drawer() * 100}dvh` }}
      lang={garment.language()}
      classList={{ dropping: dropped.over() }}
    >
      <Show when={dropped.told()}>
        <p class="told refused" role="alert">
          ▲ {dropped.told()}{' '}
          <button type="button" class="plain" onClick={dropped.clear}>
            {say().close}
          </button>
        </p>
      </Show>
      <main class="sheet">
        <Drawer garment={garment} onHeight={setDrawer} />
        <div class="written">
          <header>
            <h1>{title()}</h1>
            <p class="soft">
              {say().from} {view()?.pattern} · {garment.saved() === 'kept' ? say().kept : say().notKept} ·{' '}
              <button type="button" class="plain" aria-expanded={asText()} onClick={() => setAsText(t => !t)}>
                {say().asText}
              </button>
            </p>
          </header>
          <Show when={garment.engine.refused()}>
            <p class="refused" role="alert">
              ▲ {garment.engine.refused()}
            </p>
          </Show>
          <ForWhom garment={garment} />
          <OfWhatCloth garment={garment} />
          <section aria-labelledby="alter">
            <h2 id="alter">{say().alter}</h2>
            <div class="threaded">
              <ol class="steps" ref={list}>
                <Index each={garment.steps()}>
                  {(step, i) => <Step garment={garment} step={step()} index={i} />}
                </Index>
              </ol>
              <Thread garment={garment} list={() => list} />
            </div>
            <AndThen garment={garment} />
            <p class="doings always">
              <button
                type="button"
                disabled={garment.history.history().past.length === 0}
                onClick={garment.history.undo}
              >
                {say().undo}
              </button>
              <button
                type="button"
                disabled={garment.history.history().future.length === 0}
                onClick={garment.history.redo}
              >
                {say().redo}
              </button>
            </p>
          </section>
          <DoesItSew garment={garment} fly={goTo} />
          <HowToMakeIt garment={garment} />
          <ToTakeAway garment={garment} onProject={() => setProjecting(true)} />
          <p class="soft">
            {say().stays}{' '}
            <button type="button" class="plain" onClick={garment.startAgain}>
              {say().startAgain}
            </button>
          </p>
        </div>
        <footer class="verdict" aria-live="polite" data-milliseconds={view()?.milliseconds.toFixed(1)}>
          <For each={view()?.verdict}>
            {({ strong, text, tone, where }) => (
              <button type="button" class={tone} onClick={() => where && goTo(where)}>
                {tone === 'sound' ? '' : '▲ '}
                <strong>{strong}</strong> {text}
              </button>
            )}
          </For>
        </footer>
      </main>
      <Show when={projecting()}>
        <Projector garment={garment} onDone={() => setProjecting(false)} />
      </Show>
      <Show when={asText()}>
        <AsText garment={garment} onDone={() => setAsText(false)} />
      </Show>
      <Table
        garment={garment}
        onReady={to => {
          fly = to;
        }}
      />
    </div>
  );
}
