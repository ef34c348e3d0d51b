import { createSignal, For } from 'solid-js';
import type { TakeAway } from '../engine/questions.js';
import { bundleOf, stemOf } from '../job/files.js';
import type { Garment } from '../job/garment.js';
import { spokenBy } from '../job/reader.js';
import { save } from '../job/saving.js';
import { pageWords } from '../words.js';
import { HeadingRead } from './HeadingRead.jsx';
import { Pages } from './Pages.jsx';
import { PrintSentence } from './PrintSentence.jsx';
import { papersOf } from './printed.js';

/** Paper and files. */
export function ToTakeAway(props: { readonly garment: Garment; readonly onProject: () => void }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [busy, setBusy] = createSignal('');
  const take = async (what: TakeAway['take'], paper?: string) => {
    setBusy(say().working);
    const answer = await garment.engine.take({ take: what, ...(paper === undefined ? {} : { paper }) });
    setBusy('refused' in answer ? answer.refused : '');
    if ('file' in answer) save({ ...answer.file, content: answer.file.bytes });
  };
  return (
    <section aria-labelledby="away">
      <HeadingRead garment={garment} heading="away">
        {say().away}
      </HeadingRead>
      <PrintSentence garment={garment} />
      <Pages garment={garment} paper={papersOf(garment)[0] ?? 'a4'} />
      <ul class="away">
        <For each={papersOf(garment)}>
          {paper => (
            <li>
              <button type="button" onClick={() => take('pdf', paper)}>
                {say().pages} ({spokenBy(garment, 'paper').chosen({ kind: 'choice', giving: 'usual' }, paper)}
                )
              </button>
            </li>
          )}
        </For>
        <li>
          <button type="button" onClick={props.onProject}>
            {say().project}
          </button>
        </li>
        <For each={['svg', 'dxf', 'report', 'record'] as const}>
          {what => (
            <li>
              <button type="button" onClick={() => take(what)}>
                {say()[what]}
              </button>
            </li>
          )}
        </For>
        <AsWritten garment={garment} />
      </ul>
      <p class="came" role="status">
        {garment.engine.going() ? '' : busy()}
      </p>
    </section>
  );
}

/** The sheet's own text, and all of the garment in one file: for these nothing has to be worked out. */
function AsWritten(props: { readonly garment: Garment }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const sheet = () => save({ name: 'sheet.yaml', type: 'text/yaml', content: garment.history.now() });
  const bundle = () => {
    const { name, text: pattern } = garment.source();
    const content = bundleOf({ patternName: name, pattern, sheet: garment.history.now() });
    save({ name: `${stemOf(name)}.json`, type: 'application/json', content });
  };
  return (
    <>
      <li>
        <button type="button" onClick={sheet}>
          {say().sheetFile}
        </button>
      </li>
      <li>
        <button type="button" onClick={bundle}>
          {say().bundle}
        </button>
      </li>
    </>
  );
}
