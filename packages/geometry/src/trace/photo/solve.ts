import { type Affine, apply } from '../../affine.js';
import { distance, lerp, type Point } from '../../vector.js';
import { adjusted, type CornerSeen, outwardAt, type Sighting, usualFocal } from './adjust.js';
import { type Camera, viewOf } from './camera.js';
import { cornersOf, firstCamera, placeOf } from './first-pose.js';
import { type LaidSheet, type SeenSheet, sameSheet } from './seen-sheets.js';
import { straightCorners } from './straight-sides.js';
import { type Arrangement, mapOf } from './unknowns.js';

/** A picture's size in dots and the sheets seen in it. */
export interface SeenPicture {
  readonly width: number;
  readonly height: number;
  readonly sheets: readonly SeenSheet[];
}

/** A corner with how far it lies from where the solution has it, in dots. */
export interface CornerLeft extends CornerSeen {
  readonly off: number;
}

/** The floor as it was solved. */
export interface Solution extends Arrangement {
  readonly sheets: readonly LaidSheet[];
  /** Which picture each camera is of; those that share no sheets with the others are not among them. */
  readonly order: readonly number[];
  readonly sighting: Sighting;
  /** Corners that were used, and those that were left out since they lie elsewhere than all others have them. */
  readonly used: readonly CornerLeft[];
  readonly strays: readonly CornerLeft[];
}

/** Of the picture's longer side: focal lengths that a search starts from. */
const focals = [0.6, usualFocal, 1.3, 2.2];
/** Dots: what corners may be off in a first rough solution, with a lens not yet bent. */
const rough = 20;
/** Times the middle misfit, and dots: a corner farther off than both is a stray. */
const strayTimes = 8,
  leastStray = 0.6;

/**
 * Camera, lens and the place of every sheet from what several pictures show of one floor. Undefined if nothing is
 * settled.
 */
export function solved(pictures: readonly SeenPicture[]): Solution | undefined {
  const start = pictures[0] && startFrom(pictures[0]);
  if (!start) return undefined;
  const { arrangement, sheets, order } = withOthers(pictures, start);
  const kept = order.map(i => pictures[i]!);
  let found = adjusted(arrangement, sightingOf(kept, sheets), rough);
  // Sides that the lens has bent are straightened by the lens as found, and corners found anew.
  let sighting = sightingOf(kept, sheets, found.cameras);
  for (const doubt of [rough / 10, leastStray]) {
    found = adjusted(found, sighting, doubt);
    sighting = sightingOf(kept, sheets, found.cameras);
  }
  const misfit = left(found, sighting.corners);
  const middle = misfit.map(c => c.off).sort((a, b) => a - b)[misfit.length >> 1]!;
  const limit = Math.max(leastStray, strayTimes * middle);
  const [used, strays] = [misfit.filter(c => c.off <= limit), misfit.filter(c => c.off > limit)];
  const last = { ...sighting, corners: used };
  found = adjusted(found, last, limit);
  return { ...found, sheets, order, sighting: last, used: left(found, used), strays: left(found, strays) };
}

/** The first picture alone, from the focal length of several that leaves least. */
function startFrom(picture: SeenPicture): Joined | undefined {
  const [reference] = picture.sheets;
  if (!reference) return undefined;
  const sheets = picture.sheets.map(s => s.sheet);
  const sighting = sightingOf([picture], sheets);
  const tried = guesses(picture, cornersOf(reference)).map(camera => {
    const view = viewOf(camera);
    const places = picture.sheets.map((s, i) => (i === 0 ? { x: 0, y: 0, angle: 0 } : placeOf(s, view)));
    return adjusted({ cameras: [camera], places, bleed: 0 }, sighting, rough, 15);
  });
  const best = tried.reduce((a, b) => (b.cost < a.cost ? b : a), tried[0]!);
  return best && { arrangement: best, sheets, order: [0] };
}

