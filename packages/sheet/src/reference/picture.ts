import { cuttingLine, type Path, type Pattern, type Piece } from '@paperhinge/geometry';
import type { Box } from '@paperhinge/geometry/curves';
import { boundsOfPath, pointAlong, transformedPath } from '@paperhinge/geometry/paths';
import { dartsOf, edgeParts, outlinePath, pleatsOf } from '@paperhinge/geometry/pattern';
import { toPathData } from '@paperhinge/geometry/svg';

/** mm of the garment to one unit of a picture. */
const shrunk = 4;
const gap = 12;
/** Room for a name under a narrow piece. */
const narrowest = 84;

/** The pieces that a step changed, made or took away: as they were in dashes, as they are in full lines. */
export function picture(before: Pattern, after: Pattern, title: string): string {
  const pairs = pairsOf(before, after);
  let x = gap;
  const drawn = pairs.map(({ was, is }) => {
    const box = together(
      [was, is].filter(piece => piece !== undefined).map(piece => boundsOfPath(outlinePath(piece.outline))),
    );
    const wide = (box.max.x - box.min.x) / shrunk;
    const room = Math.max(wide, narrowest);
    const place = { dx: (x + (room - wide) / 2) * shrunk - box.min.x, dy: gap * shrunk - box.min.y };
    x += room + gap;
    const name = `<text x="${round(place.dx + (box.min.x + box.max.x) / 2)}" y="${round(place.dy + box.max.y + 44)}">${(is ?? was)!.title || (is ?? was)!.name}</text>`;
    const bottom = gap + (box.max.y - box.min.y) / shrunk + 14;
    return {
      svg: `${was ? pieceSvg(was, 'before', place) : ''}${is ? pieceSvg(is, 'after', place) : ''}${was && is ? cuts(was, is, { before, after }, place) : ''}${name}`,
      bottom,
    };
  });
  const height = Math.max(...drawn.map(d => d.bottom)) + gap / 2;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${Math.ceil(x)} ${Math.ceil(height)}" width="${Math.ceil(x)}" height="${Math.ceil(height)}" role="img" aria-label="${title}">
<style>path{fill:none;stroke:#222;stroke-width:1;stroke-linejoin:round}.before{stroke:#999;stroke-dasharray:4 3}.cut{stroke-width:.6}.fold{stroke-dasharray:9 2 2 2}.notch{stroke-width:1.6}text{font:9px sans-serif;text-anchor:middle;fill:#222}@media(prefers-color-scheme:dark){path{stroke:#eee}.before{stroke:#888}text{fill:#eee}}</style>
${drawn.map(d => d.svg).join('\n')}
</svg>
`;
}

interface Pair {
  readonly was: Piece | undefined;
  readonly is: Piece | undefined;
}

/** Of every piece that is another than before; of all that stand where nothing but facts changed: the first. */
function pairsOf(before: Pattern, after: Pattern): readonly Pair[] {
  const names = [...new Set([...before.pieces, ...after.pieces].map(p => p.name))];
  const pairs = names.map(name => ({
    was: before.pieces.find(p => p.name === name),
    is: after.pieces.find(p => p.name === name),
  }));
  const changed = pairs.filter(({ was, is }) => was !== is);
  return changed.length > 0 ? changed : pairs.slice(0, 1);
}

interface Place {
  readonly dx: number;
  readonly dy: number;
}

/** Path data of a path where its piece is drawn. */
const laidAt =
  ({ dx, dy }: Place) =>
  (path: Path): string => {
    const k = 1 / shrunk;
    return whole(toPathData(transformedPath(path, { a: k, b: 0, c: 0, d: k, e: dx * k, f: dy * k })));
  };

function pieceSvg(piece: Piece, kind: 'before' | 'after', { dx, dy }: Place): string {
  const laid = laidAt({ dx, dy });
  const path = (of: string, data: string) => `<path class="${of}" d="${data}"/>`;
  if (kind === 'before') return path(kind, `${laid(outlinePath(piece.outline))}Z`);
  const edges = edgeParts(piece).map(part => path(part.kind === 'fold' ? 'fold' : kind, laid(part.path)));
  const darts = dartsOf(piece).flatMap(dart => dart.legs.map(leg => path(kind, laid(leg))));
  // A pleat's mouth is cloth, and folds and contour darts are lines that a step is about.
  const pleats = pleatsOf(piece).map(({ mouth }) => path('cut', laid(mouth)));
  const inner = piece.lines
    .filter(({ kind: of }) => of === 'dart' || of === 'fold' || of === 'style')
    .map(line => path(line.kind === 'fold' ? 'fold cut' : 'cut', laid(line.path)));
  return [...edges, ...darts, ...pleats, ...inner, ...notches(piece, dx, dy)].join('');
}

/** Where the stitching line is as it was, what changed is the cutting line. */
function cuts(was: Piece, is: Piece, of: Record<'before' | 'after', Pattern>, place: Place): string {
  if (toPathData(outlinePath(was.outline)) !== toPathData(outlinePath(is.outline))) return '';
  const [then, now] = [cuttingLine(was, of.before).path, cuttingLine(is, of.after).path].map(laidAt(place));
  return then === now ? '' : `<path class="before" d="${then}Z"/><path class="cut" d="${now}Z"/>`;
}

/** A notch as a dot at its place. */
function notches(piece: Piece, dx: number, dy: number): readonly string[] {
  return piece.notches.map(({ edge, at }) => {
    const parts = edgeParts(piece).filter(part => part.name === edge);
    const { x, y } = pointAlong(parts[0]!.path, at);
    return `<circle cx="${round(x + dx)}" cy="${round(y + dy)}" r="1.6"/>`;
  });
}

/** Coordinates in whole units: a picture is looked at, not cut from. */
const whole = (data: string): string =>
  data.replace(/-?\d+(\.\d+)?(e-?\d+)?/g, n => String(Math.round(Number(n) * 2) / 2));
const round = (mm: number): number => Math.round(mm / shrunk);

const together = (boxes: readonly Box[]): Box => ({
  min: { x: Math.min(...boxes.map(b => b.min.x)), y: Math.min(...boxes.map(b => b.min.y)) },
  max: { x: Math.max(...boxes.map(b => b.max.x)), y: Math.max(...boxes.map(b => b.max.y)) },
});
