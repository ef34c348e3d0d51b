import { type AnyVerbForm, verbForms } from '@paperhinge/alter';
import type { Included } from './replay/included.js';

import type { Sheet } from './sheet.js';
import { sheetReader } from './sheet-reader.js';

const usualReader = /* @__PURE__ */ sheetReader(verbForms);

/** What a sheet is read with. */
export interface SheetOptions {
  /** The sheet's name, for errors. */
  readonly file: string;
  /** The verbs that it may use; absent = all there are. */
  readonly verbs?: readonly AnyVerbForm[];
  /** How the sheets that it includes are come by; absent = none are. */
  readonly included?: Included;
}

/**
 * Reads an alteration sheet, YAML or JSON. All faults of its fields are gathered and told at once.
 *
 * @throws SheetFaults every fault with line, column and remedy; a file that is no YAML, or no sheet, is never quoted
 */
export const readSheet = (text: string, { verbs: own, ...options }: SheetOptions): Sheet =>
  (own === undefined ? usualReader : sheetReader(own))(text, options);
