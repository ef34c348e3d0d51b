import { For } from 'solid-js';

/** A figure and the unit it is given in. */
const figure = /([+−-]?\d[\d.,/]*(?: \d+\/\d+)? (?:mm|cm|m|in|%)(?!\p{L}))/u;

/** What was told, a figure never parted from its unit by the end of a line. */
export function Together(props: { readonly text: string }) {
  return (
    <For each={props.text.split(figure)}>
      {(part, i) => (i() % 2 === 1 ? <span class="together">{part}</span> : part)}
    </For>
  );
}
