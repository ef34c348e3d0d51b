import type {
  CornerRule,
  Dart,
  Edge,
  EdgeKind,
  OutlinePart,
  Path,
  Piece,
  Point,
  Segment,
} from '@paperhinge/geometry';
import type { Cubic } from '@paperhinge/geometry/curves';

export const at = (x: number, y: number): Point => ({ x, y });

interface EdgeSpec {
  readonly allowance?: number;
  readonly kind?: EdgeKind;
  readonly start?: CornerRule;
  readonly end?: CornerRule;
}

export function edge(name: string, segments: readonly Segment[], spec: EdgeSpec = {}): Edge {
  const { allowance = 10, kind = 'seam', start, end } = spec;
  return {
    type: 'edge',
    name,
    path: { segments },
    kind,
    allowance: kind === 'fold' || kind === 'raw' ? 0 : allowance,
    corners: { ...(start ? { start } : {}), ...(end ? { end } : {}) },
  };
}

export const straightEdge = (name: string, from: Point, to: Point, spec: EdgeSpec = {}): Edge =>
  edge(name, [[from, to]], spec);

/** A piece of straight edges `e0`, `e1` ... through the corners in order, each with its own spec. */
export const polygon = (corners: readonly Point[], spec: (index: number) => EdgeSpec = () => ({})): Piece =>
  pieceOf(corners.map((p, i) => straightEdge(`e${i}`, p, corners[(i + 1) % corners.length]!, spec(i))));

export const pieceOf = (parts: readonly OutlinePart[], lines: Piece['lines'] = []): Piece => ({
  name: 'piece',
  title: 'Piece',
  outline: { parts },
  notches: [],
  lines,
  marks: [],
  cutting: { count: 1, mirrored: false, fabric: 'main' },
});

export const dart = (name: string, a: Point, apex: Point, b: Point, pressed?: Dart['pressed']): Dart => ({
  type: 'dart',
  name,
  legs: [{ segments: [[a, apex]] }, { segments: [[apex, b]] }],
  apex,
  ...(pressed ? { pressed } : {}),
});

/** A rectangle of the given size from the origin, clockwise from its top left corner. */
export const rectangle = (width: number, height: number): readonly Point[] => [
  at(0, 0),
  at(width, 0),
  at(width, height),
  at(0, height),
];

/** A circular arc as cubics of at most 7.5 degrees; angles in degrees, clockwise as seen where `to` > `from`. */
export function arc(centre: Point, radius: number, from: number, to: number): readonly Cubic[] {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / 7.5));
  const step = ((to - from) / count) * (Math.PI / 180);
  const k = (4 / 3) * Math.tan(step / 4) * radius;
  const on = (a: number) => at(centre.x + radius * Math.cos(a), centre.y + radius * Math.sin(a));
  return Array.from({ length: count }, (_, i) => {
    const a = (from * Math.PI) / 180 + i * step,
      b = a + step,
      p = on(a),
      q = on(b);
    return [
      p,
      at(p.x - k * Math.sin(a), p.y + k * Math.cos(a)),
      at(q.x + k * Math.sin(b), q.y - k * Math.cos(b)),
      q,
    ];
  });
}

/** Corner points of a path of straight lines, those in the middle of a straight left out. */
export function cornersOf(path: Path): readonly Point[] {
  const points = path.segments.map(s => s[0]);
  return points.filter((p, i) => {
    const before = points[(i + points.length - 1) % points.length]!,
      after = points[(i + 1) % points.length]!;
    const u = at(p.x - before.x, p.y - before.y),
      v = at(after.x - p.x, after.y - p.y);
    return Math.abs(u.x * v.y - u.y * v.x) > 1e-7 * Math.hypot(u.x, u.y) * Math.hypot(v.x, v.y);
  });
}
