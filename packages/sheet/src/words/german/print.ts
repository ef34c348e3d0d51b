import type { PrintTellings } from '@paperhinge/print';
import type { Tellings } from '../catalogue.js';

export const print: Tellings<PrintTellings> = {
  'nothing-to-print': () => ({
    message: 'Das Schnittmuster hat keine Teile.',
    remedy: 'Ein Teil hinzufügen oder den Schritt weglassen, der das letzte entfernt hat.',
  }),
  'too-many-pages': ({ pages, most }, say) => ({
    message: `Das Schnittmuster würde etwa ${say.number(pages, 0)} Seiten füllen.`,
    remedy: `Die Einheit prüfen, in der die Zeichnung gespeichert wurde, oder auf größerem Papier drucken; höchstens ${most} Seiten werden gemacht.`,
  }),
  'unknown-paper': ({ paper, papers }, say) => ({
    message: `Ein Papier ${say.written(paper)} gibt es nicht.`,
    remedy: `Eines von ${papers.join(', ')} nehmen oder eine Größe wie 600 x 900 mm angeben.`,
  }),
  'paper-size': ({ widthMm, heightMm, leastMm, mostMm }, say) => ({
    message: `Auf ein Papier von ${say.length(widthMm)} × ${say.length(heightMm)} lässt sich nicht drucken.`,
    remedy: `Breite und Höhe angeben, jede von ${say.atLeast(leastMm)} bis ${say.atMost(mostMm)}.`,
  }),
  'margins-too-wide': ({ widthMm, heightMm, leastMm, usualMm }, say) => ({
    message: `Diese Ränder lassen ${say.length(widthMm)} × ${say.length(heightMm)} der Seite zum Drucken.`,
    remedy: `Mindestens ${say.atLeast(leastMm)} in beiden Richtungen lassen; Ränder von ${say.length(usualMm)} passen für die meisten Drucker.`,
  }),
  'overlap-out-of-range': ({ overlapMm, usualMm }, say) => ({
    message: `Seiten können sich nicht um ${say.length(overlapMm)} überlappen.`,
    remedy: `Nichts bis ein Viertel der Seite nehmen; üblich sind ${say.length(usualMm)}.`,
  }),
  'correction-out-of-range': ({ acrossMm, downMm, mostPercent }, say) => ({
    message: `Ein Prüfquadrat von ${say.number(acrossMm)} × ${say.number(downMm)} mm weicht um mehr als ${say.percent(mostPercent)} von 50 mm ab.`,
    remedy:
      'Mit 100 % drucken („Originalgröße“, ohne Anpassen an die Seite), noch einmal messen und angeben, was beide Seiten des Quadrats in mm messen.',
  }),
  'photo-frame-paper': () => ({
    message: 'Messblätter werden auf A4 oder US Letter gedruckt.',
    remedy: 'Schreiben Sie --paper a4 oder --paper letter.',
  }),
  'photo-frame-sheets': ({ fewest, most }) => ({
    message: `Es gibt ${fewest} bis ${most} Messblätter.`,
    remedy: `Schreiben Sie --sheets ${fewest} bis --sheets ${most}.`,
  }),
  'font-not-usable': ({ broken }) => ({
    message: broken ? 'Eine Schriftdatei ist beschädigt.' : 'Eine Schriftdatei hat keine TrueType-Umrisse.',
    remedy: 'Eine .ttf-Datei angeben oder eine .woff-Datei, die aus einer gemacht ist.',
  }),
  'no-grain-printed': () => ({
    message: 'Das Teil hat keinen Fadenlauf, also ist keiner gedruckt.',
    remedy: 'Eine Linie mit data-line="grain" in das Teil zeichnen, längs der Kettfäden.',
  }),
  'wider-than-cloth': ({ cloth, acrossMm, mostMm }, say) => ({
    message: `Das Teil ist ${say.length(acrossMm)} breit; der Stoff ${say.written(cloth)} hat zwischen den Webkanten ${say.length(mostMm)}.`,
    remedy: 'Breiteren Stoff nehmen und seine Breite eintragen, oder das Teil mit einer Naht teilen.',
  }),
  'sliver-on-page': ({ paper, pages, narrowestMm }, say) => ({
    message: `Auf ${paper} reicht das Teil weniger als ${say.length(narrowestMm)} auf ${pages === 1 ? 'eine Seite' : `${pages} Seiten`}, wie man es auch legt.`,
    remedy: 'Diesen Streifen nicht verlieren, oder auf größerem Papier oder anders herum drucken.',
  }),
};
