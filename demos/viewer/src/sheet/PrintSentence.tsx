import type { Field } from '@paperhinge/alter/verb';
import { hideable } from '@paperhinge/sheet';
import { For } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { spokenBy } from '../job/reader.js';
import { pageWords } from '../words.js';
import { Blank } from './Blank.jsx';
import { papersOf, printOf } from './printed.js';
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

/** How the pages are printed, as a sentence with its blanks. */
export function PrintSentence(props: { readonly garment: Garment }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const blank = (name: string) => {
    const choice = choices[name];
    return (
      <Blank
        label={name}
        field={choice?.field ?? { kind: 'pieces', giving: 'needed' }}
        value={choice ? (printOf(garment)[name] ?? choice.usual) : papersOf(garment)}
        choices={choice ? (choice.from ?? choice.field.words ?? []) : papers}
        unit={garment.unit()}
        written={garment.unitWritten()}
        spoken={spokenBy(garment, name)}
        onChange={(value, settled) => garment.set(['print', name], value, settled)}
      />
    );
  };
  return (
    <p class="sentence">
      <For each={partsOf(say().printSentence, () => true)}>
        {part => ('words' in part ? part.words : blank(part.field))}
      </For>
    </p>
  );
}
