// The command in a few files instead of some hundred modules, beside those in packages/cli/dist: most of what
// `measure` and `check` cost is the finding and loading of modules. `main.js` takes it where no code is newer.
import { readdirSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const dist = fileURLToPath(new URL('../packages/cli/dist/', import.meta.url));
for (const name of readdirSync(dist)) if (name.startsWith('bundled')) rmSync(dist + name);
await build({
  entryPoints: { bundled: `${dist}run.js` },
  outdir: dist,
  chunkNames: 'bundled-[hash]',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minifySyntax: true,
  minifyWhitespace: true,
  logLevel: 'warning',
  // Ours are carried; what others wrote stays in its own package, with its licence.
  plugins: [
    {
      name: 'only-ours',
      setup({ onResolve }) {
        onResolve({ filter: /^[^./]/ }, ({ path }) =>
          path.startsWith('@paperhinge/') ? undefined : { path, external: true },
        );
      },
    },
  ],
});
