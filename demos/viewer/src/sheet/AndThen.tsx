import type { VerbWords } from '@paperhinge/sheet/words';
import { createSignal, For, Show } from 'solid-js';
import type { Declared } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { withStep } from '../job/written.js';
import { pageWords } from '../words.js';
import { bareSentence } from './sentence.js';

/** Any part of a verb, of its sentence or of what it does finds it; so does the name of a piece or an edge. */
export function found(
  verbs: readonly Declared[],
  typed: string,
  own: VerbWords,
  names: readonly string[],
): readonly Declared[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  // A name of the pattern says what it is done to, not what is done.
  const sought = words.filter(word => !names.some(name => name.toLowerCase().includes(word)));
  return verbs.filter(verb => {
    const text =
      `${verb.verb} ${verb.does} ${own[verb.verb]?.does ?? ''} ${bareSentence(verb, own)}`.toLowerCase();
    return sought.every(word => text.includes(word));
  });
}

/** A piece that was named fills the field for one, or for several. */
const startedWith = ({ fields }: Declared, piece: string | undefined): Readonly<Record<string, unknown>> =>
  piece === undefined ? {} : fields.piece ? { piece } : fields.pieces ? { pieces: [piece] } : {};

/** The end of the sheet: the next sentence, begun by words. */
export function AndThen(props: { readonly garment: Garment }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [typed, setTyped] = createSignal('');
  const names = () => {
    const now = garment.engine.view()?.names.at(-1);
    return now ? [...now.pieces, ...Object.values(now.edges).flat()] : [];
  };
  const matching = () =>
    typed().trim() === ''
      ? []
      : found(garment.engine.verbs(), typed(), garment.verbWords(), names()).slice(0, 8);
  const begin = (verb: Declared) => {
    const spokenOf = typed().toLowerCase().split(/\s+/);
    const piece = garment.engine
      .view()
      ?.names.at(-1)
      ?.pieces.find(p => spokenOf.includes(p.toLowerCase()));
    garment.write(withStep(garment.history.now(), verb.verb, startedWith(verb, piece)));
    garment.setNeedle(undefined);
    garment.setOpen(garment.steps().length - 1);
    setTyped('');
  };
  return (
    <div class="and-then">
      <input
        aria-label={say().andThen}
        placeholder={say().andThen}
        title={say().andThenHint}
        value={typed()}
        onInput={event => setTyped(event.currentTarget.value)}
        onKeyDown={event => {
          const [first] = matching();
          if (event.key === 'Enter' && first) begin(first);
          if (event.key === 'Escape') setTyped('');
        }}
      />
      <Show when={typed().trim() !== '' && matching().length === 0}>
        <p class="came" role="status">
          {say().nothingFound} {say().andThenHint}.
        </p>
      </Show>
      <Show when={matching().length > 0}>
        <ul class="slip-list">
          <For each={matching()}>
            {verb => (
              <li>
                <button type="button" onClick={() => begin(verb)}>
                  {bareSentence(verb, garment.verbWords())}
                  <small>{verb.verb}</small>
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </div>
  );
}
