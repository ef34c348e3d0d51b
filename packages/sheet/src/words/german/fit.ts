import type { Passing } from '@paperhinge/alter/fit';
import type { FitSentences, FitTellings } from '@paperhinge/alter/sayings';
import type { Say, Sentences, Tellings } from '../catalogue.js';

const decides = 'Es gelten die örtlichen Vorschriften und der Rat von Fachleuten.';

export const cautions: Sentences<FitSentences> = {
  'printed-square': () =>
    'Messen Sie vor dem Zuschneiden das gedruckte Prüfquadrat nach; eine „auf Seitengröße“ gedruckte Seite macht jedes Teil zu klein.',
  blades: () =>
    'Rollschneider, Scheren und Nadeln schneiden nicht nur Stoff: schließen, sichern und zählen Sie sie und halten Sie sie von Kindern fern.',
  'head-opening': () =>
    'Der Kopf muss ohne Gewalt durch den Halsausschnitt passen. Probieren Sie es vor der letzten Naht an oder messen Sie die fertige Kante gedehnt.',
  'children-small-parts': () =>
    `Knöpfe, Druckknöpfe und Perlen, die sich lösen, können ein kleines Kind ersticken: nähen Sie sie fest an oder lassen Sie sie weg. ${decides}`,
  cords: () =>
    `Kordeln und Zugbänder an Kapuze, Hals, Taille oder Saum von Kinderkleidung bleiben hängen und strangulieren; vielerorts sind sie verboten oder beschränkt. ${decides}`,
  'sleepwear-flame': () =>
    `Nachtwäsche für Kinder muss vielerorts schwer entflammbar sein oder eng anliegen; weite Baumwolle brennt schnell. ${decides}`,
  'back-closure': () =>
    'Wer sich allein anzieht, erreicht einen Verschluss im Rücken vielleicht nicht: fragen Sie nach und verlegen Sie ihn nötigenfalls nach vorn oder an die Seite.',
  'after-surgery': () =>
    `Halten Sie nach einer Operation Nähte, Bündchen und Verschlüsse von Narben, Ports und Schwellungen fern; fragen Sie die Trägerin oder den Träger und alle, die sie pflegen. ${decides}`,
};

const parts: Readonly<Record<Passing, string>> = {
  head: 'der Kopf',
  hips: 'die Hüfte',
  hand: 'die Hand',
  heel: 'die Ferse',
};
const ways: Readonly<Record<Passing, string>> = {
  head: 'Über den Kopf',
  hips: 'Über die Hüfte',
  hand: 'Durch den Ärmel',
  heel: 'Durch das Hosenbein',
};

const opens = (
  {
    tightest,
    openingMm,
    slitMm,
  }: { tightest: Parameters<Say['thing']>[0]; openingMm: number; slitMm?: number },
  say: Say,
): string =>
  `${say.thing(tightest)} öffnet sich auf ${say.length(openingMm)}${slitMm === undefined ? '' : ` mit einem Schlitz von ${say.length(slitMm)}`}`;

const wider = (missingMm: number, say: Say): string =>
  `Machen Sie sie um ${say.atLeast(missingMm)} weiter, nehmen Sie dehnbareren Stoff oder öffnen Sie sie mit einem Schlitz von mindestens ${say.atLeast(missingMm / 2)}.`;

