import { defineConfig } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';
import solid from 'vite-plugin-solid';

// Two builds of one page: dist/index.html with its parts beside it, loaded when asked for, and dist/table.html, one file
// that opens by a double-click.
export default defineConfig(({ mode }) => {
  const single = mode === 'single';
  return {
    base: './',
    resolve: {
      alias: single ? [{ find: /^(.*)\/worker-beside\.js$/, replacement: '$1/worker-within.ts' }] : [],
    },
    plugins: [solid(), ...(single ? [viteSingleFile({ removeViteModuleLoader: true })] : [])],
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
      rollupOptions: { input: single ? 'table.html' : 'index.html' },
    },
  };
});
