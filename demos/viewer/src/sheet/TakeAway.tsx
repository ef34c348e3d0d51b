import type { Field } from '@paperhinge/alter/verb';
import type { LengthUnit } from '@paperhinge/geometry';
import { hideable } from '@paperhinge/sheet';
import { createSignal, For } from 'solid-js';
import type { TakeAway } from '../engine/view.js';
import { bundleOf } from '../job/files.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { Blank } from './Blank.jsx';
import { Pages } from './Pages.jsx';
import { partsOf } from './sentence.js';

const words = (...list: readonly string[]): Field => ({ kind: 'choice', giving: 'usual', words: list });
const length: Field = { kind: 'length', giving: 'usual', least: 0, most: 60 };
const yesOrNo = words('yes', 'no');

/** What of the pages may be chosen, by the names that the sheet's `print` has for it, with what is usual. */
const choices: Readonly<
  Record<string, { readonly field: Field; readonly usual: unknown; readonly from?: readonly string[] }>
> = {
  orientation: { field: words('auto', 'portrait', 'landscape'), usual: 'auto' },
  margins: { field: length, usual: '10 mm' },
  overlap: { field: length, usual: '10 mm' },
  arrange: { field: words('fewest pages', 'reading order', 'own pages'), usual: 'fewest pages' },
  turn: { field: words('none', 'half', 'quarter', 'any'), usual: 'quarter' },
  notches: { field: words('inwards', 'outwards', 'snips'), usual: 'inwards' },
  before: { field: yesOrNo, usual: 'no' },
  grid: { field: yesOrNo, usual: 'no' },
  tint: { field: yesOrNo, usual: 'no' },
  hide: { field: { kind: 'pieces', giving: 'optional' }, usual: undefined, from: hideable },
  initials: { field: { kind: 'text', giving: 'optional' }, usual: undefined },
  date: { field: { kind: 'text', giving: 'optional' }, usual: undefined },
};
const papers = [
  'a4',
  'letter',
  'a3',
  'a2',
  'a1',
  'a0',
  'legal',
  'tabloid',
  'arch-e',
  'roll-24',
  'roll-36',
  'roll-42',
];

/** Paper and files. */
export function ToTakeAway(props: { readonly garment: Garment; readonly onProject: () => void }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [busy, setBusy] = createSignal('');
  const print = () => (garment.values().print ?? {}) as Readonly<Record<string, unknown>>;
  const chosen = () => {
    const { paper = 'a4' } = print();
    return (Array.isArray(paper) ? paper : [paper]).map(String);
  };
  const take = async (what: TakeAway['take'], paper?: string) => {
    setBusy(say().working);
    const answer = await garment.engine.take({ take: what, ...(paper === undefined ? {} : { paper }) });
    setBusy('refused' in answer ? answer.refused : '');
    if ('file' in answer) save(answer.file.name, answer.file.type, answer.file.bytes);
  };
  const takeText = (name: string, type: string, text: string) =>
    save(name, type, new TextEncoder().encode(text));
  const stem = () => garment.source().name.replace(/\.svg$/i, '');
  const blank = (name: string) => {
    const choice = choices[name];
    return (
      <Blank
        label={name}
        field={choice?.field ?? { kind: 'pieces', giving: 'needed' }}
        value={choice ? (print()[name] ?? choice.usual) : chosen()}
        choices={choice ? (choice.from ?? choice.field.words ?? []) : papers}
        unit={garment.unit()}
        written={(garment.values().unit as LengthUnit | undefined) ?? 'mm'}
        and={say().and}
        onChange={(value, settled) => garment.set(['print', name], value, settled)}
      />
    );
  };
  return (
    <section aria-labelledby="away">
      <h2 id="away">{say().away}</h2>
      <p class="sentence">
        <For each={partsOf(say().printSentence, () => true)}>
          {part => ('words' in part ? part.words : blank(part.field))}
        </For>
      </p>
      <Pages garment={garment} paper={chosen()[0] ?? 'a4'} />
      <ul class="away">
        <For each={chosen()}>
          {paper => (
            <li>
              <button type="button" onClick={() => take('pdf', paper)}>
                {say().pages} ({paper})
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
        <li>
          <button type="button" onClick={() => takeText('sheet.yaml', 'text/yaml', garment.history.now())}>
            {say().sheetFile}
          </button>
        </li>
        <li>
          <button
            type="button"
            onClick={() => {
              const { name, text } = garment.source();
              const bundle = bundleOf({ patternName: name, pattern: text, sheet: garment.history.now() });
              takeText(`${stem()}.json`, 'application/json', bundle);
            }}
          >
            {say().bundle}
          </button>
        </li>
      </ul>
      <p class="came" role="status">
        {busy()}
      </p>
    </section>
  );
}

function save(name: string, type: string, bytes: Uint8Array): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes as BlobPart], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
