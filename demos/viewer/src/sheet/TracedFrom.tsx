import type { Field } from '@paperhinge/alter/verb';
import { createSignal, For, Show } from 'solid-js';
import type { Taken } from '../engine/questions.js';
import type { Garment } from '../job/garment.js';
import { takeOtherwise } from '../job/laying.js';
import { spokenBy } from '../job/reader.js';
import { whyNot } from '../job/why-not.js';
import type { PageWords } from '../words/page-words.js';
import { pageWords } from '../words.js';
import { Blank } from './Blank.jsx';
import { millimetres } from './figures.js';
import { partsOf } from './sentence.js';

const length = (least: number, most: number): Field => ({ kind: 'length', giving: 'usual', least, most });
const words = (...list: readonly string[]): Field => ({ kind: 'choice', giving: 'usual', words: list });

/** mm: as the command takes it unless told otherwise. */
const usualGap = '0.2 mm';

/** How the drawing or photograph that lies here was taken, as a sentence with its blanks: each taken otherwise, it is traced again. */
export function TracedFrom(props: { readonly garment: Garment }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [told, setTold] = createSignal('');
  const from = () => garment.tracedFrom();
  const taken = (): Taken => from()?.given.taken ?? {};
  const sentence = () => say()[`tracedFrom ${from()!.given.kind}`];
  const every = () => say().everyLayer;
  const take = async (name: string, value: unknown, settled: boolean) => {
    if (!settled) return;
    setTold(say().working);
    const outcome = await takeOtherwise(garment, { ...taken(), ...figureOf(name, value, say()) });
    setTold(whyNot(outcome, garment.language()));
  };
  const blanks: Readonly<Record<string, () => { field: Field; value: unknown; from?: readonly string[] }>> = {
    gap: () => ({ field: length(0.05, 2), value: inMm(taken().gap) ?? usualGap }),
    layer: () => ({
      field: words(),
      value: taken().layer ?? every(),
      from: [every(), ...(from()?.layers ?? [])],
    }),
    unit: () => ({
      field: words('mm', 'cm', 'in'),
      value: taken().unit ?? say().asItSays,
      from: ['mm', 'cm', 'in'],
    }),
    columns: () => ({
      field: { kind: 'count', giving: 'optional', least: 1, most: 50 },
      value: taken().columns,
    }),
    overlap: () => ({ field: length(0, 60), value: inMm(taken().overlap) ?? '0 mm' }),
    square: () => ({ field: length(47.5, 52.5), value: inMm(taken().square) ?? '50 mm' }),
    line: () => ({
      field: words(),
      value: say()[`${taken().line ?? 'stitching'}Line`],
      from: [say().stitchingLine, say().cuttingLine],
    }),
  };
  return (
    <Show when={from()}>
      <p class="sentence traced">
        <For each={partsOf(sentence(), () => true)}>
          {part => {
            if ('words' in part) return part.words;
            const blank = () => blanks[part.field]!();
            return (
              <Blank
                label={part.field}
                field={blank().field}
                value={blank().value}
                choices={blank().from ?? []}
                unit="mm"
                written="mm"
                spoken={spokenBy(garment, part.field)}
                onChange={(value, settled) => take(part.field, value, settled)}
              />
            );
          }}
        </For>
      </p>
      <p class="came" role="status">
        {garment.engine.going() ? '' : told()}
      </p>
    </Show>
  );
}

const inMm = (mm: number | undefined): string | undefined => (mm === undefined ? undefined : `${mm} mm`);

/** What a blank says, as the tracing takes it; every layer is said by naming none. */
function figureOf(name: string, value: unknown, say: PageWords): Taken {
  if (name === 'gap' || name === 'overlap' || name === 'square') return { [name]: millimetres(value, 'mm') };
  if (name === 'columns') return { columns: Number(value) };
  if (name === 'line') return { line: value === say.cuttingLine ? 'cutting' : 'stitching' };
  return value === say.everyLayer ? { [name]: undefined } : { [name]: String(value) };
}
