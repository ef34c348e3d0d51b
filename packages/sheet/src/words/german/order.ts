import type { OrderSentences, OrderTellings } from '@paperhinge/alter/sayings';
import type { Saying, Thing } from '@paperhinge/geometry';
import type { Say, Sentences, Tellings } from '../catalogue.js';
import { seamText } from '../step-text.js';

const edgeWords = (edges: readonly Thing[], say: Say): string =>
  say.list(edges.map(edge => `„${say.shortly(edge)}“`));
const onePass = (others: readonly Saying[] | undefined, say: Say): string =>
  others === undefined ? '' : `, in einem Zug mit ${say.list(others.map(say.saying))}`;

const hems: Readonly<Record<string, string>> = {
  'turned once': 'einschlagen und säumen',
  'turned twice': 'doppelt einschlagen und säumen',
  rolled: 'mit Rollsaum versäubern',
  faced: 'mit Besatz versäubern',
  bound: 'einfassen',
  banded: 'mit dem Bündchen fertigstellen',
};
const how: Readonly<Record<string, string>> = {
  eased: 'eingehalten',
  gathered: 'eingekräuselt',
  stretched: 'gedehnt',
  pleated: 'in Falten gelegt',
};
const what: Readonly<Record<string, string>> = {
  interfacing: 'Einlage',
  gathers: 'Kräuselung',
  opening: 'Schlitz',
  ring: 'Ring',
  gap: 'Lücke',
  understitching: 'Untersteppen',
  hanging: 'Aushängen',
  'raw edge': 'der Schnittkante',
  topstitching: 'dem Absteppen',
  turning: 'dem Wenden',
  buttonholes: 'den Knopflöchern',
  buttons: 'den Knöpfen',
};

const each = (times: number | undefined): string =>
  times === undefined ? '' : times === 2 ? ' (bei beiden Teilen)' : ` (bei jedem der ${times} Teile)`;
const leaving = (openMm: number | undefined, say: Say): string =>
  openMm === undefined ? '' : `; ${say.length(openMm)} bleiben offen`;

type Part = NonNullable<OrderSentences['job-seam']['parts']>[number];
const partly = (part: Part, say: Say): string => `„${say.shortly(part.edge)}“ ${stretch(part, say)}`;
function stretch({ beside, fromMm, toMm, toEnd }: Part, say: Say): string {
  const from = `ab „${say.name(beside.edge ?? '')}“`;
  if (toEnd) return `ohne die ersten ${say.length(fromMm)} ${from}`;
  return fromMm < 0.05
    ? `auf den ersten ${say.length(toMm)} ${from}`
    : `zwischen ${say.length(fromMm)} und ${say.length(toMm)} ${from}`;
}

const folds: Readonly<Record<string, string>> = {
  knife: 'einfache Falte',
  box: 'Quetschfalte',
  inverted: 'Kellerfalte',
  tuck: 'Biese',
};
const foldedAs = ({ pleat = '' }: Thing, kind: string): string =>
  pleat.toLowerCase().includes((folds[kind] ?? kind).toLowerCase()) ? '' : ` als ${folds[kind] ?? kind}`;

const topstitchedAt = (mm: number | undefined, say: Say): string =>
  mm === undefined ? '' : ` und ${say.allowance(mm)} breit absteppen`;

const finishing: Readonly<Record<string, string>> = {
  ...hems,
  'turned once': 'einschlagen und feststeppen',
  'turned twice': 'doppelt einschlagen und feststeppen',
  banded: 'mit dem Bündchen versehen',
};
const closures = {
  hooks: ['Haken mit Öse', 'Haken mit Ösen'],
  snaps: ['Druckknopf', 'Druckknöpfe'],
} as const;

