import type { SleeveSentences, SleeveTellings } from '@paperhinge/alter/sayings';
import type { Say, Sentences, Tellings } from '../catalogue.js';
import { edgeText, raisedCap, stepText } from '../step-text.js';

export const sleeves: Tellings<SleeveTellings> = {
  'no-cap': ({ piece }, say) => ({
    message: `${say.thing(piece)} hat keine Armkugel.`,
    remedy: 'Sagen Sie, welche Kante die Kugel ist: data-role="cap" an ihr.',
  }),
  'cap-too-low': ({ piece, heightMm, byMm }, say) => ({
    message: `Die Kugel von ${say.thing(piece)} ist ${say.length(heightMm)} hoch und lässt sich nicht um ${say.length(-byMm)} flacher machen.`,
    remedy: `Machen Sie sie um weniger als ${say.atMost(heightMm)} flacher.`,
  }),
  'seam-without-cap': ({ seam }, say) => ({
    message: `${say.thing(seam)} näht keine Armkugel in ein Armloch.`,
    remedy:
      'Nennen Sie die Naht, die es tut, oder sagen Sie, welche Kante die Kugel ist: data-role="cap" an ihr.',
  }),
  'cap-not-sewn': ({ piece }, say) => ({
    message: `Keine Naht näht die Kugel von ${say.thing(piece)} in ein Armloch; so ist nicht bekannt, wo vorn ist.`,
    remedy: 'Geben Sie die Armlochnaht oben im Blatt unter „seams“ an.',
  }),
  'underarm-not-sewn': ({ first, second }, say) => ({
    message: `Keine Naht näht ${say.thing(first)} an ${say.thing(second)}.`,
    remedy: 'Geben Sie die Ärmelnaht oben im Blatt unter „seams“ an.',
  }),
  'strips-too-wide': ({ edge, takenMm, roomMm }, say) => ({
    message: `Beide Streifen zusammen nehmen ${say.length(takenMm)} von ${say.thing(edge)}, lang ${say.length(roomMm)}.`,
    remedy: `Geben Sie vorn und hinten zusammen weniger als ${say.length(roomMm)} an.`,
  }),
  'bend-too-far': ({ piece, byMm, mostMm }, say) => ({
    message: `Um ${say.length(byMm)} geöffnet, böge sich ${say.thing(piece)} um mehr als 45 Grad.`,
    remedy: `Geben Sie höchstens ${say.length(mostMm)} an.`,
  }),
  'elbow-dart-too-deep': ({ piece, depthMm, mostMm }, say) => ({
    message: `Ein ${say.length(depthMm)} tiefer Abnäher reicht ganz über ${say.thing(piece)}.`,
    remedy: `Machen Sie ihn weniger tief als ${say.length(mostMm)}.`,
  }),
  'armhole-of-several': ({ seam }, say) => ({
    message: `${say.thing(seam)} näht nicht eine ganze Armkugel an ein Vorderteil und ein Rückenteil.`,
    remedy:
      'Setzen Sie eine Passe oder ein Seitenteil erst an Vorder- oder Rückenteil an, mit „join pieces“.',
  }),
  'shoulder-not-sewn': ({ first, second }, say) => ({
    message: `Keine Naht näht ${say.thing(first)} an ${say.thing(second)}, ganz und ohne Abnäher.`,
    remedy: 'Schließen Sie einen Abnäher in der Schulter erst in den Saum, mit „close dart“.',
  }),
  'shoulders-unlike': ({ first, firstMm, second, secondMm }, say) => ({
    message: `${say.thing(first)} ist ${say.slight(firstMm)} lang, ${say.thing(second)} ${say.slight(secondMm)}: so werden sie nicht die zwei Schenkel eines Abnähers.`,
    remedy: `Machen Sie sie erst gleich lang: ${stepText('match edge', { edge: edgeText(first), at: 'start' })}.`,
  }),
  'sleeve-cut-unlike': ({ piece, sleeve }, say) => ({
    message: `${say.thing(piece)} und ${say.thing(sleeve)} werden nicht für gleich viele Seiten zugeschnitten.`,
    remedy:
      'Arbeiten Sie am halben Schnitt, bevor er aufgeklappt wird: ein halbes Vorderteil, ein halbes Rückenteil, ein Ärmel.',
  }),
  'raglan-off-edge': ({ edge, mostMm }, say) => ({
    message: `${say.thing(edge)} ist nur ${say.length(mostMm)} lang: die Linie liefe darüber hinaus.`,
    remedy: `Geben Sie weniger als ${say.atMost(mostMm)} an.`,
  }),
  'raglan-off-piece': ({ piece }, say) => ({
    message: `Die Raglanlinie von ${say.thing(piece)} liefe außerhalb, über die Rundung des Armlochs.`,
    remedy: 'Beginnen Sie sie weiter unten am Hals, fort von der Schulter.',
  }),
  'raglan-through-dart': ({ piece }, say) => ({
    message: `Ein Abnäher oder eine Falte von ${say.thing(piece)} würde mit dem oberen Teil abgeschnitten.`,
    remedy: 'Schließen Sie ihn erst in den Saum, mit „close dart“.',
  }),
  'sleeve-without-middle': ({ edge }, say) => ({
    message: `Der Fadenlauf durch den höchsten Punkt der Kugel trifft ${say.thing(edge)} nicht, oder eine Falte teilt sie.`,
    remedy: 'Schneiden Sie erst den Kimono und formen Sie danach den Saum seines Ärmels.',
  }),
  'kimono-off-side': ({ edge, mostMm }, say) => ({
    message: `${say.thing(edge)} ist keine Seitennaht, die so weit reicht: unter dem Armloch liegen ${say.length(mostMm)} davon.`,
    remedy:
      mostMm > 0
        ? `Geben Sie bei „drop“ weniger als ${say.length(mostMm)} an.`
        : 'Sagen Sie, welche Kante die Seite ist: data-role="side" an ihr.',
  }),
  'kimono-underarms-unlike': ({ piece }, say) => ({
    message: `Wie der Ärmel auch an ${say.thing(piece)} liegt, seine Unterarmnaht wird nicht so lang wie die andere.`,
    remedy: 'Geben Sie eine andere Neigung an.',
  }),
  'kimono-crosses': ({ piece }, say) => ({
    message: `So angelegt läge der Ärmel von ${say.thing(piece)} auf dem Teil selbst.`,
    remedy: 'Geben Sie weniger Neigung an.',
  }),
  'gusset-too-shallow': ({ leastMm }, say) => ({
    message: `Der Einschnitt für einen Zwickel ist auf jeder Seite ${say.length(leastMm)} weit: er muss tiefer sein.`,
    remedy: 'Geben Sie dem Zwickel etwa 80 mm.',
  }),
  'kimono-curve-too-wide': ({ piece, mostMm }, say) => ({
    message: `Die Seite von ${say.thing(piece)} lässt keinen Platz für einen Unterarmbogen mit diesem Radius.`,
    remedy: `Geben Sie bei „curve“ höchstens ${say.length(Math.max(1, Math.floor(mostMm)))} an, oder weniger „drop“.`,
  }),
  'kimono-curve-and-gusset': ({ seam }, say) => ({
    message: `Mit Zwickel bleibt der Unterarm an ${say.thing(seam)} eine Ecke: in sie wird er genäht.`,
    remedy: 'Lassen Sie „curve“ oder „gusset“ weg.',
  }),
  'cap-too-flat': ({ piece }, say) => ({
    message: `Die Kugel von ${say.thing(piece)} ist so flach, dass die oberen Teile von Vorder- und Rückenteil darüber nicht zusammenkommen.`,
    remedy: 'Machen Sie erst die Kugel höher: change cap mit keep: seam.',
  }),
  'cap-shorter-than-armhole': ({ piece, seam, capMm, armholeMm }, say) => ({
    message: `Die Kugel ist mit ${say.length(capMm)} kürzer als ihr Armloch mit ${say.length(armholeMm)}; die Mehrweite läge im Armloch.`,
    remedy: `Machen Sie erst die Kugel höher: ${raisedCap(piece, seam)}.`,
  }),
};

