import type { DividingSentences, DividingTellings } from '@paperhinge/alter/sayings';
import type { Sentences, Tellings } from '../catalogue.js';
import { stepText } from '../step-text.js';

/** Teile geteilt und verbunden, Nähte verlegt, Bruch und Naht. */
export const dividing: Tellings<DividingTellings> = {
  'piece-name-taken': ({ name }, say) => ({
    message: `Der Schnitt hat schon ein Teil ${say.written(name)}.`,
    remedy: 'Geben Sie dem neuen Teil einen anderen Namen.',
  }),
  'seam-name-taken': ({ name }, say) => ({
    message: `Der Schnitt hat schon eine Naht ${say.written(name)}.`,
    remedy: 'Geben Sie der neuen Naht einen anderen Namen: seam: NAME.',
  }),
  'edge-name-taken': ({ piece, name }, say) => ({
    message: `${say.thing(piece)} hat schon eine Kante oder einen Abnäher ${say.written(name)}.`,
    remedy: 'Geben Sie der neuen Naht einen anderen Namen: seam: NAME.',
  }),
  'division-end-unclear': ({ piece }, say) => ({
    message: `${say.thing(piece)}: Wo der Schnitt beginnt oder endet, ist nicht klar.`,
    remedy: 'Geben Sie jedes Ende als Kante mit einer Stelle an oder als Abnäher, nicht beides.',
  }),
  'band-too-wide': ({ edge, widthMm }, say) => ({
    message: `${say.thing(edge)}: Eine Linie ${say.length(widthMm)} weiter innen reicht nicht von einer Seite des Teils zur anderen.`,
    remedy: 'Machen Sie den Streifen schmaler.',
  }),
  'cut-crosses-itself': ({ piece }, say) => ({
    message: `Die Linie, an der ${say.thing(piece)} geschnitten würde, kreuzt sich selbst.`,
    remedy: 'Zeichnen Sie eine Linie ohne Schlinge, oder schneiden Sie weniger Breite ab.',
  }),
  'cut-as-pair': ({ piece, count }, say) => ({
    message: `${say.thing(piece)} liegt nicht mehr im Bruch und wird ${count}-mal zugeschnitten, paarweise.`,
    remedy: 'Nichts zu tun.',
  }),
  'seam-not-of-two-edges': ({ seam }, say) => ({
    message: `${say.thing(seam)} näht nicht eine ganze Kante an eine andere.`,
    remedy: 'Wählen Sie eine Naht zweier ganzer Kanten, oder verbinden oder teilen Sie dort erst die Teile.',
  }),
  'seam-of-one-piece': ({ seam }, say) => ({
    message: `${say.thing(seam)} näht ein Teil an sich selbst.`,
    remedy: 'Für eine gerade Mittelnaht nehmen Sie „seam to fold“.',
  }),
  'seam-not-of-piece': ({ seam, piece }, say) => ({
    message: `${say.thing(seam)} näht dieses Teil nicht: ${say.thing(piece)}.`,
    remedy: 'Nennen Sie eines der beiden Teile, die diese Naht verbindet.',
  }),
  'join-through-dart': ({ seam, edge }, say) => ({
    message: `Ein Abnäher oder eine Falte mündet hier: ${say.thing(edge)}, ${say.thing(seam)}.`,
    remedy: 'Schließen oder verlegen Sie ihn zuerst, oder halten Sie seine Weite ein.',
  }),
  'join-not-flat': ({ seam, apartMm, withinMm }, say) => ({
    message: `${say.thing(seam)}: Kante an Kante liegen ihre Linien ${say.length(apartMm)} auseinander; erlaubt sind ${say.length(withinMm)}.`,
    remedy:
      'Behalten Sie die Naht, oder erlauben Sie mit „within“ mehr, wenn der Unterschied eingehalten werden darf.',
  }),
  'rest-legs-unlike': ({ seam, firstMm, secondMm }, say) => ({
    message: `Jenseits dieser Stelle sind die zwei Linien von ${say.thing(seam)} ${say.slight(firstMm)} und ${say.slight(secondMm)} lang: so werden sie nicht die Schenkel eines Abnähers.`,
    remedy: 'Machen Sie erst beide Seiten der Naht gleich lang, mit „match edge“.',
  }),
  'joined-apart': ({ seam, apartMm }, say) => ({
    message: `${say.thing(seam)}: Ihre Linien lagen bis zu ${say.slight(apartMm)} auseinander; so viel ging dort verloren oder kam hinzu.`,
    remedy: 'Streichen Sie die Kanten aus, die über die Stelle laufen.',
  }),
  'joined-overlapping': ({ seam }, say) => ({
    message: `${say.thing(seam)}: Kante an Kante lägen die beiden Teile aufeinander.`,
    remedy: 'Behalten Sie diese Naht, oder verbinden Sie die Teile an einer anderen.',
  }),
  'joined-cut-unlike': ({ first, second }, say) => ({
    message: `Die Teile wurden verschieden oft zugeschnitten: ${say.thing(first)}, ${say.thing(second)}.`,
    remedy: 'Prüfen Sie, wie oft das verbundene Teil zugeschnitten werden soll.',
  }),
  'edge-renamed': ({ edge, now }, say) => ({
    message: `${say.thing(edge)} heißt jetzt ${say.thing(now)}.`,
    remedy: 'Nichts zu tun.',
  }),
  'fold-there-already': ({ piece, fold }, say) => ({
    message: `${say.thing(piece)} liegt schon im Bruch: ${say.thing(fold)}.`,
    remedy: `Machen Sie aus diesem Bruch erst eine Naht: ${stepText('fold to seam', { piece: piece.piece ?? '' })}.`,
  }),
  'edge-not-for-fold': ({ edge, offMm }, say) => ({
    message: `${say.thing(edge)} weicht ${say.slight(offMm)} von einer Geraden ab und kann nicht im Bruch liegen.`,
    remedy: 'Ziehen Sie die Kante erst gerade: true mit straight: yes; oder behalten Sie die Naht.',
  }),
  'fold-needs-pair': ({ piece, count }, say) => ({
    message: `${say.thing(piece)} wird ${count}-mal zugeschnitten, nicht als gespiegeltes Paar.`,
    remedy:
      'Ist es ein Paar, so schreiben Sie es in die Zeichnung, data-cut="2"; nur ein Paar lässt sich zusammen in den Bruch legen.',
  }),
  'fold-sewn-elsewhere': ({ edge, seam }, say) => ({
    message: `${say.thing(edge)} ist an ein anderes Teil genäht: ${say.thing(seam)}.`,
    remedy: 'Wählen Sie eine Kante, die an sich selbst oder an nichts genäht ist.',
  }),
  'no-fold-to-open': ({ piece }, say) => ({
    message: `${say.thing(piece)} liegt nicht im Bruch.`,
    remedy: 'Wählen Sie ein Teil, das im Bruch liegt.',
  }),
  'seam-strip-too-wide': ({ seam, byMm }, say) => ({
    message: `Ein ${say.length(byMm)} breiter Streifen lässt sich dort nicht anlegen, der Umriss würde sich kreuzen: ${say.thing(seam)}.`,
    remedy: 'Verlegen Sie die Naht um weniger.',
  }),
  'seam-sides-unlike': ({ seam, apartMm }, say) => ({
    message: `${say.thing(seam)}: Ihre beiden Linien waren nicht gleich, sie lagen bis zu ${say.length(apartMm)} auseinander; jetzt sind beide eine Linie.`,
    remedy: 'Prüfen Sie dort den Sitz: Was eingehalten wurde, ist weg.',
  }),
};

