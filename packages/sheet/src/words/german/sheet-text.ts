import type { FileKind } from '../../file-kind.js';
import type { SheetTellings, SyntaxFault } from '../../tellings.js';
import type { Say, Tellings, Told } from '../catalogue.js';
import { verbAbroad } from '../verbs-abroad.js';
import { instead } from './instead.js';

const check = 'Prüfen Sie an dieser Stelle Kommas, Klammern, Anführungszeichen und Einrückung.';
const keepTo = 'Bleiben Sie bei den Feldern eines Änderungsblatts.';

const syntax: Readonly<Record<SyntaxFault, Told>> = {
  any: { message: 'Ab hier ist das Blatt nicht zu verstehen.', remedy: check },
  tab: {
    message: 'Ein Tabulator steht, wo Leerzeichen stehen müssen.',
    remedy: 'Rücken Sie mit Leerzeichen ein.',
  },
  'several-documents': {
    message: 'Die Datei enthält mehr als ein Dokument.',
    remedy: 'Lassen Sie ein Blatt je Datei; nehmen Sie die Zeile „---“ heraus.',
  },
  'sign-missing': {
    message: 'Hier fehlt eine Klammer, ein Anführungszeichen, ein Komma oder ein Doppelpunkt.',
    remedy: check,
  },
  'colon-missing': {
    message: 'In dieser Zeile fehlt ein Doppelpunkt.',
    remedy:
      'Setzen Sie ihn nach das Feld oder das Verb, mit einem Leerzeichen dahinter: - shorten: { pieces: front, at: hem, by: 20 }.',
  },
  'not-closed': {
    message: 'Was hier geöffnet wird, ist nicht geschlossen.',
    remedy: 'Schließen Sie jede { mit einer } und jede [ mit einer ].',
  },
  indentation: { message: 'Die Einrückung passt hier nicht.', remedy: check },
  backslash: {
    message: 'In Anführungszeichen steht ein Rückstrich vor einem Buchstaben, zu dem er nicht passt.',
    remedy: 'Nehmen Sie einfache Anführungszeichen, oder schreiben Sie den Rückstrich zweimal.',
  },
  'two-on-a-line': {
    message: 'Ein zweiter Doppelpunkt steht in derselben Zeile.',
    remedy:
      'Setzen Sie die Felder eines Schritts in geschweifte Klammern, nach seinem Verb und einem Doppelpunkt: - shorten: { pieces: front, at: hem, by: 20 }; oder jedes in eine eigene Zeile, oder einen Text mit Doppelpunkt in Anführungszeichen.',
  },
  key: { message: 'Ein Feldname ist kein einfaches Wort.', remedy: 'Nehmen Sie Wörter als Feldnamen.' },
  'too-deep': { message: 'Die Werte sind zu tief verschachtelt.', remedy: keepTo },
  'long-key': { message: 'Ein Feldname ist länger als 1024 Zeichen.', remedy: keepTo },
};

/** What a file is that was given where another was wanted. */
export const fileKinds: Readonly<Record<FileKind, string>> = {
  sheet: 'ein Änderungsblatt',
  drawing: 'eine Zeichnung',
  pdf: 'eine PDF-Datei',
  picture: 'ein Bild',
  record: 'das Protokoll eines Laufs',
  archive: 'eine gepackte Datei',
  dxf: 'eine DXF-Zeichnung',
};

type Of = 'sheet-too-large' | 'sheet-too-deep' | 'sheet-not-read' | 'sheet-empty' | 'not-a-sheet';
type More = 'too-many-aliases' | 'unknown-alias' | 'tag-refused' | 'duplicate-key' | 'more-faults';
type Steps = 'step-not-understood' | 'unknown-verb';

export const sheetText: Pick<Tellings<SheetTellings>, Of | More | Steps> = {
  'sheet-too-large': ({ mostCharacters }, say) =>
    mostCharacters === undefined
      ? { message: 'Das Blatt enthält zu viel, oder sich selbst.', remedy: keepTo }
      : {
          message: `Das Blatt ist länger als ${say.number(mostCharacters / 1000, 0)} 000 Zeichen.`,
          remedy: 'Geben Sie ein Änderungsblatt an; sie sind einige tausend Zeichen lang.',
        },
  'sheet-too-deep': ({ mostLevels }) => ({
    message: `Die Werte sind mehr als ${mostLevels}-fach verschachtelt.`,
    remedy: keepTo,
  }),
  'sheet-not-read': ({ fault }) => syntax[fault],
  'sheet-empty': () => ({
    message: 'Das Blatt ist leer.',
    remedy: 'Geben Sie ein Blatt mit den Feldern „pattern“ und „steps“ an.',
  }),
  'not-a-sheet': ({ looksLike }) => ({
    message: `Das ist kein Änderungsblatt${looksLike === undefined ? '' : `, sondern ${fileKinds[looksLike]}`}.`,
    remedy:
      looksLike === 'drawing'
        ? 'Nennen Sie die Zeichnung nach „pattern:“ in einem Blatt, oder nehmen Sie für sie check, measure oder print.'
        : 'Geben Sie ein Blatt mit den Feldern „pattern“ und „steps“ an.',
  }),
  'too-many-aliases': ({ most }) => ({
    message: `Es werden mehr als ${most} Verweise (*) benutzt.`,
    remedy: 'Schreiben Sie die Werte aus.',
  }),
  'unknown-alias': () => ({
    message: 'Ein Verweis (*) steht für nichts, das vor ihm benannt ist.',
    remedy: 'Schreiben Sie den Wert aus.',
  }),
  'tag-refused': () => ({
    message: 'Vor einem Wert steht eine Kennung („!...“).',
    remedy: 'Nehmen Sie die Kennung heraus; Werte stehen für sich.',
  }),
  'duplicate-key': ({ name }, say) => ({
    message: `${say.written(name)} ist zweimal angegeben.`,
    remedy: 'Behalten Sie eines davon.',
  }),
  'more-faults': ({ more }) => ({
    message: `Das Blatt hat ${more} weitere Fehler.`,
    remedy: 'Beheben Sie zuerst die obigen.',
  }),
  'step-not-understood': ({ key, indented }, say) => ({
    message:
      key === undefined
        ? 'Ein Schritt hat kein Verb.'
        : `Der Schritt hat ${say.written(key)} neben seinem Verb.`,
    remedy:
      key === undefined
        ? 'Schreiben Sie ihn als „Verb: { Feld: Wert }“.'
        : indented
          ? 'Beginnen Sie jeden Schritt mit „- “.'
          : 'Rücken Sie die Felder tiefer ein als das Verb.',
  }),
  'unknown-verb': ({ name, names }, say) => ({
    message: `Ein Verb ${say.written(name)} gibt es nicht.`,
    remedy: insteadOfVerb(name, names, say),
  }),
};

/** The verb that is called so in another tongue, else the nearest. */
function insteadOfVerb(name: string, names: readonly string[], say: Say): string {
  const verb = verbAbroad(name, names);
  return verb === undefined ? instead(name, names, 'Verben', say) : `Meinten Sie ${say.written(verb)}?`;
}
