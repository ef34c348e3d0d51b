import type { NecklineTellings } from '@paperhinge/alter/sayings';
import type { Tellings } from '../catalogue.js';

export const neckline: Tellings<NecklineTellings> = {
  'no-neck': ({ piece, necks }, say) => ({
    message:
      necks.length === 0
        ? `${say.thing(piece)} hat keine Kante, die ihr Halsausschnitt sein könnte.`
        : `${say.thing(piece)} hat mehrere Kanten, die ihr Halsausschnitt sein könnten: ${say.things(necks)}.`,
    remedy: 'Sagen Sie, welche Kante der Ausschnitt ist: Schreiben Sie data-role="neck" an sie.',
  }),
  'neck-interrupted': ({ edge }, say) => ({
    message: `${say.thing(edge)} ist durch einen Abnäher oder Einsatz geteilt und lässt sich nicht in einem neu schneiden.`,
    remedy: 'Schließen oder verlegen Sie erst den Abnäher; einen Einsatz gibt es nur einmal.',
  }),
  'neck-not-at-centre': ({ piece }, say) => ({
    message: `${say.thing(piece)}: Der Ausschnitt endet nicht am Bruch.`,
    remedy: 'Schneiden Sie ihn neu, bevor ein Einsatz darin ist, oder zeichnen Sie ihn bis zum Bruch.',
  }),
  'no-shoulders': ({ edge }, say) => ({
    message: `${say.thing(edge)} hat an beiden Enden dieselbe Kante.`,
    remedy: 'Teilen Sie den Umriss in Ausschnitt, Schultern und den Rest.',
  }),
  'no-centre-line': ({ piece }, say) => ({
    message: `${say.thing(piece)} hat keinen Bruch, keine Mittellinie am Ausschnitt und keinen Fadenlauf.`,
    remedy: 'Zeichnen Sie die Mittellinie oder den Fadenlauf.',
  }),
  'dart-in-neck': ({ dart }, say) => ({
    message: `${say.thing(dart)} öffnet sich dort, wo der Ausschnitt endet.`,
    remedy: 'Schließen oder verlegen Sie ihn zuerst.',
  }),
  'neckline-too-deep': ({ piece, depthMm }, say) => ({
    message: `${say.thing(piece)}: Ein ${say.length(depthMm)} tiefer Ausschnitt verließe das Teil an der Mitte.`,
    remedy: 'Machen Sie ihn weniger tief.',
  }),
  'neckline-too-shallow': ({ piece }, say) => ({
    message: `${say.thing(piece)}: Der neue Ausschnitt läge nicht unter der Schulter.`,
    remedy: 'Machen Sie ihn tiefer.',
  }),
  'half-width-off-neck': ({ piece, halfWidthMm, reachesMm }, say) => ({
    message: `${say.thing(piece)}: ${say.length(halfWidthMm)} von der Mitte liegt kein Punkt des Ausschnitts, hinter dem er weitergeht; er endet bei ${say.length(reachesMm)}.`,
    remedy: 'Machen Sie den Einsatz schmaler, oder schneiden Sie den ganzen Ausschnitt als V.',
  }),
  'half-width-beyond-shoulder': ({ edge, halfWidthMm, reachesMm }, say) => ({
    message: `Eine halbe Weite von ${say.length(halfWidthMm)} reicht zu weit: ${say.thing(edge)} endet ${say.length(reachesMm)} von der Mitte.`,
    remedy: 'Machen Sie den Ausschnitt schmaler.',
  }),
  'shoulder-out-of-reach': ({ edge, wantedMm }, say) => ({
    message: `${say.thing(edge)} kann nicht ${say.length(wantedMm)} lang bleiben.`,
    remedy: 'Geben Sie eine Länge über 0 an, die die Schulter haben kann.',
  }),
  'name-taken': ({ edge }, say) => ({
    message: `${say.thing(edge)} gibt es schon.`,
    remedy: 'Schneiden Sie nur einen Einsatz, oder nennen Sie jene Kante anders.',
  }),
  'line-ends-off-outline': ({ line, awayMm }, say) => ({
    message: `${say.thing(line)}: Ein Ende liegt ${say.length(awayMm)} neben dem Umriss.`,
    remedy: 'Zeichnen Sie die Linie von Umriss zu Umriss.',
  }),
  'line-crosses-dart': ({ dart }, say) => ({
    message: `Der neue Ausschnitt kreuzt ${say.thing(dart)}.`,
    remedy: 'Schließen oder verlegen Sie ihn zuerst.',
  }),
  'neckline-leaves-piece': ({ piece }, say) => ({
    message: `${say.thing(piece)}: Der neue Ausschnitt liefe aus dem Teil hinaus.`,
    remedy: 'Machen Sie ihn schmaler oder weniger tief.',
  }),
};