export const order: Sentences<OrderSentences> = {
  'job-stay': ({ piece, edges }, say) => `${say.thing(piece)} an ${edgeWords(edges, say)} nähen.`,
  'job-fuse': ({ piece }, say) => `Einlage auf ${say.thing(piece)} bügeln.`,
  'job-fuse-piece': ({ piece, on }, say) => `${say.thing(piece)} aufbügeln auf: ${say.thing(on)}.`,
  'job-fuse-strip': ({ edge, widthMm }, say) =>
    `Einen ${say.allowance(widthMm)} breiten Streifen Einlage aufbügeln: ${say.thing(edge)}.`,
  'job-dart': ({ dart }, say) => `${say.thing(dart)} nähen und bügeln.`,
  'job-pleat': ({ pleat, kind, takenMm, stitchedMm }, say) =>
    `${say.thing(pleat)}${foldedAs(pleat, kind)} legen (nimmt ${say.length(takenMm)} auf) und ${
      stitchedMm > 0 ? `${say.length(stitchedMm)} weit feststeppen` : 'heften'
    }.`,
  'job-inset': ({ edge }, say) => `${say.thing(edge)} fertigstellen.`,
  'job-opening': ({ edge, lengthMm }, say) =>
    `Schlitz von ${say.length(lengthMm)} arbeiten: ${say.thing(edge)}.`,
  'job-zip': ({ fastening, edge, lengthMm, sort }, say) =>
    `${say.thing(fastening)} (${sort === undefined ? '' : `${sort}, `}${say.length(lengthMm)}) einnähen: ${say.thing(edge)}.`,
  'job-pocket': ({ piece, on = [] }, say) =>
    on.length === 0
      ? `${say.thing(piece)} vorbereiten und an seine Stelle nähen.`
      : `${say.thing(piece)} vorbereiten und an der markierten Stelle aufnähen: ${say.things(on)}.`,
  'job-tie': ({ piece, hasEnd }, say) =>
    `${say.thing(piece)} der Länge nach rechts auf rechts falten, die offenen Kanten${hasEnd ? ' bis auf das, was später angenäht wird,' : ' bis auf eine Lücke in der langen'} zusammennähen, wenden und bügeln.`,
  'job-layers': ({ piece, between = [] }, say) =>
    `Die Lagen von ${say.thing(piece)} an der Außenkante zusammennähen${between.length === 0 ? '' : `, dazwischen: ${say.things(between)}`}, wenden und bügeln.`,
  'job-gather': ({ edges, fromMm, toMm, times }, say) =>
    `${edgeWords(edges, say)} von ${say.length(fromMm)} auf ${say.length(toMm)} einkräuseln${each(times)}.`,
  'job-seam': (
    { a, b, easeMm, takenUp, times, parts = [], openMm, onePassWith, topstitched = [], facing },
    say,
  ) => {
    const worked =
      easeMm === undefined
        ? ''
        : `; dabei werden ${say.length(Math.abs(easeMm))} ${how[takenUp ?? 'eased']}${each(times)}`;
    const over = topstitched.map(
      ({ edge, topstitchMm }) => `„${say.shortly(edge)}“ ${say.allowance(topstitchMm)} neben der Naht`,
    );
    const stitchedOver = over.length === 0 ? '' : ` Bügeln und absteppen: ${say.list(over)}.`;
    const inPart = parts.length === 0 ? '' : ` (${say.list(parts.map(part => partly(part, say)))})`;
    const right = facing ? 'rechts auf rechts ' : '';
    return `${edgeWords(a, say)} ${right}an ${edgeWords(b, say)} nähen${inPart}${onePass(onePassWith, say)}${worked}${leaving(openMm, say)}.${stitchedOver}`;
  },
  'job-seam-of-copies': ({ piece, edges, openMm, onePassWith }, say) =>
    `Zwei gleiche Teile rechts auf rechts legen (${say.name(piece.piece ?? '')}) und zusammennähen: ${say.list(edges.map(({ edge }) => say.name(edge ?? '')))}${onePass(onePassWith, say)}${leaving(openMm, say)}.`,
  'job-seam-of-pair': ({ edge, parts: [part] = [], openMm, onePassWith }, say) =>
    `Beide Kanten zusammennähen: ${say.thing(edge)}${part ? `, ${stretch(part, say)}` : ''}${onePass(onePassWith, say)}${leaving(openMm, say)}.`,
  'job-band': ({ piece, edges }, say) => `${say.thing(piece)} an ${edgeWords(edges, say)} nähen.`,
  'job-facing': ({ piece, edges }, say) =>
    `${say.thing(piece)} rechts auf rechts an ${edgeWords(edges, say)} nähen.`,
  'job-understitch': ({ pieces }, say) =>
    `${say.things(pieces)}: Zugaben zurückschneiden, wenden und untersteppen.`,
  'job-ring': ({ piece }, say) => `Die Enden von ${say.thing(piece)} zum Ring schließen.`,
  'job-turn': ({ piece, gapMm }, say) =>
    `${say.thing(piece)} über der Lücke von ${say.length(gapMm)} mit sich selbst zusammennähen und wenden.`,
  'job-turn-out': ({ through }, say) =>
    `Das Kleidungsstück wenden und dabei zwischen Oberstoff und Futter hindurchziehen: ${say.thing(through)}.`,
  'job-turn-through-gap': ({ edge, gapMm }, say) =>
    `Das Kleidungsstück durch die offen gelassenen ${say.length(gapMm)} wenden: ${say.thing(edge)}.`,
  'job-close-gap': ({ edge, gapMm }, say) =>
    `Die offen gelassenen ${say.length(gapMm)} von Hand schließen: ${say.thing(edge)}.`,
  'job-hang': ({ edges }, say) => `${edgeWords(edges, say)} einen Tag aushängen lassen, dann begradigen.`,
  'job-hem': ({ edges, finish, depthMm, topstitchMm }, say) => {
    const doing = hems[finish ?? 'turned once'] ?? 'fertigstellen';
    return `${edgeWords(edges, say)}${depthMm === undefined || !doing.includes('einschlagen') ? '' : ` ${say.allowance(depthMm)}`} ${topstitchMm === undefined ? doing : doing.replace(' und säumen', '')}${topstitchedAt(topstitchMm, say)}.`;
  },
  'job-finish': ({ edges, finish, depthMm, topstitchMm }, say) => {
    const doing = finishing[finish] ?? 'versäubern';
    const depth = depthMm === undefined || !doing.includes('einschlagen') ? '' : ` ${say.allowance(depthMm)}`;
    return `${edgeWords(edges, say)}${depth} ${doing}${topstitchedAt(topstitchMm, say)}.`;
  },
  'job-raw-edge': ({ edges, finish, lengthMm }, say) =>
    `Schnittkante ${finishing[finish] ?? 'versäubern'}: ${edgeWords(edges, say)}, zusammen ${say.length(lengthMm)}.`,
  'job-topstitch': ({ edges, topstitchMm }, say) =>
    `${edgeWords(edges, say)} ${say.allowance(topstitchMm)} breit absteppen.`,
  'job-elastic': ({ fastening, edge, relaxedMm, endsFast }, say) =>
    `${say.thing(fastening)}${relaxedMm === undefined ? '' : ` (${say.length(relaxedMm)})`} einziehen und ${endsFast ? 'an beiden Enden festnähen' : 'schließen'}: ${say.thing(edge)}.`,
  'job-cord': ({ fastening, edge }, say) => `${say.thing(fastening)} einziehen: ${say.thing(edge)}.`,
  'job-buttonholes': ({ pieces, count }, say) =>
    `${count > 1 ? `${count} Knopflöcher` : 'Knopfloch'} arbeiten: ${say.things(pieces)}.`,
  'job-closures': ({ kind, edge, count }, say) =>
    `${count === 1 ? closures[kind][0] : `${count} ${closures[kind][1]}`} annähen: ${say.thing(edge)}.`,
  'job-buttons': ({ pieces, count }, say) =>
    `${count > 1 ? `${count} Knöpfe` : 'Knopf'} annähen: ${say.things(pieces)}.`,

  'called-seam': ({ seam }, say) => say.thing(seam),
  'called-dart': ({ dart }, say) => say.thing(dart),
  'called-pleat': ({ pleat }, say) => say.thing(pleat),
  'called-fastening': ({ fastening }, say) => say.thing(fastening),
  'called-of-piece': ({ what: sort, piece }, say) =>
    sort === 'piece' ? say.thing(piece) : `${what[sort] ?? sort} von ${say.thing(piece)}`,
  'called-of-edges': ({ what: sort, edges }, say) =>
    sort === 'edge' || sort === 'hem'
      ? edgeWords(edges, say)
      : `${what[sort] ?? sort} von ${edgeWords(edges, say)}`,
  'called-plainly': ({ what: sort }) => what[sort] ?? sort,

  'after-job': ({ jobs, because }, say) => `nach ${say.list(jobs.map(say.saying))}: ${say.saying(because)}`,
  'because-stayed': ({ edge }, say) =>
    `dadurch dehnt sich ${say.thing(edge)} nicht aus, deshalb vor allem, was an diese Kante genäht wird`,
  'because-fused': ({ piece }, say) => `Einlage wird aufgebügelt, solange ${say.thing(piece)} flach liegt`,
  'because-dart-crosses': ({ edge }, say) =>
    `er mündet in ${say.thing(edge)} und muss geschlossen und gebügelt sein, bevor diese Kante genäht wird`,
  'because-folded': ({ edge }, say) => `${say.thing(edge)} hat erst gefaltet ihre Länge`,
  'because-raw-edge-flat': () => 'die Schnittkante wird versäubert, solange das Teil noch flach liegt',
  'because-raw-edge-whole': () =>
    'die Schnittkante liegt erst, wenn diese Naht genäht ist, so, wie sie bleibt',
  'because-gathered': () => 'die Kante passt erst, wenn sie eingekräuselt ist',
  'because-flat': () => 'ein Verschluss oder Schlitz wird gearbeitet, solange die Teile flach liegen',
  'because-edge-round': ({ edges }, say) =>
    `${edgeWords(edges, say)} wird vor der Kante ringsum fertiggestellt`,
  'because-crosses': ({ edges }, say) => `sie kreuzt ${edgeWords(edges, say)}`,
  'because-neck-is-round': () => 'der Halsausschnitt ist erst mit geschlossenen Schultern rund',
  'because-knit-flat': () =>
    'bei Maschenware wird der Ärmel flach eingesetzt, danach werden Seite und Ärmel in einem Zug geschlossen',
  'because-shirt-flat': () =>
    'der Ärmel wird wie bei einem Hemd flach eingesetzt, danach werden Seite und Ärmel in einem Zug geschlossen',
  'because-raglan-flat': () =>
    'ein Raglanärmel wird flach eingesetzt, danach werden Seite und Ärmel in einem Zug geschlossen',
  'because-set-in-round': () =>
    'bei Webstoff wird der Ärmel rund in das geschlossene Armloch gesetzt, damit sich die Mehrweite verteilen lässt',
  'because-sewn-as-ring': () => 'es wird als Ring angenäht, Zeichen auf Zeichen',
  'because-turned-first': () =>
    'als geschlossener Ring lässt sich das Stück über der Lücke nicht mehr wenden',
  'because-hems-drop': () =>
    'ausgestellter und schräger Stoff hängt aus, und zwar ungleich; ein sofort genähter Saum würde zipfeln',
  'because-through-buttonhole': () => 'jeder Knopf wird durch sein fertiges Knopfloch angezeichnet',
  'because-pocket-flat': () => 'Taschen und Schlitze werden genäht, solange das Teil flach liegt',
  'because-mouth-first': () =>
    'der Eingriff wird gewendet und gebügelt, bevor die Tasche dahinter geschlossen wird',
  'because-pocket-mouth': () => 'der Eingriff ist fertig, bevor die Tasche aufgenäht wird',
  'because-topstitched': () => 'abgesteppt wird, was genäht, gewendet und gebügelt ist',
  'because-laid-on': () => 'es wird auf das fertige Teil genäht',
  'because-zip-on-facing': () => 'der Reißverschluss wird daran genäht',
  'because-behind-zip': () => 'es liegt hinter dem Reißverschluss',
  'because-run-on': () =>
    'sie wird flach gekreuzt, und die Nähte, die jenseits weiterlaufen, werden in einem Zug geschlossen',
  'because-gap-last': () => 'bis dahin ist dort der Zugang',
  'because-layers-first': () => 'es wird genäht und gewendet, bevor es angenäht wird',
  'because-covers-collar': () => 'es deckt die Kragennaht ab',
  'because-faced-first': () => 'eine Kante wird belegt und gewendet, ehe ein Bund über ihr Ende genäht wird',
  'because-facings-joined': () => 'Belege werden aneinandergenäht, bevor sie angenäht werden',
  'because-facing-turned': () =>
    'der Beleg wird angenäht und gewendet, bevor seine Seiten geschlossen werden',
  'because-collar-whole': () => 'ein Kragen wird zusammengenäht und gewendet, bevor er angenäht wird',
  'because-caught-in': ({ piece }, say) => `das Ende wird darin mitgefasst: ${say.thing(piece)}`,
  'because-between-layers': () => 'es liegt zwischen den beiden Lagen',
  'because-between': () => 'der Kragen liegt zwischen Oberstoff und Besatz',
  'because-sewn-before-turned': () => 'gewendet wird, wenn alles angenäht ist',
  'because-lining-turns-through': () =>
    'wären Schultern und Seiten geschlossen, ließe sich das Futter nicht mehr wenden',
  'because-casing-first': () => 'es wird in den fertigen Tunnel gezogen',
  'because-free': ({ kind }) => early[kind] ?? 'davor muss nichts genäht werden',
};

