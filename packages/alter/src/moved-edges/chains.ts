import {
  edgeNames,
  type Finding,
  type OutlinePart,
  type Path,
  type Piece,
  pathLength,
  type Thing,
} from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd } from '@paperhinge/geometry/paths';
import { pathsOfPart } from '@paperhinge/geometry/pattern';
import type { Became } from '../became/became.js';
import { carriedNotches, edgesBecame, type KeptStretch, keptWhole, shifted } from '../became/parts.js';
import { meet } from './meet.js';
import { refusal } from './tellings.js';

/**
 * One stretch of an outline between two corners: an edge, an edge's part beside a dart, or a dart's leg. A piece is
 * edited as the closed ring of its chains and put together again by {@link pieceOfChains}.
 */
export interface Chain {
  readonly part: OutlinePart;
  /** Which leg, where the part is a dart. */
  readonly leg?: 0 | 1;
  readonly path: Path;
  /** What of its former cloth it still is, before corners were cut. */
  readonly kept: readonly KeptStretch[];
}

/** The ring of chains, clockwise. */
export const chainsOf = (piece: Piece): readonly Chain[] =>
  piece.outline.parts.flatMap(part =>
    pathsOfPart(part).map(
      (path, leg): Chain => ({
        part,
        ...(part.type === 'dart' ? { leg: leg as 0 | 1 } : {}),
        path,
        kept: keptWhole(pathLength(path)),
      }),
    ),
  );

/** What a chain belongs to, to be spoken of. */
export const chainThing = (piece: Piece, { part }: Chain): Thing => ({
  piece: piece.name,
  [part.type]: part.name,
});

/** A chain after `by` mm were added at its start (negative: cut off there). */
const grownAtStart = (chain: Chain, path: Path, by: number): Chain => ({
  ...chain,
  path,
  kept: shifted(chain.kept, by),
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

/** A piece with its outline replaced, and what became of what on it. */
export interface Reshaped {
  readonly piece: Piece;
  readonly became: Became;
  readonly findings: readonly Finding[];
}

/**
 * Puts the ring together again; notches go where their chain carries them.
 * @throws PatternError `dart-left-uneven`: an edit left a dart whose legs differ by more than may be sewn
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
  const edges = edgesBecame(piece, edgeNames(piece), part => {
    const chain = chains.find(c => c.part === part)!;
    return chain.path === part.path
      ? undefined
      : { before: pathLength(part.path), after: pathLength(chain.path), kept: chain.kept };
  });
  const became = { edges, things: [] };
  return {
    piece: { ...piece, outline: { parts }, notches: carriedNotches(piece, became) },
    became,
    findings: [],
  };
}

function requireEqualLegs(piece: Piece, dart: string, first: Path, second: Path): void {
  const difference = abs(pathLength(first) - pathLength(second));
  if (difference <= tolerances.dartLegTolerance) return;
  throw refusal(
    'dart-left-uneven',
    {
      dart: { piece: piece.name, dart },
      differenceMm: difference,
    },
    { piece: piece.name },
  );
}
