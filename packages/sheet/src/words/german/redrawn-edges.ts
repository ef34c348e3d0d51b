import type { RedrawnEdgeSentences, RedrawnEdgeTellings } from '@paperhinge/alter/sayings';
import type { Sentences, Tellings } from '../catalogue.js';
import { straightStep } from '../straight-step.js';

/** Neu gezeichnete Kanten: Armlöcher, Säume, Untertritte, Schlüsselloch-Ausschnitte. */
export const redrawnEdges: Tellings<RedrawnEdgeTellings> = {
  'corner-beside-dart': ({ edge, dart }, say) => ({
    message: `${say.thing(dart)} mündet am Ende dieser Kante, so dass sich das Ende nicht versetzen lässt: ${say.thing(edge)}.`,
    remedy: 'Schließen oder verlegen Sie ihn zuerst.',
  }),
  'corner-beyond-edge': ({ edge, beside, byMm, roomMm }, say) => ({
    message: `${say.thing(edge)}: Ein Ende lässt sich nicht um ${say.length(byMm)} versetzen; ${say.thing(beside)} ist ${say.length(roomMm)} lang.`,
    remedy: 'Versetzen Sie es um weniger.',
  }),
  'edge-in-two-parts': ({ edge }, say) => ({
    message: `${say.thing(edge)} ist durch einen Abnäher, eine Falte oder einen Einsatz geteilt.`,
    remedy: 'Schließen oder verlegen Sie ihn zuerst, oder wählen Sie eine ungeteilte Kante.',
  }),
  'redrawn-crosses': ({ edge }, say) => ({
    message: `So gezeichnet liefe diese Kante in eine andere ihres Teils: ${say.thing(edge)}.`,
    remedy: 'Verändern Sie sie um weniger.',
  }),
  'no-armhole': ({ piece }, say) => ({
    message: `${say.thing(piece)} hat keine Kante, die das Armloch sein könnte, oder mehrere.`,
    remedy: 'Sagen Sie, welche Kante es ist: Schreiben Sie data-role="armhole" an sie.',
  }),
  'hem-not-at-centre': ({ edge }, say) => ({
    message: `${say.thing(edge)}: Kein Ende liegt am Bruch oder an einer Mittelkante, oder beide.`,
    remedy:
      'Formen Sie den Saum eines halben Teils, oder zeichnen Sie ihn mit „recut edge“ entlang einer Linie.',
  }),
  'edge-in-no-seam': ({ edge }, say) => ({
    message: `${say.thing(edge)} ist an nichts genäht und muss zu nichts passen.`,
    remedy: 'Wählen Sie eine Kante, die in einer Naht liegt.',
  }),
  'edge-matches-already': ({ edge, seam }, say) => ({
    message: `${say.thing(edge)} passt schon: ${say.thing(seam)}.`,
    remedy: 'Lassen Sie den Schritt weg.',
  }),
  'stand-edge-bent': ({ edge, offMm }, say) => ({
    message: `${say.thing(edge)} weicht ${say.slight(offMm)} von einer Geraden ab.`,
    remedy: 'Ziehen Sie die Kante erst gerade: true mit straight: yes.',
  }),
  'grown-facing-too-wide': ({ edge, widthMm }, say) => ({
    message: `Ein ${say.length(widthMm)} breiter Beleg ist breiter, als die Kanten daneben reichen: ${say.thing(edge)}.`,
    remedy: 'Machen Sie ihn schmaler.',
  }),
  'grown-on-edge-curved': ({ edge, offMm, sideMm }, say) => ({
    message: `${say.thing(edge)} weicht ${say.slight(offMm)} von einer Geraden ab, und Stoff bricht nur gerade.`,
    remedy: `Ziehen Sie sie zuerst gerade (${straightStep(edge, sideMm, offMm, say)}), oder geben Sie ihr ein eigenes Teil: cut off band oder draft facing.`,
  }),
  'grown-on-off-square': ({ edge, fold, sideMm }, say) => ({
    message: `${say.thing(edge)}: Hochgeschlagen verließe der Beleg den Bruch ${say.thing(fold)}, der nicht rechtwinklig dazu liegt.`,
    remedy:
      sideMm === undefined
        ? 'Zeichnen Sie die Kante zuerst rechtwinklig zum Bruch, oder klappen Sie das Teil auf: unfold.'
        : `Zeichnen Sie die Kante zuerst rechtwinklig zum Bruch: ${straightStep(edge, sideMm, 0, say)}.`,
  }),
  'grown-on-edge-sewn': ({ edge, seam }, say) => ({
    message: `${say.thing(edge)} ist angenäht (${say.thing(seam)}) und lässt sich nicht umschlagen.`,
    remedy:
      'Entfernen Sie zuerst, was daran genäht ist, oder zeichnen Sie einen eigenen Beleg: draft facing.',
  }),
  'grown-on-alone': ({ edge, beside }, say) => ({
    message: `${say.thing(edge)} ist an nichts genäht: ${say.thing(beside)} hat dort keinen Beleg.`,
    remedy: 'Geben Sie beiden den Beleg in einem Schritt, wenn die Naht durch ihn laufen soll.',
  }),
  'wrap-not-at-neck': ({ edge }, say) => ({
    message: `${say.thing(edge)} ist keine Mittelkante, die bis zum Hals hinaufläuft.`,
    remedy: 'Wählen Sie die Mittelkante, die bis zum Hals hinaufläuft.',
  }),
  'wrap-too-deep': ({ edge, depthMm, centreMm }, say) => ({
    message: `Die Schräge endete ${say.length(depthMm)} weit unten: ${say.thing(edge)} ist ${say.length(centreMm)} lang.`,
    remedy: 'Machen Sie sie weniger tief.',
  }),
  'neck-not-between': ({ edge }, say) => ({
    message: `${say.thing(edge)} läuft nicht von einer Mittelkante oder einem Bruch zu einer Schulter.`,
    remedy:
      'Heben Sie den Hals eines halben Teils, und schließen oder verlegen Sie zuerst einen Abnäher an seinem Ende.',
  }),
  'edge-length-unreached': ({ edge, lengthMm, nearestMm }, say) => ({
    message: `${say.thing(edge)}: Zwischen ihren Enden gibt es keine glatte Linie von ${say.length(lengthMm)}; die nächste hat ${say.length(nearestMm)}.`,
    remedy: 'Versetzen Sie stattdessen ein Ende: match edge mit einer Länge.',
  }),
  'cowl-on-bias': ({ edge }, say) => ({
    message: `${say.thing(edge)} fällt nur im schrägen Fadenlauf in weichen Falten.`,
    remedy:
      'Schneiden Sie das Teil mit der Mitte 45° zum Fadenlauf zu, und geben Sie dem Hals einen angeschnittenen Beleg: add grown-on facing.',
  }),
  'keyhole-off-fold': ({ piece, downMm, roomMm }, say) => ({
    message: `${say.thing(piece)}: Der Schlüsselloch-Ausschnitt endete ${say.length(downMm)} weit unten am Bruch, der ${say.length(roomMm)} lang ist.`,
    remedy: 'Machen Sie ihn weniger tief, oder beginnen Sie ihn höher.',
  }),
  'keyhole-needs-fold': ({ piece }, say) => ({
    message: `${say.thing(piece)} hat keinen Bruch, der am Halsausschnitt beginnt.`,
    remedy: 'Wählen Sie ein Teil, das bis zum Hals im Bruch liegt.',
  }),
  'hem-curved-deep': ({ edge, allowanceMm }, say) => ({
    message: `${say.thing(edge)} ist jetzt gebogen: ${say.allowance(allowanceMm)} umgeschlagen liegen dort nicht flach.`,
    remedy: 'Geben Sie ihr mit set allowance 10 mm oder weniger, oder belegen Sie sie: draft facing.',
  }),
};