const early: Readonly<Record<string, string>> = {
  stay: 'eine Kante wird gesichert, bevor etwas an sie genäht wird',
  fuse: 'Einlage kommt zuerst, solange das Teil flach liegt',
  dart: 'Abnäher kommen zuerst, solange das Teil flach liegt',
  pleat: 'Falten kommen zuerst, solange das Teil flach liegt',
  pocket: 'Taschen gelingen am leichtesten, solange das Teil flach liegt',
  layers: 'es wird zum Annähen vorbereitet',
  opening: 'ein Schlitz gelingt am leichtesten, solange das Teil flach liegt',
  'raw-edge': 'eine Schnittkante lässt sich am leichtesten versäubern, solange das Teil flach liegt',
  inset: 'ein Einsatz wird vor der Kante ringsum fertig',
  turn: 'gewendet wird, solange das Band an den Enden offen ist',
  band: 'keine Naht kreuzt die Kante',
  facing: 'keine Naht kreuzt die Kante',
  hang: 'keine Naht kreuzt den Saum',
  hem: 'keine Naht kreuzt ihn; Säume kommen spät, wenn die Länge feststeht',
  finish: 'keine Naht kreuzt die Kante',
  topstitch: 'davor muss nichts gewendet werden',
  closure: 'Verschlüsse kommen zuletzt',
  buttonhole: 'Verschlüsse kommen zuletzt',
  button: 'Verschlüsse kommen zuletzt',
};

