import { createSignal, onCleanup, onMount } from 'solid-js';

import type { Garment } from './garment.js';
import { layFiles } from './laying.js';
import { whyNot } from './why-not.js';

/** Files dropped on the page or pasted into it, and texts pasted: laid on the table, or told why not. */
export function createDropped(garment: Garment) {
  const [over, setOver] = createSignal(false);
  const [told, setTold] = createSignal('');
  const lay = async (files: readonly File[]) => {
    if (files.length > 0) setTold(whyNot(await layFiles(garment, files), garment.language()));
  };
  const drag = (event: DragEvent) => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    setOver(true);
  };
  const leave = (event: DragEvent) => {
    if (event.relatedTarget === null) setOver(false);
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    void lay([...(event.dataTransfer?.files ?? [])]);
  };
  const paste = (event: ClipboardEvent) => {
    // Into a field goes what the field is for.
    if ((event.target as Element).closest('input, textarea, [contenteditable]')) return;
    const files = [...(event.clipboardData?.files ?? [])];
    const text = event.clipboardData?.getData('text/plain') ?? '';
    void lay(files.length > 0 || text.trim() === '' ? files : [new File([text], '')]);
  };
  onMount(() => {
    document.addEventListener('dragover', drag);
    document.addEventListener('dragleave', leave);
    document.addEventListener('drop', drop);
    document.addEventListener('paste', paste);
  });
  onCleanup(() => {
    document.removeEventListener('dragover', drag);
    document.removeEventListener('dragleave', leave);
    document.removeEventListener('drop', drop);
    document.removeEventListener('paste', paste);
  });
  return { over, told, clear: () => setTold('') };
}
