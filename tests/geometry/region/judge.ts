import type { Path, Point, Segment } from '@paperhinge/geometry';
import * as clipper from 'js-angusj-clipper';

// An independent judge of region booleans: shares no code with them. Curves are taken as fine chords; areas come from
// Clipper (exact on whole nanometres), and places are told by winding round the chords.

/** mm. Largest distance of a chord from its curve. */
const flat = 0.0005;
const grid = 1e6;

export type Operation = 'union' | 'intersection' | 'difference';

const library = await clipper.loadNativeClipperLibInstanceAsync(
  clipper.NativeClipperLibRequestedFormat.WasmWithAsmJsFallback,
);

const clipTypes = {
  union: clipper.ClipType.Union,
  intersection: clipper.ClipType.Intersection,
  difference: clipper.ClipType.Difference,
};

/** Corners of a polygon that follows a path within `flat`. */
export const chordsOf = (path: Path): readonly Point[] => path.segments.flatMap(startsOfChords);

function startsOfChords(segment: Segment): readonly Point[] {
  if (segment.length === 2) return [segment[0], segment[1]];
  const [p, q, r, s] = segment;
  const bend =
    6 *
    Math.max(
      Math.hypot(p.x - 2 * q.x + r.x, p.y - 2 * q.y + r.y),
      Math.hypot(q.x - 2 * r.x + s.x, q.y - 2 * r.y + s.y),
    );
  const n = Math.max(1, Math.ceil(Math.sqrt(bend / (8 * flat))));
  return Array.from({ length: n + 1 }, (_, i) => {
    const t = i / n,
      u = 1 - t;
    const b = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t] as const;
    return {
      x: b[0] * p.x + b[1] * q.x + b[2] * r.x + b[3] * s.x,
      y: b[0] * p.y + b[1] * q.y + b[2] * r.y + b[3] * s.y,
    };
  });
}

/** Clipper refuses a set that has no area at all: this one of 2e-12 mm² takes none to speak of. */
const speck: readonly Point[] = [
  { x: 900, y: 900 },
  { x: 900 + 2 / grid, y: 900 },
  { x: 900, y: 900 + 2 / grid },
];

/** Area in mm² by Clipper. */
export function areaByClipper(
  a: readonly (readonly Point[])[],
  b: readonly (readonly Point[])[],
  operation: Operation,
): number {
  const whole = (rings: readonly (readonly Point[])[]) =>
    [...rings, speck].map(ring => ring.map(p => ({ x: Math.round(p.x * grid), y: Math.round(p.y * grid) })));
  const result = library.clipToPaths({
    clipType: clipTypes[operation],
    subjectInputs: [{ data: whole(a), closed: true }],
    clipInputs: [{ data: whole(b) }],
    subjectFillType: clipper.PolyFillType.NonZero,
    clipFillType: clipper.PolyFillType.NonZero,
  });
  return (result ?? []).reduce((sum, ring) => sum + shoelace(ring), 0) / grid / grid;
}

export const shoelace = (ring: readonly Point[]): number =>
  ring.reduce((sum, p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    return sum + (p.x - ring[0]!.x) * (q.y - ring[0]!.y) - (q.x - ring[0]!.x) * (p.y - ring[0]!.y);
  }, 0) / 2;

export const perimeter = (ring: readonly Point[]): number =>
  ring.reduce((sum, p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    return sum + Math.hypot(q.x - p.x, q.y - p.y);
  }, 0);

/** How often polygons wind round a place; undefined within `near` mm of any of them. */
export function windingRound(
  rings: readonly (readonly Point[])[],
  p: Point,
  near: number,
): number | undefined {
  let winding = 0;
  for (const ring of rings)
    for (let i = 0; i < ring.length; i++) {
      const a = ring[i]!,
        b = ring[(i + 1) % ring.length]!;
      if (distanceToChord(a, b, p) <= near) return undefined;
      if (a.y <= p.y === b.y <= p.y) continue;
      const x = a.x + ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y);
      if (x > p.x) winding += b.y > a.y ? 1 : -1;
    }
  return winding;
}

function distanceToChord(a: Point, b: Point, p: Point): number {
  const x = b.x - a.x,
    y = b.y - a.y,
    square = x * x + y * y;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * x + (p.y - a.y) * y) / square));
  return Math.hypot(a.x + x * t - p.x, a.y + y * t - p.y);
}
