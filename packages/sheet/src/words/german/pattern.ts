import type { PatternTellings } from '@paperhinge/geometry/sayings';
import type { Tellings } from '../catalogue.js';
import { shownName } from '../names.js';
import { instead, oneOf } from './instead.js';
import { roles } from './roles.js';

const ownName = 'Geben Sie jedem einen eigenen Namen.';
const nouns = {
  piece: 'Ein Teil',
  seam: 'Eine Naht',
  fabric: 'Ein Stoff',
  edge: 'Eine Kante',
  dart: 'Ein Abnäher',
  pleat: 'Eine Falte',
  line: 'Eine Linie',
  mark: 'Ein Punkt',
  notch: 'Ein Passzeichen',
  outline: 'Ein Umriss',
  fastening: 'Ein Verschluss',
} as const;

const unlike = {
  pieces: 'nicht dieselben Teile',
  outline: 'nicht dieselben Kanten, Abnäher und Falten',
  kinds: 'nicht dieselben Arten von Kanten',
  notches: 'nicht dieselben Passzeichen',
  lines: 'nicht dieselben Linien',
  marks: 'nicht dieselben Punkte',
  seams: 'nicht dieselben Nähte',
} as const;

export const pattern: Tellings<PatternTellings> = {
  'length-not-understood': ({ attribute }, say) => ({
    message: `${attribute === undefined ? 'Eine Länge' : `Die Länge in ${say.written(attribute)}`} wurde nicht verstanden.`,
    remedy: 'Schreiben Sie sie als 12 mm, 1.2 cm, 3/8 in oder 2 7/8".',
  }),
  'length-out-of-range': ({ attribute }, say) => ({
    message: `${attribute === undefined ? 'Eine Länge' : `Die Länge in ${say.written(attribute)}`} ist größer als 100 m.`,
    remedy: 'Prüfen Sie ihre Einheit.',
  }),
  'percent-not-understood': ({ write, lacksSign }) => ({
    message: lacksSign ? 'Einem Prozentwert fehlt das Zeichen.' : 'Ein Prozentwert wurde nicht verstanden.',
    remedy:
      write === undefined
        ? 'Schreiben Sie einen Prozentwert wie 80 %.'
        : `Schreiben Sie ${write}, wenn Sie das meinen.`,
  }),
  'position-not-understood': ({ form }) => ({
    message: 'Eine Stelle auf einer Kante wurde nicht verstanden.',
    remedy: {
      'from-nothing': 'Nennen Sie nach „from“ die Kante.',
      'share-or-length': 'Schreiben Sie 50 % oder 1/2 für einen Anteil, 0.5 mm für eine Länge.',
      any: 'Schreiben Sie sie als 1/3, 40 %, 1/3 from KANTE oder 60 mm from KANTE.',
    }[form],
  }),
  'position-off-edge': ({ edge, alongMm, edgeMm }, say) =>
    edge !== undefined && alongMm !== undefined && edgeMm !== undefined && alongMm <= edgeMm
      ? {
          message: `${say.thing(edge)}: Das Stück davon endet, wo es beginnt, oder davor.`,
          remedy:
            'Schreiben Sie von den zwei Stellen die zuerst, die näher an dem Ende hinter „from“ liegt, etwa 0 mm to 25 mm.',
        }
      : {
          message:
            edge === undefined || alongMm === undefined || edgeMm === undefined
              ? 'Eine Stelle liegt jenseits ihrer Kante.'
              : `${say.thing(edge)}: Die Stelle liegt bei ${say.length(alongMm)}, die Kante ist ${say.length(edgeMm)} lang.`,
          remedy: 'Geben Sie einen Anteil von 0 bis 100 % oder eine Länge innerhalb der Kante an.',
        },
  'ambiguous-end': ({ edge, from }, say) => ({
    message: `${say.thing(edge)}: ${say.written(from)} berührt beide Enden.`,
    remedy:
      'Schreiben Sie „from start“ oder „from end“: Der Anfang ist das Ende, das im Uhrzeigersinn zuerst kommt.',
  }),
  'not-a-neighbour': ({ edge, from, neighbours }, say) => ({
    message: `${say.thing(edge)}: ${say.written(from)} berührt kein Ende.`,
    remedy: `Schreiben Sie ${neighbours.map(name => `„from ${shownName(name)}“`).join(' oder ')}.`,
  }),
  'pattern-not-usable': ({ at }) => ({
    message: `Der Schnitt ist beschädigt: „${at}“ fehlt oder ist nicht, was dorthin gehört.`,
    remedy: 'Öffnen Sie den Schnitt noch einmal aus seiner Datei.',
  }),
  'unknown-piece': ({ name, names, seam }, say) => ({
    message:
      seam === undefined
        ? `Der Schnitt hat kein Teil ${say.written(name)}.`
        : `${say.thing({ seam })} nennt ein Teil, das es nicht gibt: ${say.written(name)}.`,
    remedy: instead(name, names, 'Teile', say),
  }),
  'unknown-edge': ({ name, names, piece, seam, notch }, say) => ({
    message: `${seam !== undefined ? `${say.thing({ seam })}: ` : notch ? 'Ein Passzeichen: ' : ''}${say.thing({ piece })} hat keine Kante ${say.written(name)}.`,
    remedy: instead(name, names, 'Kanten', say),
  }),
  'name-missing': ({ what }) => ({ message: `${nouns[what]} hat keinen Namen.`, remedy: ownName }),
  'duplicate-piece': ({ name }, say) => ({
    message: `Zwei Teile heißen ${say.written(name)}.`,
    remedy: ownName,
  }),
  'duplicate-seam': ({ name }, say) => ({
    message: `Zwei Nähte heißen ${say.written(name)}.`,
    remedy: ownName,
  }),
  'duplicate-fabric': ({ name }, say) => ({
    message: `Zwei Stoffe heißen ${say.written(name)}.`,
    remedy: ownName,
  }),
  'duplicate-edge': ({ name }, say) => ({
    message: `Zwei Kanten, Abnäher oder Falten heißen ${say.written(name)}.`,
    remedy: ownName,
  }),
  'cut-count': ({ most }) => ({
    message: `Wie oft ein Teil zugeschnitten wird, muss eine ganze Zahl von 1 bis ${most} sein.`,
    remedy: 'Schreiben Sie 1, oder 2 für ein Paar.',
  }),
  'piece-without-outline': () => ({
    message: 'Ein Teil hat keine Kanten.',
    remedy: 'Kennzeichnen Sie seine Kanten mit data-edge oder einen geschlossenen Pfad mit data-outline.',
  }),
  'edge-without-length': () => ({
    message: 'Eine Kante oder ein Abnäherschenkel hat keine Länge.',
    remedy: 'Entfernen oder zeichnen Sie sie.',
  }),
  'open-outline': ({ gapMm, between }, say) => ({
    message:
      gapMm === undefined
        ? `Der Umriss ist offen: An das Ende von ${say.list((between ?? []).map(say.written))} stößt nichts.`
        : `Der Umriss ist offen${between === undefined ? '' : ` zwischen ${say.list(between.map(say.written))}`}: eine Lücke von ${say.slight(gapMm)}.`,
    remedy: 'Lassen Sie jede Kante dort beginnen, wo die vorige endet.',
  }),
  'outline-in-parts': ({ name }, say) => ({
    message: `Die Kanten bilden mehr als einen Ring; ${say.written(name)} liegt nicht im ersten.`,
    remedy:
      'Geben Sie jedem Ring ein eigenes Teil, oder zeichnen Sie die Kanten so, dass sie aneinanderstoßen.',
  }),
  'edge-names-do-not-fit': ({ edges, names }) => ({
    message: `Der Umriss hat zwischen seinen Ecken ${edges} Kanten, genannt sind aber ${names} Namen.`,
    remedy: 'Nennen Sie jede Kante, im Uhrzeigersinn ab der Ecke an oder nach dem ersten Punkt des Pfades.',
  }),
  'dart-without-apex': () => ({
    message: 'Ein Abnäher hat keine Spitze: Seine Linie hat keine Ecke.',
    remedy: 'Zeichnen Sie ihn vom Ende eines Schenkels zur Spitze und zurück zum Ende des anderen.',
  }),
  'self-crossing': ({ xMm, yMm, edges }, say) => ({
    message: `Der Umriss kreuzt sich selbst, ${say.length(xMm)} von links und ${say.length(yMm)} von oben: ${say.list(edges.map(say.written))}.`,
    remedy: 'Zeichnen Sie die Kanten so, dass sie sich nur an ihren Enden treffen.',
  }),
  'edge-in-parts': ({ name }, say) => ({
    message: `Die Kante ${say.written(name)} liegt an getrennten Stellen.`,
    remedy:
      'Geben Sie jedem Stück einen eigenen Namen; nur Abnäher, Falten oder eine andere Kante dürfen eine Kante unterbrechen.',
  }),
  'allowance-out-of-range': ({ mostMm }, say) => ({
    message: `Eine Nahtzugabe muss zwischen 0 und ${say.atMost(mostMm)} liegen.`,
    remedy: 'Prüfen Sie Vorzeichen und Einheit.',
  }),
  'allowance-on-fold': () => ({
    message: 'Eine Bruch- oder Schnittkante hat keine Zugabe.',
    remedy: 'Setzen Sie ihre Zugabe auf 0 oder machen Sie eine Naht daraus.',
  }),
  'opening-out-of-range': () => ({
    message: 'Ein Schlitz muss länger als 0 sein.',
    remedy: 'Geben Sie seine Länge an oder lassen Sie ihn weg.',
  }),
  'dart-legs-differ': ({ dart, firstMm, secondMm, limitMm }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel sind ${say.length(firstMm)} und ${say.length(secondMm)} lang, Unterschied ${say.slight(Math.abs(firstMm - secondMm))}.`,
    remedy:
      Math.abs(firstMm - secondMm) > limitMm
        ? `Zeichnen Sie sie gleich lang, auf ${say.allowance(limitMm)} genau.`
        : 'Genäht entsteht eine Stufe von dieser Größe: Zeichnen Sie sie gleich lang.',
  }),
  'outline-without-area': () => ({
    message: 'Der Umriss umschließt nichts.',
    remedy: 'Prüfen Sie, ob seine Kanten übereinander gezeichnet sind.',
  }),
  'outline-anticlockwise': () => ({
    message: 'Der Umriss läuft gegen den Uhrzeigersinn.',
    remedy: 'Führen Sie seine Kanten im Uhrzeigersinn auf.',
  }),
  'notch-off-edge': ({ alongMm, edgeMm }, say) => ({
    message: `Ein Passzeichen liegt bei ${say.length(alongMm)}, seine Kante ist ${say.length(edgeMm)} lang.`,
    remedy: 'Verschieben Sie es auf die Kante.',
  }),
  'word-not-understood': ({ attribute, near, words, readAs }, say) => ({
    message: `${say.written(attribute)} sagt ein Wort, das nicht dazugehört${readAs === undefined ? '' : `; gelesen wurde ${say.written(readAs)}`}.`,
    remedy: oneOf(near, words, say),
  }),
  'length-not-positive': ({ attribute }, say) => ({
    message: `${say.written(attribute)} muss länger als 0 sein.`,
    remedy: 'Geben Sie die Länge an oder lassen Sie sie weg.',
  }),
  'stretch-out-of-range': ({ most }) => ({
    message: `Eine Dehnung oder Rücksprungkraft muss zwischen 0 und ${most} % liegen.`,
    remedy: 'Prüfen Sie die Zahl.',
  }),
  'sizes-differ': ({ part, sizes: [first, second], piece }, say) => ({
    message: `Die Größen ${say.name(first)} und ${say.name(second)} unterscheiden sich nicht nur in ihren Maßen: ${piece === undefined ? '' : `${say.thing(piece)}, `}${unlike[part]}.`,
    remedy: 'Zeichnen Sie beide Größen mit denselben Namen in derselben Reihenfolge.',
  }),
  'share-out-of-range': () => ({
    message: 'Der Anteil der größeren Größe muss zwischen 0 und 100 % liegen.',
    remedy: 'Schreiben Sie 50 % für eine Größe in der Mitte.',
  }),
  'unknown-level': ({ level, names }, say) => ({
    message: `Kein Teil hat eine Höhe ${say.written(level)}.`,
    remedy: instead(level, names, 'Höhen', say),
  }),
  'role-guessed': ({ edge, role }, say) => ({
    message: `${say.thing(edge)}: nach Name und Lage als ${roles[role]} angesehen.`,
    remedy: `Schreiben Sie in der Zeichnung data-role="${role}" dazu, oder was es sonst ist.`,
  }),
  'empty-seam': ({ name }, say) => ({
    message: `${say.thing({ seam: name })} hat auf einer Seite keine Kante.`,
    remedy: 'Geben Sie beide Seiten an, a und b.',
  }),
};
