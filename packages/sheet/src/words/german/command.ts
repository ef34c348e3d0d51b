import type { CommandSentences, CommandTellings, Wanted } from '../../command-sayings.js';
import type { Sentences, Tellings } from '../catalogue.js';
import { shownName } from '../names.js';
import { namingSentences } from './naming.js';
import { fileKinds } from './sheet-text.js';
import { traceSentences, traceTellings } from './trace.js';

const the: Readonly<Record<Wanted, string>> = {
  sheet: 'Das Blatt',
  pattern: 'Der Schnitt',
  picture: 'Das Bild',
  record: 'Die Niederschrift',
};
const a: Readonly<Record<Wanted, string>> = {
  sheet: 'ein Blatt',
  pattern: 'einen Schnitt',
  picture: 'ein Bild',
  record: 'eine Niederschrift',
};
const another = 'Geben Sie einen anderen Ausgabeordner an.';
const held = {
  pages: 'Seiten',
  frame: 'Seiten (.pdf)',
  drawing: 'eine SVG-Zeichnung',
  picture: 'ein PNG-Bild',
  sheet: 'ein Blatt (.yaml)',
};

export const command: Tellings<CommandTellings> = {
  ...traceTellings,
  'file-not-found': ({ what }) => ({
    message: `${the[what]} ist nicht da.`,
    remedy: 'Prüfen Sie Namen und Ordner.',
  }),
  'file-not-readable': ({ what, system }) => ({
    message:
      system === undefined
        ? `${the[what]} darf nicht gelesen werden.`
        : `${the[what]} war nicht zu lesen (${system}).`,
    remedy:
      system === undefined
        ? 'Prüfen Sie, wer die Datei lesen darf.'
        : 'Prüfen Sie die Datei und ihre Platte.',
  }),
  'not-a-file': ({ what, folder }) => ({
    message: `${the[what]} ist ${folder ? 'ein Ordner' : 'keine gewöhnliche Datei'}.`,
    remedy: folder ? 'Geben Sie die Datei selbst an.' : 'Geben Sie eine Datei auf der Platte an.',
  }),
  'input-too-large': ({ what, mostMegabytes }) => ({
    message: `${the[what]} ist größer als ${mostMegabytes} MB.`,
    remedy: `Geben Sie ${a[what]} an, die viel kleiner sind.`,
  }),
  'file-empty': ({ what }) => ({
    message: `${the[what]} ist leer.`,
    remedy: `Geben Sie ${a[what]} mit Inhalt an.`,
  }),
  'not-utf-8': ({ what }) => ({
    message: `${the[what]} ist kein Text in UTF-8.`,
    remedy: 'Speichern Sie die Datei als reinen Text in UTF-8.',
  }),
  'not-a-record': () => ({
    message: 'Das ist keine Niederschrift einer Änderung, oder eine aus einer älteren Fassung.',
    remedy:
      'Geben Sie die record.json an, die alter geschrieben hat; ist sie älter, führen Sie das Blatt noch einmal aus.',
  }),
  'not-a-pattern': ({ looksLike }) => ({
    message: `Das ist kein Schnitt, sondern ${fileKinds[looksLike]}.`,
    remedy: {
      sheet:
        'Geben Sie die Zeichnung an, die darin nach „pattern:“ steht, oder nehmen Sie alter für das Blatt.',
      drawing: 'Geben Sie eine Schnittzeichnung (SVG) an.',
      pdf: 'Machen Sie erst einen Schnitt daraus: paperhinge trace DATEI.pdf -o SCHNITT.svg.',
      picture: 'Zeichnen Sie es nach (ein Foto mit paperhinge trace), und geben Sie das SVG an.',
      record: 'Geben Sie altered.svg aus demselben Ordner an.',
      archive: 'Entpacken Sie sie, und geben Sie das SVG darin an.',
      dxf: 'Machen Sie erst einen Schnitt daraus: paperhinge trace DATEI.dxf -o SCHNITT.svg.',
    }[looksLike],
  }),
  'output-not-a-folder': ({ onTheWay }) =>
    onTheWay
      ? {
          message: 'Der Ausgabeordner lässt sich nicht anlegen: Auf dem Weg dorthin steht eine Datei.',
          remedy: another,
        }
      : { message: 'Das ist eine Datei, kein Ordner.', remedy: 'Geben Sie den Namen eines Ordners an.' },
  'output-is-a-folder': () => ({
    message: 'Wo diese Datei hin soll, steht ein Ordner.',
    remedy: another,
  }),
  'input-would-be-overwritten': () => ({
    message: 'Diese Ausgabe würde eine Eingabe überschreiben.',
    remedy: another,
  }),
  'output-not-written': ({ system }) =>
    system === 'ENAMETOOLONG'
      ? {
          message: 'Der Name der Ausgabe ist länger, als die Platte erlaubt.',
          remedy: 'Geben Sie nach -o einen kürzeren Namen an.',
        }
      : {
          message: `In den Ausgabeordner ließ sich nicht schreiben (${system}).`,
          remedy: 'Prüfen Sie, wer dort schreiben darf und ob die Platte voll ist.',
        },
  'folder-unnamed': () => ({
    message: 'Der Ausgabeordner hat keinen Namen.',
    remedy: 'Nennen Sie ihn nach -o; „.“ ist dieser Ordner.',
  }),
  'output-unnamed': ({ such }) => ({
    message: 'Die Ausgabedatei hat keinen Namen.',
    remedy: `Nennen Sie sie, etwa ${such}.`,
  }),
  'output-of-another-kind': ({ holds, ending, write }) =>
    holds === 'pages'
      ? {
          message: `Ein Schnitt wird nicht als ${shownName(ending)} gedruckt.`,
          remedy: `Schreiben Sie -o ${shownName(write)}, oder einen Namen auf .dxf für ein anderes Programm.`,
        }
      : {
          message: `Diese Datei wird ${held[holds]} enthalten; ein Name auf ${shownName(ending)} sagt anderes.`,
          remedy: `Nennen Sie sie ${shownName(write)}.`,
        },
  'folder-named-as-file': ({ ending }) => ({
    message: `Es werden mehrere Dateien geschrieben, die Ausgabe heißt aber wie eine einzelne (${shownName(ending)}).`,
    remedy: 'Geben Sie nach -o den Namen eines Ordners an, etwa out.',
  }),
  'dxf-has-no-paper': () => ({
    message: 'Eine DXF-Datei hat weder Papier noch Projektor.',
    remedy: 'Lassen Sie --paper und --projector weg, oder geben Sie eine Ausgabe auf .pdf an.',
  }),
  'no-pattern-to-print': () => ({
    message: 'Es gibt keinen Schnitt zu drucken.',
    remedy: 'Geben Sie das SVG des Schnitts an, oder --photo-frame.',
  }),
  'photo-frame-of-no-pattern': () => ({
    message: 'Ein Fotorahmen wird ohne Schnitt gedruckt.',
    remedy: 'Lassen Sie den Schnitt weg, oder --photo-frame und --sheets.',
  }),
  arguments: ({ said }) => ({ message: said, remedy: 'Siehe paperhinge --help.' }),
  'answer-not-written': ({ system }) => ({
    message: `Die Antwort ließ sich nicht schreiben (${system}).`,
    remedy: 'Prüfen Sie, wohin die Ausgabe des Befehls führt und ob die Platte voll ist.',
  }),
};

