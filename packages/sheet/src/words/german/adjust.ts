import type { AdjustSentences, AdjustTellings } from '@paperhinge/alter/sayings';
import type { Sentences, Tellings } from '../catalogue.js';

export const adjust: Tellings<AdjustTellings> = {
  'adjust-needs-piece': ({ what }, say) => ({
    message: `Kein Teil hier ist, was diese Anpassung braucht: ${say.written(what)}.`,
    remedy: `Sagen Sie, was jedes Teil und jede Kante ist, data-role in der Zeichnung oder role unter pieces im Blatt${what === 'front' || what === 'back' ? ', und nennen Sie die Schulternaht, an der sich Vorderteil und Rücken unterscheiden' : ''}.`,
  }),
  'adjust-needs-edge': ({ piece, role }, say) => ({
    message: `${say.thing(piece)} hat dort, wo diese Anpassung sie braucht, keine Kante, die als ${say.written(role)} bekannt ist.`,
    remedy: `Sagen Sie, welche Kante es ist: data-role="${role}" an ihr.`,
  }),
  'adjust-needs-level': ({ piece, levels }, say) => ({
    message: `${say.thing(piece)} hat keine Höhenlinie: ${levels.map(say.written).join(' oder ')}.`,
    remedy: `Zeichnen Sie eine: data-line="level" data-name="${levels[0]}".`,
  }),
  'adjust-needs-seam': ({ role }, say) => ({
    message: `Der Schnitt hat keine Naht zwischen Kanten, die als ${say.written(role)} bekannt sind.`,
    remedy: `Nennen Sie sie unter seams, zwischen Kanten mit data-role="${role}".`,
  }),
  'adjust-needs-dart': ({ piece }, say) => ({
    message: `${say.thing(piece)} hat keinen Abnäher in der Seite.`,
    remedy: 'Öffnen Sie erst einen, oder passen Sie an full bust an; das öffnet einen.',
  }),
  'bust-point-unknown': ({ piece }, say) => ({
    message: `${say.thing(piece)}: Wo der Brustpunkt liegt, ist nicht bezeichnet.`,
    remedy: 'Bezeichnen Sie ihn: data-mark="point" data-name="bust point".',
  }),
  'adjust-too-much': ({ byMm, mostMm }, say) => ({
    message: `Das Papier reicht für ${say.length(Math.abs(byMm))} nicht.`,
    remedy: `Passen Sie um weniger an; allerhöchstens ${say.atMost(Math.abs(mostMm))} am Teil.`,
  }),
};

export const adjusted: Sentences<AdjustSentences> = {
  adjusted: ({ what, byMm, steps }, say) =>
    `Angepasst (${what}) um ${say.length(byMm)}: ${steps.map(say.saying).join(' ')}`,
  'swung-bust': ({ piece, byMm, dropMm, turnDeg, dart }, say) =>
    `${say.thing(piece)}: Brustpunkt ${say.length(Math.abs(byMm))} nach ${byMm < 0 ? 'innen' : 'außen'} und ${say.length(Math.abs(dropMm))} nach ${dropMm < 0 ? 'oben' : 'unten'}, die Seite um ${say.angle(turnDeg)} um das Armloch geschwenkt; ${say.thing(dart)} um ebenso viel ${byMm < 0 ? 'geschlossen' : 'geöffnet'}.`,
  'swung-apart': ({ piece, byMm, top, lowerMm }, say) =>
    `${say.thing(piece)} ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'enger' : 'weiter'}, ${say.thing(top)} ${say.length(Math.abs(lowerMm))} ${lowerMm < 0 ? 'höher' : 'tiefer'}.`,
  'slid-shoulder': ({ piece, byMm }, say) =>
    `${say.thing(piece)}: Schulter und Armloch ${say.length(Math.abs(byMm))} nach ${byMm < 0 ? 'unten' : 'oben'} geschoben.`,
};
