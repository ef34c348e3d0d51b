import { createSignal, onMount, Show } from 'solid-js';
import { layFiles } from '../job/laying.js';
import { whyNot } from '../job/why-not.js';
import { LongWork } from '../sheet/LongWork.jsx';
import { pageWords } from '../words.js';
import type { ShelfProps } from './Shelf.jsx';

/** Files chosen to be laid on the table; what cannot be is told, and nothing is laid. */
export function FromFile(props: ShelfProps) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [busy, setBusy] = createSignal(false);
  const [told, setTold] = createSignal('');
  let first: HTMLInputElement | undefined;
  onMount(() => first?.focus());
  const lay = async (files: FileList | null) => {
    setBusy(true);
    const outcome = await layFiles(garment, [...(files ?? [])]);
    setBusy(false);
    setTold(whyNot(outcome, garment.language()));
    if (outcome === 'laid') props.onDone();
  };
  return (
    <>
      <h2>{say().fromFile}</h2>
      <p>
        <label class="file">
          {say().chooseFile}
          <input
            ref={first}
            type="file"
            multiple
            accept=".svg,.dxf,.pdf,.yaml,.yml,.json,.jpg,.jpeg,.png,image/svg+xml"
            onChange={event => lay(event.currentTarget.files)}
          />
        </label>
        <Show when={!garment.engine.going()}>
          <small role="status">{busy() ? say().working : say().orDrop}</small>
        </Show>
      </p>
      <LongWork garment={garment} />
      <Show when={told()}>
        <p class="refused" role="alert">
          ▲ {told()}
        </p>
      </Show>
    </>
  );
}