/** Was mit Teilen und ihren Nähten geschah. */
export const dividingDone: Sentences<DividingSentences> = {
  divided: ({ piece, fresh, seam, lengthMm }, say) =>
    `${say.thing(piece)} geteilt; ${say.thing(fresh)} ist ein eigenes Teil, angenäht mit ${say.thing(seam)}, auf ${say.length(lengthMm)} geschnitten.`,
  'cut-off-band': ({ edge, band, seam, widthMm, lengthMm, count }, say) =>
    `${say.thing(edge)}: ein ${say.length(widthMm)} breiter Streifen abgeschnitten, ${say.thing(band)}, ${count}-mal zugeschnitten, wieder angenäht: ${say.thing(seam)}, ${say.length(lengthMm)} lang.`,
  'joined-pieces': ({ piece, other, seam, lengthMm }, say) =>
    `${say.thing(other)} mit ${say.thing(piece)} verbunden, auf ${say.length(lengthMm)}: ${say.thing(seam)}; beide sind jetzt ein Teil.`,
  'moved-seam': ({ seam, from, to, byMm }, say) =>
    `${say.thing(seam)} verlegt nach ${say.thing(to)}, um ${byMm.length === 1 ? say.length(byMm[0]!) : `${say.length(byMm[0]!)} am Anfang und ${say.length(byMm[1]!)} am Ende`}; den Streifen hat ${say.thing(from)}.`,
  'fold-became-seam': ({ edge, seam, allowanceMm }, say) =>
    `${say.thing(edge)} ist jetzt eine Naht mit ${say.allowance(allowanceMm)} Zugabe, an sich selbst genäht: ${say.thing(seam)}; das Teil wird als Paar zugeschnitten.`,
  'seam-became-fold': ({ edge }, say) =>
    `${say.thing(edge)} liegt jetzt im Bruch; die Naht entfällt, und das Teil wird einmal zugeschnitten.`,
};
