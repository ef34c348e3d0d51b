import type { Thing } from '@paperhinge/geometry';
import type { CuttingLineTellings } from '@paperhinge/geometry/sayings';
import type { Say, Tellings } from '../catalogue.js';

export const cuttingLine: Tellings<CuttingLineTellings> = {
  'dart-fold-step': ({ dart, stepMm, ...beside }, say) => ({
    message: `${say.thing(dart)}: Zugelegt treffen sich die Schnittkanten an der Öffnung nicht, sie stehen ${say.slight(stepMm)} gegeneinander vor.`,
    remedy: withoutStep(beside, say),
  }),
  'dart-mouth-bridged': ({ dart }, say) => ({
    message: `${say.thing(dart)}: Der Stoff darin lässt sich nicht auf die Kante daneben falten; die Öffnung wird gerade geschnitten.`,
    remedy:
      'Schneiden Sie dort großzügig zu, falten Sie den Abnäher, wie er gebügelt wird, und schneiden Sie entlang der Kante; oder bügeln Sie ihn zur anderen Seite.',
  }),
  'pleat-fold-step': ({ pleat, stepMm, ...beside }, say) => ({
    message: `${say.thing(pleat)}: Gelegt treffen sich die Schnittkanten an der Öffnung nicht, sie stehen ${say.slight(stepMm)} gegeneinander vor.`,
    remedy: withoutStep(beside, say),
  }),
  'pleat-mouth-bridged': ({ pleat, oneWay }, say) => ({
    message: `${say.thing(pleat)}: Der Stoff darin reicht über die Kante hinaus, auf die er gefaltet wird; die Öffnung wird gerade geschnitten.`,
    remedy: `Schneiden Sie dort großzügig zu, falten Sie, wie gebügelt wird, und schneiden Sie entlang der Kante${oneWay ? '; oder legen Sie sie zur anderen Seite' : ''}.`,
  }),
  'cutting-line-not-simple': ({ edge }, say) => ({
    message: `${say.thing(edge)}: Die Schnittkante kreuzt sich dort selbst, und ihre Schlingen ließen sich nicht entfernen.`,
    remedy:
      'Prüfen Sie, dass die Nahtlinie sich nicht selbst kreuzt und die Zugaben zur Größe des Teils passen.',
  }),
  'corner-not-shaped': ({ edges }, say) => ({
    message: `Die Ecke zwischen ${say.list(edges.map(say.shortly))} ist zu spitz oder zu flach, um auseinandergebügelt, umgeschlagen oder bis zum Bruch geführt zu werden; sie wird auf Gehrung geschnitten.`,
    remedy: 'Prüfen Sie den Winkel dort, oder verlangen Sie eine Gehrung.',
  }),
  'allowance-too-wide': ({ edge, lostMm }, say) => ({
    message: `${say.thing(edge)}: Die Zugabe ist breiter, als eine Biegung oder ein Schlitz dort Platz lässt; auf ${say.slight(lostMm)} davon endet sie, wo beide Seiten sich treffen.`,
    remedy: 'Geben Sie dieser Kante eine schmalere Zugabe, oder besetzen Sie sie mit einem Beleg.',
  }),
  'curved-hem': ({ hem, depthMm, excessMm, deepestMm }, say) => {
    const amount = say.slight(Math.abs(excessMm)),
      shallow = `machen Sie ihn höchstens ${say.atMost(deepestMm)} tief`;
    return {
      message: `${say.thing(hem)} ist gebogen: ${say.allowance(depthMm)} tief, ist seine Kante ${amount} ${excessMm > 0 ? 'länger' : 'kürzer'} als die Linie, an der er umgeschlagen wird.`,
      remedy:
        excessMm > 0
          ? `Halten Sie ${amount} ein, nehmen Sie einen Beleg, oder ${shallow}.`
          : `Schneiden Sie die Kante ein oder dehnen Sie sie, nehmen Sie einen Beleg, oder ${shallow}.`,
    };
  },
  'parallel-trimmed': ({ part, lostMm }, say) => ({
    message: `Die Linie neben ${say.written(part)} ist um ${say.slight(lostMm)} gekürzt, wo eine Biegung, ein Schlitz oder ihre Nachbarn keinen Platz lassen.`,
    remedy: 'Nichts zu tun, außer Sie wollen die ganze Länge: Dann nehmen Sie einen kleineren Abstand.',
  }),
  'parallel-not-closed': ({ part }, say) => ({
    message: `Die Linie neben dem Umriss kreuzt sich bei ${say.written(part)} selbst, und ihre Schlingen ließen sich nicht entfernen.`,
    remedy: 'Nehmen Sie einen etwas kleineren oder größeren Abstand, oder zeichnen Sie das Stück neu.',
  }),
  'parallel-vanished': ({ inwards }) => ({
    message: `So weit nach ${inwards ? 'innen' : 'außen'} versetzt, bleibt vom Umriss nichts übrig.`,
    remedy: 'Nehmen Sie einen kleineren Abstand.',
  }),
  'parallel-in-parts': ({ inwards, loops }) => ({
    message: `So weit nach ${inwards ? 'innen' : 'außen'} versetzt, zerfällt der Umriss in ${loops} geschlossene Kurven.`,
    remedy: 'Nehmen Sie einen kleineren Abstand, damit er ganz bleibt.',
  }),
  'offset-both-ways': () => ({
    message: 'Ein Umriss lässt sich nicht teils nach außen und teils nach innen versetzen.',
    remedy: 'Geben Sie Abstände mit einem Vorzeichen an, oder versetzen Sie ihn in zwei Schritten.',
  }),
  'corner-tail-dropped': ({ edges, lengthMm }, say) => ({
    message: `Ein Eckzipfel von ${say.slight(lengthMm)} zwischen ${say.list(edges.map(say.shortly))} liegt außerhalb der Nahtlinie und entfällt.`,
    remedy: 'Die Schnittkante wird aus den Zugaben neu gezeichnet; prüfen Sie die Ecke dort.',
  }),
  'dart-tip-dropped': ({ edge, dart, lengthMm }, say) => ({
    message: `Die Spitze von ${say.slight(lengthMm)} am Ende von ${say.shortly(edge)}, über ${say.shortly(dart)}, liegt außerhalb der Nahtlinie und entfällt.`,
    remedy: 'Die Schnittkante wird aus den Zugaben neu gezeichnet; prüfen Sie die Öffnung dort.',
  }),
  'corner-guessed': ({ edges, lengthMm }, say) => ({
    message: `Die Ecke zwischen ${say.list(edges.map(say.shortly))} ist geraten: Eine Kurve endet dort an den Zugaben und wurde ${say.length(lengthMm)} gerade verlängert.`,
    remedy:
      'Messen Sie beide Kanten am Papierschnitt nach, und zeichnen Sie die Ecke auf der Nahtlinie, wenn sie abweichen.',
  }),
  'corner-doubted': ({ edge, next, lengthMm, kept }, say) => ({
    message: `Die letzten ${say.length(lengthMm)} von ${say.shortly(edge)} vor ${say.shortly(next)} ${
      kept
        ? 'gelten als Teil der Kante; vielleicht formen sie nur die Ecke der Zugabe.'
        : 'gelten als Form der Zugabe an der Ecke und entfallen; vielleicht gehören sie zur Kante.'
    }`,
    remedy:
      'Messen Sie beide Kanten am Papierschnitt nach, und zeichnen Sie die Ecke auf der Nahtlinie, wenn sie abweichen.',
  }),
  'corner-not-recovered': ({ edges }, say) => ({
    message: `Um ihre Zugaben nach innen versetzt, treffen sich ${say.list(edges.map(say.shortly))} nicht; sie werden gerade verbunden.`,
    remedy:
      'Laufen sie in einer Linie weiter, geben Sie beiden eine gleiche enthaltene Zugabe; sonst zeichnen Sie ihre Ecke auf der Nahtlinie.',
  }),
  'included-allowance-too-wide': ({ edge }, say) => ({
    message: `${say.thing(edge)}: Ohne die enthaltene Zugabe bleibt davon nichts übrig.`,
    remedy:
      'Prüfen Sie die enthaltene Zugabe und ihre Einheit, oder ob der Umriss auf der Nahtlinie gezeichnet ist.',
  }),
};

interface Beside {
  readonly edges: readonly Thing[];
  readonly unlike: boolean;
}
const withoutStep = ({ edges, unlike }: Beside, say: Say): string =>
  unlike
    ? `Geben Sie beiden Kanten daneben die gleiche Nahtzugabe (${say.list(edges.map(say.shortly))}), oder schneiden Sie die Stufe nach dem Nähen ab.`
    : 'Legen Sie das Papier wie genäht und ziehen Sie die Schnittkante darüber in einem Zug, oder schneiden Sie die Stufe nach dem Nähen ab.';
