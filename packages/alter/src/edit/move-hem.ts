import {
  type Edge,
  edgeNamed,
  edgeNames,
  outlinePath,
  type Path,
  PatternError,
  type Piece,
  partsOfEdge,
  pathLength,
  pointAlong,
  scale,
  tolerances,
  transformedPath,
  translation,
} from '@paperhinge/geometry';
import { type Chain, chainLabel, chainsOf, closeCorner, pieceOfChains, type Reshaped } from './chains.js';
import { alongGrainTowards, grainOrVertical, middleOf } from './grain.js';
import { reachOf } from './meet.js';
import { requireSimple, tidied } from './tidy.js';

/** Moves a piece's hem up by `by` mm along the grain (negative: down). See `shorten`. */
export function moveHem(piece: Piece, by: number): Reshaped {
  const hem = hemOf(piece);
  const { grain, findings } = grainOrVertical(piece);
  const parts = partsOfEdge(piece, hem);
  const up = alongGrainTowards(piece, grain, middleOfLongest(parts), middleOf(piece));
  const shift = translation(scale(up, by));
  const reach = reachOf(outlinePath(piece.outline)) + Math.abs(by);
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
  const message = `The hem of "${piece.name}", moved by ${Math.abs(by).toFixed(1)} mm, would run across the rest of its outline.`;
  requireSimple(done.piece, 'shorten-beyond-piece', message, 'Move it by less.');
  return { ...done, findings: [...findings, ...done.findings] };
}

/** The edge named `hem`, else the only edge of kind hem. @throws PatternError `no-hem`, `several-hems` */
export function hemOf(piece: Piece): string {
  const names = edgeNames(piece);
  if (names.includes('hem')) return 'hem';
  const hems = names.filter(name => edgeNamed(piece, name).kind === 'hem');
  if (hems.length === 1) return hems[0]!;
  throw new PatternError(hems.length === 0 ? 'no-hem' : 'several-hems', {
    message:
      hems.length === 0
        ? `Piece "${piece.name}" has no edge named hem and none of kind hem.`
        : `Piece "${piece.name}" has several hems: ${hems.join(', ')}.`,
    remedy: 'Name the one that is meant "hem".',
    where: { piece: piece.name },
  });
}

function middleOfLongest(parts: readonly Edge[]) {
  const path = parts.map(p => p.path).reduce<Path>(longer, parts[0]!.path);
  return pointAlong(path, pathLength(path) / 2);
}
const longer = (a: Path, b: Path): Path => (pathLength(b) > pathLength(a) ? b : a);

const beyond = (piece: Piece, by: number, neighbour: Chain): PatternError =>
  new PatternError('shorten-beyond-piece', {
    message:
      `The hem of "${piece.name}", moved by ${Math.abs(by).toFixed(1)} mm, no longer meets ` +
      `${chainLabel(neighbour)}, which is ${pathLength(neighbour.path).toFixed(1)} mm long.`,
    remedy: neighbour.part.type === 'dart' ? 'Move it by less, or close the dart first.' : 'Move it by less.',
    where: {
      piece: piece.name,
      ...(neighbour.part.type === 'edge' ? { edge: neighbour.part.name } : {}),
    },
  });
