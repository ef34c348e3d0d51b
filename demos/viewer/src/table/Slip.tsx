import { For, Show } from 'solid-js';
import type { Part, PieceView, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import type { Place } from './camera.js';
import { LayDown } from './LayDown.jsx';
import type { Layout } from './layout.js';
import { Naming } from './Naming.jsx';
import { SlipSentences } from './SlipSentences.jsx';
import { figuresOf, spacedName, titleOf } from './slip-words.js';

/** What was touched, the piece it is on, and the part of that piece that it is. */
export interface SlipProps {
  readonly garment: Garment;
  readonly thing: Touched;
  readonly piece: PieceView | undefined;
  readonly part: Part | undefined;
}

/** A slip of paper: what was touched, its figures, and what can begin there. */
export function Slip(props: Omit<SlipProps, 'part'> & { readonly at: Place; readonly layout: Layout }) {
  const { garment } = props;
  const part = () => props.piece?.parts.find(p => p.name === props.thing.name && p.kind === props.thing.kind);
  const title = () => titleOf(props.thing, props.piece, garment.language());
  const told = () => figuresOf(garment, { thing: props.thing, piece: props.piece, part: part() });
  return (
    <div
      class="slip"
      role="dialog"
      aria-label={title()}
      style={{ left: `${props.at[0]}px`, top: `${props.at[1]}px` }}
      onPointerDown={e => e.stopPropagation()}
    >
      <h3>{title()}</h3>
      <Show when={told()}>
        <p>{told()}</p>
      </Show>
      <Naming garment={garment} thing={props.thing} />
      <ul>
        <SlipSentences garment={garment} thing={props.thing} piece={props.piece} part={part()} />
        <WalkAndMeasure garment={garment} thing={props.thing} piece={props.piece} part={part()} />
        <LayDown garment={garment} thing={props.thing} part={part()} layout={props.layout} />
      </ul>
      <button type="button" class="plain" onClick={() => garment.setTouched(undefined)}>
        {pageWords[garment.language()].close}
      </button>
    </div>
  );
}

/** The seams of an edge, to be walked; a point, to be measured from. */
function WalkAndMeasure(props: SlipProps) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const walk = (seam: string) => {
    garment.setTouched(undefined);
    garment.setWalking(seam);
  };
  const measure = (from: Place) => {
    garment.setMeasuring({ piece: props.thing.piece!, from });
    garment.setTouched(undefined);
  };
  return (
    <>
      <For each={props.part?.seams}>
        {seam => (
          <li>
            <button type="button" onClick={() => walk(seam)}>
              {say().walkIt}: {spacedName(seam)}
            </button>
          </li>
        )}
      </For>
      <Show when={props.part?.at}>
        {at => (
          <li>
            <button type="button" onClick={() => measure(at())}>
              {say().measureFrom}
            </button>
          </li>
        )}
      </Show>
    </>
  );
}
