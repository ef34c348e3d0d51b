import type { AlterSentences } from '@paperhinge/alter';
import type { OperationSentences } from '@paperhinge/alter/sayings';
import type { Say, Sentences } from '../catalogue.js';

/** What each step did. */
export const did: Sentences<OperationSentences & Pick<AlterSentences, 'said'>> = {
  said: ({ text }) => text,
  'closed-dart': ({ dart, into, wholeDeg, closedDeg, sharePercent, alongMm, openedMm }, say) => {
    const how =
      sharePercent === 100
        ? `geschlossen (${say.angle(wholeDeg)})`
        : `zu ${say.percent(sharePercent)} geschlossen (${say.angle(closedDeg)} von ${say.angle(wholeDeg)})`;
    return `${say.thing(dart)} ${how}; ${say.thing(into)} ${say.length(alongMm)} von ihrem Anfang aufgeschnitten und um ${say.length(openedMm)} geöffnet.`;
  },
  'moved-dart': ({ dart, about, to, angleDeg, alongMm, openedMm, backMm }, say) =>
    `${say.thing(dart)} (${say.angle(angleDeg)}) verlegt: ${say.thing(to)}, ${say.length(alongMm)} von ihrem Anfang, ` +
    `gedreht um ${about ? say.thing(about) : 'seine Spitze'}; dort ${say.length(openedMm)} breit` +
    `${backMm > 0 ? `, die Spitze ${say.length(backMm)} zurückgesetzt` : ''}.`,
  shortened: ({ pieces, at, byMm }, say) =>
    `${say.things(pieces)} ${at === 'hem' ? 'am Saum' : `an ${say.thing({ line: at })}`} um ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'verlängert' : 'gekürzt'}.`,
  spread: (
    { piece, from, to, hinge, overlapped, slashes, byMm, angleDeg = 0, fromMm, toMm, ...more },
    say,
  ) => {
    const size = byMm === undefined ? say.angle(angleDeg) : say.length(byMm);
    const opened = hinge === 'from' ? to : from;
    const where =
      slashes === 1
        ? `aufgeschnitten von ${say.thing(from)} (${say.length(fromMm[0]!)} von ihrem Anfang) bis ${say.thing(to)} (${say.length(toMm[0]!)} von ihrem Anfang)`
        : `an ${slashes} Stellen aufgeschnitten von ${say.thing(from)} bis ${say.thing(to)}`;
    const what = overlapped ? 'übereinandergeschoben' : 'gespreizt';
    const how =
      hinge === 'none'
        ? `parallel um ${size} ${what}`
        : `um ${size} ${what} (${say.thing(opened)}), am anderen Ende ${more.otherEndMm === undefined ? 'gelenkig' : `um ${say.length(more.otherEndMm)}`}`;
    const taken = more.into === undefined ? '' : `, aufgenommen als ${foldWords[more.into]}`;
    return `${say.thing(piece)} ${where} und ${how}${taken}.`;
  },
  'took-in': (facts, say) => movedSeam('enger gemacht', facts, say),
  'let-out': (facts, say) => movedSeam('weiter gemacht', facts, say),
  'share-of-seam': ({ sharePercent, from }, say) =>
    from === undefined && (sharePercent === 0 || sharePercent === 100)
      ? sharePercent === 0
        ? 'ihrem Anfang'
        : 'ihrem Ende'
      : `${say.percent(sharePercent)} des Weges${from === undefined ? '' : ` ab ${end(from, say)}`}`,
  'distance-on-seam': ({ alongMm, from }, say) =>
    `${say.length(alongMm)} ab ${from === undefined ? 'ihrem Anfang' : end(from, say)}`,
  'recut-neckline': ({ piece, shape, depthMm = 0, halfWidthMm, shoulderMm, line }, say) => {
    if (line) return `${say.thing(piece)}: neuer Ausschnitt entlang ${say.thing(line)}.`;
    const width = halfWidthMm === undefined ? '' : `, ${say.length(halfWidthMm)} nach jeder Seite`;
    const kind = {
      'inset V': 'eingesetzter V-Ausschnitt',
      V: 'V-Ausschnitt',
      round: 'runder Ausschnitt',
      square: 'eckiger Ausschnitt',
      boat: 'U-Boot-Ausschnitt',
      scoop: 'tiefer runder Ausschnitt',
      sweetheart: 'Herzausschnitt',
      drawn: 'Ausschnitt',
    }[shape];
    return `${say.thing(piece)}: ${kind}, ${say.length(depthMm)} tief${width}${shoulderMm === undefined ? '' : `; von der Schulter bleiben ${say.length(shoulderMm)}`}.`;
  },
  'finish-inset': ({ piece }, say) => `Den V-Einsatz bis zur Spitze fertignähen: ${say.thing(piece)}.`,
  trued: ({ edges }, say) => edges.map(say.saying).join(' '),
  'trued-edge': ({ edge, movedMm }, say) =>
    `${say.thing(edge)} ausgestrichen, höchstens um ${say.slight(movedMm)} bewegt.`,
  'trued-nothing': ({ edge, left }, say) =>
    `${say.thing(edge)} blieb, wie sie war${left ? '' : ': Sie verläuft schon glatt'}.`,
  'set-allowance': ({ edges, count, toMm, formerMm }, say) => {
    const words: Readonly<Record<string, string>> = { 'all seams': 'aller Nähte', 'all hems': 'aller Säume' };
    const which =
      typeof edges === 'string'
        ? words[edges]!
        : count > mostNamed
          ? `von ${count} Kanten`
          : `von ${say.things(edges)}`;
    const before = formerMm.filter(mm => mm !== toMm).map(say.allowance);
    return `Die Zugabe ${which} beträgt jetzt ${say.allowance(toMm)}${before.length === 0 ? '' : `, vorher ${say.list(before)}`}.`;
  },
  'set-seam': ({ seam, easeMm, easePercent, takenUp, toleranceMm }, say) => {
    const ease =
      easeMm === undefined
        ? easePercent === undefined
          ? ''
          : ` mit ${say.percent(easePercent)} Mehrweite`
        : ` mit ${say.length(easeMm)} Mehrweite`;
    const ways = {
      eased: 'eingehalten',
      gathered: 'gekräuselt',
      stretched: 'gedehnt',
      pleated: 'in Falten gelegt',
    };
    const how = takenUp === undefined ? '' : `, die längere Seite ${ways[takenUp]}`;
    const near =
      toleranceMm === undefined ? '' : `; ihre Seiten dürfen um ${say.slight(toleranceMm)} verschieden sein`;
    return `${say.thing(seam)} wird${ease} genäht${how}${near}.`;
  },
  'added-notches': ({ seam, alongMm, style }, say) => {
    const kind =
      { single: 'einfache', double: 'doppelte', triple: 'dreifache' }[style] +
      (alongMm.length === 1 ? 's' : '');
    return `${say.thing(seam)}: ${alongMm.length} ${kind} Passzeichen auf beiden Seiten, ${say.list(alongMm.map(say.length))} ab ihrem Anfang.`;
  },
  unfolded: ({ piece, fold }, say) =>
    `${say.thing(piece)} um ${say.thing(fold)} zu einem ganzen Teil aufgeklappt; die gespiegelten Kanten heißen „… other“.`,
  refreshed: ({ pieces }, say) =>
    pieces.length === 0 ? 'Nichts wurde neu gezeichnet.' : `Neu gezeichnet: ${say.things(pieces)}.`,
  'removed-piece': ({ piece, seams }, say) =>
    `${say.thing(piece)} entfernt${seams === 0 ? '' : `, mit ${seams === 1 ? 'der Naht' : `${seams} Nähten`}, deren eine Seite es war`}.`,
};

