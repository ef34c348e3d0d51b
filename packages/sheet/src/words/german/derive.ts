import type { DeriveSentences, DeriveTellings } from '@paperhinge/alter/sayings';
import type { Say, Sentences, Tellings } from '../catalogue.js';
import { instead as instead_ } from './instead.js';

/** Bündchen, Einfassungen, Belege und Sicherungen. */
export const derive: Tellings<DeriveTellings> = {
  'edges-do-not-join': ({ piece, groups }, say) => ({
    message: `${say.thing({ piece })} kann nicht in einem Stück angenäht werden an ${say.list(groups.map(say.saying))}: Sie treffen sich im Kleidungsstück nicht.`,
    remedy:
      'Nennen Sie Kanten, die sich an einer Naht, am Stoffbruch oder an der Lücke treffen, oder zeichnen Sie für jede ein eigenes Teil.',
  }),
  'edges-not-in-one-run': ({ edges }, say) => ({
    message: `Diese Kanten folgen nicht in einem Zug aufeinander, mit anderen Kanten an beiden Enden: ${say.things(edges)}.`,
    remedy:
      'Nennen Sie auch die Kanten dazwischen, schließen Sie die Abnäher dazwischen, oder zeichnen Sie für jeden Zug ein eigenes Teil.',
  }),
  'gap-also-along': ({ gap }, say) => ({
    message: `${say.thing(gap)} kann nicht zugleich angenäht und als Lücke ausgelassen werden.`,
    remedy: 'Streichen Sie sie aus den Kanten des Bündchens, oder lassen Sie die Lücke weg.',
  }),
  'gap-not-beside': ({ gap, neighbours }, say) => ({
    message: `${say.thing(gap)} berührt keine der Kanten, an die das Bündchen genäht wird.`,
    remedy: `Sie liegt zwischen ${say.list(neighbours.map(say.name))}: Nennen Sie eine davon, oder eine andere Lücke.`,
  }),
  'band-too-short': ({ piece, betweenMm, gapMm }, say) => ({
    message: `${say.thing({ piece })} wäre zwischen den Enden ${say.length(betweenMm)} lang; die Lücke von ${say.length(gapMm)} braucht das auf.`,
    remedy: 'Machen Sie das Verhältnis größer oder die Lücke schmaler.',
  }),
  'drafted-misshapen': ({ piece }, say) => ({
    message: `${say.thing({ piece })} hätte nach diesen Maßen keine Form, die sich zuschneiden lässt: Linien würden sich kreuzen, oder eine hätte keine Länge.`,
    remedy: 'Geben Sie Maße an, die näher beieinander liegen.',
  }),
  'drafted-along-itself': ({ piece }, say) => ({
    message: `${say.thing({ piece })} kann nicht an seinen eigenen Kanten gezeichnet werden.`,
    remedy: 'Geben Sie dem neuen Teil einen anderen Namen.',
  }),
  'dart-in-facing': ({ dart }, say) => ({
    message: `${say.thing(dart)} öffnet sich, wo der Beleg endet.`,
    remedy: 'Schließen oder verlegen Sie das zuerst.',
  }),
  'facing-over-darts': ({ piece, darts }, say) => ({
    message: `${say.thing(piece)} wurde mit geschlossenen Abnähern abgenommen und liegt flach: ${say.things(darts)}.`,
    remedy: 'Es ist nichts zu tun: Nähen Sie die Abnäher vor dem Beleg.',
  }),
  'facing-end-too-wide': ({ edge, widthMm, edgeMm }, say) => ({
    message: `Ein ${say.length(widthMm)} breiter Beleg passt dort nicht: ${say.thing(edge)} ist dort ${say.length(edgeMm)} lang.`,
    remedy: 'Machen Sie ihn dort schmaler.',
  }),
  'no-shoulder-between': ({ piece, edges }, say) => ({
    message: `Ein kombinierter Beleg nimmt Hals und Armloch mit der Schulter dazwischen (${say.thing(piece)}), nicht: ${say.things(edges)}.`,
    remedy: 'Nennen Sie Hals und Armloch, oder zeichnen Sie mit „draft facing“ für jedes einen Beleg.',
  }),
  'facing-too-wide': ({ piece, widthMm }, say) => ({
    message: `Ein ${say.length(widthMm)} breiter Beleg passt an dieser Kante nicht hinein: ${say.thing({ piece })}.`,
    remedy: 'Machen Sie ihn schmaler.',
  }),
  'facings-do-not-join': ({ pieces }, say) => ({
    message: `Die Belege von ${say.things(pieces)} lassen sich nicht in einem Stück schneiden: Keine Naht bringt ihre Enden zusammen.`,
    remedy: 'Zeichnen Sie sie ohne „joined“.',
  }),
  'facings-overlap': ({ pieces }, say) => ({
    message: `Aneinandergelegt liegen die Belege von ${say.things(pieces)} übereinander und lassen sich nicht in einem Stück schneiden.`,
    remedy: 'Zeichnen Sie sie ohne „joined“, oder machen Sie sie schmaler.',
  }),
  'allowances-differ': ({ piece, edge, allowanceMm, others }, say) => ({
    message: `${say.thing({ piece })} hat die Zugabe von ${say.thing(edge)}, ${say.allowance(allowanceMm)}; eine andere hat: ${say.things(others)}.`,
    remedy: 'Geben Sie erst allen Kanten, an die es genäht wird, dieselbe Zugabe.',
  }),
  'hem-becomes-seam': ({ piece, edges, wasMm, allowanceMm }, say) => ({
    message: `${say.things(edges)}: wird nicht mehr umgeschlagen, weil dort ${say.thing({ piece })} angenäht wird; aus ${say.allowance(wasMm)} Saum wurden ${say.allowance(allowanceMm)} Nahtzugabe.`,
    remedy: 'Geben Sie im Schritt eine andere „allowance“ an, wenn sie breiter oder schmaler sein soll.',
  }),
  'one-for-each': ({ piece, count, lengthMm }, say) => ({
    message: `Es gibt ${count === 2 ? 'eines für links und eines für rechts' : `${count}, für jede Stelle eines`}: ${say.thing({ piece })} wird ${count === 2 ? 'zweimal' : `${count}-mal`} zugeschnitten, je ${say.length(lengthMm)} lang, Zugaben an den Enden inbegriffen.`,
    remedy: 'Es ist nichts zu tun.',
  }),
  'several-stretches': ({ piece, stretches, extraJoinsMm }, say) => ({
    message: `Die Kanten von ${say.thing({ piece })} liegen an ${stretches} getrennten Stellen des Kleidungsstücks; die Länge gilt für alle zusammen.`,
    remedy: `Schneiden Sie es für jede auseinander${extraJoinsMm > 0 ? `, und geben Sie für die Enden ${say.length(extraJoinsMm)} zu` : ''}.`,
  }),
  'narrower-than-allowances': ({ piece, widthMm, edgeAllowanceMm, allowanceMm }, say) => ({
    message: `${say.thing({ piece })}, ${say.length(widthMm)} breit zugeschnitten, bestünde nur aus zwei Zugaben von ${say.allowance(edgeAllowanceMm)}; genäht wird es stattdessen ${say.allowance(allowanceMm)} vom Rand.`,
    remedy: 'Machen Sie es breiter, oder geben Sie der Kante zuerst eine kleinere Zugabe.',
  }),
  'inner-line-trimmed': ({ piece }, say) => ({
    message: `${say.thing({ piece })} folgt einer Biegung, die enger ist als seine Breite; die innere Linie läuft dort spitz zusammen.`,
    remedy:
      'Es ist nichts zu tun; machen Sie es schmaler, wenn die innere Linie der ganzen Biegung folgen soll.',
  }),
  'shaped-band-folded': ({ piece }, say) => ({
    message: `„${say.name(piece)}“ ist geschwungen und lässt sich nicht der Länge nach falten.`,
    remedy:
      'Lassen Sie „cut“ weg, dann wird es in zwei Lagen zugeschnitten, oder „far edge“, dann wird es gerade.',
  }),
  'shaped-band-too-steep': ({ piece, sewnMm, farMm, widthMm }, say) => ({
    message: `Zwischen ${say.length(sewnMm)} und ${say.length(farMm)} liefe „${say.name(piece)}“ bei ${say.length(widthMm)} Breite mehr als halb herum und läge auf sich selbst.`,
    remedy: `Geben Sie eine obere Länge näher an ${say.length(sewnMm)} an, oder eine größere Breite.`,
  }),
  'edges-not-halved': ({ piece, edges }, say) => ({
    message: `${say.things(edges)}: Von der hinteren zur vorderen Mitte sind die beiden Hälften nicht gleich, wie „${say.name(piece)}“ es braucht.`,
    remedy:
      'Nennen Sie alle Kanten des Halsausschnitts, und achten Sie darauf, dass beide Seiten gleich sind.',
  }),
  'elastic-too-long': ({ elasticMm, edgeMm }, say) => ({
    message: `Ein Gummiband von ${say.length(elasticMm)} zieht eine Kante von ${say.length(edgeMm)} nicht ein.`,
    remedy: `Geben Sie eines kürzer als ${say.atMost(edgeMm)} an, oder machen Sie erst die Kante länger.`,
  }),
  'slit-too-long': ({ edge, slitMm, edgeMm }, say) => ({
    message: `${say.thing(edge)} ist ${say.length(edgeMm)} lang; ein Schlitz von ${say.length(slitMm)} geht nicht hinein.`,
    remedy: `Geben Sie höchstens ${say.atMost(edgeMm)} an.`,
  }),
  'loose-ends': ({ piece }, say) => ({
    message: `„${say.name(piece)}“ hängt lose: An Kinderkleidung können Bänder, Kordeln und Schlaufen hängenbleiben und strangulieren.`,
    remedy: 'Keine an Kapuze oder Hals eines Kindes; im Übrigen gelten die örtlichen Vorschriften.',
  }),
  'pocket-corners-too-large': ({ byMm, mostMm }, say) => ({
    message: `Ecken von ${say.length(byMm)} gehen in diese Tasche nicht hinein.`,
    remedy: `Runden Sie sie um höchstens ${say.atMost(mostMm)}.`,
  }),
  'pocket-mark-unknown': ({ piece, name, names }, say) => ({
    message: `${say.thing({ piece })} hat keinen Punkt ${say.written(name)}.`,
    remedy: instead_(name, names, 'Punkte', say),
  }),
  'pocket-off-piece': ({ pocket, piece }, say) => ({
    message: `„${say.name(pocket)}“ läge dort nicht ganz auf ${say.thing(piece)}.`,
    remedy: 'Wählen Sie eine Stelle weiter von Kanten und Abnähern, oder machen Sie die Tasche kleiner.',
  }),
  'mouth-beyond-seam': ({ seam, toMm, lengthMm }, say) => ({
    message: `${say.thing(seam)} ist ${say.length(lengthMm)} lang; der Eingriff endete bei ${say.length(toMm)}.`,
    remedy: 'Beginnen Sie weiter oben, oder machen Sie den Eingriff kürzer.',
  }),
  'fly-not-at-waist': ({ edge }, say) => ({
    message: `${say.thing(edge)} stößt an keinem Ende an eine Taille.`,
    remedy:
      'Nennen Sie die vordere Mitte, die von der Taille herabläuft, oder sagen Sie, welche Kante die Taille ist: data-role="waist" an ihr.',
  }),
  'fly-on-fold': ({ edge }, say) => ({
    message: `${say.thing(edge)} liegt im Stoffbruch, dort öffnet sich nichts.`,
    remedy: 'Machen Sie erst eine Naht daraus, mit „fold to seam“.',
  }),
  'fly-beyond-edge': ({ edge, wantedMm, lengthMm }, say) => ({
    message: `Der Schlitz reichte ${say.length(wantedMm)} weit hinab: ${say.thing(edge)} ist ${say.length(lengthMm)} lang.`,
    remedy: 'Machen Sie die Öffnung kürzer.',
  }),
  'fly-edge-bent': ({ edge, offMm }, say) => ({
    message: `Ein angeschnittener Schlitzbeleg wird in der vorderen Mitte gefaltet; ${say.thing(edge)} weicht dort ${say.slight(offMm)} von einer Geraden ab.`,
    remedy:
      'Geben Sie dem Vorderteil einen eigenen Beleg, mit „draft fly“, oder machen Sie die Öffnung kürzer.',
  }),
  'hood-too-small': ({ heightMm, depthMm, neckMm }, say) => ({
    message: `Eine Kapuze, ${say.length(heightMm)} hoch und ${say.length(depthMm)} tief, steht nicht auf einem halben Hals von ${say.length(neckMm)}.`,
    remedy: 'Machen Sie sie höher und tiefer, oder lassen Sie die Halskante weniger ansteigen.',
  }),
  'hood-without-cords': ({ piece }, say) => ({
    message: `„${say.name(piece)}“: für ein Kind keine Kordel und kein Zugband an Kapuze oder Hals; sie können hängenbleiben und strangulieren.`,
    remedy:
      'Schließen Sie sie mit Gummi im Inneren oder einem Druckknopf; es gelten die örtlichen Vorschriften.',
  }),
  'pocket-beyond-edge': ({ edge, wantedMm, lengthMm }, say) => ({
    message: `${say.thing(edge)} hat bis zur nächsten Ecke oder zum nächsten Abnäher ${say.length(lengthMm)}; Eingriff und Beutel brauchen ${say.length(wantedMm)}.`,
    remedy: 'Machen Sie dort den Eingriff oder den Beutel kleiner.',
  }),
  'corner-not-there': ({ first, second }, say) => ({
    message: `${say.thing(first)} und ${say.thing(second)} treffen sich in keiner Ecke.`,
    remedy: 'Nennen Sie die beiden Kanten, die sich dort treffen, wo die Tasche liegen soll.',
  }),
  'interfacing-too-far-inside': ({ piece, insideMm }, say) => ({
    message: `${say.slight(insideMm)} innerhalb der Nahtlinie verlöre die Einlage eine Kante: ${say.thing(piece)}.`,
    remedy: 'Nehmen Sie weniger: Wenige Millimeter halten sie aus den Nähten heraus.',
  }),
  'piece-replaced': ({ piece, seam }, say) => ({
    message: `Das gezeichnete ${say.thing({ piece })} tritt an die Stelle des alten${seam ? `, auch in ${say.thing(seam)}` : ''}.`,
    remedy: 'Geben Sie dem neuen Teil einen anderen Namen, wenn beide gebraucht werden.',
  }),
};

