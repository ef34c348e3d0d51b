import type { SyntaxFault } from './tellings.js';

/** The parser's codes. */
const syntax: Readonly<Record<string, SyntaxFault>> = {
  TAB_AS_INDENT: 'tab',
  MULTIPLE_DOCS: 'several-documents',
  MISSING_CHAR: 'sign-missing',
  BAD_INDENT: 'indentation',
  BAD_DQ_ESCAPE: 'backslash',
  BLOCK_AS_IMPLICIT_KEY: 'two-on-a-line',
  NON_STRING_KEY: 'key',
  RESOURCE_EXHAUSTION: 'too-deep',
  KEY_OVER_1024_CHARS: 'long-key',
};

/** A step's verb or a field before a brace or bracket, with no colon between. */
const withoutColon = /^\s*(?:-\s+)?[\p{L}][\p{L}\p{M}\d _-]*\s*[{[]/u;

/** What a maker did, and where in the text, by the parser's code and place: it tells of many faults where they end. */
export function faultOf(
  text: string,
  code: string,
  at: number,
): { readonly fault: SyntaxFault; readonly at: number } {
  const start = text.lastIndexOf('\n', at - 1) + 1;
  const [row = ''] = text.slice(start).split('\n', 1);
  if (code === 'MULTILINE_IMPLICIT_KEY') return { fault: 'colon-missing', at };
  if (code === 'UNEXPECTED_TOKEN' && withoutColon.test(row))
    return { fault: 'colon-missing', at: start + row.search(/\S/) };
  const opened = code === 'BAD_INDENT' ? lastOpened(text.slice(0, at)) : undefined;
  return opened === undefined ? { fault: syntax[code] ?? 'any', at } : { fault: 'not-closed', at: opened };
}

/** Where the innermost brace or bracket stands that is still open at the end of a text. */
function lastOpened(text: string): number | undefined {
  const opened: number[] = [];
  for (let i = 0; i < text.length; i++) {
    const sign = text[i];
    if (sign === '{' || sign === '[') opened.push(i);
    else if (sign === '}' || sign === ']') opened.pop();
  }
  return opened.at(-1);
}

/** A text without the curly quotes that a word processor puts round it: YAML knows straight ones alone. */
export const unquoted = (text: string): string => /^[“”„«‘‚](.+)[“”»’‘]$/su.exec(text)?.[1] ?? text;
