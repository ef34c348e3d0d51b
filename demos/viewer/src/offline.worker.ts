// The served page without a network: its files are kept when it is first opened, and answered from there. The build
// writes their names and one version for all of them before this.
declare const version: string;
declare const files: readonly string[];

interface Installing extends Event {
  waitUntil(done: Promise<unknown>): void;
}
interface Fetching extends Event {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

const scope = self as unknown as {
  addEventListener(kind: 'install' | 'activate', on: (event: Installing) => void): void;
  addEventListener(kind: 'fetch', on: (event: Fetching) => void): void;
};

scope.addEventListener('install', event =>
  event.waitUntil(caches.open(version).then(cache => cache.addAll([...files]))),
);
scope.addEventListener('activate', event =>
  event.waitUntil(
    caches.keys().then(names => Promise.all(names.filter(n => n !== version).map(n => caches.delete(n)))),
  ),
);
// Only this page's own files are ever asked for; what is kept is answered from there, the rest goes its way.
scope.addEventListener('fetch', event =>
  event.respondWith(
    caches.match(event.request, { ignoreSearch: true }).then(kept => kept ?? fetch(event.request)),
  ),
);
