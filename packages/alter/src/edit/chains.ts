import {
  type Finding,
  type Notch,
  type OutlinePart,
  type Path,
  PatternError,
  type Piece,
  partsOfEdge,
  pathEnd,
  pathLength,
  pathsOfPart,
  tolerances,
} from '@paperhinge/geometry';
import { meet } from './meet.js';

/**
 * One stretch of an outline between two corners: an edge, an edge's part beside a dart, or a dart's leg. A piece is
 * edited as the closed ring of its chains and put together again by {@link pieceOfChains}.
 */
export interface Chain {
  readonly part: OutlinePart;
  /** Which leg, where the part is a dart. */
  readonly leg?: 0 | 1;
  readonly path: Path;
  /** Carries a place (mm from the chain's former start) to its new place; nothing where it was cut away. */
  readonly carry: (along: number) => number | undefined;
}

const staying = (along: number): number => along;

/** The ring of chains, clockwise. */
export const chainsOf = (piece: Piece): readonly Chain[] =>
  piece.outline.parts.flatMap((part): readonly Chain[] =>
    part.type === 'edge'
      ? [{ part, path: part.path, carry: staying }]
      : pathsOfPart(part).map((path, leg) => ({
          part,
          ...(part.type === 'dart' ? { leg: leg as 0 | 1 } : {}),
          path,
          carry: staying,
        })),
  );

export const chainLabel = (chain: Chain): string =>
  chain.part.type === 'edge' ? chain.part.name : `dart ${chain.part.name}`;

/** A chain after `by` mm were added at its start (negative: cut off there). */
export const grownAtStart = (chain: Chain, path: Path, by: number): Chain => ({
  ...chain,
  path,
  carry: along => {
    const before = chain.carry(along);
    return before === undefined ? undefined : before + by;
  },
});

/**
 * Closes the corner after chain `i`: see {@link meet}.
 * @returns nothing where the two chains do not cross
 */
export function closeCorner(
  chains: readonly Chain[],
  i: number,
  moved: 'arriving' | 'leaving',
  reach: number,
): readonly Chain[] | undefined {
  const j = (i + 1) % chains.length;
  const a = chains[i]!,
    b = chains[j]!;
  const meeting = meet(a.path, b.path, moved, reach);
  if (meeting === undefined) return undefined;
  return chains.map((chain, k) =>
    k === i
      ? { ...a, path: meeting.arriving }
      : k === j
        ? grownAtStart(b, meeting.leaving, meeting.leavingBy)
        : chain,
  );
}

/** A piece with its outline replaced, and a finding for each notch that went. */
export interface Reshaped {
  readonly piece: Piece;
  readonly findings: readonly Finding[];
}

/**
 * Puts the ring together again; notches go where their chain carries them.
 * @throws PatternError `dart-legs-differ`: an edit left a dart whose legs differ by more than may be sewn
 */
export function pieceOfChains(piece: Piece, chains: readonly Chain[]): Reshaped {
  const parts = piece.outline.parts.map((part): OutlinePart => {
    const own = chains.filter(chain => chain.part === part);
    if (part.type === 'edge') return own[0]!.path === part.path ? part : { ...part, path: own[0]!.path };
    if (part.type === 'pleat') return own[0]!.path === part.mouth ? part : { ...part, mouth: own[0]!.path };
    const [first, second] = own;
    if (first!.path === part.legs[0] && second!.path === part.legs[1]) return part;
    requireEqualLegs(piece, part.name, first!.path, second!.path);
    return { ...part, legs: [first!.path, second!.path], apex: pathEnd(first!.path) };
  });
  const carried = carryNotches(piece, edge =>
    partsOfEdge(piece, edge).map(part => {
      const chain = chains.find(c => c.part === part)!;
      return { before: pathLength(part.path), after: pathLength(chain.path), carry: chain.carry };
    }),
  );
  return { piece: { ...piece, outline: { parts }, notches: carried.notches }, findings: carried.findings };
}

/** How the parts of one edge changed, in the edge's order of travel; an edge that is gone has no parts. */
export interface PartChange {
  readonly before: number;
  readonly after: number;
  readonly carry: (along: number) => number | undefined;
}

/** Every notch at its new place; those cut away are findings. */
export function carryNotches(
  piece: Piece,
  changesOf: (edge: string) => readonly PartChange[],
): { readonly notches: readonly Notch[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const notches = piece.notches.flatMap((notch): readonly Notch[] => {
    const at = carriedPlace(notch.at, changesOf(notch.edge));
    if (at !== undefined) return [at === notch.at ? notch : { ...notch, at }];
    findings.push(notchCutAway(piece, notch));
    return [];
  });
  return { notches, findings };
}

function carriedPlace(at: number, parts: readonly PartChange[]): number | undefined {
  const slack = tolerances.coincidenceTolerance;
  let before = 0,
    after = 0;
  for (const [i, part] of parts.entries()) {
    if (at <= before + part.before || i === parts.length - 1) {
      const place = part.carry(at - before);
      if (place === undefined || place < -slack || place > part.after + slack) return undefined;
      return after + Math.min(Math.max(place, 0), part.after);
    }
    before += part.before;
    after += part.after;
  }
  return undefined;
}

const notchCutAway = (piece: Piece, notch: Notch): Finding => ({
  severity: 'warning',
  code: 'notch-cut-away',
  where: { piece: piece.name, edge: notch.edge },
  message: `A notch${notch.name ? ` (${notch.name})` : ''} of ${piece.name}.${notch.edge}, ${notch.at.toFixed(1)} mm along it, was cut away.`,
  figures: { atMm: notch.at },
  remedy: 'Take its partner off too, or set both anew.',
});

function requireEqualLegs(piece: Piece, dart: string, first: Path, second: Path): void {
  const difference = Math.abs(pathLength(first) - pathLength(second));
  if (difference <= tolerances.dartLegTolerance) return;
  throw new PatternError('dart-legs-differ', {
    message: `The legs of dart "${dart}" would differ by ${difference.toFixed(1)} mm.`,
    remedy: 'Close or move the dart first.',
    where: { piece: piece.name },
  });
}
