import type { HingeSentences, HingeTellings } from '@paperhinge/alter/sayings';
import type { Thing } from '@paperhinge/geometry';
import type { Sentences, Tellings } from '../catalogue.js';
import { edgeText, stepText } from '../step-text.js';
import { instead } from './instead.js';

/** Einschnitte, und was sie hinterlassen. */
export const hinge: Tellings<HingeTellings> = {
  'unknown-dart': ({ piece, name, names }, say) => ({
    message: `${say.thing({ piece })} hat keinen Abnäher ${say.written(name)}.`,
    remedy: instead(name, names, 'Abnäher', say),
  }),
  'dart-within-piece': ({ piece, name }, say) => ({
    message: `Der Abnäher ${say.written(name)} liegt innen und ist an beiden Enden spitz, er öffnet sich an keiner Kante: ${say.thing({ piece })}.`,
    remedy:
      'Teilen Sie das Teil dort, wo er am weitesten ist (divide): Das macht zwei Abnäher daraus. Oder lassen Sie ihn mehr oder weniger wegnehmen: resize dart.',
  }),
  'slash-leaves-piece': ({ slash, edge }, say) => ({
    message:
      edge === undefined
        ? `Der Einschnitt ${say.saying(slash)} läge außerhalb des Teils.`
        : `Der Einschnitt ${say.saying(slash)} liefe aus dem Teil hinaus: ${say.thing(edge)}.`,
    remedy: 'Geben Sie seinen Enden andere Stellen, so dass er im Teil bleibt.',
  }),
  'slash-crosses-dart': ({ slash, dart }, say) => ({
    message: `Der Einschnitt ${say.saying(slash)} liefe durch ${say.thing(dart)}.`,
    remedy: 'Legen Sie ihn am Abnäher vorbei, oder schließen oder verlegen Sie den Abnäher zuerst.',
  }),
  'slash-crosses-pleat': ({ slash, pleat }, say) => ({
    message: `Der Einschnitt ${say.saying(slash)} liefe durch ${say.thing(pleat)}.`,
    remedy: 'Legen Sie ihn an der Falte vorbei.',
  }),
  'slashes-cross': ({ first, second }, say) => ({
    message: `Zwei Einschnitte kreuzen sich: ${say.saying(first)} und ${say.saying(second)}.`,
    remedy: 'Legen Sie sie so, dass sie sich nur an ihren Enden treffen.',
  }),
  'slash-twice': ({ slash }, say) => ({
    message: `Zwei Einschnitte laufen an derselben Stelle: ${say.saying(slash)}.`,
    remedy: 'Machen Sie einen davon, und öffnen Sie ihn um das, was beide zusammen öffnen sollten.',
  }),
  'slashes-too-near': ({ first, second }, say) => ({
    message: `Zwei Einschnitte berühren sich fast, es bliebe kaum ein Faden Papier dazwischen: ${say.saying(first)} und ${say.saying(second)}.`,
    remedy:
      'Lassen Sie sie sich in einem Punkt treffen, oder legen Sie sie mindestens 1 mm (1/16 in) auseinander.',
  }),
  'slash-too-short': () => ({
    message: 'Ein Einschnitt begänne und endete an derselben Stelle.',
    remedy: 'Legen Sie seine beiden Enden auseinander.',
  }),
  'slash-not-attached': ({ slash }, say) => ({
    message: `Der Einschnitt ${say.saying(slash)} berührt keine Kante.`,
    remedy: 'Beginnen Sie ihn an einer Kante, oder verbinden Sie ihn mit einem, der das tut.',
  }),
  'dart-torn': ({ dart }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel kämen an der Spitze auseinander.`,
    remedy: 'Drehen Sie um die Spitze des Abnähers.',
  }),
  'dart-overclosed': ({ dart }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel würden sich kreuzen.`,
    remedy: 'Drehen Sie um weniger als den Winkel des Abnähers.',
  }),
  'pivot-out-of-reach': ({ dart }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel lassen sich im Teil nicht bis zu diesem Punkt ziehen.`,
    remedy: 'Drehen Sie um einen Punkt im Teil, auf den der Abnäher zeigt.',
  }),
  'overlap-too-wide': ({ stripMm }, say) => ({
    message: `Das Übereinanderschieben würde einen ${say.length(stripMm)} breiten Streifen verschlucken.`,
    remedy: 'Schieben Sie weniger übereinander, oder schneiden Sie seltener ein.',
  }),
  'outline-tangled': ({ piece }, say) => ({
    message: `${say.thing({ piece })}: Der Umriss würde sich selbst kreuzen.`,
    remedy: 'Drehen oder schieben Sie um weniger, oder legen Sie den Einschnitt anderswohin.',
  }),
  'outline-open': ({ gapMm }, say) => ({
    message: `Der Umriss klafft um ${say.slight(gapMm)}.`,
    remedy: 'Schließen Sie den gezeichneten Umriss des Teils.',
  }),
  'edge-bridged': ({ edge, openedMm, count }, say) => ({
    message: `${say.thing(edge)} hat sich um ${say.length(openedMm)}${places(count)} geöffnet und ist gerade überbrückt.`,
    remedy: trueIt(edge),
  }),
  'edge-overlapped': ({ edge, openedMm, stepMm, count }, say) => ({
    message: `${say.thing(edge)} liegt um ${say.length(-openedMm)}${places(count)} übereinander und ist geschnitten, ${
      stepMm > 0
        ? `auf halbem Weg, mit einer Stufe von ${say.slight(stepMm)}`
        : 'wo sich beide Seiten kreuzen'
    }.`,
    remedy: trueIt(edge),
  }),
  'hinge-kink': ({ edge, kinkDeg, count }, say) => ({
    message: `${say.thing(edge)} knickt um ${say.angle(kinkDeg)} ${count === undefined ? 'am Gelenk' : `an ${count} Gelenken`}.`,
    remedy: trueIt(edge),
  }),
  'dart-step': ({ dart, stepMm }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel sind nicht gleich lang; geschlossen bleibt eine Stufe von ${say.slight(stepMm)}.`,
    remedy: 'Gleichen Sie die Kante darüber aus.',
  }),
  'fold-bent': ({ edge, offMm }, say) => ({
    message: `${say.thing(edge)} weicht nun um ${say.slight(offMm)} von einer Geraden ab und kann nicht mehr in den Stoffbruch gelegt werden.`,
    remedy: 'Zeichnen Sie sie gerade, oder machen Sie eine Naht daraus.',
  }),
  'lines-parted': ({ lines }, say) => ({
    message: `Einschnitte kreuzen ${say.things(lines)}: Die Stücke gingen mit dem Stoff mit und sind gerade verbunden.`,
    remedy: 'Zeichnen Sie neu, was anders gewünscht ist.',
  }),
  'grain-line-shortened': ({ line, keptMm }, say) => ({
    message: `${say.thing(line)} wurde durchgeschnitten; ${say.length(keptMm)} davon, auf dem Stoff, der liegen blieb, sind noch da.`,
    remedy: 'Zeichnen Sie sie länger, wenn sie sich schlecht anlegen lässt.',
  }),
  'grain-line-stays': ({ line }, say) => ({
    message: `${say.thing(line)} lag auf einem Stück, das sich bewegt hat. Sie bleibt, wo sie war, als Fadenlauf des Stücks mit der Mitte.`,
    remedy: 'Verschieben Sie sie parallel auf dieses Stück, wenn sie im Weg ist.',
  }),
};

/** Wie ein Einschnitt im Satz heißt. */
export const slashes: Sentences<HingeSentences> = {
  slash: ({ from, to }, say) => `von ${say.saying(from)} nach ${say.saying(to)}`,
  'slash-at-edge': ({ edge, alongMm }, say) => `${say.thing(edge)} (${say.length(alongMm)} von ihrem Anfang)`,
  'slash-at-dart': ({ dart }, say) => `der Spitze (${say.thing(dart)})`,
  'slash-at-point': () => 'einem Punkt im Teil',
};

const places = (count: number | undefined): string => (count === undefined ? '' : ` an ${count} Stellen`);

const trueIt = (edge: Thing): string =>
  `Gleichen Sie sie aus: ${stepText('true', { edges: [edgeText(edge)] })}.`;
