import type { Where } from '@paperhinge/geometry';
import { createEffect, For, Show } from 'solid-js';
import type { Row } from '../engine/view.js';
import { createAnew } from '../job/asked-anew.js';
import type { Garment } from '../job/garment.js';
import { spokenBy } from '../job/reader.js';
import { pageWords } from '../words.js';
import { Blank } from './Blank.jsx';
import { HeadingRead } from './HeadingRead.jsx';
import { createInSight } from './in-sight.js';
import { Proved } from './Proved.jsx';
import { Together } from './Together.jsx';

const length = { kind: 'length', giving: 'needed', least: 0, most: 5000 } as const;
const share = { kind: 'share', giving: 'needed', least: 0, most: 3 } as const;
const within = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};

/** The body's measures in one sentence. */
export function ForWhom(props: { readonly garment: Garment }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const wearer = () => within(garment.values().wearer);
  // Names are the same from one text to the next, so the blanks stay what they are while one is dragged.
  const measures = () => Object.keys(wearer());
  const measureOf = (name: string, isFirst: boolean) => {
    const word = garment.measureWords()[name] ?? name.replace(/ girth$/, '');
    return isFirst ? capital(word) : word;
  };
  return (
    <section aria-labelledby="for-whom">
      <HeadingRead garment={garment} heading="for-whom">
        {say().forWhom}
      </HeadingRead>
      <p class="sentence">
        <Show when={measures().length > 0} fallback={say().nothing}>
          <For each={measures()}>
            {(name, i) => (
              <>
                {measureOf(name, i() === 0)}{' '}
                <Blank
                  label={name}
                  field={length}
                  value={wearer()[name]}
                  choices={[]}
                  unit={garment.unit()}
                  written={garment.unitWritten()}
                  spoken={spokenBy(garment, 'wearer')}
                  onChange={(next, settled) => garment.set(['wearer', name], next, settled)}
                />
                {i() < measures().length - 1 ? ', ' : '.'}
              </>
            )}
          </For>
        </Show>
      </p>
      <GarmentHas garment={garment} />
    </section>
  );
}

/** The garment's girths, and how far they go beyond the body's. */
function GarmentHas(props: { readonly garment: Garment }) {
  const { engine, language } = props.garment;
  const girths = () => engine.proof()?.girths ?? [];
  const isCare = (girth: Row) => engine.isProved() && girth.tone === 'care';
  return (
    <Show when={girths().length > 0}>
      <p class="came" aria-busy={!engine.isProved()}>
        {pageWords[language()].garmentHas}{' '}
        <Proved garment={props.garment}>
          <For each={girths()}>
            {(girth, i) => (
              <span classList={{ care: isCare(girth) }}>
                {i() > 0 ? ', ' : ''}
                {girth.tone === 'care' ? '▲ ' : ''}
                <Together text={`${girth.text} (${girth.detail})`} />
              </span>
            )}
          </For>
          .
        </Proved>
      </p>
    </Show>
  );
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** A sentence a cloth: how wide, how far it stretches. */
export function OfWhatCloth(props: { readonly garment: Garment }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const facts = (cloth: string) => within(within(garment.values().fabrics)[cloth]);
  const cloths = () => Object.keys(within(garment.values().fabrics));
  const blank = (cloth: string, key: 'width' | 'stretch') => (
    <Blank
      label={`${cloth} ${key}`}
      field={key === 'width' ? length : share}
      value={facts(cloth)[key]}
      choices={[]}
      unit={garment.unit()}
      written={garment.unitWritten()}
      spoken={spokenBy(garment, 'fabrics')}
      onChange={(next, settled) => garment.set(['fabrics', cloth, key], next, settled)}
    />
  );
  return (
    <Show when={cloths().length > 0}>
      <section aria-labelledby="cloth">
        <HeadingRead garment={garment} heading="cloth">
          {say().cloth}
        </HeadingRead>
        <p class="sentence">
          <For each={cloths()}>
            {(name, i) => (
              <>
                {i() === 0 ? capital(name) : name}
                <Show when={facts(name).width !== undefined}>
                  , {blank(name, 'width')} {say().wide}
                </Show>
                <Show when={typeof facts(name).stretch === 'string'}>
                  , {say().stretching} {blank(name, 'stretch')}
                </Show>
                {i() < cloths().length - 1 ? '; ' : '.'}
              </>
            )}
          </For>
        </p>
        <ToBuy garment={garment} />
      </section>
    </Show>
  );
}

/** How much of each cloth to buy, laid out anew after each change while it is in sight. */
function ToBuy(props: { readonly garment: Garment }) {
  const { garment } = props;
  let place: HTMLDivElement | undefined;
  const seen = createInSight(() => place!);
  const laid = createAnew(
    garment.engine.view,
    () => (seen() || garment.reading() === 'cloth' ? true : undefined),
    garment.engine.cloths,
  );
  // The table shows the same.
  createEffect(() => garment.setCloths(laid()));
  return (
    <div ref={place} class="to-buy">
      <For each={laid()}>
        {({ told, isTooNarrow }) => (
          <p class="came" classList={{ care: isTooNarrow }}>
            {isTooNarrow ? '▲ ' : ''}
            <Together text={told} />
          </p>
        )}
      </For>
    </div>
  );
}

/** Every seam and check, worst first, in words. */
export function DoesItSew(props: { readonly garment: Garment; readonly fly: (where: Where) => void }) {
  const { garment } = props;
  const { proof, isProved } = garment.engine;
  const say = () => pageWords[garment.language()];
  const isFault = (row: Row) => isProved() && row.tone === 'fault';
  return (
    <section aria-labelledby="sews">
      <HeadingRead garment={garment} heading="sews">
        {say().sews}
      </HeadingRead>
      <ul class="rows" aria-busy={!isProved()}>
        <For each={proof()?.seams}>
          {row => (
            <li classList={{ fault: isFault(row) }}>
              <button type="button" title={say().walkIt} onClick={() => garment.setWalking(row.seam)}>
                {isFault(row) ? '▲ ' : ''}
                {row.text}
              </button>
              <span class="figure">
                <Proved garment={garment}>{row.detail}</Proved>
              </span>
            </li>
          )}
        </For>
      </ul>
      <details>
        <summary>{say().all}</summary>
        <ul class="findings" aria-busy={!isProved()}>
          <For each={proof()?.findings}>
            {finding => (
              <li class={finding.severity}>
                <button type="button" onClick={() => props.fly(finding.where)}>
                  {finding.severity === 'note' ? '' : '▲ '}
                  <Together text={finding.message} />
                </button>
                <span class="remedy">
                  <Together text={finding.remedy} />
                </span>
              </li>
            )}
          </For>
        </ul>
      </details>
    </section>
  );
}
