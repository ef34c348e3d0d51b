import {
  type Edge,
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
import { readable } from './frame.js';
import { type Lettering, letteringBox } from './ink.js';
import { plainLine, setCentred } from './lettering.js';
import { enlargementOf, type PieceSetting } from './piece-setting.js';
import { isFree, type Room } from './room.js';

/** Where along an edge a label is tried, the middle first. */
const shares = [0.5, 0.42, 0.58, 0.33, 0.67, 0.25, 0.75, 0.16, 0.84];
/** mm: em sizes that are tried for a label at an edge. */
const sizes = [2.8, 2.5];
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
  name: string,
  setting: PieceSetting,
  room: Room,
  joins: Room['ink'] = [],
): readonly Lettering[] {
  const { piece, pattern } = setting;
  const edge = partsOfEdge(piece, name)[0]!;
  if (edge.kind === 'fold') return [];
  const path = edgePath(piece, name);
  const along = { path, setting, joins };
  const enlarged = enlargementOf(setting);
  const figures = bandWords(edge, setting);
  const inBand =
    edge.allowance >= narrowestBand * enlarged
      ? labelAlong(along, figures, room, () => -edge.allowance / 2)
      : undefined;

  const width = figures.at(-1);
  const partner = partnerWords(piece, name, pattern);
  const own = plainLine(name);
  const names = partner ? [`${own} → ${partner}`, own] : [own];
  const said = inBand || !width ? names : [...names.map(n => `${n} · ${width}`), ...names];
  const left = inBand ? { ...room, ink: [...room.ink, ...boxEdges(inBand)] } : room;
  const beside = (off: number) => (size: number, at: number, wide: number) =>
    size * 0.44 + (gap + off) * enlarged + bow(path, at, wide);
  const inside = labelAlong(along, said, left, beside(0.8)) ?? labelAlong(along, said, left, beside(2.4));
  return [inBand, inside].filter(label => label !== undefined);
}

/** What is said of an allowance, from the fullest to the figure alone; nothing where there is none. */
function bandWords(
  { kind, allowance, finish, topstitch, interfacing, opening }: Edge,
  { reader }: PieceSetting,
) {
  if (allowance <= 0 && !finish && !topstitch && !interfacing && !opening) return [];
  const words = reader.words.piece;
  const width = allowance > 0 ? reader.allowance(allowance) : '';
  const first = kind === 'hem' && width ? words.hem(width) : width;
  const more = [
    finish ? words.finish[finish] : '',
    topstitch ? words.topstitched(reader.allowance(topstitch)) : '',
    interfacing ? words.interfaced(reader.allowance(interfacing)) : '',
    opening ? words.opening(reader.length(opening)) : '',
  ].filter(Boolean);
  const said = [[first, ...more], [first, ...more.slice(0, 1)], [first], [width]];
  return [...new Set(said.map(parts => parts.filter(Boolean).join(', ')))].filter(Boolean);
}

interface Along {
  readonly joins: Room['ink'];
  readonly path: Path;
  readonly setting: PieceSetting;
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
  { path, setting }: Along,
  texts: readonly string[],
  room: Room,
  inset: Inset,
): Lettering | undefined {
  const { frame, measure } = setting;
  const enlarged = enlargementOf(setting);
  const length = pathLength(path);
  for (const text of texts)
    for (const plain of sizes) {
      const size = plain * enlarged;
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
        if (isFree(room, letteringBox(label), gap * enlarged)) return label;
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
