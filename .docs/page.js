import { code, escaped, html, inline, partsOf } from './docstring.js';

const style = `
:root { color-scheme: light dark; --line: #8885; --quiet: #8882; --link: light-dark(#0b57a4, #8ec5ff); }
body { font: 1rem/1.55 system-ui, sans-serif; margin: 0 auto; max-width: 62rem; padding: 1rem; }
a { color: var(--link); }
h2 { border-bottom: 1px solid var(--line); margin-top: 3rem; padding-bottom: .2rem; }
h3 { margin: 2.2rem 0 .3rem; font-family: ui-monospace, monospace; font-size: 1.05rem; overflow-wrap: anywhere; }
h3 small { font: .8rem system-ui, sans-serif; }
h3 a { text-decoration: none; color: inherit; }
pre { background: var(--quiet); border-radius: .3rem; font-size: .85rem; overflow-x: auto; padding: .7rem; tab-size: 2; }
pre i { opacity: .75; }
dl { margin: .5rem 0; } dt { font-weight: 600; } dd { margin: 0 0 .4rem 1.2rem; }
nav ul { columns: 15rem; list-style: none; padding: 0; }
`;

const page = (title, body) => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title>
<style>${style}</style>
</head>
<body>
${body}
</body>
</html>
`;

const folderOf = moduleName => moduleName.split('/').slice(0, -1)[0] ?? '';
const idOf = name => name.replace(/\W/g, '-');

/** @param packages a list of { name, file, description, names } as `publicNames` gives them */
export function linker(packages) {
  const targets = new Map();
  for (const { file, names } of [...packages].reverse())
    for (const { name } of names) targets.set(name, { file, id: idOf(name) });
  return own => name => {
    const here = own?.names.some(entry => entry.name === name)
      ? { file: own.file, id: idOf(name) }
      : undefined;
    const target = here ?? targets.get(name);
    return target && `${target.file === own?.file ? '' : target.file}#${target.id}`;
  };
}

export function packagePage(one, linkTo) {
  const folders = [...new Set(one.names.map(n => folderOf(n.module)))].sort();
  const groups = folders.map(folder => ({
    title: folder || 'throughout',
    names: one.names.filter(n => folderOf(n.module) === folder),
  }));
  return page(
    `${one.name}: API`,
    `<header><p><a href="index.html">All packages</a></p><h1>${escaped(one.name)}</h1><p>${escaped(one.description)}</p></header>
<nav aria-label="Names">${groups.map(g => `<h2><a href="#in-${idOf(g.title)}">${g.title}</a></h2><ul>${g.names.map(n => `<li><a href="#${idOf(n.name)}"><code>${n.name}</code></a></li>`).join('')}</ul>`).join('\n')}</nav>
<main>${groups.map(g => `<section><h2 id="in-${idOf(g.title)}">${g.title}</h2>${g.names.map(n => entry(n, linkTo)).join('\n')}</section>`).join('\n')}</main>`,
  );
}

const titles = { throws: 'Errors', returns: 'Gives', example: 'Example' };

function entry({ name, kind, doc, code: declaration, door }, linkTo) {
  const { text, tags } = partsOf(doc);
  const terms = tags.map(({ tag, words }) => {
    const [, parameter, rest] = tag === 'param' ? /^(\S+)\s*([\s\S]*)$/.exec(words) : [];
    return parameter
      ? `<dt><code>${escaped(parameter)}</code></dt><dd>${inline(rest, linkTo)}</dd>`
      : `<dt>${titles[tag] ?? tag}</dt><dd>${inline(words, linkTo)}</dd>`;
  });
  return `<article><h3 id="${idOf(name)}"><a href="#${idOf(name)}">${name}</a> <small>${kind} · ${door}</small></h3>
${text === '' ? '' : html(text, linkTo)}
${terms.length > 0 ? `<dl>${terms.join('')}</dl>` : ''}
<pre tabindex="0"><code>${code(declaration, name, linkTo)}</code></pre></article>`;
}

export const overview = packages =>
  page(
    'paperhinge: API',
    `<header><h1>paperhinge: API</h1><p>From the docstrings. Lengths are millimetres, angles radians, y points down, unless a name says otherwise.</p></header>
<main><dl>${packages.map(p => `<dt><a href="${p.file}">${escaped(p.name)}</a></dt><dd>${escaped(p.description)} ${p.names.length} names.</dd>`).join('')}</dl></main>`,
  );
