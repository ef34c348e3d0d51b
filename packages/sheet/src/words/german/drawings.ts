import type { Catalogue, Say } from '../catalogue.js';
import type { drawings as english } from '../english/drawings.js';

const sizeWanted = 'Speichern Sie sie neu, mit Breite und Höhe in mm, cm oder in.';

/** Was von Dateien und Zeichnungen als solchen gesagt wird. */
export const drawings: Pick<Catalogue['tellings'], keyof typeof english> = {
  'file-too-large': () => ({
    message: 'Die Zeichnung ist größer als 32 MB.',
    remedy: 'Entfernen Sie Bilder daraus oder speichern Sie nur die Schnittteile.',
  }),
  'file-compressed': () => ({
    message: 'Die Zeichnung ist komprimiert (svgz).',
    remedy: 'Speichern Sie sie als einfaches SVG.',
  }),
  'encoding-unknown': () => ({
    message: 'Die Zeichnung ist in einer Zeichenkodierung geschrieben, die nicht gelesen wird.',
    remedy: 'Speichern Sie sie als UTF-8.',
  }),
  'encoding-broken': () => ({
    message: 'Die Zeichnung enthält Bytes, die ihre Zeichenkodierung nicht erlaubt.',
    remedy: 'Speichern Sie sie neu als UTF-8.',
  }),
  'not-a-drawing': ({ is }) => otherFiles[is],
  'not-xml': () => ({
    message: 'Die Zeichnung ist beschädigt: Ab dieser Stelle kann sie nicht gelesen werden.',
    remedy: 'Öffnen Sie sie in einem Zeichenprogramm und speichern Sie sie als einfaches SVG.',
  }),
  'not-svg': () => ({
    message: 'Die Datei ist keine SVG-Zeichnung.',
    remedy: 'Speichern Sie den Schnitt als einfaches SVG.',
  }),
  'too-many-elements': ({ most }, say) => ({
    message: `Die Zeichnung hat mehr als ${say.number(most)} Elemente.`,
    remedy: 'Speichern Sie nur die Schnittteile oder teilen Sie die Zeichnung auf mehrere Dateien auf.',
  }),
  'entity-not-expanded': () => ({
    message: 'Die Datei benutzt eigene Abkürzungen (Entities); sie blieben stehen, wie sie sind.',
    remedy: 'Wenn etwas fehlt, speichern Sie die Zeichnung als einfaches SVG.',
  }),
  'too-many-instances': () => ({
    message: 'Die Zeichnung zeigt zu viele Kopien ihrer Teile.',
    remedy: 'Machen Sie aus ihren Klonen (use) eigene Zeichnungen.',
  }),
  'too-many-segments': ({ of, most }, say) => ({
    message:
      most === undefined
        ? 'Die Linien der Zeichnung haben Millionen von Punkten.'
        : `Die Linien ${of === 'piece' ? 'des Teils' : of === 'pattern' ? 'des Schnitts' : 'der Zeichnung'} haben mehr als ${say.number(most)} Abschnitte.`,
    remedy: 'Vereinfachen Sie ihre Pfade im Zeichenprogramm.',
  }),
  'viewbox-empty': () => ({
    message: 'Die viewBox der Zeichnung hat keine Größe, es wäre also nichts zu sehen.',
    remedy:
      'Geben Sie der Zeichnung eine viewBox, die sie umschließt; gelesen wurde sie, als hätte sie keine.',
  }),
  'scale-unsure': ({ attribute }, say) => ({
    message: `${say.written(attribute)} der Zeichnung wurde nicht verstanden; gemessen wurde, als fehlte es.`,
    remedy: sizeWanted,
  }),
  'style-rule-left-out': () => ({
    message: 'Eine Formatvorlage verbirgt oder verschiebt Formen auf eine Art, der nicht gefolgt wird.',
    remedy:
      'Prüfen Sie, ob nichts Verborgenes gelesen wurde; sonst speichern Sie als einfaches SVG mit direkten Formaten.',
  }),
  'reference-outside': (facts, say) => ({
    message: `${named(facts, say)}: Was gezeigt werden soll, steht nicht in dieser Datei.`,
    remedy: 'Kopieren Sie es in die Zeichnung.',
  }),
  'reference-missing': (facts, say) => ({
    message: `${named(facts, say)}: Was gezeigt werden soll, gibt es nicht.`,
    remedy: 'Entfernen Sie das Element, oder geben Sie dem Gezeigten diese id.',
  }),
  'reference-loop': (facts, say) => ({
    message: `${named(facts, say)} zeigt sich selbst.`,
    remedy: 'Entfernen Sie den inneren Klon (use).',
  }),
  'reference-too-deep': ({ most }) => ({
    message: `Ein Klon zeigt einen Klon und so fort, mehr als ${most} tief.`,
    remedy: 'Vereinfachen Sie die Zeichnung.',
  }),
  'path-data-broken': ({ reason, drawnSoFar, ...facts }, say) => ({
    message: `${named(facts, say)}: Die Linie bricht ab: ${faults[reason]}.${drawnSoFar ? ' Bis dorthin ist sie gezeichnet.' : ''}`,
    remedy: 'Zeichnen Sie die Linie neu.',
  }),
  'attribute-not-understood': ({ attribute, reason, leftOut, ...facts }, say) => ({
    message: `${named(facts, say)}: ${say.written(attribute)} ist nicht brauchbar: ${faults[reason]}.${leftOut ? ' Es bleibt weg.' : ''}`,
    remedy: 'Schreiben Sie es, wie SVG es vorsieht, oder entfernen Sie es.',
  }),
  'shape-empty': (facts, say) => ({
    message: `${named(facts, say)} zeichnet nichts.`,
    remedy: 'Entfernen Sie es, wenn es nicht gebraucht wird.',
  }),
  'hidden-left-out': ({ count }) => ({
    message: `Verborgenes blieb weg (${count}).`,
    remedy: 'Zeigen Sie es im Zeichenprogramm an, wenn es gebraucht wird.',
  }),
  'text-left-out': ({ count }) => ({
    message: `Texte und Bilder blieben weg (${count}): Sie haben keinen Umriss, der zu messen wäre.`,
    remedy: 'Wandeln Sie Text im Zeichenprogramm in Pfade um, wenn er gebraucht wird.',
  }),
  'more-of-a-kind': ({ more }, say) => ({
    message: `Es gibt ${say.number(more)} weitere Befunde wie die obigen.`,
    remedy: 'Beheben Sie die ersten; die anderen sind wie sie.',
  }),
  'size-out-of-proportion': ({ widthMm, heightMm }) => ({
    message:
      'Breite (width) und Höhe (height) der Zeichnung passen nicht zu ihrer viewBox, eine von beiden ist also falsch; gelesen wurde sie nach der, die sie kleiner macht.',
    remedy: `Stimmt die Höhe, schreiben Sie width="${inMm(widthMm)}"; stimmt die Breite, height="${inMm(heightMm)}".`,
  }),
  'unit-not-known': ({ attribute, isNothing }) => ({
    message: `Wie groß die Zeichnung ist, lässt sich nicht wissen: ${attribute === 'width' ? 'Ihre Breite (width)' : 'Ihre Höhe (height)'} ${isNothing ? 'ist 0 oder weniger' : 'steht in keiner Einheit, die eine Zeichnung kennt'}.`,
    remedy: 'Schreiben Sie Breite und Höhe in mm, cm oder in.',
  }),
  'scale-not-known': ({ because }) => ({
    message:
      because === 'viewbox'
        ? 'Wie groß die Zeichnung ist, lässt sich nicht wissen: Ihre viewBox besteht nicht aus vier Zahlen, von denen die letzten beiden größer als 0 sind.'
        : 'Wie groß die Zeichnung ist, lässt sich nicht wissen: Breite und Höhe sind Prozentwerte.',
    remedy:
      because === 'viewbox'
        ? 'Berichtigen Sie sie, etwa width="600mm" height="800mm" viewBox="0 0 600 800", oder speichern Sie die Zeichnung neu, mit ihrer Größe in mm, cm oder in.'
        : sizeWanted,
  }),
  'scale-assumed': ({ piece, reachMm, hasSize }, say) => ({
    message: `Die Zeichnung ${hasSize ? 'gibt ihre Größe in Pixeln an' : 'sagt nicht, wie groß sie ist'}; sie wurde mit 96 auf einen Zoll gelesen. Ihr größtes Teil, ${say.thing({ piece })}, ist damit ${say.length(reachMm)} lang.`,
    remedy:
      'Stimmt das, speichern Sie die Zeichnung mit ihrer Größe in mm, cm oder in. Wenn nicht, schreiben Sie scale: in das Blatt: „scale: 1/4“ für eine Zeichnung im Maßstab 1 zu 4.',
  }),
  'scale-out-of-range': () => ({
    message: 'Ein Maßstab muss größer als 0 sein.',
    remedy: 'Schreiben Sie scale: 1/4 für eine Zeichnung im Maßstab 1 zu 4, oder lassen Sie ihn weg.',
  }),
  'piece-very-large': ({ piece, reachMm }, say) => ({
    message: `${say.thing(piece)} ist ${say.length(reachMm)} lang.`,
    remedy: 'Prüfen Sie, in welcher Einheit die Zeichnung gespeichert wurde.',
  }),
  'unknown-size': ({ size, sizes }, say) => ({
    message: `Die Zeichnung hat keine Größe ${say.written(size)}.`,
    remedy:
      sizes.length === 0
        ? 'Sie enthält nur eine Größe: Lassen Sie size: weg.'
        : `Wählen Sie eine ihrer Größen: ${sizes.map(say.name).join(', ')}.`,
  }),
  'size-not-read': ({ size }, say) => ({
    message: `Die Größe ${say.name(size)} der Zeichnung kann nicht gelesen werden.`,
    remedy: `Wählen Sie sie (size: ${say.name(size)}), um zu erfahren, warum.`,
  }),
  'size-not-chosen': ({ size, sizes }, say) => ({
    message: `Die Zeichnung enthält die Größen ${say.list(sizes.map(say.name))}; gelesen wurde ${say.name(size)}.`,
    remedy: `Schreiben Sie size: ${say.name(size)} in das Blatt, oder die gewünschte.`,
  }),
};