const change = (mm: number, say: Say, more: string, less: string): string =>
  Math.abs(mm) < 0.05 ? 'wie zuvor' : `${say.length(Math.abs(mm))} ${mm > 0 ? more : less}`;

export const sleevesDid: Sentences<SleeveSentences> = {
  'changed-cap': ({ piece, byMm, seamMm, widthMm }, say) =>
    `Kugel von ${say.thing(piece)} um ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'flacher' : 'höher'}; ihre Naht ${change(seamMm, say, 'länger', 'kürzer')}, der Ärmel ${change(widthMm, say, 'weiter', 'enger')}.`,
  'bent-sleeve': ({ piece, byMm, bendDeg, dart, depthMm }, say) =>
    `${say.thing(piece)} am Ellbogen um ${say.angle(bendDeg)} nach vorn gebogen; ${say.thing(dart)} nimmt ${say.length(byMm)} weg und ist ${say.length(depthMm)} tief.`,
  'divided-sleeve': ({ piece, under, foreArmMm, hindArmMm, easeMm }, say) =>
    `${say.thing(piece)} geteilt: als Oberärmel, darunter ${say.thing(under)}; vordere Ärmelnaht ${say.length(foreArmMm)}, hintere ${say.length(hindArmMm)} lang${easeMm < 0.05 ? ', auf beiden' : `, am Oberärmel ${say.length(easeMm)} mehr, am Ellbogen einzuhalten`}.`,
  'cut-raglan': ({ piece, bodies, seamsMm, dartDeg, easeMm, liftMm, half }, say) =>
    `Obere Teile von ${say.list(bodies.map(say.thing))} an ${say.thing(piece)} angesetzt; Raglannähte vom Unterarm bis zum Hals ${say.list(seamsMm.map(mm => say.length(mm)))} lang. ${half ? `${say.thing(half)} entlang der Schulter und den Arm hinab abgeschnitten; über der Schulter weichen beide um ${say.angle(dartDeg)} auseinander` : `Abnäher über der Schulter ${say.angle(dartDeg)}`}, die Spitze ${say.length(Math.abs(liftMm))} ${liftMm < 0 ? 'innerhalb' : 'außerhalb'} der alten Kugel${easeMm < 0.05 ? '' : `; ${say.length(easeMm)} Mehrweite fielen mit der Kugel weg`}.`,
  'cut-kimono': ({ sleeve, bodies, slopesDeg, underarmMm, curveMm, gusset }, say) =>
    `${say.thing(sleeve)} zur Hälfte an ${say.thing(bodies[0]!)} gelegt, ${say.angle(slopesDeg[0]!)} unter der Schulter, zur Hälfte an ${say.thing(bodies[1]!)}, ${say.angle(slopesDeg[1]!)} darunter; beide Unterarmnähte ${say.length(underarmMm)} lang${curveMm === undefined ? '' : `, mit einem Radius von ${say.length(curveMm)} in die Seite gebogen`}.${gusset ? ` ${say.thing(gusset)} in beide Einschnitte genäht.` : ''}`,
  'walked-cap': ({ seam, easeMm, frontMm, backMm }, say) =>
    `${say.thing(seam)} abgemessen: von ${say.length(easeMm)} Mehrweite liegen ${say.length(frontMm)} vorn und ${say.length(backMm)} hinten, zwischen den Passzeichen und dem höchsten Punkt.`,
};
