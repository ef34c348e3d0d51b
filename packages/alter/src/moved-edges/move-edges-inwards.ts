import { type EdgeRun, type Path, type PatternError, type Piece, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { endTangent, startTangent } from '@paperhinge/geometry/paths';
import { outlinePath, partsOfEdge } from '@paperhinge/geometry/pattern';
import { angleBetween } from '@paperhinge/geometry/plane';
import { keptWhole, shifted } from '../became/parts.js';
import { type Chain, chainsOf, chainThing, closeCorner, pieceOfChains, type Reshaped } from './chains.js';
import { movedInwards } from './inward-parallel.js';
import { reachOf } from './meet.js';
import { fullness, type Taper } from './taper.js';
import { refusal } from './tellings.js';
import { requireSimple, tidied } from './tidy.js';

/** One edge of a seam's side and the shares of the side's length at which it begins and ends. */
export interface MovedRun extends EdgeRun {
  readonly side: 'a' | 'b';
  readonly fromShare: number;
  readonly toShare: number;
}

/** A chain that moves: where on its side of the seam it lies, and whether it runs with the seam. */
interface Moving {
  readonly from: number;
  readonly to: number;
  readonly reversed: boolean;
  readonly side: 'a' | 'b';
}

/**
 * Moves edges of one piece inwards by `depth` mm (negative: outwards), tapered along their seam, and closes the
 * corners. Notches keep their distance from the seam's beginning, or from its end where only that stayed.
 *
 * @throws PatternError `take-in-too-much`: a moved edge no longer meets its neighbour
 */
export function moveEdgesInwards(
  piece: Piece,
  runs: readonly MovedRun[],
  depth: number,
  taper: Taper,
): Reshaped {
  const before = chainsOf(piece);
  const moving = movingChains(piece, before, runs);
  const reach = reachOf(outlinePath(piece.outline)) + Math.abs(depth);
  let chains = before.map((chain): Chain => {
    const place = moving.get(chain);
    return place ? { ...chain, path: moved(chain.path, place, depth, taper) } : chain;
  });
  for (const i of chains.keys()) {
    const j = (i + 1) % chains.length;
    const movesBefore = moving.has(before[i]!);
    if (!movesBefore && !moving.has(before[j]!)) continue;
    const closed = closeCorner(chains, i, movesBefore ? 'arriving' : 'leaving', reach);
    if (closed === undefined)
      throw tooMuch(piece, depth, { edges: [chains[i]!, chains[j]!], ...standing(before, i, j, moving) });
    chains = [...closed];
  }
  const carried = chains.map((chain, i): Chain => {
    const place = moving.get(before[i]!);
    if (!place) return chain;
    const shift = notchShift({ before, after: chains, moving, taper }, i, place);
    return { ...chain, kept: shifted(keptWhole(pathLength(before[i]!.path)), shift) };
  });
  const done = tidied(piece, pieceOfChains(piece, carried));
  requireSimple(done.piece, () => tooMuch(piece, depth));
  return done;
}

function movingChains(piece: Piece, chains: readonly Chain[], runs: readonly MovedRun[]) {
  const moving = new Map<Chain, Moving>();
  for (const run of runs) {
    const parts = partsOfEdge(piece, run.edge);
    const lengths = parts.map(p => pathLength(p.path));
    const whole = lengths.reduce((sum, l) => sum + l, 0);
    let along = 0;
    for (const [i, part] of parts.entries()) {
      // An edge that is sewn in part moves whole: beyond that part the seam is thought to go on at the same pace.
      const sewn = run.part ?? { from: 0, to: whole };
      const start = (along - sewn.from) / (sewn.to - sewn.from),
        end = (along + lengths[i]! - sewn.from) / (sewn.to - sewn.from);
      along += lengths[i]!;
      const share = (s: number): number => run.fromShare + (run.toShare - run.fromShare) * s;
      const [from, to] = run.reversed ? [share(1 - end), share(1 - start)] : [share(start), share(end)];
      const chain = chains.find(c => c.part === part)!;
      moving.set(chain, { from, to, reversed: run.reversed, side: run.side });
    }
  }
  return moving;
}

function moved(path: Path, { from, to, reversed }: Moving, depth: number, taper: Taper): Path {
  // Inwards is to the right of a clockwise outline; a run against it is moved in its own sense all the same.
  const share = (part: number): number => (reversed ? to - (to - from) * part : from + (to - from) * part);
  return movedInwards(path, depth, part => fullness(taper, share(part)), taper, share);
}

/** A ring before and after some of its chains moved. */
interface MovedRing {
  readonly before: readonly Chain[];
  readonly after: readonly Chain[];
  readonly moving: ReadonlyMap<Chain, Moving>;
  readonly taper: Taper;
}

/** How far a chain's notches move along it so that they keep their distance from the seam's end that counts. */
function notchShift({ before, after, moving, taper }: MovedRing, i: number, place: Moving): number {
  const grown = (k: number): number => pathLength(after[k]!.path) - pathLength(before[k]!.path);
  const fromEnd = fullness(taper, 0) !== 0 && fullness(taper, 1) === 0;
  const others = before.flatMap((chain, k) => {
    const other = moving.get(chain);
    if (!other || other.side !== place.side || k === i) return [];
    return (fromEnd ? other.from >= place.to : other.to <= place.from) ? [grown(k)] : [];
  });
  const sum = others.reduce((total, g) => total + g, 0);
  // Measured from the chain's own start in the seam's sense, then turned into the outline's.
  const startsAtReference = fromEnd === place.reversed;
  return startsAtReference ? -sum : grown(i) + sum;
}

/** The neighbour that stays where the two run on into each other: the moved one can meet it nowhere. */
function standing(before: readonly Chain[], i: number, j: number, moving: ReadonlyMap<Chain, Moving>) {
  const turn = angleBetween(endTangent(before[i]!.path), startTangent(before[j]!.path));
  const stays = [before[i]!, before[j]!].find(chain => !moving.has(chain));
  return stays && Math.abs(turn) <= tolerances.joinedCorner ? { stays } : {};
}

const tooMuch = (
  piece: Piece,
  depth: number,
  { edges = [], stays }: { readonly edges?: readonly Chain[]; readonly stays?: Chain } = {},
): PatternError =>
  refusal(
    'take-in-too-much',
    {
      piece: { piece: piece.name },
      byMm: Math.abs(depth),
      apart: edges.map(chain => chainThing(piece, chain)),
      ...(stays ? { stays: chainThing(piece, stays) } : {}),
    },
    { piece: piece.name },
  );
