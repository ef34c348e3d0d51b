import { createHash } from 'node:crypto';
import { build, defineConfig, type Plugin, type Rollup } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';
import solid from 'vite-plugin-solid';

/** What the page may load, by kind; nothing from any outside address, in either build. */
const policy = (single: boolean): string =>
  Object.entries({
    'default-src': "'none'",
    'script-src': single ? "'unsafe-inline' blob:" : "'self'",
    'style-src': "'self' 'unsafe-inline'",
    'worker-src': single ? 'blob: data:' : "'self'",
    'font-src': "'self' data:",
    'img-src': "'self' data: blob:",
    'connect-src': single ? "'none'" : "'self'",
    'manifest-src': single ? "'none'" : "'self'",
    'base-uri': "'none'",
    'form-action': "'none'",
  })
    .map(([kind, from]) => `${kind} ${from}`)
    .join('; ');

/** Writes the policy into the page; the one file is named table.html, and has no parts to be installed from. */
const twoPages = (single: boolean): Plugin => ({
  name: 'two-pages',
  enforce: 'post',
  transformIndexHtml: {
    order: 'pre',
    handler: html => {
      const page = single ? html.replace(/\s*<link rel="(manifest|icon)"[^>]*>/g, '') : html;
      return page.replace(
        '<meta charset="utf-8" />',
        `<meta charset="utf-8" />\n    <meta http-equiv="Content-Security-Policy" content="${policy(single)}" />`,
      );
    },
  },
  generateBundle: (_, bundle) => {
    if (single && bundle['index.html']) bundle['index.html'].fileName = 'table.html';
  },
});

/** The service worker with the names of all the files it keeps, so that the served page opens without a network. */
const keptOffline = (): Plugin => ({
  name: 'kept-offline',
  apply: 'build',
  enforce: 'post',
  generateBundle(_, bundle) {
    const files = Object.keys(bundle).filter(name => name !== 'offline.js');
    const version = createHash('sha256');
    for (const name of files) {
      const part = bundle[name]!;
      version.update(name).update(part.type === 'chunk' ? part.code : part.source);
    }
    const own = bundle['offline.js'];
    if (own?.type !== 'chunk') throw new Error('The service worker was not built.');
    own.code = `const version = ${JSON.stringify(version.digest('hex').slice(0, 16))};\nconst files = ${JSON.stringify(['./', ...files])};\n${own.code}`;
  },
});

/** What a first visitor sees, worked out by the engine itself while the page is built. */
const firstView = (): Plugin => ({
  name: 'first-view',
  resolveId: id => (id === 'virtual:first-view' ? `\0${id}` : undefined),
  async load(id) {
    if (id !== '\0virtual:first-view') return undefined;
    const made = await build({
      configFile: false,
      root: import.meta.dirname,
      logLevel: 'error',
      ssr: { noExternal: true },
      build: {
        ssr: 'src/engine/first-view.ts',
        write: false,
        rollupOptions: { output: { inlineDynamicImports: true } },
      },
    });
    const [{ code }] = (made as Rollup.RollupOutput).output;
    const { firstView: worked } = await import(`data:text/javascript,${encodeURIComponent(code)}`);
    return `export default ${JSON.stringify(await worked())}`;
  },
});

// Two builds of one page: dist/index.html with its parts beside it, loaded when asked for, and dist/table.html, one file
// that opens by a double-click.
export default defineConfig(({ mode }) => {
  const single = mode === 'single';
  return {
    base: './',
    publicDir: single ? false : 'public',
    resolve: {
      alias: single ? [{ find: /^(.*)\/(worker|offline)-beside\.js$/, replacement: '$1/$2-within.ts' }] : [],
    },
    plugins: [
      solid(),
      firstView(),
      twoPages(single),
      ...(single ? [viteSingleFile({ removeViteModuleLoader: true })] : [keptOffline()]),
    ],
    // From a file of no origin only a classic worker starts.
    worker: {
      format: single ? 'iife' : 'es',
      rollupOptions: { output: single ? { inlineDynamicImports: true } : {} },
    },
    build: {
      target: 'es2022',
      outDir: 'dist',
      emptyOutDir: !single,
      modulePreload: { polyfill: false },
      chunkSizeWarningLimit: 2000,
      reportCompressedSize: false,
      rollupOptions: single
        ? { input: 'index.html' }
        : {
            input: { index: 'index.html', offline: 'src/offline.worker.ts' },
            output: {
              entryFileNames: ({ name }) => (name === 'offline' ? 'offline.js' : 'assets/[name]-[hash].js'),
            },
          },
    },
  };
});
