import type { Thing } from '@paperhinge/geometry';
import type { MeasureTellings } from '@paperhinge/geometry/sayings';
import type { Say, Tellings } from '../catalogue.js';
import { capWithEase, edgeText, stepText, typedLength } from '../step-text.js';

export const measure: Tellings<MeasureTellings> = {
  'seam-does-not-match': (facts, say) => ({
    message: `${mismatch(facts, say)}${lyingBetween(facts, say)}${countedOtherwise(facts, say)}`,
    remedy: mismatchRemedy(facts, say),
  }),
  'contour-dart-cut': ({ dart }, say) => ({
    message: `${say.thing(dart)} ist angeschnitten, keine geschlossene Form im Teil mehr, und lässt sich nicht nähen.`,
    remedy:
      'Zeichnen Sie ihn neu, wo er ganz ist: add contour dart. Oder teilen Sie das Teil durch ihn: divide.',
  }),
  'crossing-seams-apart': ({ seam, first, second, offMm }, say) => ({
    message: `${say.thing(seam)}: Die Nähte vor ${say.thing(first)} und vor ${say.thing(second)} kreuzen sie ${say.slight(Math.abs(offMm))} auseinander.`,
    remedy: `Sollen sie sich treffen, verschieben Sie eine um ${say.slight(Math.abs(offMm))}.`,
  }),
  'notches-do-not-meet': ({ seam, notch, partner, aMm, bMm, differenceMm, offMm }, say) => ({
    message: `${say.thing(seam)}: ${notchWords(notch, say)} liegt ${say.slight(bMm)} vom Anfang, sein Gegenstück, ${notchWords(partner, say)}, ${say.slight(aMm)}: ${easeBefore(differenceMm - offMm, say)}Sie verfehlen sich um ${say.slight(Math.abs(offMm))}.`,
    remedy: `Verschieben Sie ${notchWords(notch, say)} um ${say.slight(Math.abs(offMm))} ${offMm > 0 ? 'vom Nahtanfang weg' : 'zum Nahtanfang hin'}.`,
  }),
  'ease-the-wrong-way': ({ seam, notch, partner, easeMm }, say) => ({
    message: `${say.thing(seam)}: Kurz vor ${notchWords(notch, say)} ist diese Seite um ${say.slight(Math.abs(easeMm))} länger, während die Naht sonst andersherum eingehalten wird.`,
    remedy: `Verschieben Sie dieses Passzeichen um ${say.slight(Math.abs(easeMm))} zurück oder ${notchWords(partner, say)} vor.`,
  }),
  'notch-misses-seam': ({ seam, notch, offMm }, say) => ({
    message: `${say.thing(seam)}: ${notchWords(notch, say)} verfehlt die Naht, die auf der anderen Seite ankommt, um ${say.slight(Math.abs(offMm))}.`,
    remedy: `Verschieben Sie es um ${say.slight(Math.abs(offMm))} ${offMm > 0 ? 'zum Nahtanfang hin' : 'vom Nahtanfang weg'}.`,
  }),
  'notch-without-partner': ({ seam, notches, count }, say) => ({
    message: `${say.thing(seam)}: ${say.list(notches.map(n => notchWords(n, say)))} ${count === 1 ? 'hat' : 'haben'} auf der anderen Seite kein Gegenstück.`,
    remedy: 'Zeichnen Sie dieselbe Strecke auf der anderen Seite an oder lassen Sie das Passzeichen weg.',
  }),
  'notches-wanted': ({ seams, longestMm }, say) => ({
    message: `Noch ohne Passzeichen: ${say.things(seams)}, bis zu ${say.length(longestMm)} lang.`,
    remedy: `Zeichnen Sie auf beiden Seiten die Mitte an: ${seams.map(({ seam = '' }) => stepText('add notches', { seam, count: 1 })).join(', ')}.`,
  }),
  'joined-line-broken': ({ closed, first, second, cornerDeg, stepMm, takeMm, blendMm, ...is }, say) => {
    const seen = [
      ...(is.corner
        ? [`eine ${cornerDeg > 0 ? 'Spitze' : 'Delle'} von ${say.angle(Math.abs(cornerDeg))}`]
        : []),
      ...(is.step ? [`eine Stufe von ${say.slight(Math.abs(stepMm))}`] : []),
    ];
    const amount = say.slight(Math.abs(takeMm));
    const [longer, shorter] = stepMm > 0 ? [first, second] : [second, first];
    const todo = [
      ...(is.corner
        ? [
            `${cornerDeg > 0 ? `Nehmen Sie dort ${amount} weg` : `Geben Sie dort ${amount} zu`}, auf beiden Seiten innerhalb von ${say.length(blendMm)} auslaufend: ${trueStep([first, second])}.`,
          ]
        : []),
      ...(is.step
        ? [
            `Nehmen Sie dort ${say.slight(Math.abs(stepMm))} weg (${say.thing(longer)}) oder geben Sie es zu (${say.thing(shorter)}).`,
          ]
        : []),
    ];
    return {
      message: `${say.thing(closed)} ${closed.pleat === undefined ? 'genäht' : 'gelegt'}: ${both(first, second, say)} ${isSame(first, second) ? 'bildet' : 'bilden'} ${say.list(seen)}.`,
      remedy: todo.join(' '),
    };
  },
  'turned-back-end-off': ({ under, over, piece, angleDeg }, say) => ({
    message: `${say.thing(under)} liegt umgeschlagen nicht auf ${say.thing(over)}: um ${say.angle(angleDeg)} verdreht.`,
    remedy: `Geben Sie ihm dort die Form dessen, worunter es liegt, oder zeichnen Sie es neu: ${say.thing(piece)}.`,
  }),
  'edge-kinked': ({ edge, next, count, angleDeg, alongMm, from }, say) => {
    const kink = count === 1 ? 'ein Knick' : `${say.number(count, 0)} Knicke, der schärfste`;
    const place =
      alongMm === undefined || from === undefined ? '' : `, ${say.length(alongMm)} von ${say.thing(from)}`;
    return {
      message:
        next === undefined
          ? `${say.thing(edge)}: ${kink} von ${say.angle(angleDeg)}${place}.`
          : `${say.thing(edge)} geht mit einem Knick von ${say.angle(angleDeg)} in ${say.thing(next)} über.`,
      remedy: `Ziehen Sie die Linie neu: ${trueStep(next === undefined ? [edge] : [edge, next])}.`,
    };
  },
  'edge-turns-back': ({ edge, spurMm, alongMm, from }, say) => ({
    message: `${say.thing(edge)} läuft um ${say.slight(spurMm)} hinaus und wieder zurück, ${say.length(alongMm)} von ${say.thing(from)}: ein Sporn, um den die Schnittkante in eine Spitze auslaufen kann.`,
    remedy: 'Löschen Sie in der Zeichnung den Punkt an ihrer Spitze.',
  }),
  'edge-ends-hooked': ({ edge, hookMm, beside }, say) => ({
    message: `${say.thing(edge)} endet neben ${say.thing(beside)} in einem Häkchen von ${say.slight(hookMm)}, nach dem sich die Ecke der Schnittkante richtet.`,
    remedy: 'Löschen Sie in der Zeichnung den Punkt neben dieser Ecke.',
  }),
  'edge-stepped': ({ edge, stepMm, alongMm, from }, say) => ({
    message: `${say.thing(edge)} hat eine Stufe von ${say.slight(stepMm)}, ${say.length(alongMm)} von ${say.thing(from)}.`,
    remedy: `Ziehen Sie die Linie neu: ${trueStep([edge])}.`,
  }),
  'fold-corner-not-square': ({ edge, angleDeg, amountMm, dips }, say) => ({
    message: `${say.thing(edge)} trifft den Stoffbruch mit ${say.angle(angleDeg)} statt ${say.angle(90)}: Aufgeklappt entsteht in der Mitte eine ${dips ? 'Delle' : 'Spitze'}.`,
    remedy: `Zeichnen Sie die Kante rechtwinklig zum Bruch, dort etwa ${say.slight(amountMm)} ${dips ? 'zugeben' : 'wegnehmen'}: ${trueStep([edge])}.`,
  }),
  'small-differences': ({ kinks, sharpestDeg, edges, seams, mostMm }, say) => {
    const seen = [
      ...(kinks === 0
        ? []
        : [
            `${kinks === 1 ? 'ein Knick' : `${say.number(kinks, 0)} Knicke`} von ${kinks === 1 ? '' : 'höchstens '}${say.angle(sharpestDeg)} (${say.things(edges)})`,
          ]),
      ...(seams.length === 0
        ? []
        : [
            `ein Unterschied von ${seams.length === 1 ? '' : 'höchstens '}${say.slight(mostMm)} zwischen den Seiten von ${say.things(seams)}`,
          ]),
    ];
    return {
      message: `Klein genug, um es so zu nähen: ${say.list(seen)}.`,
      remedy:
        kinks === 0
          ? 'Verteilen Sie den Unterschied über die Naht.'
          : `Um die Knicke zu glätten: ${trueStep(edges)}.`,
    };
  },
  'opening-longer-than-edge': ({ edge, openingMm, edgeMm }, say) => ({
    message: `${say.thing(edge)}: Der Schlitz von ${say.length(openingMm)} ist länger als die Kante mit ${say.length(edgeMm)}.`,
    remedy:
      'Geben Sie eine Länge innerhalb der Kante an; einen Schlitz über zwei Kanten geben Sie für jede an.',
  }),
  'piece-in-no-seam': ({ piece }, say) => ({
    message: `${say.thing(piece)} ist nirgends angenäht: Fehlt eine Naht?`,
    remedy:
      'Führen Sie unter „seams“ auf, woran es genäht wird; wird es wie eine Tasche aufgesetzt, zeichnen Sie dort seinen Platz mit data-line="placement".',
  }),
  'edges-left-raw': ({ role, edges }, say) => ({
    message: `Nichts ist angenäht und nichts versäubert die Kante: ${say.list(edges.map(e => say.thing(e)))}.`,
    remedy: rawRemedy(role, edges, say),
  }),
  'lining-edges-loose': ({ edges }, say) => ({
    message: `Keine Naht fasst sie, sie hinge innen lose: ${say.list(edges.map(e => say.thing(e)))}.`,
    remedy:
      'Führen Sie unter „seams“ auf, was daran genäht wird, etwa die Kante des Kleidungsstücks, unter der sie liegt; oder geben Sie in der Zeichnung an, wie sie versäubert wird, etwa data-finish="turned once".',
  }),
  'ends-hang-loose': ({ things, guessed }, say) => ({
    message: `Lose hängt${guessed ? ', der Form nach ein Band oder Träger' : ''}: ${say.things(things)}. An Kinderkleidung können Bänder, Kordeln und Schlaufen hängenbleiben und strangulieren.`,
    remedy:
      'Keine an Kapuze oder Hals eines Kindes; im Übrigen gelten die örtlichen Vorschriften. An beiden Enden angenäht oder weggelassen hängt nichts.',
  }),
  'no-seams': () => ({
    message:
      'Es sind keine Nähte aufgeführt, also wurde keine verglichen: Ob die Teile zusammenpassen, ist nicht geprüft.',
    remedy:
      'Führen Sie unter „seams“ auf, was woran genäht wird, etwa side: { a: front.side from armhole, b: back.side from armhole }.',
  }),
};

