import type { OrderSentences, OrderTellings } from '@paperhinge/alter/sayings';
import type { Saying, Thing } from '@paperhinge/geometry';
import { capital } from '../capital.js';
import type { Say, Sentences, Tellings } from '../catalogue.js';
import { seamText } from '../step-text.js';

/** "the front shoulder", "the front shoulder and the back shoulder". */
const edgeWords = (edges: readonly Thing[], say: Say): string =>
  say.list(edges.map(edge => `the ${say.shortly(edge)}`));

/** "the bust dart of the front" at the head of a sentence or within it. */
const onePass = (others: readonly Saying[] | undefined, say: Say): string =>
  others === undefined ? '' : `, in one pass with ${say.list(others.map(say.saying))}`;

const finishes: Readonly<Record<string, string>> = {
  'turned once': 'Turn up',
  'turned twice': 'Turn up twice',
  rolled: 'Roll',
  faced: 'Face',
  bound: 'Bind',
  banded: 'Finish the band of',
};

const how: Readonly<Record<string, string>> = {
  eased: 'easing in',
  gathered: 'drawing up the gathers by',
  stretched: 'stretching by',
  pleated: 'with the pleats taking up',
};

const each = (times: number | undefined): string =>
  times === undefined ? '' : times === 2 ? ' on both pieces' : ` on each of the ${times} pieces`;
const leaving = (openMm: number | undefined, say: Say): string =>
  openMm === undefined ? '' : `, leaving ${say.length(openMm)} open`;

type Part = NonNullable<OrderSentences['job-seam']['parts']>[number];
/** "the front crotch all but the first 18 cm from the waist". */
const partly = (part: Part, say: Say): string => `the ${say.shortly(part.edge)} ${stretch(part, say)}`;
function stretch({ beside, fromMm, toMm, toEnd }: Part, say: Say): string {
  const from = `from the ${say.name(beside.edge ?? '')}`;
  if (toEnd) return `all but the first ${say.length(fromMm)} ${from}`;
  return fromMm < 0.05
    ? `along the first ${say.length(toMm)} ${from}`
    : `between ${say.length(fromMm)} and ${say.length(toMm)} ${from}`;
}

const folds: Readonly<Record<string, string>> = {
  knife: 'a knife pleat',
  box: 'a box pleat',
  inverted: 'an inverted pleat',
  tuck: 'a tuck',
};
/** " as a box pleat", where its name does not say so. */
const foldedAs = ({ pleat = '' }: Thing, kind: string): string =>
  pleat.includes(kind) ? '' : ` as ${folds[kind] ?? kind}`;

const topstitchedAt = (mm: number | undefined, say: Say): string =>
  mm === undefined ? '' : ` and topstitch at ${say.allowance(mm)}`;

const finishing: Readonly<Record<string, string>> = {
  ...finishes,
  'turned once': 'Turn in',
  'turned twice': 'Turn in twice',
  banded: 'Sew the band to',
};
const closures = { hooks: ['hook and eye', 'hooks and eyes'], snaps: ['snap', 'snaps'] } as const;

