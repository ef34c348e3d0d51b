import {
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  type Seam,
} from '@paperhinge/geometry';
import { pointAlong, tangentAlong } from '@paperhinge/geometry/paths';
import { partsOfEdge, runLabel } from '@paperhinge/geometry/pattern';
import { add, rightOf, scale } from '@paperhinge/geometry/plane';
import { type Frame, readable } from './frame.js';
import { type Lettering, letteringBox, type TypeMeasure } from './ink.js';
import { plainLine, setCentred } from './lettering.js';
import { isFree, type Room } from './room.js';
import { widthText } from './widths.js';

/** Where along an edge a label is tried, the middle first. */
const shares = [0.5, 0.42, 0.58, 0.33, 0.67, 0.25, 0.75, 0.16, 0.84];
/** mm: em sizes that are tried for a label at an edge. */
const sizes = [2.6, 2.2, 1.9];
/** mm kept between a label and any line. */
const gap = 0.45;
/** mm: an allowance narrower than this holds no figures between its lines. */
const narrowestBand = 4;

/**
 * The small words along one edge: its allowance between stitching and cutting line, its name and what it is sewn to
 * just inside. A label that finds no free place (a tight curve, a crowded corner) shrinks, moves along the edge, says
 * less, or is left out: it never lies on a line.
 * @param joins strips in which pages join: a label lies there only if it has no other place
 */
export function edgeNames(
  piece: Piece,
  name: string,
  pattern: Pattern,
  frame: Frame,
  measure: TypeMeasure,
  room: Room,
  joins: Room['ink'] = [],
): readonly Lettering[] {
  const edge = partsOfEdge(piece, name)[0]!;
  if (edge.kind === 'fold') return [];
  const path = edgePath(piece, name);
  const along = { path, frame, measure, joins };
  const { allowance } = edge;
  const width = allowance > 0 ? widthText(allowance, pattern.unit) : '';
  const short = width.replace(/ \(.*/, '');
  const figures = edge.kind === 'hem' && width ? [`hem ${width}`, `hem ${short}`, short] : [width, short];
  const inBand =
    allowance >= narrowestBand * (measure.enlarged ?? 1)
      ? labelAlong(along, figures, room, () => -allowance / 2)
      : undefined;

  const partner = partnerWords(piece, name, pattern);
  const own = plainLine(name);
  const names = partner ? [`${own} → ${partner}`, own] : [own];
  const said = inBand || !width ? names : [...names.map(n => `${n} · ${short}`), ...names];
  const left = inBand ? { ...room, ink: [...room.ink, ...boxEdges(inBand)] } : room;
  const beside = (off: number) => (size: number, at: number, wide: number) =>
    size * 0.44 + (gap + off) * (measure.enlarged ?? 1) + bow(path, at, wide);
  const inside = labelAlong(along, said, left, beside(0.8)) ?? labelAlong(along, said, left, beside(2.4));
  return [inBand, inside].filter(label => label !== undefined);
}

interface Along {
  readonly joins: Room['ink'];
  readonly path: Path;
  readonly frame: Frame;
  readonly measure: TypeMeasure;
}

type Inset = (size: number, along: number, width: number) => number;

/** The first of the texts, at the largest size and nearest the edge's middle, that is free at `inset` mm inside. */
function labelAlong(along: Along, texts: readonly string[], room: Room, inset: Inset): Lettering | undefined {
  const offJoins = { ...room, ink: [...room.ink, ...along.joins] };
  return (
    (along.joins.length > 0 ? freeAlong(along, texts, offJoins, inset) : undefined) ??
    freeAlong(along, texts, room, inset)
  );
}

function freeAlong(
  { path, frame, measure }: Along,
  texts: readonly string[],
  room: Room,
  inset: Inset,
): Lettering | undefined {
  const length = pathLength(path);
  for (const text of texts)
    for (const plain of sizes) {
      const size = plain * (measure.enlarged ?? 1);
      const width = measure.width(text, size, 'regular');
      if (width > length * 0.9) continue;
      for (const share of shares) {
        const tangent = tangentAlong(path, share * length);
        const middle = add(
          pointAlong(path, share * length),
          scale(rightOf(tangent), inset(size, share * length, width)),
        );
        const label = setCentred(
          measure,
          text,
          { role: 'edge-label', size },
          middle,
          readable(frame, tangent),
        );
        if (isFree(room, letteringBox(label), gap * (measure.enlarged ?? 1))) return label;
      }
    }
  return undefined;
}

/** mm by which an edge bows inwards over a label's width: the label must stand that much further off. */
function bow(path: Path, along: number, width: number): number {
  const middle = pointAlong(path, along),
    inwards = rightOf(tangentAlong(path, along));
  const reach = (p: Point) => (p.x - middle.x) * inwards.x + (p.y - middle.y) * inwards.y;
  return Math.max(reach(pointAlong(path, along - width / 2)), reach(pointAlong(path, along + width / 2)), 0);
}

/** "sleeve cap", "front neck, back neck": what the edge is sewn to, by the pieces' own names. */
function partnerWords(piece: Piece, edge: string, pattern: Pattern): string | undefined {
  const names = [...new Set(pattern.seams.flatMap(seam => partnersIn(seam, piece.name, edge)))];
  return names.length === 0 || names.length > 3 ? undefined : plainLine(names.join(', '));
}

function partnersIn(seam: Seam, piece: string, edge: string): readonly string[] {
  const holds = (side: Seam['a']) => side.some(r => r.piece === piece && r.edge === edge);
  const say = (side: Seam['a']) => side.map(r => runLabel(r).replace('.', ' '));
  return [...(holds(seam.a) ? say(seam.b) : []), ...(holds(seam.b) ? say(seam.a) : [])];
}

/** The four sides of a label's box, as ink that later labels keep clear of. */
export function boxEdges(label: Lettering): readonly (readonly [Point, Point])[] {
  const box = letteringBox(label);
  return box.map((p, i) => [p, box[(i + 1) % 4]!] as const);
}
