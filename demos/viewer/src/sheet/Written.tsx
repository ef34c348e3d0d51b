import type { Where } from '@paperhinge/geometry';
import { createEffect, Index, on, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { AndThen } from './AndThen.jsx';
import { HeadingRead } from './HeadingRead.jsx';
import { DoesItSew, ForWhom, OfWhatCloth } from './Headings.jsx';
import { HowToMakeIt } from './HowToMakeIt.jsx';
import { readAlong } from './read-along.js';
import { Step } from './Step.jsx';
import { ToTakeAway } from './TakeAway.jsx';
import { Thread } from './Thread.jsx';
import { TracedFrom } from './TracedFrom.jsx';

interface WrittenProps {
  readonly garment: Garment;
  readonly asText: boolean;
  readonly onAsText: () => void;
  readonly onProject: () => void;
  readonly goTo: (where: Where) => void;
}

/** All that the sheet says, from the title to the files. */
export function Written(props: WrittenProps) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  return (
    <div class="written" tabindex="0" ref={readFromTop(garment)}>
      <Title garment={garment} asText={props.asText} onAsText={props.onAsText} />
      <Show when={garment.engine.refused()}>
        <p class="refused" role="alert">
          ▲ {garment.engine.refused()}
        </p>
      </Show>
      <TracedFrom garment={garment} />
      <ForWhom garment={garment} />
      <OfWhatCloth garment={garment} />
      <Alterations garment={garment} />
      <DoesItSew garment={garment} fly={props.goTo} />
      <HowToMakeIt garment={garment} />
      <ToTakeAway garment={garment} onProject={props.onProject} />
      <p class="soft">
        {say().stays}{' '}
        <button type="button" class="plain" onClick={garment.startAgain}>
          {say().startAgain}
        </button>
      </p>
    </div>
  );
}

/** The sheet as it is read along; another garment's is read from its top. */
const readFromTop = (garment: Garment) => (sheet: HTMLElement) => {
  readAlong(sheet, garment.setReading);
  createEffect(
    on(
      () => garment.source().id,
      () => sheet.scrollTo(0, 0),
      { defer: true },
    ),
  );
};

/** The garment's title, what it is made from, and whether it is kept. */
function Title(props: Pick<WrittenProps, 'garment' | 'asText' | 'onAsText'>) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const pattern = () => garment.engine.view()?.pattern;
  return (
    <header>
      <h1>{String(garment.values().title ?? pattern() ?? '')}</h1>
      <p class="soft">
        {say().from} {pattern()} · {garment.saved() === 'kept' ? say().kept : say().notKept} ·{' '}
        <button type="button" class="plain" aria-expanded={props.asText} onClick={props.onAsText}>
          {say().asText}
        </button>
      </p>
    </header>
  );
}

/** The steps in their order, on one thread. */
function Alterations(props: { readonly garment: Garment }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const { history, undo, redo } = garment.history;
  let list: HTMLOListElement | undefined;
  return (
    <section aria-labelledby="alter">
      <HeadingRead garment={garment} heading="alter">
        {say().alter}
      </HeadingRead>
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
        <button type="button" disabled={history().past.length === 0} onClick={undo}>
          {say().undo}
        </button>
        <button type="button" disabled={history().future.length === 0} onClick={redo}>
          {say().redo}
        </button>
      </p>
    </section>
  );
}
