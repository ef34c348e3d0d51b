// `npm run docs`: a page a package from the docstrings of its public names, into out/docs. Names without a docstring
// are listed and make the command fail: an interface that is not explained is not finished.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { publicNames } from './declarations.js';
import { linker, overview, packagePage } from './page.js';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = `${root}out/docs`;

const packages = ['geometry', 'alter', 'print', 'sheet'].map(short => {
  const folder = `${root}packages/${short}/`;
  const { name, description, exports } = JSON.parse(readFileSync(`${folder}package.json`, 'utf8'));
  const doors = Object.entries(exports).filter(
    ([door, { types }]) => types && !door.startsWith('./internal'),
  );
  return {
    name,
    description,
    file: `${short}.html`,
    names: doors
      .flatMap(([door, { types }]) =>
        publicNames(folder + types, `${folder}dist`).map(one => ({ ...one, door: name + door.slice(1) })),
      )
      .filter((one, i, all) => all.findIndex(({ name }) => name === one.name) === i),
  };
});
const linkFrom = linker(packages);
mkdirSync(folder, { recursive: true });
for (const one of packages) writeFileSync(`${folder}/${one.file}`, packagePage(one, linkFrom(one)));
writeFileSync(`${folder}/index.html`, overview(packages));

const silent = packages.flatMap(({ name, names }) =>
  names.filter(n => n.doc === '').map(n => `${name}: ${n.name} (${n.module}) has no docstring`),
);
console.log(`out/docs/index.html: ${packages.reduce((sum, p) => sum + p.names.length, 0)} names`);
for (const line of silent) console.error(line);
if (silent.length > 0) process.exitCode = 1;
