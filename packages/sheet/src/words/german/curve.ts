import type { CurveTellings } from '@paperhinge/geometry/sayings';
import type { Tellings } from '../catalogue.js';

const nouns = {
  parameter: 'Der Parameter',
  length: 'Die Länge',
  distance: 'Der Abstand',
  allowance: 'Die Zugabe',
  share: 'Der Anteil',
} as const;

export const curve: Tellings<CurveTellings> = {
  'coordinate-out-of-range': () => ({
    message: 'Ein Punkt ist keine Zahl oder liegt mehr als 100 m entfernt.',
    remedy: 'Prüfen Sie die Einheit, in der die Zeichnung gespeichert wurde.',
  }),
  'not-a-number': ({ what }) => ({
    message: `${nouns[what]} ist keine Zahl.`,
    remedy: 'Geben Sie eine Zahl an.',
  }),
  'not-a-segment': () => ({
    message: 'Ein Stück einer Linie hat zwei Punkte, eine Kurve vier.',
    remedy: 'Geben Sie Anfang und Ende an, bei einer Kurve dazwischen beide Griffe.',
  }),
  'path-empty': () => ({
    message: 'Eine Linie hat keine Teile.',
    remedy: 'Zeichnen Sie die Linie, oder lassen Sie sie weg.',
  }),
  'tolerance-not-positive': () => ({
    message: 'So genau lässt sich keine Kurve zeichnen.',
    remedy: 'Geben Sie eine Toleranz über 0 mm an.',
  }),
  'length-too-short': ({ lengthMm, straightMm }, say) => ({
    message: `Eine Kurve von ${say.length(lengthMm)} reicht nicht über ${say.length(straightMm)}.`,
    remedy: 'Geben Sie mindestens den geraden Abstand der Enden an.',
  }),
  'length-too-long': ({ lengthMm, straightMm }, say) => ({
    message: `Eine Kurve von ${say.length(lengthMm)} zwischen Enden im Abstand von ${say.length(straightMm)} würde sich selbst kreuzen.`,
    remedy: 'Geben Sie eine kürzere Länge an, oder rücken Sie die Enden auseinander.',
  }),
  'too-few-points': () => ({
    message: 'Durch weniger als zwei Punkte lässt sich keine Kurve legen.',
    remedy: 'Geben Sie mindestens zwei verschiedene Punkte an.',
  }),
  'no-direction': () => ({
    message: 'Für eine Kurve wurde eine Endrichtung ohne Länge verlangt.',
    remedy: 'Geben Sie eine Richtung an, die irgendwohin zeigt.',
  }),
  'ends-meet': () => ({
    message: 'Die beiden Linien treffen sich schon: Für eine Kurve dazwischen ist kein Platz.',
    remedy: 'Lassen Sie sie, wie sie sind, oder rücken Sie sie auseinander.',
  }),
  'no-curvature-join': () => ({
    message: 'Keine einzelne Kurve führt mit gleicher Krümmung von der einen Linie in die andere.',
    remedy: 'Verbinden Sie sie nur knickfrei, oder lassen Sie mehr Platz dazwischen.',
  }),
  'unknown-continuity': () => ({
    message: 'Zwei Linien werden mit gleicher Richtung oder mit gleicher Krümmung verbunden.',
    remedy: 'Schreiben Sie „tangent“ oder „curvature“.',
  }),
  'region-not-closed': () => ({
    message: 'Zwei Formen liegen so dicht beieinander, dass ihr Rand nicht zu erkennen ist.',
    remedy: 'Rücken Sie sie auseinander oder genau aufeinander.',
  }),
};
