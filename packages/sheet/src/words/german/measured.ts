import type { MeasuredTellings } from '@paperhinge/geometry/sayings';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';

/** Was zu Teilen aus gemessenen Punkten gesagt wird. */
export const measured: Tellings<MeasuredTellings> = {
  'point-not-named': ({ name, names }, say) => ({
    message: `Unter den gemessenen Punkten gibt es keinen ${say.written(name)}.`,
    remedy: `Messen Sie ihn ein, oder nennen Sie einen von diesen: ${say.list(names.map(say.written))}.`,
  }),
  'points-in-a-round': ({ names }, say) => ({
    message: `${say.list(names.map(say.written))} hängen nur voneinander ab; keiner hat einen Ort.`,
    remedy: 'Geben Sie für einen an, wie weit er nach rechts und nach unten liegt.',
  }),
  'distances-too-few': ({ name }, say) => ({
    message: `Ein Abstand allein sagt nicht, wo ${say.written(name)} liegt.`,
    remedy: 'Messen Sie den Abstand von einem zweiten Punkt.',
  }),
  'distances-do-not-meet': ({ name, from, gapMm }, say) => ({
    message: `Die Abstände des Punktes ${say.written(name)} von ${say.list(from.map(say.written))} verfehlen einander um ${say.length(gapMm)}.`,
    remedy: `Messen Sie beide neu, und den Weg zwischen ${say.list(from.map(say.written))}.`,
  }),
  'point-in-two-places': ({ name, ways }, say) => ({
    message: `Nach diesen Abständen kann ${say.written(name)} an zwei Stellen liegen.`,
    remedy: `Sagen Sie, welche gemeint ist: ${ways.map(way => `towards: ${way}`).join(' oder ')}.`,
  }),
  'point-measured-over': ({ name, from, worstMm }, say) => ({
    message: `Die Abstände des Punktes ${say.written(name)} stimmen auf ${say.slight(worstMm)} überein; am wenigsten passt der von ${say.written(from)}.`,
    remedy: `Ist das zu viel, messen Sie von ${say.written(from)} nach ${say.written(name)} noch einmal.`,
  }),
  'mirror-line-missing': ({ name }, say) => ({
    message: `Die Linie, an der ${say.written(name)} gespiegelt wird, beginnt und endet an einer Stelle.`,
    remedy: 'Nennen Sie zwei Punkte, die auf der Bruchlinie auseinanderliegen.',
  }),
  'too-few-measured-edges': ({ edges }) => ({
    message: `${edges === 1 ? 'Eine Kante führt' : 'Keine Kante führt'} nicht um ein Teil herum.`,
    remedy: 'Nennen Sie die Kanten einmal rundherum, jede mit den Punkten, durch die sie läuft.',
  }),
  'edge-of-one-point': ({ edge }, say) => ({
    message: `${capital(say.thing(edge))}: weniger als zwei Punkte.`,
    remedy: 'Nennen Sie die Punkte, durch die die Linie läuft, vom Anfang bis zum Ende.',
  }),
  'edges-do-not-meet': ({ edges, points }, say) => ({
    message: `${capital(say.things(edges.slice(0, 1)))} endet bei ${say.written(points[0]!)}; ${say.things(edges.slice(1))} kommt danach und beginnt bei ${say.written(points[1]!)}.`,
    remedy: 'Nennen Sie die Kanten der Reihe nach rundherum, jede von da an, wo die letzte endet.',
  }),
  'dart-off-its-edge': ({ dart, points }, say) => ({
    message: `Keine Kante läuft an der Öffnung vorbei: ${say.thing(dart)}.`,
    remedy: `Nennen Sie ${say.list(points.map(say.written))} nacheinander in der Kante, in die der Abnäher mündet.`,
  }),
  'dart-of-wrong-points': ({ dart, points }, say) => ({
    message: `${capital(say.thing(dart))}: ${points === 1 ? '1 Punkt' : `${points} Punkte`}.`,
    remedy:
      'Geben Sie drei an: in der Kante, Spitze, in der Kante; oder vier für einen Abnäher im Innern des Teils.',
  }),
  'edges-wait-for-one-another': ({ edges }, say) => ({
    message: `${capital(say.things(edges))} warten jeweils darauf, wie die andere läuft.`,
    remedy: 'Lassen Sie bei einer square oder smooth weg, oder geben Sie ihr einen Punkt mehr.',
  }),
  'nothing-to-meet': ({ edge }, say) => ({
    message: `${capital(say.thing(edge))}: Daneben liegt ein Abnäher und keine Kante, auf die sie treffen könnte.`,
    remedy: 'Lassen Sie dort starts oder ends weg, oder geben Sie einen Punkt mehr nahe dem Abnäher an.',
  }),
  'edge-measured-otherwise': ({ edge, drawnMm, givenMm }, say) => ({
    message: `${capital(say.thing(edge))}: nach den Punkten ${say.length(drawnMm)}, gemessen wurden ${say.length(givenMm)}.`,
    remedy:
      'Messen Sie die Punkte nach; ist es eine Kurve, nennen Sie einen Punkt mehr, durch den sie läuft.',
  }),
  'notch-point-off-edge': ({ name, awayMm }, say) => ({
    message: `Das Passzeichen bei ${say.written(name)} liegt ${say.length(awayMm)} von der nächsten Kante entfernt.`,
    remedy: 'Nennen Sie einen Punkt, der auf einer Kante liegt.',
  }),
};
