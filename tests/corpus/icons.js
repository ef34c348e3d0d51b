// Icons of three permissively licensed npm packages: @mdi/svg (Apache-2.0), bootstrap-icons (MIT) and Phosphor in
// @iconify-json/ph (MIT).
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const modules = fileURLToPath(new URL('../../node_modules', import.meta.url));
const folders = ['@mdi/svg/svg', 'bootstrap-icons/icons'];
const collection = `${modules}/@iconify-json/ph/icons.json`;

/** Every icon as { name, source }: files as they are, then a collection whose drawings stand in JSON. */
export function* icons() {
  for (const folder of folders) {
    if (!existsSync(`${modules}/${folder}`)) continue;
    for (const file of readdirSync(`${modules}/${folder}`).sort())
      if (file.endsWith('.svg'))
        yield { name: `${folder}/${file}`, source: readFileSync(`${modules}/${folder}/${file}`, 'utf8') };
  }
  if (!existsSync(collection)) return;
  const { icons: drawn, width, height } = JSON.parse(readFileSync(collection, 'utf8'));
  for (const [name, { body }] of Object.entries(drawn))
    yield {
      name: `ph/${name}`,
      source: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}">${body}</svg>`,
    };
}

/** The data of every path in them. */
export const pathDataOf = source => Array.from(source.matchAll(/\sd="([^"]+)"/g), match => match[1]);