const count = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;
const joined = (parts: readonly (string | false)[]) => parts.filter(part => part !== false).join(', ');
const none = '';

const kinds: Readonly<Record<string, string>> = {
  band: 'Bündchen',
  strip: 'Streifen',
  binding: 'Schrägband',
  facing: 'Beleg',
  stay: 'Formband',
};

export const commandSentences: Sentences<CommandSentences> = {
  ...namingSentences,
  ...traceSentences,
  'reading-sheet': () => 'Das Blatt wird gelesen',
  'reading-pattern': () => 'Der Schnitt wird gelesen',
  altering: () => 'Der Schnitt wird geändert',
  'laying-out': ({ on }) => `Die Seiten werden ausgelegt: ${on.join(', ')}`,
  'laying-out-one-sheet': () => 'Der Bogen wird ausgelegt',
  'flattening-lines': () => 'Die Linien werden zerlegt',
  writing: () => 'Die Dateien werden geschrieben',
  'in-brackets': ({ step, piece, edge }) =>
    joined([
      step !== undefined && `Schritt ${step}`,
      piece !== undefined && `Teil ${shownName(piece)}`,
      edge !== undefined && `Kante ${shownName(edge)}`,
    ]),
  severity: ({ severity }) => ({ note: 'Hinweis', warning: 'Achtung', fault: 'Fehler' })[severity],
  'steps-done': ({ title, steps, sheet, off }) =>
    `${title}: ${count(steps, 'Schritt', 'Schritte')} von ${sheet} getan${off > 0 ? `, ${off} ausgeschaltet` : none}.`,
  'edges-as-drawn': () => 'Kanten wie gezeichnet',
  before: () => 'vorher',
  after: () => 'nachher',
  new: () => 'neu',
  gone: () => 'entfallen',
  'no-edge-changed': () => 'Keine Kante hat ihre Länge geändert.',
  'more-edges': ({ more }) => `und ${count(more, 'weitere Kante', 'weitere Kanten')} in record.json`,
  'cut-size': ({ piece, kind, lengthMm, widthMm, fabric, stretchPercent }, say) =>
    `${say.name(piece)}: ${say.length(lengthMm)} × ${say.length(widthMm)} aus ${say.name(fabric)} zuschneiden (${kinds[kind] ?? kind})${stretchPercent === undefined ? none : `; der angenähte Teil dehnt sich um ${say.percent(stretchPercent)}`}`,
  'cloth-to-buy': ({ cloth, widthMm, buyMm, laid }, say) =>
    `${say.cloth(buyMm)} ${say.name(cloth)} kaufen, ${say.length(widthMm)} breit, ${laid === 'open' ? 'offen gelegt' : 'längs gefaltet'}.`,
  'hem-sweep': ({ edges, beforeMm, afterMm = 0 }, say) =>
    `Saum ringsum (${edges.map(say.shortly).join(' + ')}): ${beforeMm === undefined ? none : `${say.length(beforeMm)}, nun `}${say.length(afterMm)}`,
  'girth-at': ({ level }, say) => `Umfang ${say.name(level)}`,
  'girth-figures': ({ beforeMm, afterMm, bodyMm, easeMm }, say) =>
    joined([
      beforeMm !== undefined && say.length(beforeMm),
      afterMm === undefined ? 'entfallen' : `nun ${say.length(afterMm)}`,
      bodyMm !== undefined && `Körper ${say.length(bodyMm)}`,
      easeMm !== undefined && `Zugabe ${say.length(easeMm)}`,
    ]),
  'seams-matching': ({ matching, seams }) => `Nähte: ${matching} von ${seams} passen.`,
  'more-findings': ({ more }) => `${count(more, 'weiterer Befund', 'weitere Befunde')} in report.html.`,
  'notes-in-report': ({ notes }) => `${count(notes, 'Hinweis', 'Hinweise')} in report.html.`,
  'more-cautions': ({ more }) =>
    `${count(more, 'weitere Vorsichtsregel', 'weitere Vorsichtsregeln')} in report.html.`,
  'files-in': ({ folder, files }) => `Dateien in ${folder}: ${files.join(', ')}`,
  'not-of-this-run': ({ files }) => `Nicht von diesem Lauf: ${files.join(', ')}`,
  'inches-rounded': () => 'Zoll sind auf 1/8 gerundet; record.json hat die genauen Millimeter.',
  seam: () => 'Naht',
  'one-side': () => 'eine Seite',
  'other-side': () => 'andere Seite',
  difference: () => 'Unterschied',
  'ease-wanted': ({ easeMm }, say) => `${say.change(easeMm)} gewünscht`,
  matches: () => 'passt',
  'does-not-match': () => 'PASST NICHT',
  'no-seams': () => 'hat keine Nähte',
  'will-not-sew': () => 'So lässt er sich nicht nähen.',
  'nothing-in-the-way': () => 'Dem Nähen steht nichts im Weg.',
  'seams-not-checked': () =>
    'Ob er zusammengeht, ist nicht zu sagen: Er nennt keine Nähte. Nennen Sie sie in der Zeichnung oder unter „seams:“ in einem Blatt.',
  'each-piece-as-drawn': ({ pattern }) => `${pattern}, jedes Teil wie gezeichnet`,
  'within-stitching-line': ({ piece, areaMm2 }, say) =>
    `${piece}: ${say.number(areaMm2 / 100)} cm² innerhalb der Nahtlinie`,
  'with-allowance': ({ allowanceMm }, say) => `Zugabe ${say.allowance(allowanceMm)}`,
  'dart-named': ({ dart }) => `Abnäher ${dart}`,
  'with-legs': ({ firstMm, secondMm }, say) => `Schenkel ${say.length(firstMm)} und ${say.length(secondMm)}`,
  'no-shapes': () => 'Die Zeichnung zeigt keine Formen.',
  'shape-headings': () => 'Form\nid\nLänge\nFläche',
  'open-shape': () => 'offen',
  'pages-of': ({ pages, paper }) => `${count(pages, 'Seite', 'Seiten')} ${paper}`,
  'projector-page': ({ widthMm, heightMm }, say) =>
    `1 Seite von ${say.length(Math.round(widthMm))} × ${say.length(Math.round(heightMm))} für einen Projektor`,
  'pieces-written': ({ pieces }) => count(pieces, 'Teil', 'Teile'),
  'wrote-sheet': ({ steps, file }) => `${count(steps, 'Schritt', 'Schritte')} in ${file}`,
  'in-files': ({ what, files }, say) => `${what.map(say.saying).join(', ')} in ${files.join(', ')}`,
  'fails-check': ({ faults }) =>
    `Bevor Sie zuschneiden: paperhinge check findet in diesem Schnitt ${count(faults, 'Stelle', 'Stellen')}, die sich nicht nähen lassen.`,
};