/** Was neu gezeichnet wurde. */
export const redrawnEdgesDone: Sentences<RedrawnEdgeSentences> = {
  'recut-edge': ({ edge, way, byMm = [], by = [], formerMm, lengthMm }, say) => {
    const amount =
      byMm.length === 1 ? say.length(byMm[0]!) : `${byMm.map(say.length).join(' am Anfang und ')} am Ende`;
    const how = {
      in: `${amount} weiter innen`,
      out: `${amount} weiter außen`,
      line: `entlang ${say.things(by)}`,
      through: `durch ${say.things(by)}`,
      length: 'auf Länge',
      like: `wie ${say.things(by)}`,
    }[way];
    return `${say.thing(edge)} neu geschnitten, ${how}: jetzt ${say.length(lengthMm)} lang, vorher ${say.length(formerMm)}.`;
  },
  'recut-armhole': ({ pieces, lowerMm, inMm, changesMm }, say) => {
    const ways = [
      lowerMm === 0 ? '' : `um ${say.length(Math.abs(lowerMm))} ${lowerMm < 0 ? 'höher' : 'tiefer'}`,
      inMm === 0
        ? ''
        : `an der Schulter um ${say.length(Math.abs(inMm))} weiter ${inMm < 0 ? 'außen' : 'innen'}`,
    ].filter(way => way !== '');
    return `Armloch neu geschnitten (${say.things(pieces)})${ways.length === 0 ? '' : `: ${say.list(ways)}`}; seine Länge änderte sich um ${say.list(changesMm.map(say.change))}.`;
  },
  'shaped-hem': ({ edge, sideMm, centreMm, curved, lengthMm }, say) => {
    const move = (mm: number, where: string) =>
      mm === 0
        ? `${where} wie vorher`
        : `${where} ${say.length(Math.abs(mm))} ${mm > 0 ? 'höher' : 'tiefer'}`;
    return `${say.thing(edge)} ${curved ? 'gebogen' : 'gerade'} gezeichnet, ${move(sideMm, 'an der Seite')} und ${move(centreMm, 'in der Mitte')}; ${say.length(lengthMm)} lang.`;
  },
  'levelled-hem': ({ pieces, from, heightMm, lengthMm, longerMm }, say) => {
    const change = (mm: number) =>
      mm === 0 ? 'unverändert' : `${say.length(Math.abs(mm))} ${mm < 0 ? 'kürzer' : 'länger'}`;
    const each = pieces.map((piece, i) => `${say.thing(piece)} ${change(longerMm[i]!)}`);
    return `Der Saum liegt ${say.length(heightMm)} über dem Boden, ${say.length(lengthMm)} unter der Linie ${say.name(from)}: ${say.list(each)}.`;
  },
  'matched-edge': ({ edge, seam, byMm, lengthMm, beside }, say) =>
    `${say.thing(edge)} um ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'kürzer' : 'länger'} gemacht${seam ? `, passend zu ${say.thing(seam)}` : ''}: ${say.length(lengthMm)}; ${say.thing(beside)} ist zum neuen Ende gezeichnet.`,
  'added-button-stand': ({ edge, widthMm, facingMm, opened }, say) =>
    `${say.thing(edge)} hat einen ${say.length(widthMm)} breiten Übertritt für Knöpfe${facingMm === undefined ? '' : ` und einen angeschnittenen, ${say.length(facingMm)} breiten Beleg`}; eine Linie zeigt die Mitte${opened ? ', das Teil wird als Paar zugeschnitten' : ''}.`,
  'grown-on': ({ edges, widthMm }, say) =>
    `${say.things(edges)}: ${say.length(widthMm)} breiter Beleg angeschnitten; die Kante ist jetzt eine Bruchlinie.`,
  'wrapped-over': ({ edge, byMm, depthMm, neck, neckMm, opened }, say) =>
    `${say.thing(edge)} greift ${say.length(byMm)} über; ${say.thing(neck)} läuft schräg bis ${say.length(depthMm)} hinunter und ist ${say.length(neckMm)} lang${opened ? '; das Teil wird als Paar zugeschnitten' : ''}. Eine Linie zeigt die Mitte. Die Schräge liegt im schrägen Fadenlauf: Sichern Sie sie mit einer Einlage.`,
  'raised-neckline': ({ pieces, byMm, necksMm }, say) =>
    `Halsausschnitt um ${say.length(byMm)} hochgezogen (${say.things(pieces)}); im Schnitt ist er ${say.list(necksMm.map(say.length))} lang. Er muss weiterhin über den Kopf gehen oder sich öffnen lassen.`,
  'draped-neckline': ({ piece, byMm, neckMm, upMm }, say) =>
    `${say.thing(piece)} am Hals um ${say.length(byMm)} gespreizt; er ist jetzt gerade und rechtwinklig zur Mitte, im Schnitt ${say.length(neckMm)} lang; die Mitte ${upMm < 0 ? 'wurde gekürzt' : 'läuft weiter'}: ${say.length(Math.abs(upMm))}.`,
  'cut-keyhole': ({ piece, belowMm, depthMm, widthMm, roundMm }, say) =>
    `${say.thing(piece)} hat ${say.length(belowMm)} unter dem Hals einen Schlüsselloch-Ausschnitt, ${say.length(depthMm)} tief und ${say.length(widthMm)} breit; seine Kante misst ringsum ${say.length(roundMm)}.`,
};
