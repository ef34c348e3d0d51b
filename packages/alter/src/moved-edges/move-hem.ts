import {
  type Edge,
  edgeNamed,
  edgeNames,
  type Path,
  type PatternError,
  type Piece,
  pathLength,
} from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pointAlong, transformedPath } from '@paperhinge/geometry/paths';
import { edgesOfRole, outlinePath, partsOfEdge } from '@paperhinge/geometry/pattern';
import { scale, translation } from '@paperhinge/geometry/plane';
import { type Chain, chainsOf, chainThing, closeCorner, pieceOfChains, type Reshaped } from './chains.js';
import { alongGrainTowards, grainOrVertical, middleOf } from './grain.js';
import { reachOf } from './meet.js';
import { refusal } from './tellings.js';
import { requireSimple, tidied } from './tidy.js';

/** Moves a piece's hem up by `by` mm along the grain (negative: down). See `shorten`. */
export function moveHem(piece: Piece, by: number): Reshaped {
  const hem = hemOf(piece);
  const { grain, findings } = grainOrVertical(piece);
  const parts = partsOfEdge(piece, hem);
  const up = alongGrainTowards(piece, grain, middleOfLongest(parts), middleOf(piece));
  const shift = translation(scale(up, by));
  const reach = reachOf(outlinePath(piece.outline)) + abs(by);
  const moved = (chain: Chain): boolean => chain.part.type === 'edge' && chain.part.name === hem;
  let chains = chainsOf(piece).map(chain =>
    moved(chain) ? { ...chain, path: transformedPath(chain.path, shift) } : chain,
  );
  for (const i of chains.keys()) {
    const j = (i + 1) % chains.length;
    const arriving = chains[i]!,
      leaving = chains[j]!;
    if (moved(arriving) === moved(leaving)) continue;
    const closed = closeCorner(chains, i, moved(arriving) ? 'arriving' : 'leaving', reach);
    const left = closed?.[moved(arriving) ? j : i];
    if (closed === undefined || pathLength(left!.path) <= tolerances.joiningGap)
      throw beyond(piece, by, moved(arriving) ? leaving : arriving);
    chains = [...closed];
  }
  const done = tidied(piece, pieceOfChains(piece, chains));
  requireSimple(done.piece, () => beyond(piece, by));
  return { ...done, findings: [...findings, ...done.findings] };
}

/** The edge that is its hem, else the only one of kind hem. @throws PatternError `no-hem`, `several-hems` */
export function hemOf(piece: Piece): string {
  const where = { piece: piece.name };
  const hems = edgesOfRole(piece, 'hem');
  // One that is called so is meant where a piece has several.
  if (hems.includes('hem')) return 'hem';
  const found =
    hems.length > 0 ? hems : edgeNames(piece).filter(name => edgeNamed(piece, name).kind === 'hem');
  if (found.length === 1) return found[0]!;
  throw found.length === 0
    ? refusal('no-hem', { piece: where, lines: linesAcross(piece) }, where)
    : refusal('several-hems', { piece: where, hems: found.map(edge => ({ edge })) }, where);
}

const linesAcross = ({ lines }: Piece): readonly string[] =>
  lines.filter(({ kind }) => kind === 'level' || kind === 'lengthen-shorten').map(({ name }) => name);

function middleOfLongest(parts: readonly Edge[]) {
  const path = parts.map(p => p.path).reduce<Path>(longer, parts[0]!.path);
  return pointAlong(path, pathLength(path) / 2);
}
const longer = (a: Path, b: Path): Path => (pathLength(b) > pathLength(a) ? b : a);

const beyond = (piece: Piece, by: number, neighbour?: Chain): PatternError =>
  refusal(
    'shorten-beyond-piece',
    {
      piece: { piece: piece.name },
      byMm: by,
      ...(neighbour
        ? {
            meets: chainThing(piece, neighbour),
            meetsMm: pathLength(neighbour.path),
            dart: neighbour.part.type === 'dart',
          }
        : {}),
    },
    { piece: piece.name, ...(neighbour?.part.type === 'edge' ? { edge: neighbour.part.name } : {}) },
  );