/** Was gezeichnet wurde, und wie es angenäht wird. */
export const drafts: Sentences<DeriveSentences> = {
  'drafted-band': (
    { piece, count, edgeMm, gapMm, lengthMm, widthMm, ratioPercent, stretchPercent, replaced },
    say,
  ) =>
    `${say.thing({ piece })} für ${say.length(edgeMm)} Kante${
      gapMm > 0 ? ` und eine Lücke von ${say.length(gapMm)}` : ''
    } zu ${say.percent(ratioPercent)} gezeichnet: ${times(count)}${cut(lengthMm, widthMm, say)}; der angenähte Teil wird um ${say.percent(stretchPercent)} gedehnt${instead(replaced)}.`,
  'drafted-lapped': (
    { piece, count, edgeMm, sewnMm, lengthMm, widthMm, overlapMm, underlapMm, folded, replaced },
    say,
  ) => {
    const laps = [
      ...(overlapMm > 0 ? [`${say.length(overlapMm)} Übertritt`] : []),
      ...(underlapMm > 0 ? [`${say.length(underlapMm)} Untertritt`] : []),
    ];
    return `${say.thing({ piece })} für ${say.length(edgeMm)} Kante gezeichnet: fertig ${say.length(sewnMm)}${laps.length > 0 ? `, dazu ${say.list(laps)}` : ''}; ${times(count)}${cut(lengthMm, widthMm, say)}${folded ? ', der Länge nach zu falten' : ''}${instead(replaced)}.`;
  },
  'drafted-pieces': ({ pieces }, say) => `${pieces.map(say.saying).join('; ')}.`,
  'drafted-piece': ({ piece, count, lengthMm, widthMm }, say) =>
    `${say.thing({ piece })} gezeichnet, fertig ${say.length(lengthMm)} × ${say.length(widthMm)}; ${count}-mal zuschneiden`,
  'drafted-casing': ({ piece, count, edgeMm, lengthMm, widthMm, elasticMm, drawnPercent, replaced }, say) =>
    `${say.thing({ piece })} für ${say.length(edgeMm)} Kante gezeichnet: ${times(count)}${cut(lengthMm, widthMm, say)}, der Länge nach um ${say.length(elasticMm)} Gummiband zu falten, das sie um ${say.percent(drawnPercent)} einzieht${instead(replaced)}.`,
  'drafted-placket': ({ piece, edge, slitMm, lengthMm, widthMm }, say) =>
    `${say.thing(edge)} öffnet sich um einen Schlitz von ${say.length(slitMm)}; ${say.thing({ piece })}, der ihn einfasst: ${cut(lengthMm, widthMm, say)}.`,
  'drafted-seam-pocket': ({ seam, fromMm, mouthMm, pieces }, say) =>
    `${say.thing(seam)} bleibt auf ${say.length(mouthMm)} offen, ${say.length(fromMm)} von ihrem Anfang; dafür gezeichnet: ${say.things(pieces)}.`,
  'drafted-slant-pocket': ({ piece, mouthMm, pieces }, say) =>
    `${say.thing(piece)} schräg abgeschnitten, der Eingriff ${say.length(mouthMm)} lang; dafür gezeichnet: ${say.things(pieces)}.`,
  'drafted-fly': ({ edge, lengthMm, over, pieces }, say) =>
    `${say.thing(edge)} öffnet sich ${say.length(lengthMm)} weit, das ${over === 'right' ? 'rechte' : 'linke'} Vorderteil liegt oben; dafür wurde gezeichnet: ${say.things(pieces)}.`,
  'added-fly-extension': ({ edge, lengthMm, widthMm, over }, say) =>
    `${say.thing(edge)} hat einen angeschnittenen Schlitzbeleg, ${say.length(widthMm)} breit, Öffnung ${say.length(lengthMm)}: Das ${over === 'right' ? 'rechte' : 'linke'} Vorderteil wird in der Mitte gefaltet und liegt oben.`,
  'drafted-lining': ({ pieces, shorterMm, pleatMm, seams }, say) =>
    `${say.things(pieces)} abgenommen${shorterMm > 0 ? `, ${say.length(shorterMm)} kürzer` : ''}${pleatMm > 0 ? `, mit ${say.length(pleatMm)} Bewegungsfalte in der hinteren Mitte` : ''}; Nähte mit ihnen: ${seams}.`,
  'drafted-interfacing': ({ piece, of, count, insideMm, instead }, say) =>
    `${say.thing(piece)} wurde abgenommen von: ${say.thing(of)}, ${
      insideMm === undefined
        ? 'mit dessen Zugaben, in den Nähten mitgefasst'
        : insideMm === 0
          ? 'auf der Nahtlinie, ohne Zugaben'
          : `${say.slight(insideMm)} innerhalb der Nahtlinie, ohne Zugaben`
    }; ${count}-mal zuschneiden${instead ? ', statt des zusätzlichen Zuschnitts aus diesem Stoff' : ''}.`,
  'drafted-strip': ({ kind, piece, count, edgeMm, lengthMm, widthMm, squareMm, replaced }, say) =>
    `${say.thing({ piece })} für ${say.length(edgeMm)} Kante gezeichnet: ${times(count)}${cut(lengthMm, widthMm, say)}${
      kind === 'binding'
        ? ` im schrägen Fadenlauf${squareMm === undefined ? '' : `, fortlaufend aus einem Quadrat von ${say.length(squareMm)} oder aneinandergesetzt`}`
        : ''
    }${instead(replaced)}.`,
  'drafted-facing': ({ kind, pieces }, say) =>
    `${kind === 'facing' ? 'Beleg' : 'Sicherung'} gezeichnet: ${pieces.map(say.saying).join('; ')}.`,
  'drafted-facing-piece': ({ piece, lengthMm, widthMm }, say) =>
    `${say.thing({ piece })}, an der äußeren Kante ${say.length(lengthMm)} lang und ${say.length(widthMm)} breit`,
  'edges-together': ({ edges }, say) => say.things(edges),
  'sew-band-on': ({ piece, edges, gap, stretchPercent, ring }, say) =>
    `Nähen Sie ${say.thing({ piece })} an ${say.things(edges)}: Stecken Sie Zeichen auf Zeichen${gap ? ', die Enden der Lücke zuerst' : ''}, und ${
      stretchPercent > 0
        ? `dehnen Sie es dazwischen gleichmäßig um ${say.number(stretchPercent, 0)} %`
        : 'verteilen Sie die Weite dazwischen gleichmäßig'
    }${ring ? '' : '; die Enden bleiben offen'}.`,
};

const times = (count: number): string => (count > 1 ? `${count} Stück, je ` : '');

/** Maße zum Zuschneiden sagen, dass Zoll gerundet sind. */
const cut = (lengthMm: number, widthMm: number, say: Say): string =>
  `${say.length(lengthMm)} × ${say.length(widthMm)} zugeschnitten${say.unit === 'in' ? ' (auf 1/8 in gerundet)' : ''}`;

const instead = (replaced: boolean): string =>
  replaced ? '; es tritt an die Stelle des alten Teils dieses Namens' : '';
