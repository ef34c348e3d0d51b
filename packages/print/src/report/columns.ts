import { plainLine } from '../drawing/lettering.js';
import type { ColumnName } from '../words/page-words.js';
import type { Reader } from '../words/reader.js';
import type { Column } from './document.js';

/** A column under its heading. */
export const columnOf =
  ({ words }: Reader, align: Column['align']) =>
  (name: ColumnName, share = 1): Column => ({ title: words.report.columns[name], align, share });

/** A name of the file in plain words: `side-upper` is "side upper". */
export const plainName = (name: string): string =>
  plainLine(name).replace(/(?<=[\p{L}\p{N}])[-_]+(?=[\p{L}\p{N}])/gu, ' ');
