import {
  type EdgeRun,
  edgeNamed,
  edgeNames,
  type Pattern,
  pieceNamed,
  type Saying,
} from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import { neighboursOf, renamed } from '@paperhinge/geometry/pattern';
import type { NameProposal, NamingProposal, SeamProposal } from '@paperhinge/geometry/trace';
import { commandSaying } from './command-sayings.js';

/** What a sheet of names is written for. */
export interface NamingWishes {
  /** Where the drawing lies, seen from the sheet. */
  readonly file: string;
  /** Words for what is said beside a proposal. */
  readonly sentence: (saying: Saying) => string;
}

/** Seams less sure than this are written as remarks. */
const asserted = 0.5;

/**
 * Proposed names and seams as an alteration sheet that a maker edits: each with how sure it is and why, the unlikely
 * ones as remarks.
 */
export function namingSheet(
  pattern: Pattern,
  { pieces, seams }: NamingProposal,
  wishes: NamingWishes,
): string {
  requireWhole(pattern);
  const names = Object.fromEntries(
    pieces.map(({ piece, name, edges }) => [piece, { name, edges: edges.map(edge => edge.name) }]),
  );
  const called = renamed(pattern, names);
  const own = (run: EdgeRun): EdgeRun => ({
    ...run,
    piece: names[run.piece]!.name,
    edge: names[run.piece]!.edges[edgeNames(pieceNamed(pattern, run.piece)).indexOf(run.edge)]!,
  });
  const taken = new Set<string>();
  return [
    `# ${wishes.sentence(commandSaying('names-proposed', {}))}`,
    `pattern: ${quoted(wishes.file)}`,
    'pieces:',
    ...pieces.flatMap(piece => pieceLines(pattern, piece, seams, wishes)),
    ...(seams.length > 0 ? ['seams:'] : []),
    ...seams.map(one => seamLine(called, one, { own, name: seamName(one, own, taken) }, wishes)),
    '',
  ].join('\n');
}

function pieceLines(
  pattern: Pattern,
  proposal: NameProposal,
  seams: readonly SeamProposal[],
  { sentence }: NamingWishes,
): readonly string[] {
  const { piece, name, role, side, confidence, edges } = proposal;
  if (role === undefined) return [`  # ${quoted(piece)}: ${sentence(commandSaying('piece-not-known', {}))}`];
  const seems = commandSaying('piece-seems', {
    role,
    ...(side ?? {}),
    surePercent: sure(confidence),
  });
  const drawn = pieceNamed(pattern, piece);
  const free = edges.filter(
    ({ edge }) =>
      !seams.some(({ seam }) => [...seam.a, ...seam.b].some(r => r.piece === piece && r.edge === edge)),
  );
  const isPlain = ({ edge }: { readonly edge: string }): boolean => edgeNamed(drawn, edge).kind === 'seam';
  const hems = free.filter(edge => edge.role === 'hem' && isPlain(edge));
  const centres = free.filter(edge => edge.role === 'centre' && isPlain(edge));
  const kinds = (of: readonly { readonly name: string }[], kind: string): string =>
    `{ ${of.map(edge => `${quoted(edge.name)}: ${kind}`).join(', ')} }`;
  return [
    `  ${quoted(piece)}:  # ${sentence(seems)}`,
    `    name: ${quoted(name)}`,
    `    edges: [${edges.map(edge => quoted(edge.name)).join(', ')}]`,
    ...(role === 'lining' ? [`    role: ${role}`] : []),
    ...(drawn.cutting.count === 1 && (role === 'sleeve' || role === 'trouser') ? ['    cut: 2'] : []),
    ...(hems.length > 0 ? [`    kinds: ${kinds(hems, 'hem')}`] : []),
    ...(centres.length > 0
      ? [`    # kinds: ${kinds(centres, 'fold')}  # ${sentence(commandSaying('centre-on-fold', {}))}`]
      : []),
  ];
}

interface Called {
  readonly own: (run: EdgeRun) => EdgeRun;
  readonly name: string;
}

function seamLine(
  called: Pattern,
  { seam, confidence, aMm, bMm }: SeamProposal,
  { own, name }: Called,
  { sentence }: NamingWishes,
): string {
  const side = (runs: readonly EdgeRun[]): string =>
    `[${runs.map(run => runText(called, own(run))).join(', ')}]`;
  const ease = 'mm' in seam.ease && seam.ease.mm !== 0 ? `, ease: ${round(seam.ease.mm)} mm` : '';
  const facts = { surePercent: sure(confidence), aMm, bMm };
  const line = `${quoted(name)}: { a: ${side(seam.a)}, b: ${side(seam.b)}${ease} }`;
  return confidence >= asserted
    ? `  ${line}  # ${sentence(commandSaying('seam-seems', facts))}`
    : `  # ${line}  # ${sentence(commandSaying('seam-perhaps', facts))}`;
}

function seamName({ seam }: SeamProposal, own: (run: EdgeRun) => EdgeRun, taken: Set<string>): string {
  const plain = seam.name;
  const name = taken.has(plain) ? `${own(seam.a[0]!).piece} ${plain}` : plain;
  let free = name;
  for (let i = 2; taken.has(free); i++) free = `${name} ${i}`;
  taken.add(free);
  return free;
}

/** A run as a sheet writes it, with the neighbour that it begins from. */
function runText(pattern: Pattern, { piece, edge, reversed }: EdgeRun): string {
  const { start, end } = neighboursOf(pieceNamed(pattern, piece), edge);
  const text = `${piece}.${edge}`;
  return quoted(start === end ? text : `${text} from ${reversed ? end : start}`);
}

const round = (mm: number): number => Math.round(mm * 10) / 10;

/** A name as YAML takes it for nothing else. */
const quoted = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N} ._/-]*$/u.test(name) &&
  !/^(true|false|null|yes|no|on|off|[yn~])$/i.test(name) &&
  name.trim() === name
    ? name
    : JSON.stringify(name);

/** In per cent; nothing that is proposed is certain. */
const sure = (confidence: number): number => Math.min(99, Math.round(confidence * 100));
