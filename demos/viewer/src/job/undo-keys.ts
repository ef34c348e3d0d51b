import { onCleanup, onMount } from 'solid-js';
import type { Garment } from './garment.js';

/** Ctrl+Z (on a Mac with its own key) undoes, with Shift it redoes; what is being typed in undoes by itself. */
export function undoByKeys({ history }: Garment): void {
  const keys = (event: KeyboardEvent) => {
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    if (event.target instanceof HTMLTextAreaElement || event.target instanceof HTMLInputElement) return;
    event.preventDefault();
    if (event.shiftKey) history.redo();
    else history.undo();
  };
  onMount(() => document.addEventListener('keydown', keys));
  onCleanup(() => document.removeEventListener('keydown', keys));
}