type Facts<C extends keyof MeasureTellings> = MeasureTellings[C];

const facingNames = {
  neck: 'Halsbeleg',
  armhole: 'Armlochbeleg',
  waist: 'Taillenbeleg',
  opening: 'Vorderkantenbeleg',
  wrist: 'Ärmelbeleg',
  hem: 'Saumbeleg',
  hood: 'Kapuzenbeleg',
  collar: 'Unterkragen',
} as const;

function rawRemedy(role: Facts<'edges-left-raw'>['role'], edges: readonly Thing[], say: Say): string {
  const face = stepText('draft facing', {
    name: facingNames[role],
    along: edges.map(edgeText),
    width: typedLength(60, say.unit),
  });
  if (role === 'hem' || role === 'wrist')
    return `Wird sie eingeschlagen, schreiben Sie in der Zeichnung data-kind="hem" daran; oder mit Beleg versehen: ${face}.`;
  return `Mit Beleg, Einfassung oder Bündchen versehen: ${face}. Oder in der Zeichnung angeben, wie sie versäubert wird, etwa data-finish="bound".`;
}

const fitted = {
  eased: 'einzuhaltenden',
  gathered: 'einzukräuselnden',
  stretched: 'zu dehnenden',
  pleated: 'in Falten zu legenden',
} as const;

