import type { FileKind } from '../../file-kind.js';
import type { SheetTellings, SyntaxFault } from '../../tellings.js';
import type { Say, Tellings, Told } from '../catalogue.js';
import { verbAbroad } from '../verbs-abroad.js';
import { instead } from './instead.js';

const check = 'Check the commas, brackets, quotes and indentation at this place.';
const keepTo = 'Keep to the fields of an alteration sheet.';

const syntax: Readonly<Record<SyntaxFault, Told>> = {
  any: { message: 'The sheet is not understood from here on.', remedy: check },
  tab: { message: 'A tab stands where spaces must.', remedy: 'Indent with spaces.' },
  'several-documents': {
    message: 'The file holds more than one document.',
    remedy: 'Keep one sheet in a file; take out the line "---".',
  },
  'sign-missing': { message: 'A bracket, quote, comma or colon is missing here.', remedy: check },
  'colon-missing': {
    message: 'A colon is missing on this line.',
    remedy:
      'Put one after the field or the verb, with a space behind it: - shorten: { pieces: front, at: hem, by: 20 }.',
  },
  'not-closed': {
    message: 'What is opened here is not closed.',
    remedy: 'Close each { with a }, and each [ with a ].',
  },
  indentation: { message: 'The indentation does not fit here.', remedy: check },
  backslash: {
    message: 'A backslash in quotes stands before a letter it cannot go with.',
    remedy: 'Use single quotes, or double the backslash.',
  },
  'two-on-a-line': {
    message: 'A second colon stands on one line.',
    remedy:
      'Put the fields of a step in braces, after its verb and a colon: - shorten: { pieces: front, at: hem, by: 20 }; or each on its own line, or a text with a colon in quotes.',
  },
  key: {
    message: 'What stands before a colon is not a plain word.',
    remedy: 'Write a field of the sheet before the colon.',
  },
  'too-deep': { message: 'Values are nested too deep.', remedy: keepTo },
  'long-key': {
    message: 'What stands before a colon is over 1024 letters long.',
    remedy: 'Use the field names of an alteration sheet.',
  },
};

/** What a file is that was given where another was wanted. */
export const fileKinds: Readonly<Record<FileKind, string>> = {
  sheet: 'an alteration sheet',
  drawing: 'a drawing',
  pdf: 'a PDF',
  picture: 'a picture',
  record: 'the record of a run',
  archive: 'a packed file',
  dxf: 'a DXF drawing',
};

type Of = 'sheet-too-large' | 'sheet-too-deep' | 'sheet-not-read' | 'sheet-empty' | 'not-a-sheet';
type More = 'too-many-aliases' | 'unknown-alias' | 'tag-refused' | 'duplicate-key' | 'more-faults';
type Steps = 'step-not-understood' | 'unknown-verb';

export const sheetText: Pick<Tellings<SheetTellings>, Of | More | Steps> = {
  'sheet-too-large': ({ mostCharacters }, say) =>
    mostCharacters === undefined
      ? { message: 'The sheet holds too much, or holds itself.', remedy: keepTo }
      : {
          message: `The sheet is over ${say.number(mostCharacters / 1000, 0)} 000 characters long.`,
          remedy: 'Give an alteration sheet; they are a few thousand long.',
        },
  'sheet-too-deep': ({ mostLevels }) => ({
    message: `Values are nested more than ${mostLevels} deep.`,
    remedy: keepTo,
  }),
  'sheet-not-read': ({ fault }) => syntax[fault],
  'sheet-empty': () => ({
    message: 'The sheet is empty.',
    remedy: 'Give a sheet with the fields "pattern" and "steps".',
  }),
  'not-a-sheet': ({ looksLike }) => ({
    message: `This is not an alteration sheet${looksLike === undefined ? '' : ` but ${fileKinds[looksLike]}`}.`,
    remedy:
      looksLike === 'drawing'
        ? 'Name the drawing after "pattern:" in a sheet, or use check, measure or print for it.'
        : 'Give a sheet with the fields "pattern" and "steps".',
  }),
  'too-many-aliases': ({ most }) => ({
    message: `More than ${most} aliases are used.`,
    remedy: 'Write the values out.',
  }),
  'unknown-alias': () => ({
    message: 'An alias stands for nothing named before it.',
    remedy: 'Write the value out.',
  }),
  'tag-refused': () => ({
    message: 'A tag ("!...") stands before a value.',
    remedy: 'Take the tag out; values are plain.',
  }),
  'duplicate-key': ({ name }, say) => ({
    message: `${say.written(name)} is given twice.`,
    remedy: 'Keep one of the two.',
  }),
  'more-faults': ({ more }) => ({
    message: `The sheet has ${more} more faults.`,
    remedy: 'Mend those above first.',
  }),
  'step-not-understood': ({ key, indented }, say) => ({
    message: key === undefined ? 'A step has no verb.' : `The step has ${say.written(key)} beside its verb.`,
    remedy:
      key === undefined
        ? 'Write it as "verb: { field: value }".'
        : indented
          ? 'Start each step with "- ".'
          : 'Indent the fields deeper than the verb.',
  }),
  'unknown-verb': ({ name, names }, say) => ({
    message: `There is no verb ${say.written(name)}.`,
    remedy: insteadOfVerb(name, names, say),
  }),
};

/** The verb that is called so in another tongue, else the nearest. */
function insteadOfVerb(name: string, names: readonly string[], say: Say): string {
  const verb = verbAbroad(name, names);
  return verb === undefined ? instead(name, names, 'verbs', say) : `Did you mean ${say.written(verb)}?`;
}