export const orderTellings: Tellings<OrderTellings> = {
  'order-trapped': ({ jobs }, say) => ({
    message:
      jobs.length === 1
        ? `Vor sich selbst müsste erledigt werden: ${say.saying(jobs[0]!)}.`
        : `Diese Arbeiten sperren einander; jede müsste vor der nächsten und die letzte vor der ersten getan werden: ${jobs.map(say.saying).join(', ')}.`,
    remedy: 'Lassen Sie eine davon offen, bis die anderen getan sind, oder nähen Sie dieses Stück anders.',
  }),
  'facings-not-joined': ({ seam, edges, from }, say) => ({
    message: `Keine Naht verbindet ${say.things(edges)}, wo die Belege aneinanderstoßen; die Reihenfolge näht sie zusammen.`,
    remedy: `Führen Sie sie unter den Nähten auf: seams: ${seamText(seam, edges, from)}.`,
  }),
  'lining-cannot-be-turned': ({ seam, gapMm }, say) => ({
    message:
      'Das Futter ist ringsum eingenäht: Sind alle Nähte geschlossen, lässt sich das Kleidungsstück nicht mehr wenden.',
    remedy: `Lassen Sie etwa ${say.length(gapMm)} offen, wenden Sie hindurch und schließen Sie von Hand: ${say.thing(seam)}.`,
  }),
};
