import { plainLine } from './lettering.js';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A name or sentence from somebody's file as HTML text or attribute: nothing in it can become markup. */
export const escaped = (text: string): string => plainLine(text).replace(/[&<>"']/g, c => entities[c]!);
