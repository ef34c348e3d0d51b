// Other libraries' parallels of whole outlines, each given the outline in its own form beforehand.
import clipper from 'js-angusj-clipper';
import paper from 'paper';
import * as paperOffset from 'paperjs-offset';
import { pointOf } from './reference.js';

paper.setup(new paper.Size(1, 1));

/** Whole numbers only: a nanometre. */
const grid = 1e6;
/** As ours. */
const mitreLimit = 2.5;

/** paperjs-offset: curves in and out, loops removed by its own booleans. */
export function paperPeer(ring) {
  const path = new paper.Path({ closed: true, insert: false });
  for (const [i, s] of ring.entries()) {
    const before = ring[(i + ring.length - 1) % ring.length];
    const into = before.length === 4 ? before[2] : s[0];
    path.add(
      new paper.Segment(
        [s[0].x, s[0].y],
        [into.x - s[0].x, into.y - s[0].y],
        s.length === 4 ? [s[1].x - s[0].x, s[1].y - s[0].y] : [0, 0],
      ),
    );
  }
  const offset = d => paperOffset.offset(path, d, { join: 'miter', limit: mitreLimit, insert: false });
  const at = p => ({ x: p.x, y: p.y });
  const loops = made =>
    (made.children ?? [made]).map(child => child.curves.map(({ points }) => points.map(at)));
  return { offset, loops };
}

const library = await clipper.loadNativeClipperLibInstanceAsync(
  clipper.NativeClipperLibRequestedFormat.WasmWithAsmJsFallback,
);

/** Clipper, compiled to wasm: polygons in and out; flattening to chords within `flat` mm is done beforehand and not timed. */
export const clipperPeer = (flat, joins) => ring => {
  const data = ring
    .flatMap(segment => chords(segment, flat))
    .map(p => ({ x: Math.round(p.x * grid), y: Math.round(p.y * grid) }));
  const offset = d =>
    library.offsetToPaths({
      delta: d * grid,
      miterLimit: mitreLimit,
      arcTolerance: flat * grid,
      offsetInputs: [{ data, joinType: clipper.JoinType[joins], endType: clipper.EndType.ClosedPolygon }],
    });
  const loops = made =>
    made.map(points => {
      const all = points.map(p => ({ x: p.x / grid, y: p.y / grid }));
      return all.map((p, i) => [p, all[(i + 1) % all.length]]);
    });
  return { offset, loops };
};

/** Starts of as many even chords as keep a segment within `flat`. */
function chords(segment, flat) {
  if (segment.length === 2) return [segment[0]];
  const [p, q, r, s] = segment;
  const bend =
    6 *
    Math.max(
      Math.hypot(p.x - 2 * q.x + r.x, p.y - 2 * q.y + r.y),
      Math.hypot(q.x - 2 * r.x + s.x, q.y - 2 * r.y + s.y),
    );
  const n = Math.max(1, Math.ceil(Math.sqrt(bend / (8 * flat))));
  return Array.from({ length: n }, (_, i) => pointOf(segment, i / n));
}