/** Cameras with a straight lens that show these points where they are seen, one for each focal length tried. */
const guesses = ({ width, height }: SeenPicture, points: ReturnType<typeof cornersOf>): readonly Camera[] =>
  focals
    .map(share => firstCamera(points, share * Math.max(width, height), { x: width / 2, y: height / 2 }))
    .filter(camera => camera !== undefined);

interface Joined {
  readonly arrangement: Arrangement;
  readonly sheets: readonly LaidSheet[];
  /** Which picture each camera is of. */
  readonly order: readonly number[];
}

/** The other pictures one by one, each through the sheets that stand already. */
function withOthers(pictures: readonly SeenPicture[], start: Joined): Joined {
  let joined = start;
  for (let more = true; more; ) {
    more = false;
    for (const i of pictures.keys()) {
      if (joined.order.includes(i)) continue;
      const next = withOne(pictures, i, joined);
      if (!next) continue;
      joined = next;
      more = true;
    }
  }
  return joined;
}

function withOne(pictures: readonly SeenPicture[], index: number, joined: Joined): Joined | undefined {
  const picture = pictures[index]!;
  const { cameras, places, bleed } = joined.arrangement;
  const known = picture.sheets.flatMap(seen => {
    const place = places[joined.sheets.findIndex(s => sameSheet(s, seen.sheet))];
    return place ? cornersOf(seen).map(c => ({ ...c, on: apply(mapOf(place), c.on) })) : [];
  });
  if (known.length < leastShared) return undefined;
  const fresh = picture.sheets.filter(seen => !joined.sheets.some(s => sameSheet(s, seen.sheet)));
  const sheets = [...joined.sheets, ...fresh.map(s => s.sheet)],
    order = [...joined.order, index];
  const sighting = sightingOf(
    order.map(i => pictures[i]!),
    sheets,
  );
  const tried = guesses(picture, known).map(camera => {
    const view = viewOf(camera);
    const more = fresh.map(seen => placeOf(seen, view));
    return adjusted(
      { cameras: [...cameras, camera], places: [...places, ...more], bleed },
      sighting,
      rough,
      15,
    );
  });
  const best = tried.reduce((a, b) => (b.cost < a.cost ? b : a), tried[0]!);
  return best && { arrangement: best, sheets, order };
}

/** Corners that join a picture to others: two targets. */
const leastShared = 8;

function sightingOf(
  pictures: readonly SeenPicture[],
  sheets: readonly LaidSheet[],
  cameras?: Arrangement['cameras'],
): Sighting {
  return {
    sizes: pictures.map(({ width, height }) => ({ width, height })),
    corners: pictures.flatMap((picture, i) =>
      picture.sheets.flatMap(seen => {
        const sheet = sheets.findIndex(s => sameSheet(s, seen.sheet));
        const camera = cameras?.[i];
        return seen.targets.flatMap(target => {
          const { on } = target;
          const middle = lerp(on[0], on[2], 1 / 2);
          const dot = distance(on[0], on[2]) / distance(target.corners[0], target.corners[2]);
          const corners = (camera && straightCorners(target, camera)) ?? target.corners;
          return on.map(
            (p, k): CornerSeen => ({
              picture: i,
              sheet,
              place: target.place,
              on: p,
              outward: outwardAt(p, middle, dot),
              seen: corners[k]!,
            }),
          );
        });
      }),
    ),
  };
}

function left(
  { cameras, places, bleed }: Arrangement,
  corners: readonly CornerSeen[],
): readonly CornerLeft[] {
  const views = cameras.map(viewOf),
    maps = places.map(mapOf);
  return corners.map(corner => {
    const p = onFloor(maps[corner.sheet]!, corner, bleed);
    return { ...corner, off: distance(views[corner.picture]!.toPicture(p.x, p.y), corner.seen) };
  });
}

/** Where a corner lies on the floor, ink spread and all. */
function onFloor(map: Affine, { on, outward }: CornerSeen, bleed: number): Point {
  const x = on.x + outward.x * bleed,
    y = on.y + outward.y * bleed;
  return { x: map.a * x + map.c * y + map.e, y: map.b * x + map.d * y + map.f };
}
