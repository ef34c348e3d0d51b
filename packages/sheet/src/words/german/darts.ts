import type { DartSentences, DartTellings } from '@paperhinge/alter/sayings';
import type { Sentences, Tellings } from '../catalogue.js';
import { instead } from './instead.js';

/** Abnäher: neu gezeichnet, verändert, geteilt, vereint. */
export const darts: Tellings<DartTellings> = {
  'unknown-mark': ({ piece, name, names }, say) => ({
    message: `${say.thing({ piece })} hat keinen Punkt ${say.written(name)}.`,
    remedy: instead(name, names, 'Punkte', say),
  }),
  'dart-name-taken': ({ piece, name }, say) => ({
    message: `${say.thing(piece)} hat schon eine Kante, einen Abnäher oder eine Falte ${say.written(name)}.`,
    remedy: 'Geben Sie dem neuen einen anderen Namen.',
  }),
  'dart-points-meet': ({ dart }, say) => ({
    message: `${say.thing(dart)}: Was davon bleibt und der neue Abnäher liefen in einem Punkt zusammen, wo der Stoff auseinanderginge.`,
    remedy: 'Setzen Sie die Spitze des neuen zurück: point back: 20 mm.',
  }),
  'dart-off-edge': ({ edge, intakeMm, leftMm, rightMm }, say) => ({
    message: `Ein Abnäher, der ${say.length(intakeMm)} wegnimmt, hat dort keinen Platz: ${say.thing(edge)} hat vor seiner Mitte ${say.length(leftMm)} und dahinter ${say.length(rightMm)}.`,
    remedy: 'Legen Sie ihn weiter von den Enden weg, oder lassen Sie ihn weniger wegnehmen.',
  }),
  'dart-uneven-there': ({ edge, firstMm, secondMm, alongMm }, say) => ({
    message: `${say.thing(edge)}: Von dort aus wären die Schenkel ${say.length(firstMm)} und ${say.length(secondMm)} lang und ließen sich nicht aufeinandernähen.`,
    remedy:
      alongMm === undefined
        ? 'Geben Sie statt des Punktes die Tiefe des Abnähers an.'
        : `Legen Sie ihn ${say.length(alongMm)} vom Anfang der Kante, wo der Punkt rechtwinklig zu ihr liegt.`,
  }),
  'dart-leaves-piece': ({ dart }, say) => ({
    message: `${say.thing(dart)} liefe aus seinem Teil hinaus oder in einen anderen Abnäher.`,
    remedy: 'Machen Sie ihn weniger tief, oder legen Sie ihn anderswohin.',
  }),
  'dart-too-deep': ({ dart, deepMm, byMm }, say) => ({
    message: `${say.thing(dart)} ist ${say.length(deepMm)} tief: Um ${say.length(byMm)} kürzer bliebe nichts übrig.`,
    remedy: 'Kürzen Sie ihn um weniger, oder halten Sie ihn stattdessen ein.',
  }),
  'dart-beside-nothing': ({ dart, toMm, roomMm }, say) => ({
    message:
      roomMm > 0
        ? `${say.thing(dart)} kann nicht ${say.length(toMm)} wegnehmen: Die Kante daneben ist ${say.length(roomMm)} lang.`
        : `${say.thing(dart)} hat auf einer Seite keine Kante.`,
    remedy: 'Lassen Sie ihn weniger wegnehmen, oder verlegen Sie einen Teil davon: move dart mit share.',
  }),
  'share-place-unclear': ({ dart, part }, say) => ({
    message: `${say.thing(dart)}: Anteil ${part} sagt nicht, in welche eine Kante oder in welchen einen Abnäher er geht.`,
    remedy: 'Geben Sie ihm entweder „edge“ oder „dart“.',
  }),
  'shares-over-whole': ({ dart, sharePercent }, say) => ({
    message: `${say.thing(dart)}: Die Anteile ergeben zusammen ${say.percent(sharePercent)}.`,
    remedy: 'Geben Sie zusammen höchstens 100 %, oder lassen Sie einen Anteil weg: Er bekommt den Rest.',
  }),
  'shares-leave-nothing': ({ dart }, say) => ({
    message: `${say.thing(dart)}: Die Anteile lassen für den ohne Anteil nichts übrig.`,
    remedy: 'Geben Sie den anderen zusammen weniger als 100 %, oder lassen Sie ihn weg.',
  }),
  'pinch-too-wide': ({ edge, byMm, slashMm }, say) => ({
    message: `${say.thing(edge)}: Eine Falte von ${say.length(slashMm)} Länge kann keine ${say.length(byMm)} wegnehmen.`,
    remedy: 'Nehmen Sie weniger weg.',
  }),
  'dart-into-itself': ({ dart }, say) => ({
    message: `${say.thing(dart)} lässt sich nicht in sich selbst schließen.`,
    remedy: 'Nennen Sie den Abnäher, der bleiben soll.',
  }),
  'dart-end-redrawn': ({ edge, movedMm }, say) => ({
    message: `Die Schenkel waren ungleich: ${say.thing(edge)} wurde am Abnäher um ${say.slight(movedMm)} verlängert, so dass beide gleich lang sind.`,
    remedy: 'Nichts zu tun; falten Sie das Papier am Abnäher, dann sehen Sie die Kante durchlaufen.',
  }),
  'contour-dart-leaves-piece': ({ piece, name }, say) => ({
    message: `Der Doppelabnäher ${say.written(name)} läge nicht ganz innerhalb des Teils: ${say.thing(piece)}.`,
    remedy: 'Zeichnen Sie ihn näher zur Mitte des Teils oder kleiner.',
  }),
  'dart-is-true': ({ dart }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel sind schon gerade und gleich lang.`,
    remedy: 'Lassen Sie den Schritt weg.',
  }),
  'dart-edges-unsewn': ({ dart, edge }, say) => ({
    message: `${say.thing(dart)}: Keine Naht nimmt seine Weite auf, ${say.thing(edge)} ist an nichts genäht.`,
    remedy: 'Kräuseln Sie die Kante an ein Bündchen oder einen Beleg, oder behalten Sie den Abnäher.',
  }),
};

const kinds: Readonly<Record<string, string>> = {
  ease: 'Einhalteweite',
  gathers: 'Kräusel',
  'knife pleat': 'eine einfache Falte',
  'box pleat': 'eine Quetschfalte',
  'inverted pleat': 'eine Kellerfalte',
  tuck: 'eine abgesteppte Falte',
};

/** Was mit Abnähern geschah. */
export const dartsDone: Sentences<DartSentences> = {
  'split-dart': ({ dart, fresh, to, sharePercent, angleDeg, keptDeg, alongMm, openedMm }, say) =>
    `${say.thing(dart)} zu ${say.percent(sharePercent)} (${say.angle(angleDeg)}) verlegt: ${say.thing(to)}, ${say.length(alongMm)} von ihrem Anfang, ` +
    `als ${say.thing(fresh)}, ${say.length(openedMm)} breit; ${say.angle(keptDeg)} bleiben.`,
  'joined-darts': ({ dart, into, angleDeg, formerMm, intakeMm }, say) =>
    `${say.thing(dart)} (${say.angle(angleDeg)}) geschlossen in ${say.thing(into)}; dieser nimmt jetzt ${say.length(intakeMm)} weg, vorher ${say.length(formerMm)}.`,
  'shared-dart': ({ dart, wholeDeg, restDeg, parts }, say) =>
    `${say.thing(dart)} (${say.angle(wholeDeg)}) aufgeteilt: ${parts.map(say.saying).join('; ')}.${restDeg > 0 ? ` ${say.angle(restDeg)} bleiben darin.` : ''}`,
  'shared-into-edge': ({ edge, sharePercent, alongMm, openedMm }, say) =>
    `${say.percent(sharePercent)} in ${say.thing(edge)}, aufgeschnitten ${say.length(alongMm)} von ihrem Anfang, um ${say.length(openedMm)} geöffnet`,
  'shared-into-dart': ({ into, sharePercent, formerMm, intakeMm }, say) =>
    `${say.percent(sharePercent)} in ${say.thing(into)}, der jetzt ${say.length(intakeMm)} wegnimmt (vorher ${say.length(formerMm)})`,
  'pinched-out': ({ edge, alongMm, byMm, angleDeg, dart, formerMm, intakeMm }, say) =>
    `${say.length(byMm)} (${say.angle(angleDeg)}) weggefaltet: ${say.thing(edge)}, ${say.length(alongMm)} von ihrem Anfang, in ${say.thing(dart)}, der jetzt ${say.length(intakeMm)} wegnimmt, vorher ${say.length(formerMm)}.`,
  'opened-dart': ({ dart, edge, alongMm, intakeMm, deepMm }, say) =>
    `${say.thing(dart)} eingezeichnet: ${say.thing(edge)}, ${say.length(alongMm)} von ihrem Anfang; er nimmt ${say.length(intakeMm)} weg und ist ${say.length(deepMm)} tief.`,
  'added-contour-dart': ({ piece, name, line, intakeMm, aboveMm, belowMm }, say) =>
    `${say.thing(piece)} hat einen Doppelabnäher ${say.written(name)}: Er nimmt ${say.length(intakeMm)} weg (${say.thing(line)}) und reicht ${say.length(aboveMm)} nach oben und ${say.length(belowMm)} nach unten.`,
  'trued-dart': ({ dart, firstMm, secondMm, lengthMm }, say) =>
    `${say.thing(dart)}: Beide Schenkel sind jetzt gerade und ${say.length(lengthMm)} lang, vorher ${say.length(firstMm)} und ${say.length(secondMm)}.`,
  'resized-dart': ({ dart, formerMm, toMm }, say) =>
    `${say.thing(dart)} nimmt jetzt ${say.length(toMm)} weg, vorher ${say.length(formerMm)}.`,
  'moved-dart-point': ({ dart, movedMm, formerMm, deepMm }, say) =>
    `${say.thing(dart)}: Spitze um ${say.length(movedMm)} versetzt; er ist jetzt ${say.length(deepMm)} tief, vorher ${say.length(formerMm)}.`,
  'left-dart-unsewn': ({ dart, intakeMm }, say) =>
    `${say.thing(dart)} wird nicht mehr genäht: Dem Teil bleiben die ${say.length(intakeMm)}, die er wegnahm.`,
  'changed-dart': ({ dart, into, edge, intakeMm, seams }, say) =>
    `${say.thing(dart)} ist jetzt ${kinds[into]}: ${say.length(intakeMm)}, ${say.thing(edge)}${seams.length > 0 ? `; aufgenommen zwischen zwei Passzeichen, ${say.things(seams)}` : ''}.`,
};