function mismatch(
  { longer, shorter, aMm, bMm, offMm, easeWantedMm, takenUp }: Facts<'seam-does-not-match'>,
  say: Say,
): string {
  const [longMm, shortMm] = offMm > 0 ? [aMm, bMm] : [bMm, aMm];
  const off = say.slight(Math.abs(offMm));
  const verb = longer.length > 1 ? 'sind' : 'ist';
  const figures = `${say.length(longMm)} gegenüber ${say.length(shortMm)}`;
  // The side that was to be the longer one is the one that lacks.
  if (Math.abs(easeWantedMm) >= 0.05 && Math.sign(offMm) !== Math.sign(easeWantedMm)) {
    const is = shorter.length > 1 ? 'sind' : 'ist';
    const wanted = `${say.things(shorter)} ${shorter.length > 1 ? 'sollen' : 'soll'} ${say.slight(Math.abs(easeWantedMm))} länger sein als ${say.things(longer)}`;
    return `${wanted} und ${is} ${say.slight(Math.abs(longMm - shortMm))} ${shortMm > longMm ? 'länger' : 'kürzer'}: ${say.length(shortMm)} gegenüber ${say.length(longMm)}; es fehlen ${off}.`;
  }
  return Math.abs(easeWantedMm) < 0.05
    ? `${say.things(longer)} ${verb} ${off} länger als ${say.things(shorter)}: ${figures}.`
    : `${say.things(longer)} ${verb} ${off} zu lang für ${say.things(shorter)}, die ${fitted[takenUp]} ${say.slight(Math.abs(easeWantedMm))} schon abgezogen: ${figures}.`;
}

