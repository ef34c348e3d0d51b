import { type AnyVerbForm, verbForms } from '@paperhinge/alter';
import type { Sheet } from './sheet.js';
import { sheetReader } from './sheet-reader.js';

const usualReader = /* @__PURE__ */ sheetReader(verbForms);

/**
 * Reads an alteration sheet, YAML or JSON. All faults of its fields are gathered and told at once.
 *
 * @param options the sheet's name for errors, and the verbs it may use: without, all there are
 * @throws SheetFaults every fault with line, column and remedy; a file that is no YAML, or no sheet, is never quoted
 */
export const readSheet = (
  text: string,
  { file, verbs: own }: { readonly file: string; readonly verbs?: readonly AnyVerbForm[] },
): Sheet => (own === undefined ? usualReader : sheetReader(own))(text, { file });
