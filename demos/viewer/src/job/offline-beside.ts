/** Keeps the served page for when there is no network; asked for once the first view stands. */
export function keepOffline(): void {
  if (import.meta.env.DEV || !('serviceWorker' in navigator)) return;
  // Where it may not be kept (a private window), the page works all the same.
  void navigator.serviceWorker.register('./offline.js').catch(() => undefined);
}