const save = 'Speichern Sie den Schnitt aus seinem Zeichenprogramm als einfaches SVG.';
const otherFiles = {
  pdf: {
    message: 'Das ist ein PDF, keine SVG-Zeichnung.',
    remedy: 'Öffnen Sie es in einem Zeichenprogramm und speichern Sie es als einfaches SVG.',
  },
  picture: {
    message: 'Das ist ein Bild aus Punkten, keine SVG-Zeichnung.',
    remedy:
      'Ein Foto eines Schnitts wird zuerst nachgezeichnet; eine Zeichnung wird als einfaches SVG gespeichert.',
  },
  archive: {
    message: 'Das ist eine gepackte Datei, keine SVG-Zeichnung.',
    remedy: 'Entpacken Sie sie und geben Sie die Zeichnung darin an.',
  },
  page: {
    message: 'Das ist eine Webseite, keine SVG-Zeichnung.',
    remedy: 'Speichern Sie die Zeichnung selbst als einfaches SVG.',
  },
  json: { message: 'Das sind Daten, keine SVG-Zeichnung.', remedy: save },
  text: {
    message: 'Das ist ein Text, keine SVG-Zeichnung.',
    remedy:
      'Ist es ein Änderungsblatt, geben Sie es an „paperhinge alter“; sonst geben Sie die Zeichnung an.',
  },
  nothing: { message: 'Die Datei ist leer.', remedy: save },
} as const;

const named = ({ element, id }: { readonly element: string; readonly id?: string }, say: Say): string =>
  id === undefined ? `Ein Element (${element})` : `Element ${say.written(id)} (${element})`;

const faults = {
  'command-expected': 'ein Buchstabe wie M oder L wurde erwartet',
  'begins-without-move': 'sie beginnt nicht mit M',
  'number-expected': 'eine Zahl wurde erwartet',
  'ends-early': 'wo sie endet, wurde eine Zahl erwartet',
  'number-after-comma': 'nach einem Komma wurde eine Zahl erwartet',
  'arc-flag': 'ein Bogen hat Schalter, die 0 oder 1 sind',
  'number-too-large': 'eine Zahl ist zu groß',
  'no-length': 'es ist keine Länge',
  negative: 'es ist kleiner als 0',
  'not-understood': 'es wurde nicht verstanden',
} as const;

/** As it is written in a drawing, whatever the unit of the pattern. */
const inMm = (mm: number): string => `${Math.round(mm * 100) / 100}mm`;