export const order: Sentences<OrderSentences> = {
  'job-stay': ({ piece, edges }, say) => `Sew ${say.thing(piece)} to ${edgeWords(edges, say)}.`,
  'job-fuse': ({ piece }, say) => `Fuse the interfacing to ${say.thing(piece)}.`,
  'job-fuse-piece': ({ piece, on }, say) => `Fuse ${say.thing(piece)} to ${say.thing(on)}.`,
  'job-fuse-strip': ({ edge, widthMm }, say) =>
    `Fuse a strip of interfacing, ${say.allowance(widthMm)} wide, along ${say.thing(edge)}.`,
  'job-dart': ({ dart }, say) => `Sew and press ${say.thing(dart)}.`,
  'job-pleat': ({ pleat, kind, takenMm, stitchedMm }, say) =>
    `Fold ${say.thing(pleat)}${foldedAs(pleat, kind)}, which takes up ${say.length(takenMm)}, and ${
      stitchedMm > 0 ? `stitch it down for ${say.length(stitchedMm)}` : 'baste it'
    }.`,
  'job-inset': ({ edge }, say) => `Finish ${say.thing(edge)}.`,
  'job-opening': ({ edge, lengthMm }, say) =>
    `Make the opening of ${say.length(lengthMm)} in ${say.thing(edge)}.`,
  'job-zip': ({ fastening, edge, lengthMm, sort }, say) =>
    `Put ${say.thing(fastening)}, ${sort === undefined ? '' : `${sort}, `}${say.length(lengthMm)} long, into ${say.thing(edge)}.`,
  'job-pocket': ({ piece, on = [] }, say) =>
    on.length === 0
      ? `Make ${say.thing(piece)} and sew it to its place.`
      : `Make ${say.thing(piece)} and sew to the marked place on ${say.things(on)}.`,
  'job-tie': ({ piece, hasEnd }, say) =>
    `Fold ${say.thing(piece)} lengthwise, right sides together, and sew the open edges${hasEnd ? ' but for what is sewn on later' : ' but for a gap in the long one'}, turn and press.`,
  'job-layers': ({ piece, between = [] }, say) =>
    `Sew the layers of ${say.thing(piece)} together along the outer edge${between.length === 0 ? '' : `, ${say.things(between)} between them`}, turn and press.`,
  'job-gather': ({ edges, fromMm, toMm, times }, say) =>
    `Gather ${edgeWords(edges, say)} from ${say.length(fromMm)} to ${say.length(toMm)}${each(times)}.`,
  'job-seam': (
    { a, b, easeMm, takenUp, times, parts = [], openMm, onePassWith, topstitched = [], facing },
    say,
  ) => {
    const worked =
      easeMm === undefined
        ? ''
        : `, ${how[takenUp ?? 'eased']} ${say.length(Math.abs(easeMm))}${each(times)}`;
    const over = topstitched.map(
      ({ edge, topstitchMm }) => `the ${say.shortly(edge)} ${say.allowance(topstitchMm)} from the seam`,
    );
    const stitchedOver = over.length === 0 ? '' : ` Press, and topstitch ${say.list(over)}.`;
    const inPart = parts.length === 0 ? '' : ` (${say.list(parts.map(part => partly(part, say)))})`;
    const right = facing ? ', right sides together' : '';
    return `Sew ${edgeWords(a, say)} to ${edgeWords(b, say)}${right}${inPart}${worked}${leaving(openMm, say)}${onePass(onePassWith, say)}.${stitchedOver}`;
  },
  'job-seam-of-copies': ({ piece, edges, openMm, onePassWith }, say) =>
    `Lay one ${say.name(piece.piece ?? '')} on another, right sides together, and sew ${say.list(edges.map(({ edge }) => `the ${say.name(edge ?? '')}`))}${leaving(openMm, say)}${onePass(onePassWith, say)}.`,
  'job-seam-of-pair': ({ edge, parts: [part] = [], openMm, onePassWith }, say) =>
    `Sew the two edges of ${say.thing(edge)} to one another${part ? `, ${stretch(part, say)}` : ''}${leaving(openMm, say)}${onePass(onePassWith, say)}.`,
  'job-band': ({ piece, edges }, say) => `Sew ${say.thing(piece)} to ${edgeWords(edges, say)}.`,
  'job-facing': ({ piece, edges }, say) =>
    `Sew ${say.thing(piece)} to ${edgeWords(edges, say)}, right sides together.`,
  'job-understitch': ({ pieces }, say) => `Trim, turn and understitch ${say.things(pieces)}.`,
  'job-ring': ({ piece }, say) => `Join the ends of ${say.thing(piece)} into a ring.`,
  'job-turn': ({ piece, gapMm }, say) =>
    `Sew ${say.thing(piece)} to itself over the gap of ${say.length(gapMm)} and turn it.`,
  'job-turn-out': ({ through }, say) =>
    `Turn the garment right side out, drawing it through between outside and lining at ${say.thing(through)}.`,
  'job-turn-through-gap': ({ edge, gapMm }, say) =>
    `Turn the garment right side out through the ${say.length(gapMm)} left open in ${say.thing(edge)}.`,
  'job-close-gap': ({ edge, gapMm }, say) =>
    `Close by hand the ${say.length(gapMm)} left open in ${say.thing(edge)}.`,
  'job-hang': ({ edges }, say) =>
    `Let ${edgeWords(edges, say)} hang for a day, then level ${edges.length > 1 ? 'them' : 'it'}.`,
  'job-hem': ({ edges, finish, depthMm, topstitchMm }, say) => {
    const turned = finishes[finish ?? 'turned once'] ?? 'Finish';
    const depth = depthMm === undefined || !turned.startsWith('Turn') ? '' : ` by ${say.allowance(depthMm)}`;
    const sewn = topstitchMm === undefined && turned.startsWith('Turn') ? ' and sew' : '';
    return `${turned} ${edgeWords(edges, say)}${depth}${sewn}${topstitchedAt(topstitchMm, say)}.`;
  },
  'job-finish': ({ edges, finish, depthMm, topstitchMm }, say) => {
    const doing = finishing[finish] ?? 'Finish';
    const depth = depthMm === undefined || !doing.startsWith('Turn') ? '' : ` by ${say.allowance(depthMm)}`;
    const sewn = topstitchMm === undefined && doing.startsWith('Turn') ? ' and sew' : '';
    return `${doing} ${edgeWords(edges, say)}${depth}${sewn}${topstitchedAt(topstitchMm, say)}.`;
  },
  'job-raw-edge': ({ edges, finish, lengthMm }, say) => {
    const doing = finishing[finish] ?? 'Finish';
    const raw = edges.length > 1 ? 'raw edges' : 'raw edge';
    const sewn = doing.startsWith('Turn') ? ', and sew' : '';
    return `${doing} the ${raw} of ${edgeWords(edges, say)}, ${say.length(lengthMm)} in all${sewn}.`;
  },
  'job-topstitch': ({ edges, topstitchMm }, say) =>
    `Topstitch ${edgeWords(edges, say)} at ${say.allowance(topstitchMm)}.`,
  'job-elastic': ({ fastening, edge, relaxedMm, endsFast }, say) =>
    `Thread ${say.thing(fastening)}${relaxedMm === undefined ? '' : `, ${say.length(relaxedMm)} long,`} into ${say.thing(edge)} and ${endsFast ? 'sew both its ends fast' : 'join its ends'}.`,
  'job-cord': ({ fastening, edge }, say) => `Thread ${say.thing(fastening)} into ${say.thing(edge)}.`,
  'job-buttonholes': ({ pieces, count }, say) =>
    `Work the ${count > 1 ? `${count} buttonholes` : 'buttonhole'} of ${say.things(pieces)}.`,
  'job-closures': ({ kind, edge, count }, say) =>
    `Sew ${count === 1 ? `a ${closures[kind][0]}` : `${count} ${closures[kind][1]}`} to ${say.thing(edge)}.`,
  'job-buttons': ({ pieces, count }, say) =>
    `Sew on the ${count > 1 ? `${count} buttons` : 'button'} of ${say.things(pieces)}.`,

  'called-seam': ({ seam }, say) => say.thing(seam),
  'called-dart': ({ dart }, say) => say.thing(dart),
  'called-pleat': ({ pleat }, say) => say.thing(pleat),
  'called-fastening': ({ fastening }, say) => say.thing(fastening),
  'called-of-piece': ({ what, piece }, say) =>
    what === 'piece' ? say.thing(piece) : `the ${what} of ${say.thing(piece)}`,
  'called-of-edges': ({ what, edges }, say) =>
    what === 'edge' || what === 'hem' ? edgeWords(edges, say) : `the ${what} of ${edgeWords(edges, say)}`,
  'called-plainly': ({ what }) => `the ${what}`,

  'after-job': ({ jobs, because }, say) => `after ${say.list(jobs.map(say.saying))}: ${say.saying(because)}`,
  'because-stayed': ({ edge }, say) =>
    `it keeps ${say.thing(edge)} from growing, so it is there before anything is sewn to that edge`,
  'because-fused': ({ piece }, say) => `interfacing goes on while ${say.thing(piece)} lies flat`,
  'because-dart-crosses': ({ edge }, say) =>
    `it opens into ${say.thing(edge)}, and must lie closed and pressed before that edge is sewn`,
  'because-folded': ({ edge }, say) => `${say.thing(edge)} has its length only once it is folded`,
  'because-raw-edge-flat': () => 'its raw edge is finished while the piece still lies flat',
  'because-raw-edge-whole': () => 'its raw edge lies as it will stay only once that seam is sewn',
  'because-gathered': () => 'the edge fits only once it is gathered',
  'because-flat': () => 'an opening is made while its pieces lie flat',
  'because-edge-round': ({ edges }, say) => `${edgeWords(edges, say)} is finished before the edge round it`,
  'because-crosses': ({ edges }, say) => `it crosses ${edgeWords(edges, say)}`,
  'because-neck-is-round': () => 'the neck is a whole round only once the shoulders are sewn',
  'because-knit-flat': () =>
    'in knits the sleeve goes in flat, and side and underarm are closed in one pass after it',
  'because-shirt-flat': () =>
    'the sleeve goes in flat, as in a shirt, and side and underarm are closed in one pass after it',
  'because-raglan-flat': () =>
    'a raglan sleeve goes in flat, and side and underarm are closed in one pass after it',
  'because-set-in-round': () =>
    'in woven cloth a sleeve is set into the closed armhole, in the round, so that its ease can be shared out',
  'because-sewn-as-ring': () => 'it is sewn on as a ring, its marks on the marks of the edge',
  'because-turned-first': () => 'once it is a ring the part over the gap can no longer be turned',
  'because-hems-drop': () => 'flared and bias cloth drops, and not evenly; a hem sewn at once would dip',
  'because-through-buttonhole': () => 'each button is placed through its finished buttonhole',
  'because-pocket-flat': () => 'pockets and plackets are sewn while the piece lies flat',
  'because-mouth-first': () => 'the opening is turned and pressed before the pocket is closed behind it',
  'because-pocket-mouth': () => 'its mouth is finished before the pocket is sewn on',
  'because-topstitched': () => 'it is topstitched once it is sewn, turned and pressed',
  'because-laid-on': () => 'it is sewn onto the finished piece',
  'because-zip-on-facing': () => 'the zip is sewn to it',
  'because-behind-zip': () => 'it lies behind the zip',
  'because-run-on': () => 'it is crossed flat, and the seams that run on beyond it are closed in one pass',
  'because-gap-last': () => 'it is the way in until then',
  'because-layers-first': () => 'it is sewn and turned before it is sewn on',
  'because-covers-collar': () => 'it covers the seam of the collar',
  'because-faced-first': () => 'a faced edge is turned before a band is sewn over its end',
  'because-facings-joined': () => 'facings are joined to one another before they are sewn on',
  'because-facing-turned': () => 'the facing is sewn on and turned before its sides are closed',
  'because-collar-whole': () => 'a collar is sewn together and turned before it goes on',
  'because-caught-in': ({ piece }, say) => `it catches in the end of ${say.thing(piece)}`,
  'because-between-layers': () => 'it lies between the two layers',
  'because-between': () => 'the collar lies between the garment and its facing',
  'because-sewn-before-turned': () => 'it is turned once it is sewn on',
  'because-lining-turns-through': () =>
    'with shoulders and sides both closed the lining could no longer be turned through',
  'because-casing-first': () => 'it is threaded into the finished casing',
  'because-free': ({ kind }) => early[kind] ?? 'nothing has to be sewn before it',
};

