import type { MovedEdgesTellings } from '@paperhinge/alter/sayings';
import type { Tellings } from '../catalogue.js';
import { stepText, typedLength } from '../step-text.js';
import { instead } from './instead.js';

export const movedEdges: Tellings<MovedEdgesTellings> = {
  'no-hem': ({ piece, lines }, say) => ({
    message: `${say.thing(piece)} hat keinen Saum.`,
    remedy: `Schreiben Sie data-kind="hem" an die Kante, die der Saum ist; ist sie an eine Manschette oder ein Bündchen genäht, ${
      lines.length > 0
        ? `nehmen Sie eine Linie quer über das Teil: ${lines.map(line => `at: ${line}`).join(' oder ')}`
        : 'zeichnen Sie eine Linie quer über das Teil und nehmen Sie die'
    }.`,
  }),
  'several-hems': ({ piece, hems }, say) => ({
    message: `${say.thing(piece)} hat mehrere Säume: ${say.things(hems)}.`,
    remedy: 'Nennen Sie den gemeinten „hem“.',
  }),
  'no-grain-line': ({ piece }, say) => ({
    message: `${say.thing(piece)} hat keinen Fadenlauf; die Senkrechte des Blatts gilt dafür.`,
    remedy: 'Zeichnen Sie seinen Fadenlauf.',
  }),
  'no-level-there': ({ piece, from, levels }, say) => ({
    message: `${say.thing(piece)} hat über dem Saum keine Linie ${say.name(from)}, von der aus zu messen wäre${levels.length > 0 ? `; Linien darauf: ${say.list(levels.map(say.name))}` : ''}.`,
    remedy:
      'Nennen Sie eine Linie, die das Teil hat, und ihre Höhe über dem Boden; oder zeichnen Sie eine ein.',
  }),
  'hem-above-level': ({ piece, from, standsMm, heightMm }, say) => ({
    message: `${say.thing(piece)}: Ein Saum ${say.length(heightMm)} über dem Boden läge über der Linie ${say.name(from)}, die ${say.length(standsMm)} hoch steht.`,
    remedy: 'Geben Sie eine kleinere Höhe an.',
  }),
  'grain-across': ({ piece }, say) => ({
    message: `${say.thing(piece)}: Der Fadenlauf liegt quer; ihm entlang ändert sich die Länge nicht.`,
    remedy: 'Prüfen Sie, wie der Fadenlauf gezeichnet ist.',
  }),
  'shorten-beyond-piece': ({ piece, byMm, line, meets, meetsMm, dart }, say) => {
    const what = byMm < 0 ? 'verlängern' : 'kürzen';
    const where = line ? `an ${say.thing(line)}` : 'am Saum';
    const why = !meets
      ? 'Sein Umriss würde sich kreuzen'
      : meetsMm === undefined
        ? `Auf dieser Seite der Linie ist weniger davon da: ${say.thing(meets)}`
        : `Sein Saum träfe nicht mehr auf ${say.thing(meets)} (${say.length(meetsMm)} lang)`;
    return {
      message: `${say.thing(piece)} lässt sich nicht um ${say.length(Math.abs(byMm))} ${where} ${what}. ${why}.`,
      remedy: dart
        ? 'Nehmen Sie weniger, oder schließen Sie erst den Abnäher.'
        : line
          ? 'Nehmen Sie weniger, oder eine tiefere Linie.'
          : 'Nehmen Sie weniger.',
    };
  },
  'unknown-line': ({ piece, name, names }, say) => ({
    message: `${say.thing({ piece })} hat keine Linie ${say.written(name)}.`,
    remedy: instead(name, names, 'Linien', say),
  }),
  'line-through-corner': ({ line, edge }, say) => ({
    message: `${say.thing(line)} läuft durch das Ende: ${say.thing(edge)}.`,
    remedy: 'Zeichnen Sie die Linie etwas neben dieser Ecke.',
  }),
  'line-off-piece': ({ line }, say) => ({
    message: `${say.thing(line)} teilt ihr Teil nicht in zwei.`,
    remedy: 'Zeichnen Sie sie über das ganze Teil.',
  }),
  'line-crosses-edge-twice': ({ line, edge }, say) => ({
    message: `${say.thing(line)} kreuzt zweimal: ${say.thing(edge)}.`,
    remedy: 'Zeichnen Sie die Linie so, dass sie jede Kante einmal kreuzt.',
  }),
  'dart-redrawn': ({ dart }, say) => ({
    message: `Die Linie kreuzt ${say.thing(dart)}: Die Schenkel wurden neu gezeichnet, gerade von der Öffnung zur jetzigen Spitze.`,
    remedy: 'Nichts zu tun; waren sie geschwungen, zeichnen Sie den Schwung von Hand neu.',
  }),
  'dart-mouth-parted': ({ dart, wasMm, isMm }, say) => ({
    message: `Die Linie läuft zwischen den Schenkeln hinaus, ${say.thing(dart)}: Er nimmt jetzt ${say.length(isMm)} auf (vorher ${say.length(wasMm)}), und die Kante daneben ist so lang wie zuvor.`,
    remedy: `Lassen Sie ihn so viel aufnehmen wie vorher, dann ändert die Kante ihre Länge: ${stepText('resize dart', { piece: dart.piece ?? '', dart: dart.dart ?? '', to: typedLength(wasMm, say.unit) })}. Oder zeichnen Sie die Linie über oder unter dem Abnäher.`,
  }),
  'dart-left-uneven': ({ dart, differenceMm }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel wären um ${say.slight(differenceMm)} verschieden und ließen sich nicht zusammennähen.`,
    remedy: 'Schließen oder verlegen Sie erst den Abnäher.',
  }),
  'take-in-too-much': ({ piece, byMm, apart, stays }, say) => ({
    message:
      apart.length > 0
        ? `Um ${say.length(byMm)} bewegt, treffen sich nicht mehr: ${say.things(apart)}.`
        : `Um ${say.length(byMm)} bewegt, würde sich der Umriss kreuzen: ${say.thing(piece)}.`,
    remedy: stays
      ? `Lassen Sie auch diese Kante mitgehen, als eine Kante mit der anderen oder in der Naht aufgeführt: ${say.thing(stays)}.`
      : 'Bewegen Sie die Naht um weniger.',
  }),
  'unknown-seam': ({ name, names }, say) => ({
    message: `Der Schnitt hat keine Naht ${say.written(name)}.`,
    remedy: instead(name, names, 'Nähte', say),
  }),
  'position-off-seam': ({ seam, alongMm, lengthMm }, say) => ({
    message: `Die Stelle liegt ${say.length(alongMm)} vom Anfang: ${say.thing(seam)} ist nur ${say.length(lengthMm)} lang.`,
    remedy: 'Geben Sie einen Anteil von 0 bis 100 % an, oder eine Länge innerhalb der Naht.',
  }),
  'seam-end-ambiguous': ({ seam, from }, say) => ({
    message: `${say.written(from)} berührt beide Enden: ${say.thing(seam)}.`,
    remedy: 'Schreiben Sie „from start“ oder „from end“; eine Naht beginnt, wo ihre erste Kante beginnt.',
  }),
  'seam-end-unknown': ({ seam, from, neighbours }, say) => ({
    message: `${say.written(from)} berührt kein Ende: ${say.thing(seam)}.`,
    remedy: `Schreiben Sie ${neighbours.map(name => `„from ${name}“`).join(' oder ')}, „from start“ oder „from end“.`,
  }),
};
