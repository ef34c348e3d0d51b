import { onCleanup, onMount } from 'solid-js';

/**
 * An element on the whole screen while it stands; where that is not allowed it fills the window.
 * @param onLeft it has left the whole screen, by the page or by the browser's own key
 * @returns leaves it
 */
export function createFullScreen(element: () => HTMLElement | undefined, onLeft: () => void): () => void {
  const leave = () => {
    if (document.fullscreenElement) void document.exitFullscreen();
  };
  let wasFull = false;
  /** The browser's own key leaves the full screen before the page hears of it. */
  const changed = () => {
    if (wasFull && !document.fullscreenElement) onLeft();
    wasFull = document.fullscreenElement !== null;
  };
  onMount(() => {
    element()?.focus();
    document.addEventListener('fullscreenchange', changed);
    void element()
      ?.requestFullscreen?.()
      .catch(() => undefined);
  });
  onCleanup(() => {
    document.removeEventListener('fullscreenchange', changed);
    leave();
  });
  return leave;
}