/** Wie aufgenommen wird, was sich öffnet. */
const foldWords: Readonly<Record<string, string>> = {
  ease: 'Einhalteweite',
  gathers: 'Kräusel',
  'knife pleats': 'einfache Falten',
  'box pleats': 'Quetschfalten',
  'inverted pleats': 'Kellerfalten',
  tucks: 'Biesen',
};

/** How many edges a sentence names before it only counts them. */
const mostNamed = 4;

const end = (from: string, say: Say): string =>
  from === 'start' ? 'ihrem Anfang' : from === 'end' ? 'ihrem Ende' : say.written(from);

function movedSeam(
  what: string,
  { seam, byMm, eachMm, edges, inLimb, from, to, between }: OperationSentences['took-in'],
  say: Say,
): string {
  const [by, second] = byMm;
  const [each] = eachMm;
  const whole = (where: string) =>
    `${say.thing(seam)}${where} ${inLimb ? 'an jedem Ärmel oder Bein' : 'im ganzen Kleidungsstück'} um ${say.length(by!)} ${what}`;
  const share = `${say.length(each!)} an jeder von ${edges} Kanten`;
  if (between)
    return `${whole(` in der Mitte zwischen ${say.list(between.map(say.saying))}`)}, ${share}, an beiden Stellen um nichts.`;
  const start = from ? say.saying(from) : 'ihrem Anfang',
    finish = to ? say.saying(to) : 'ihrem Ende';
  if (second !== undefined)
    return `${whole(` bei ${start}`)} und um ${say.length(second)} bei ${finish}, geteilt durch ${edges} Kanten.`;
  if (!from && !to) return `${whole('')}: ${share}.`;
  return `${whole(` bei ${start}`)}, ${share}, auslaufend auf nichts bei ${finish}.`;
}
