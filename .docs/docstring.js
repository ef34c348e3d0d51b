// A docstring's text as HTML.

const escapes = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
export const escaped = text => text.replace(/[&<>"]/g, c => escapes[c]);

/** @returns { text, tags }: what is said before the first tag, and each `@tag` with its words */
export function partsOf(doc) {
  const [text, ...rest] = doc.split(/^@(?=\w)|\s@(?=(?:throws|returns|param)\b)/m);
  return {
    text: text.trim(),
    tags: rest.map(part => {
      const [, tag, words] = /^(\w+)\s*([\s\S]*)$/.exec(part);
      return { tag, words: words.trim() };
    }),
  };
}

/** Paragraphs and lists; `code`, {@link name} and names known to `linkTo` become code and links. */
export function html(text, linkTo) {
  return text
    .split(/\n\s*\n/)
    .map(block => {
      const items = block.split(/^[-*] /m);
      if (items.length < 2) return `<p>${inline(block, linkTo)}</p>`;
      const [before, ...rest] = items;
      const list = `<ul>${rest.map(item => `<li>${inline(item, linkTo)}</li>`).join('')}</ul>`;
      return before.trim() === '' ? list : `<p>${inline(before, linkTo)}</p>${list}`;
    })
    .join('\n');
}

export function inline(text, linkTo) {
  return escaped(text.replace(/\s*\n\s*/g, ' ').trim())
    .replace(/\{@link (\w+)\}/g, (_, name) => linked(name, linkTo))
    .replace(/`([^`]+)`/g, (_, code) => (/^\w+$/.test(code) ? linked(code, linkTo) : `<code>${code}</code>`));
}

function linked(name, linkTo) {
  const target = linkTo(name);
  return target ? `<a href="${target}"><code>${name}</code></a>` : `<code>${name}</code>`;
}

/** A declaration with its comments set apart and the names of other entries linked. */
export function code(declaration, own, linkTo) {
  return declaration
    .split(/(\/\*\*[\s\S]*?\*\/)/)
    .map((part, i) =>
      i % 2 === 1
        ? `<i>${escaped(part)}</i>`
        : escaped(part).replace(/\b[A-Za-z]\w+\b/g, name => {
            const target = name !== own && /^[A-Z]/.test(name) ? linkTo(name) : undefined;
            return target ? `<a href="${target}">${name}</a>` : name;
          }),
    )
    .join('');
}