/** Why a job that waits for nothing stands where it stands. */
const early: Readonly<Record<string, string>> = {
  stay: 'an edge is stayed before anything is sewn to it',
  fuse: 'interfacing goes on first, while the piece lies flat',
  dart: 'darts come first, while the piece lies flat',
  pleat: 'pleats come first, while the piece lies flat',
  pocket: 'pockets are easiest while the piece lies flat',
  layers: 'it is made ready to be sewn on',
  opening: 'an opening is easiest while the piece lies flat',
  'raw-edge': 'a raw edge is easiest to finish while the piece lies flat',
  inset: 'an inset is finished before the edge round it',
  turn: 'a part that is turned is sewn while the band is still open at its ends',
  band: 'no seam crosses its edge',
  facing: 'no seam crosses its edge',
  hang: 'no seam crosses the hem',
  hem: 'no seam crosses it; hems come late, when the length is sure',
  finish: 'no seam crosses it',
  topstitch: 'nothing has to be turned before it',
  closure: 'closures come last',
  buttonhole: 'closures come last',
  button: 'closures come last',
};

export const orderTellings: Tellings<OrderTellings> = {
  'order-trapped': ({ jobs }, say) => ({
    message: capital(
      jobs.length === 1
        ? `${say.saying(jobs[0]!)} would have to be done before itself.`
        : `these trap each other, each must come before the next and the last before the first: ${jobs.map(say.saying).join(', ')}.`,
    ),
    remedy: 'Leave one of them open until the others are done, or sew that part in another way.',
  }),
  'facings-not-joined': ({ seam, edges, from }, say) => ({
    message: `No seam joins ${say.things(edges)}, though the facings meet there; the order of work joins them.`,
    remedy: `List it among the seams: seams: ${seamText(seam, edges, from)}.`,
  }),
  'lining-cannot-be-turned': ({ seam, gapMm }, say) => ({
    message:
      'The lining is sewn in all round: with every seam closed the garment can no longer be turned right side out.',
    remedy: `Leave about ${say.length(gapMm)} of ${say.thing(seam)} open, turn the garment through it, and close it by hand.`,
  }),
};
