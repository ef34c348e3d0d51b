// Reads what the compiler writes beside each module (`.d.ts`): every public name of a package with its docstring and
// its declaration. The compiler's own interface is not needed, so any TypeScript version will do.
import { readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';

/**
 * The public names of a built package, in the order of its index.
 *
 * @param index path of the `.d.ts` of one of its doors, such as `dist/index.d.ts`
 * @param root what modules are named from
 * @returns a list of { name, kind, doc, code, module }: `doc` is the comment's text ('' if it has none), `code` the
 *   declaration with the comments of its members, `module` the file it stands in, without ending
 * @throws Error where an exported name is declared nowhere
 */
export function publicNames(index, root = dirname(index)) {
  return exportsOf(index).flatMap(({ name, from, original }) => {
    const moduleName = relative(root, from).replace(/\.d\.ts$/, '');
    if (original === '*')
      return declarationsIn(from)
        .filter(d => d.isExported)
        .map(d => ({ ...d, name: `${name}.${d.name}`, module: moduleName }));
    const found = find(from, original);
    if (found.length === 0) throw new Error(`${name} is exported, but ${moduleName} does not declare it`);
    return [
      {
        name,
        kind: found[0].kind,
        doc: found.map(d => d.doc).find(doc => doc !== '') ?? '',
        code: found.map(d => d.code).join('\n'),
        module: moduleName,
      },
    ];
  });
}

/** Where the names listed in an index come from. */
function exportsOf(file) {
  const text = readFileSync(file, 'utf8');
  const names = [];
  for (const [, star, list, path] of text.matchAll(
    /export (?:type )?(?:\* as (\w+)|\{([^}]*)\}) from '([^']+)'/g,
  )) {
    const from = resolve(dirname(file), path.replace(/\.js$/, '.d.ts'));
    if (star) names.push({ name: star, from, original: '*' });
    else
      for (const item of list.split(',').filter(part => part.trim() !== '')) {
        const [original, name = original] = item
          .trim()
          .replace(/^type /, '')
          .split(' as ');
        names.push({ name, from, original });
      }
  }
  return names;
}

/** A name declared in a module, or handed on by it. Overloads give several. */
function find(file, name) {
  const own = declarationsIn(file).filter(d => d.name === name);
  if (own.length > 0) return own;
  const handedOn = exportsOf(file).find(e => e.name === name);
  return handedOn ? find(handedOn.from, handedOn.original) : [];
}

const declared =
  /^(export )?(?:declare )?(?:abstract )?(interface|class|enum|namespace|type|const|let|function)\s+(\w+)/;

/** All top-level declarations of a `.d.ts` with the docstring before each. */
export function declarationsIn(file) {
  return statementsOf(readFileSync(file, 'utf8')).flatMap(({ doc, code }) => {
    const match = declared.exec(code);
    if (!match) return [];
    const [, exported, kind, name] = match;
    const shown = code.replace(/^export /, '').replace(/^declare /, '');
    return [{ name, kind, doc, code: shown, isExported: exported !== undefined }];
  });
}

/** Top-level statements, each with the docstring right before it. Strings and comments may hold any bracket. */
function statementsOf(text) {
  const statements = [];
  let doc = '',
    start = -1,
    depth = 0;
  for (let i = 0; i < text.length; i++) {
    if (text.startsWith('//', i)) {
      i = (text.indexOf('\n', i) + text.length + 1) % (text.length + 1);
      continue;
    }
    if (text.startsWith('/*', i)) {
      const end = text.indexOf('*/', i) + 1;
      if (start < 0 && text.startsWith('/**', i)) doc = plainComment(text.slice(i, end + 1));
      i = end;
      continue;
    }
    const c = text[i];
    if (start < 0) {
      if (/\s/.test(c)) continue;
      start = i;
    }
    if (c === "'" || c === '"' || c === '`') {
      for (i++; text[i] !== c; i++) if (text[i] === '\\') i++;
      continue;
    }
    if ('{(['.includes(c)) depth++;
    if ('})]'.includes(c)) depth--;
    if (depth > 0) continue;
    const endsAtBrace = /^(export )?(declare )?(abstract )?(interface|class|enum|namespace)\b/.test(
      text.slice(start, start + 60),
    );
    if (c === ';' || (c === '}' && endsAtBrace)) {
      statements.push({ doc, code: text.slice(start, i + 1) });
      start = -1;
      doc = '';
    }
  }
  return statements;
}

const plainComment = comment =>
  comment
    .replace(/^\/\*\*\s?|\s*\*\/$/g, '')
    .replace(/^[ \t]*\* ?/gm, '')
    .trim();