/** Whether side a is the one that the sentence names first. */
const isNamedFirst = ({ offMm, easeWantedMm }: Facts<'seam-does-not-match'>): boolean =>
  Math.abs(easeWantedMm) < 0.05 ? offMm > 0 : easeWantedMm > 0;

function lyingBetween({ from, to }: Facts<'seam-does-not-match'>, say: Say): string {
  if (from === undefined || to === undefined) return '';
  return ` Der Unterschied liegt zwischen ${placeWords(from, say)} und ${placeWords(to, say)}.`;
}

function countedOtherwise(facts: Facts<'seam-does-not-match'>, say: Say): string {
  const { counted, otherAMm, otherBMm } = facts;
  if (otherAMm === undefined || otherBMm === undefined) return '';
  const [first, second] = isNamedFirst(facts) ? [otherAMm, otherBMm] : [otherBMm, otherAMm];
  const figures = `${say.length(first)} und ${say.length(second)}`;
  return counted === 'garment'
    ? ` Jedes Teil zählt dabei so oft, wie es zugeschnitten wird; je einmal sind es ${figures}.`
    : ` So oft gezählt, wie die Teile zugeschnitten werden, sind es ${figures}.`;
}

function mismatchRemedy(facts: Facts<'seam-does-not-match'>, say: Say): string {
  const {
    seam,
    shorten,
    shortenTimes,
    lengthen,
    lengthenTimes,
    offMm,
    differenceMm,
    easeWantedMm,
    redraft,
    cap,
    layered,
    layers,
    folded,
  } = facts;
  const by = (times: number): string =>
    `${say.slight(Math.abs(offMm) / times)}${times > 1 ? ` (sie wird dort ${say.number(times, 0)}-mal genäht)` : ''}`;
  const again =
    redraft === undefined ? '' : `Zeichnen Sie ${say.thing(redraft)} für die jetzigen Kanten neu. Oder: `;
  const ease = typedLength(differenceMm, say.unit);
  const byCap =
    cap === undefined
      ? ''
      : ` Oder gleichen Sie es mit der Höhe der Kugel aus: ${capWithEase(cap, seam, typedLength(easeWantedMm, say.unit))}.`;
  const lying =
    folded !== undefined
      ? `Wird ${say.thing(folded)} der Länge nach gefaltet, zeichnen Sie den Bruch in der Mitte ein, mit data-line="fold": Dann stimmen die Seiten überein. `
      : layered === undefined || layers === undefined
        ? ''
        : layers === 1
          ? `Liegt ${say.thing(layered)} dort einfach, lassen Sie data-layers weg: Dann stimmen die Seiten überein. `
          : `Liegen ${say.number(layers, 0)} Lagen von ${say.thing(layered)} aufeinander, geben Sie data-layers="${layers}" an: Dann stimmen die Seiten überein. `;
  return `${lying}${again}Kürzen Sie ${say.thing(shorten)} um ${by(shortenTimes)} oder verlängern Sie ${say.thing(lengthen)} um ${by(lengthenTimes)}.${byCap} Ist der Unterschied gewollt, sagen Sie es: ${stepText('set seam', { seam: seam.seam ?? '', ease })}.`;
}

const easeBefore = (easeMm: number, say: Say): string =>
  Math.abs(easeMm) < 0.05 ? '' : `Die Mehrweite von ${say.slight(Math.abs(easeMm))} davor ist abgezogen. `;

const placeWords = (place: 'beginning' | 'end' | Thing, say: Say): string =>
  typeof place === 'string'
    ? { beginning: 'dem Nahtanfang', end: 'dem Nahtende' }[place]
    : notchWords(place, say);

const styles: Readonly<Record<string, string>> = {
  single: 'Passzeichen (einfach)',
  double: 'Passzeichen (doppelt)',
  triple: 'Passzeichen (dreifach)',
};

function notchWords({ notch = '', ...edge }: Thing, say: Say): string {
  return `${styles[notch] ?? `Passzeichen ${say.written(notch)}`} an ${say.thing(edge)}`;
}

const isSame = (one: Thing, other: Thing): boolean => one.piece === other.piece && one.edge === other.edge;

const both = (first: Thing, second: Thing, say: Say): string =>
  say.things(isSame(first, second) ? [first] : [first, second]);

const trueStep = (edges: readonly Thing[]): string =>
  stepText('true', { edges: [...new Set(edges.map(edgeText))] });
