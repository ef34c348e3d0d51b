import type { DrawingTellings } from '@paperhinge/geometry/sayings';
import type { Tellings } from '../catalogue.js';
import { typedSizes } from '../typed-sizes.js';

const count = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${n} ${many}`);

const leftOut = (others: number): string =>
  others > 0 ? `; ${count(others, 'andere Seite blieb', 'andere Seiten blieben')} weg` : '';

/** Was zu Zeichnungen anderer Herkunft gesagt wird. */
export const foreign: Tellings<DrawingTellings> = {
  'no-outline-in-drawing': ({ lines }) => ({
    message:
      lines === 0
        ? 'In dieser Zeichnung sind keine Linien.'
        : `Keine der ${count(lines, 'Linie', 'Linien')} dieser Zeichnung führt um ein Teil herum.`,
    remedy:
      lines === 0
        ? 'Speichern Sie sie noch einmal mit den Umrissen der Teile als Linien, nicht nur mit der Schrift.'
        : 'Liegen Linienenden auseinander, sagen Sie, wie weit sie es dürfen: --gap "1 mm", bis 2 mm.',
  }),
  'line-not-shut': ({ lengthMm, gapMm }, say) => ({
    message: `Eine Linie von ${say.length(lengthMm)} schließt sich beinahe: Ihre Enden liegen ${say.length(gapMm)} auseinander.`,
    remedy:
      'Ist es ein Teil, verbinden Sie die Enden in der Zeichnung, oder sagen Sie, wie weit Enden auseinanderliegen dürfen: --gap.',
  }),
  'long-lines-left': ({ lines, lengthMm }, say) => ({
    message: `${lines === 1 ? '1 lange Linie führt' : `${lines} lange Linien führen`} um kein Teil herum, zusammen ${say.length(lengthMm)}; wozu sie gehören, wurde weggelassen.`,
    remedy:
      'Fehlt ein Teil, verbinden Sie seine Linien in der Zeichnung, oder sagen Sie, wie weit Enden auseinanderliegen dürfen: --gap.',
  }),
  'lines-told-apart': ({ pieces, leastMm, mostMm }, say) => ({
    message: `${count(pieces, 'Teil zeigt', 'Teile zeigen')} zwei Linien nebeneinander: Die innere wurde als Nahtlinie genommen, mit ${leastMm === mostMm ? say.allowance(leastMm) : `${say.allowance(leastMm)} bis ${say.allowance(mostMm)}`} Zugabe.`,
    remedy: 'Vergleichen Sie die Zugaben mit dem, was der Schnitt angibt.',
  }),
  'one-line-drawn': ({ pieces }) => ({
    message: `${count(pieces, 'Teil zeigt', 'Teile zeigen')} nur einen Umriss: Ob daran geschnitten oder genäht wird, ist nicht zu sehen, und Zugaben sind nicht bekannt.`,
    remedy: 'Ist es die Schnittlinie, sagen Sie es: --line cutting. Zugaben setzt set allowance.',
  }),
  'outlines-nested': ({ layers }, say) => ({
    message: 'Drei oder mehr Umrisse liegen ineinander: Es scheinen Größen zu sein.',
    remedy:
      layers.length > 1
        ? `Wählen Sie eine nach Ebene oder Farbe: ${say.list(layers.map(layer => `--layer ${say.written(layer)}`))}; alle: --sizes "${typedSizes(layers)}".`
        : 'Zeichnen Sie jede Größe in einer Farbe, Strichart oder Ebene für sich; dann lässt sich eine wählen, oder alle.',
  }),
  'sizes-too-few': () => ({
    message: 'Eine Größe allein ist kein Satz.',
    remedy:
      'Nennen Sie jede Größe mit ihrer Ebene oder Farbe: --sizes "S=red, M=green"; eine allein: --layer red.',
  }),
  'sizes-alike': ({ name }, say) => ({
    message: `${say.written(name)} steht für zwei Größen.`,
    remedy:
      'Geben Sie jeder Größe einen anderen Namen und eine andere Ebene, Farbe oder Strichart: --sizes "S=red, M=green".',
  }),
  'layer-not-there': ({ name, names }, say) => ({
    message: `In ${say.written(name)} ist nichts gezeichnet.`,
    remedy: `Wählen Sie aus ${say.list(names.map(say.written))}.`,
  }),
  'signs-taken': ({ darts, notches, grains, folds }, say) => ({
    message: `Aus der Zeichnung übernommen: ${say.list([
      ...(darts > 0 ? [count(darts, 'Abnäher', 'Abnäher')] : []),
      ...(notches > 0 ? [count(notches, 'Passzeichen', 'Passzeichen')] : []),
      ...(grains > 0 ? [count(grains, 'Fadenlauf', 'Fadenläufe')] : []),
      ...(folds > 0 ? [count(folds, 'Stoffbruch', 'Stoffbrüche')] : []),
    ])}.`,
    remedy: 'Sehen Sie alles durch: paperhinge check SCHNITT --picture P.svg.',
  }),
  'grain-guessed': ({ pieces }) => ({
    message: `In ${count(pieces, 'Teil', 'Teilen')} wurde die aufrechte Linie als Fadenlauf genommen, obwohl sie keinen Pfeil hat.`,
    remedy: 'Zeichnen Sie an ihr Ende eine Pfeilspitze, oder nehmen Sie die Linie weg.',
  }),
  'lines-left-out': ({ count: n }) => ({
    message: `${count(n, 'Ding', 'Dinge')} in dieser Zeichnung ${n === 1 ? 'ist' : 'sind'} von einer Art, mit der kein Teil gezeichnet wird, und ${n === 1 ? 'blieb' : 'blieben'} weg.`,
    remedy:
      'Nichts zu tun, wenn keine Linie fehlt; sonst machen Sie in der Zeichnung einfache Linien daraus.',
  }),
  'pages-without-lines': ({ pages }) => ({
    message: `${pages === 1 ? 'Die Seite enthält' : `Die ${pages} Seiten enthalten`} keine Linien: ein Scan oder nur Text.`,
    remedy:
      'Speichern Sie die Seiten als Bilder (PNG, 300 dpi), und nehmen Sie diese: paperhinge trace BILD --dpi 300.',
  }),
  'pages-not-joined': ({ pages }) => ({
    message: `Nichts sagt, wie die ${pages} Seiten beieinanderliegen.`,
    remedy:
      'Sagen Sie, wie viele in einer Reihe stehen und wie weit sie sich überlappen: --columns 4 --overlap "10 mm".',
  }),
  'pages-lie-otherwise': ({ columns, overlapMm, isOverlapAlone, toldMm }, say) => {
    const [told, better] = [toldMm, overlapMm].map(mm => `${say.number(mm, 2)} mm`);
    return {
      message: isOverlapAlone
        ? `Bei ${told} Überlappung laufen Linien nicht genau von Seite zu Seite weiter, wohl aber bei ${better}.`
        : `In diesen Spalten laufen Linien nicht von Seite zu Seite weiter, wohl aber mit ${columns} Seiten in einer Reihe und ${better} Überlappung.`,
      remedy: `Liegen sie so, sagen Sie es: --columns ${columns} --overlap "${better}"; sonst sehen Sie die Seiten noch einmal an.`,
    };
  },
  'pages-do-not-run-on': ({ joins, ends }) => ({
    message: `So liegen die Seiten nicht: von ${ends} Stellen, an denen eine Linie den Rand einer Seite erreicht, läuft sie an ${joins === 0 ? 'keiner' : joins} auf der nächsten weiter.`,
    remedy: 'Sehen Sie die Spalten und die Überlappung noch einmal an, etwa --columns 4 --overlap "10 mm".',
  }),
  'pages-laid': ({ pages, others, joins, residualMm, worstMm }, say) => ({
    message: `${pages} Seiten in Reihen gelegt; ${count(joins, 'Linie läuft', 'Linien laufen')} über Stöße weiter, auf ${say.number(residualMm, 2)} mm genau (schlimmstenfalls ${say.number(worstMm, 2)} mm)${leftOut(others)}.`,
    remedy: 'Ist das zu viel, prüfen Sie Spalten und Überlappung.',
  }),
  'pages-laid-by-themselves': (
    { pages, others, by, columns, overlapMm, joins, residualMm, worstMm },
    say,
  ) => ({
    message: `${pages} Seiten ${by === 'marks' ? 'nach den Buchstaben an ihren Rändern' : 'so gelegt, dass ihre Linien weiterlaufen'}${by === 'marks' ? ' gelegt' : ''}, ${columns} in der Reihe${overlapMm > 0 ? `, ${say.number(overlapMm, 1)} mm übereinander` : ''}; ${count(joins, 'Linie läuft', 'Linien laufen')} über Stöße weiter, auf ${say.number(residualMm, 2)} mm genau (schlimmstenfalls ${say.number(worstMm, 2)} mm)${leftOut(others)}.`,
    remedy: 'Liegen sie anders, sagen Sie es: --columns 4 --overlap "10 mm".',
  }),
  'pages-of-one-sheet': ({ pages, others }) => ({
    message: `${pages} Seiten sind Fenster auf ein Blatt und wurden nach ihren gemeinsamen Linien verbunden${leftOut(others)}.`,
    remedy: 'Nichts zu tun, wenn kein Teil fehlt.',
  }),
  'no-test-square': () => ({
    message: 'Auf den Seiten fand sich kein Prüfquadrat; der Maßstab gilt, wie er ist.',
    remedy: 'Messen Sie ein Teil, dessen Größe Sie kennen: paperhinge measure SCHNITT.',
  }),
  'test-square-true': ({ saidMm }, say) => ({
    message: `Das Prüfquadrat von ${say.length(saidMm)} ist richtig gezeichnet.`,
    remedy: 'Nichts zu tun.',
  }),
  'test-square-off': ({ acrossMm, downMm, saidMm }, say) => ({
    message: `Das Prüfquadrat, das ${say.length(saidMm)} haben soll, ist ${say.number(acrossMm, 2)} mm breit und ${say.number(downMm, 2)} mm hoch gezeichnet: Die Datei wurde skaliert.`,
    remedy:
      'Besorgen Sie die Datei so, wie sie verkauft wird, oder geben Sie im Blatt den Maßstab an: scale.',
  }),
  'not-dxf': ({ binary }) => ({
    message: binary ? 'Dies ist eine binäre DXF-Datei.' : 'Dies ist keine DXF-Datei.',
    remedy: binary
      ? 'Speichern Sie sie als DXF in ASCII, R12 oder neuer.'
      : 'Geben Sie eine DXF-Datei in ASCII an.',
  }),
  'work-stopped': () => ({
    message: 'Die Arbeit wurde abgebrochen; nichts wurde geschrieben.',
    remedy: 'Beginnen Sie wieder, wann Sie wollen.',
  }),
  'unit-not-told': ({ longestMm }, say) => ({
    message: `Die Datei sagt nicht, was ihre Einheiten sind; als Millimeter gelesen reicht sie bis ${say.length(longestMm)}.`,
    remedy: 'Stimmt das nicht, nennen Sie die Einheit: --unit in oder --unit cm.',
  }),
};
