import type { FullnessSentences, FullnessTellings } from '@paperhinge/alter/sayings';
import type { Sentences, Tellings } from '../catalogue.js';
import { choices } from './choices.js';

/** Tellerröcke, Volants, Godets, Schlitze. */
export const fullness: Tellings<FullnessTellings> = {
  'circle-too-wide-for-cloth': ({ piece, widthMm, clothMm }, say) => ({
    message: `${say.thing(piece)} ist aufgeklappt ${say.length(widthMm)} breit, der Stoff ${say.length(clothMm)}.`,
    remedy: 'Nehmen Sie mehr Bahnen oder einen kleineren Teil des Tellers.',
  }),
  'bias-hem-hangs': ({ piece }, say) => ({
    message: `${say.thing(piece)}: Der Saum hängt stellenweise schräg zum Fadenlauf aus.`,
    remedy: 'Lassen Sie das Teil einen Tag hängen und messen Sie den Saum dann vom Boden aus ab.',
  }),
  'godet-seam-short': ({ seam, depthMm, seamMm }, say) => ({
    message: `Ein ${say.length(depthMm)} tiefes Godet hat dort keinen Platz: ${say.thing(seam)} ist ${say.length(seamMm)} lang.`,
    remedy: 'Machen Sie es weniger tief.',
  }),
  'slit-beyond-edge': ({ edge, lengthMm, edgeMm }, say) => ({
    message: `Ein Schlitz von ${say.length(lengthMm)} ist länger als die Kante: ${say.thing(edge)}, ${say.length(edgeMm)}.`,
    remedy: 'Machen Sie ihn kürzer.',
  }),
  'slash-pivot-and-end': ({ mark }, say) => ({
    message: `${say.thing(mark)}: Ein Schnitt mit diesem Gelenk schiebt sich am anderen Ende so weit übereinander, wie er muss.`,
    remedy: 'Lassen Sie „other end“ weg oder „pivot“.',
  }),
  'vent-not-at-hem': ({ edge }, say) => ({
    message: `${say.thing(edge)} endet an keinem Saum, oder an beiden Enden.`,
    remedy: 'Wählen Sie eine Kante, die bis zum Saum hinunterläuft.',
  }),
  'vent-too-wide': ({ lengthMm, widthMm }, say) => ({
    message: `Ein ${say.length(widthMm)} breiter Gehschlitz hat auf ${say.length(lengthMm)} Länge keinen Platz für seine Schräge.`,
    remedy: 'Machen Sie ihn schmaler oder länger.',
  }),
  'vent-too-long': ({ edge, lengthMm, edgeMm }, say) => ({
    message: `Ein Gehschlitz, der ${say.length(lengthMm)} braucht, hat dort keinen Platz: ${say.thing(edge)} ist ${say.length(edgeMm)} lang.`,
    remedy: 'Machen Sie ihn kürzer oder schmaler.',
  }),
};

const partsOfCircle: Readonly<Record<string, string>> = {
  full: 'ganzer Teller',
  'three-quarter': 'Dreiviertelteller',
  half: 'halber Teller',
  quarter: 'Viertelteller',
};

/** Was weiter gemacht oder geöffnet wurde. */
export const fullnessDone: Sentences<FullnessSentences> = {
  'drafted-circle-skirt': ({ piece, part, panels, waistMm, radiusMm, lengthMm, sweepMm }, say) =>
    `${say.thing(piece)} gezeichnet: ${partsOfCircle[part]} in ${panels === 1 ? 'einer Bahn' : `${panels} Bahnen`}, Taille ${say.length(waistMm)}, mit einem Radius von ${say.length(radiusMm)}; ${say.length(lengthMm)} lang; Saum ringsum ${say.length(sweepMm)}.`,
  'drafted-flounce': ({ piece, along, edgeMm, radiusMm, widthMm, rings, sweepMm }, say) =>
    `${say.thing(piece)} gezeichnet für ${say.things(along)}, ${say.length(edgeMm)}: ${rings === 1 ? 'ein Ring' : `${rings} Ringe`} mit ${say.length(radiusMm)} Innenradius, ${say.length(widthMm)} breit, am Saum ${say.length(sweepMm)}.`,
  'drafted-godet': ({ piece, seam, depthMm, sweepMm, count }, say) =>
    `${say.thing(piece)} gezeichnet, ${say.length(depthMm)} tief und am Saum ${say.length(sweepMm)}, ${count}-mal zugeschnitten; ${say.thing(seam)} wird nur bis zu seiner Spitze genäht.`,
  slashed: ({ piece, slashes }, say) =>
    `${say.thing(piece)} an ${slashes.length === 1 ? 'einer Stelle' : `${slashes.length} Stellen`} aufgeschnitten: ${slashes.map(say.saying).join('; ')}.`,
  'slashed-at': ({ from, fromMm, to, toMm, openedMm, otherMm, turnDeg, about, into }, say) => {
    const came = (mm: number) =>
      `um ${say.length(Math.abs(mm))} ${mm < 0 ? 'übereinandergeschoben' : 'geöffnet'}`;
    const other = otherMm === 0 ? 'dort gelenkig' : `dort ${came(otherMm)}`;
    const hinge = about ? `, Gelenk ${say.thing(about)}` : '';
    return `${say.thing(from)} bei ${say.length(fromMm)} ${came(openedMm)} (${say.angle(turnDeg)})${hinge}${into === undefined ? '' : `, aufgenommen als ${choices[into]}`}, bis ${say.thing(to)} bei ${say.length(toMm)}, ${other}`;
  },
  'set-slit': ({ edge, lengthMm }, say) =>
    `${say.length(lengthMm)} bleiben als Schlitz offen: ${say.thing(edge)}.`,
  'added-vent': ({ edge, lengthMm, widthMm }, say) =>
    `${say.thing(edge)} hat einen Gehschlitz, ${say.length(lengthMm)} vom Saum hinauf und ${say.length(widthMm)} breit; wo die Kante war, ist eine Bruchlinie.`,
};
