import type { TraceSentences, TraceTellings } from '../../trace-sayings.js';
import type { Sentences, Tellings } from '../catalogue.js';

const kinds = {
  heic: 'ein Bild in HEIC oder AVIF',
  tiff: 'ein Bild in TIFF oder RAW',
  webp: 'ein Bild in WebP',
  pdf: 'ein PDF, kein Bild',
  other: 'kein Bild',
} as const;

const kindNames = {
  picture: 'Bilder',
  sheet: 'Blätter mit gemessenen Punkten',
  svg: 'SVG-Zeichnungen',
  dxf: 'DXF-Dateien',
  pdf: 'PDF-Dateien',
} as const;

export const traceTellings: Tellings<TraceTellings> = {
  'not-a-picture': ({ looksLike }) => ({
    message: `Das ist ${kinds[looksLike]}.`,
    remedy:
      looksLike === 'heic'
        ? 'Speichern Sie es als JPEG; am Telefon wählen Sie „maximale Kompatibilität“.'
        : looksLike === 'pdf' || looksLike === 'other'
          ? 'Geben Sie ein Foto oder einen Scan als JPEG oder PNG an.'
          : 'Speichern Sie es als JPEG oder PNG.',
  }),
  'picture-damaged': () => ({
    message: 'Das Bild ist beschädigt oder von einer Art, die sich nicht lesen lässt.',
    remedy: 'Speichern Sie es noch einmal als gewöhnliches JPEG oder PNG.',
  }),
  'picture-too-large': ({ mostMillions }) => ({
    message: `Das Bild hat mehr als ${mostMillions} Millionen Punkte.`,
    remedy: 'Halbieren Sie es: 12 Millionen Punkte genügen reichlich.',
  }),
  'traced-line-unknown': () => ({
    message: 'Ein Teil ist an seiner Nahtlinie oder an seiner Schnittlinie geschnitten.',
    remedy: 'Schreiben Sie --line stitching oder --line cutting.',
  }),
  'length-without-places': () => ({
    message: 'Eine bekannte Länge liegt zwischen zwei Stellen.',
    remedy: 'Geben Sie beides an, etwa --known "300 mm" --between "412,880 2950,905".',
  }),
  'several-scales': () => ({
    message: 'Nur eines kann den Maßstab sagen.',
    remedy: 'Geben Sie eines von --measured, --dpi und --known an.',
  }),
  'several-scans': () => ({
    message: 'Ein Scan wird für sich nachgezeichnet.',
    remedy: 'Geben Sie einen Scan nach dem anderen an.',
  }),
  'square-out-of-range': () => ({
    message: 'Das Quadrat auf den Messblättern misst 50 mm, oder ein wenig mehr oder weniger.',
    remedy: 'Schreiben Sie, was seine Seiten maßen, etwa --measured 49.8 oder --measured 49.8,50.1.',
  }),
  'dpi-out-of-range': ({ least, most }) => ({
    message: `Ein Scan hat ${least} bis ${most} Punkte je Zoll.`,
    remedy: 'Schreiben Sie, worauf der Scanner gestellt war, etwa --dpi 300.',
  }),
  'known-length-out-of-range': () => ({
    message: 'So lang ist der Weg zwischen diesen zwei Stellen des Bildes nicht.',
    remedy:
      'Schreiben Sie die Länge mit ihrer Einheit, und zwei Stellen in Punkten, die auseinander liegen: --known "300 mm" --between "412,880 2950,905".',
  }),
  'gap-out-of-range': ({ mostMm }, say) => ({
    message: 'Linienenden, die so weit auseinanderliegen, treffen sich nicht.',
    remedy: `Geben Sie eine Lücke von 0,05 mm bis ${say.number(mostMm)} mm an.`,
  }),
  'pdf-locked': () => ({
    message: 'Diese PDF-Datei ist mit einem Kennwort verschlossen.',
    remedy:
      'Öffnen Sie sie mit dem Kennwort, drucken Sie sie in eine neue PDF-Datei, und geben Sie diese an.',
  }),
  'pdf-damaged': () => ({
    message: 'Diese PDF-Datei ist nicht lesbar; sie scheint beschädigt.',
    remedy:
      'Besorgen Sie die Datei neu; lässt sie sich sonst öffnen, drucken Sie sie in eine neue PDF-Datei.',
  }),
  'pdf-too-long': ({ most }) => ({
    message: `Diese PDF-Datei hat mehr als ${most} Seiten.`,
    remedy: 'Geben Sie nur die Seiten des Schnitts an.',
  }),
  'pen-not-understood': ({ colours }, say) => ({
    message:
      '--pen sagt, wie die Linien zwischen den Ecken (--at) gezeichnet sind: eine Farbe, gestrichelt (dashed) oder durchgezogen (solid), oder beides.',
    remedy: `Schreiben Sie ${say.list(colours)}, dashed oder solid: --at "412,880 2950,905 2900,1800" --pen "red dashed".`,
  }),
  'sizes-of-picture-not-understood': ({ colours }, say) => ({
    message:
      'Bei einem Bild sagt --sizes, wie die Linien jeder Größe gezeichnet sind, zweier oder mehr, jede anders; --at ihre Ecken, einmal für alle Größen.',
    remedy: `Schreiben Sie jede mit ihrem Stift, und die Ecken der ersten: --sizes "S=red, M=blue dashed" --at "412,880 2950,905 2900,1800". Stifte: ${say.list(colours)}, dashed, solid.`,
  }),
  'page-overlap-out-of-range': ({ mostMm }, say) => ({
    message: 'So weit überlappen sich Seiten nicht.',
    remedy: `Geben Sie eine Überlappung von 0 bis ${say.number(mostMm)} mm an, etwa --overlap "10 mm".`,
  }),
  'overlap-without-columns': () => ({
    message: 'Wie weit sich Seiten überlappen, sagt nichts ohne die Zahl der Seiten in einer Reihe.',
    remedy: 'Geben Sie beides an, etwa --columns 4 --overlap "10 mm".',
  }),
  'layer-beside-sizes': () => ({
    message: 'Eine Größe ist verlangt, und mehrere.',
    remedy: 'Geben Sie --layer für eine davon, oder --sizes für alle.',
  }),
  'size-not-told': ({ name, names }, say) => ({
    message: `${say.written(name)} ist keine der genannten Größen.`,
    remedy: `Wählen Sie aus ${say.list(names.map(say.written))}, oder nennen Sie auch diese: --sizes "${name}=red".`,
  }),
  'option-not-for-this': ({ option, kinds }, say) => ({
    message: `--${option} sagt nichts von dem, was diese Datei ist.`,
    remedy: `Lassen Sie --${option} weg: es ist für ${say.list(kinds.map(kind => kindNames[kind]))}.`,
  }),
  'columns-out-of-range': () => ({
    message: 'So viele Seiten stehen nicht in einer Reihe.',
    remedy: 'Geben Sie eine ganze Zahl ab 1 an, etwa --columns 4.',
  }),
  'unit-unknown': () => ({
    message: 'In dieser Einheit wird keine Zeichnung gelesen.',
    remedy: 'Geben Sie --unit mm, --unit cm oder --unit in an.',
  }),
  'options-of-pictures': () => ({
    message: 'Eine Zeichnung oder ein Blatt mit gemessenen Punkten hat den Maßstab in den eigenen Zahlen.',
    remedy: 'Lassen Sie die Optionen weg, die für Fotos und Scans da sind.',
  }),
  'places-not-understood': () => ({
    message: 'Eine Stelle im Bild sind zwei Zahlen mit einem Komma dazwischen.',
    remedy: 'Trennen Sie Stellen durch Leerzeichen, etwa "412,880 2950,905".',
  }),
};

const count = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;

export const traceSentences: Sentences<TraceSentences> = {
  'reading-pictures': () => 'Die Bilder werden gelesen',
  'looking-for-sheets': () => 'Die Messblätter werden gesucht',
  'measuring-floor': () => 'Der Boden wird vermessen',
  'flattening-picture': () => 'Das Bild wird entzerrt',
  'reading-pages': () => 'Die Seiten werden gelesen',
  'laying-pages': () => 'Die Seiten werden aneinandergelegt',
  'tracing-pieces': () => 'Die Teile werden nachgezeichnet',
  'pieces-traced': ({ pieces, sheets, residualMm }, say) =>
    residualMm === undefined
      ? count(pieces, 'Teil', 'Teile')
      : `${count(pieces, 'Teil', 'Teile')}, vermessen an ${count(sheets, 'Messblatt', 'Messblättern')}, die auf ${say.number(residualMm, 2)} mm übereinstimmen,`,
  'frame-printed': ({ sheets, paper }) =>
    `${count(sheets, 'Messblatt', 'Messblätter')} auf ${paper} (in Originalgröße drucken, und auf einem das Quadrat messen)`,
};