export const fit: Tellings<FitTellings> = {
  'band-beyond-stretch': ({ band, neededPercent, clothPercent, leastMm }, say) => ({
    message: `${say.thing(band)} muss sich beim Annähen um ${say.percent(neededPercent)} dehnen; ${
      clothPercent === 0
        ? 'für den Stoff ist keine Dehnung angegeben'
        : `der Stoff gibt ${say.percent(clothPercent)} her`
    }.`,
    remedy: `Schneiden Sie mindestens ${say.atLeast(leastMm)} Länge zu oder nehmen Sie dehnbareren Stoff.`,
  }),
  'band-near-stretch': ({ band, neededPercent, clothPercent, usablePercent, leastMm }, say) => ({
    message: `${say.thing(band)} muss sich beim Annähen um ${say.percent(neededPercent)} dehnen; der Stoff gibt ${say.percent(clothPercent)} her, von denen ${say.percent(usablePercent)} beim Tragen genügen.`,
    remedy: `Schneiden Sie mindestens ${say.atLeast(leastMm)} Länge zu oder nehmen Sie dehnbareren Stoff.`,
  }),
  'band-recovers-little': ({ band, recoveryPercent, wantedPercent }, say) => ({
    message: `${say.thing(band)} ist aus einem Stoff geschnitten, der nur zu ${say.percent(recoveryPercent)} zurückspringt, und wird beim Tragen schlaff.`,
    remedy: `Schneiden Sie aus einem Stoff zu, der zu mindestens ${say.percent(wantedPercent)} zurückspringt.`,
  }),
  'level-not-all-round': ({ level, having, lacking }, say) => ({
    message: `Die Höhenlinie ${say.written(level)} ist auf ${say.things(having)} gezeichnet, aber nicht auf ${say.things(lacking)}: Ihr Umfang ist nicht der des ganzen Kleidungsstücks.`,
    remedy: `Zeichnen Sie die Höhenlinie ${say.written(level)} auch auf ${say.things(lacking)}.`,
  }),
  'lap-not-known': ({ level, edge }, say) => ({
    message: `${say.name(level)}: gemessen bis an die Kante ${say.thing(edge)}. Um so viel, wie beide Seiten übereinanderliegen, ist es weniger.`,
    remedy:
      'Zeichnen Sie die Mittellinie ein, data-line="style" mit dem Namen „vordere Mitte“: Was darüber hinausgeht, zählt dann einmal. Ein Vorderteil, das ohne Übertritt aneinanderstößt, braucht keine.',
  }),
  'measures-without-level': ({ measures, levels }, say) => ({
    message: `Nicht mit dem Kleidungsstück verglichen: ${say.list(measures.map(say.written))}. Der Schnitt hat ${
      levels.length === 0 ? 'keine Höhenlinien' : `nur Höhenlinien für ${say.list(levels.map(say.written))}`
    }.`,
    remedy: 'Zeichnen Sie an dieser Stelle eine Höhenlinie quer über jedes Teil, um es prüfen zu lassen.',
  }),
  'girth-too-small': ({ level, bodyMm, garmentMm, stretchPercent, missingMm, woven }, say) => ({
    message:
      `Auf der Höhe ${say.written(level)} misst das Kleidungsstück ${say.length(garmentMm)} rundum, der Körper ${say.length(bodyMm)}: ` +
      (woven
        ? `Webstoff dehnt sich nicht über die fehlenden ${say.length(missingMm)}.`
        : `${say.length(missingMm)} zu eng, selbst bei halber Dehnung des Stoffs (${say.percent(stretchPercent)}).`),
    remedy: `Geben Sie auf dieser Höhe mindestens ${say.atLeast(missingMm)} zu (aufspreizen oder Seitennähte auslassen)${woven ? '' : ', oder nehmen Sie dehnbareren Stoff'}.`,
  }),
  'ease-below-usual': ({ level, easeMm, usualMm }, say) => ({
    message: `Auf der Höhe ${say.written(level)} hat das Kleidungsstück aus Webstoff ${say.length(easeMm)} Bequemlichkeitszugabe; üblich sind mindestens ${say.length(usualMm)}.`,
    remedy: `Geben Sie dort ${say.atLeast(usualMm - easeMm)} zu oder nähen Sie erst ein Probemodell.`,
  }),
  'head-passes': ({ headGirthMm, assumed, spareMm, ...ring }, say) => ({
    message: `Über den Kopf: ${opens(ring, say)}; ${aHead(headGirthMm, assumed, say)} passt hindurch, ${say.length(spareMm)} bleiben übrig.`,
    remedy: assumed
      ? 'Geben Sie den Kopfumfang (head girth) an, um damit zu prüfen.'
      : 'Nichts zu tun; probieren Sie es trotzdem vor der letzten Naht an.',
  }),
  'head-does-not-pass': ({ headGirthMm, assumed, missingMm, ...ring }, say) => ({
    message: `Über den Kopf: ${opens(ring, say)}; ${aHead(headGirthMm, assumed, say)} passt nicht hindurch, es fehlen ${say.length(missingMm)}.`,
    remedy: wider(missingMm, say),
  }),
  'neck-opens-at-strap': ({ strap }, say) => ({
    message: `Über den Kopf: ${say.thing(strap)} ist nur an einem Ende angenäht; der Ausschnitt ist offen, bis gebunden oder geschlossen wird, und jeder Kopf geht hindurch.`,
    remedy:
      'Wird auch das andere Ende angenäht, führen Sie diese Naht auf: Dann zählt die Länge, und der Kopf wird geprüft.',
  }),
  'neck-not-found': ({ pieces }, say) => ({
    message: `Ob der Kopf hindurchpasst, wurde nicht geprüft: Von keiner Kante von ${say.things(pieces)} ist bekannt, dass sie der Halsausschnitt ist.`,
    remedy: 'Kennzeichnen Sie die Halskanten in der Zeichnung mit data-role="neck".',
  }),
  'part-passes': ({ part, bodyMm, spareMm, ...ring }, say) => ({
    message: `${ways[part]}: ${opens(ring, say)}; ${parts[part]} mit ${say.length(bodyMm)} passt hindurch, ${say.length(spareMm)} bleiben übrig.`,
    remedy: 'Nichts zu tun.',
  }),
  'part-does-not-pass': ({ part, bodyMm, missingMm, ...ring }, say) => ({
    message: `${ways[part]}: ${opens(ring, say)}; ${parts[part]} mit ${say.length(bodyMm)} passt nicht hindurch, es fehlen ${say.length(missingMm)}.`,
    remedy: wider(missingMm, say),
  }),
  'measurement-not-usable': ({ measurement }, say) => ({
    message: `Das Körpermaß ${say.written(measurement)} ist keine Länge, die ein Körper hat.`,
    remedy: 'Messen Sie noch einmal nach, oder lassen Sie es weg.',
  }),
  'passage-not-checked': ({ parts: unchecked, measures }, say) => ({
    message: `Nicht geprüft: ob ${say.list(unchecked.map(p => parts[p]))} durch ihre Öffnung passt.`,
    remedy: `Geben Sie dafür ${say.list(measures.map(say.written))} an.`,
  }),
};

const aHead = (mm: number, assumed: boolean, say: Say): string =>
  assumed
    ? `der Kopf eines Erwachsenen von ${say.length(mm)} (99. Perzentil)`
    : `ein Kopf von ${say.length(mm)}`;
