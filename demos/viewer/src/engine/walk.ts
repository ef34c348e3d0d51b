import { edgePath, type Pattern, type Point, pieceNamed, walkSeam } from '@paperhinge/geometry';
import { type SeamSide, sidesOfSeam } from '@paperhinge/geometry/measure';
import { pointAlong, tangentAlong } from '@paperhinge/geometry/paths';
import { scale } from '@paperhinge/geometry/plane';
import type { Words } from '@paperhinge/sheet/words';
import type { Station, Walk } from './pictures.js';

/** mm: a stitch. */
const stitch = 2.5;
const mostStations = 500;

/**
 * A seam as it is walked: side b rolls along side a, a stitch at a time, its edge beside a's. Where ease is wanted, b goes
 * by so much less or more for each stitch, so that both come to their ends together if they sew together.
 */
export function walkOf(pattern: Pattern, name: string, words: Words): Walk | undefined {
  const seam = pattern.seams.find(s => s.name === name);
  if (!seam) return undefined;
  const { aMm, bMm, differenceMm, easeWantedMm, matches, joined } = walkSeam(pattern, seam);
  const { a, b } = sidesOfSeam(pattern, seam);
  const wantedOfB = a.reachMm - easeWantedMm - (a.reachMm - a.lengthMm) + (b.reachMm - b.lengthMm);
  const rate = wantedOfB / a.reachMm;
  const count = Math.min(mostStations, Math.max(20, Math.ceil(a.reachMm / stitch)));
  const stations = Array.from({ length: count + 1 }, (_, i) => {
    const along = (a.reachMm * i) / count;
    return stationAt(pattern, a, b, along, Math.min(along * rate, b.reachMm));
  });
  const { say } = words;
  const offMm = differenceMm - easeWantedMm;
  return {
    seam: name,
    title: say.thing({ seam: name }),
    aMm,
    bMm,
    reachMm: a.reachMm,
    offMm,
    off: say.slight(Math.abs(offMm)),
    ease: Math.abs(easeWantedMm) > 0.05 ? say.change(easeWantedMm) : '',
    matches,
    stations,
    notches: notchesOf(a, b, rate, words),
    ends: joined.map(({ first, second, cornerDeg }) => ({
      text: say.list([say.thing(first), say.thing(second)]),
      deg: cornerDeg,
    })),
  };
}

interface Spot {
  readonly piece: string;
  readonly at: Point;
  /** The way of the sewing. */
  readonly way: Point;
  /** The piece lies on the right of it. */
  readonly isRight: boolean;
}

function spotAt(pattern: Pattern, side: SeamSide, along: number): Spot {
  const laid = side.runs.findLast(r => r.fromMm <= along) ?? side.runs[0]!;
  const { run } = laid;
  const path = edgePath(pieceNamed(pattern, run.piece), run.edge);
  const local = Math.min(Math.max(along - laid.fromMm, 0), laid.lengthMm);
  const from = run.part?.from ?? 0;
  const mm = run.reversed ? from + laid.lengthMm - local : from + local;
  const tangent = tangentAlong(path, mm);
  return {
    piece: run.piece,
    at: pointAlong(path, mm),
    way: run.reversed ? scale(tangent, -1) : tangent,
    // Outlines run clockwise with their piece on the right.
    isRight: !run.reversed,
  };
}

/** What lays b's spot on a's, edge beside edge: turned over where both pieces would lie on one side. */
export function stationAt(
  pattern: Pattern,
  a: SeamSide,
  b: SeamSide,
  alongA: number,
  alongB: number,
): Station {
  const p = spotAt(pattern, a, alongA),
    q = spotAt(pattern, b, alongB);
  const over = p.isRight === q.isRight ? -1 : 1;
  // b's way onto a's, and b's right onto a's right or left.
  const m = {
    a: p.way.x * q.way.x + over * p.way.y * q.way.y,
    b: p.way.y * q.way.x - over * p.way.x * q.way.y,
    c: p.way.x * q.way.y - over * p.way.y * q.way.x,
    d: p.way.y * q.way.y + over * p.way.x * q.way.x,
  };
  const e = p.at.x - m.a * q.at.x - m.c * q.at.y,
    f = p.at.y - m.b * q.at.x - m.d * q.at.y;
  return { a: p.piece, b: q.piece, matrix: [m.a, m.b, m.c, m.d, e, f], at: [p.at.x, p.at.y], alongA, alongB };
}

/** mm: notches of the two sides that are nearer are one pair. */
const pairReach = 25;

function notchesOf(a: SeamSide, b: SeamSide, rate: number, { say }: Words): Walk['notches'] {
  const onB = b.notches.map(n => n.alongMm / rate);
  const paired = new Set<number>();
  const ofA = a.notches.map(({ alongMm }) => {
    const nearest = onB.findIndex((at, i) => !paired.has(i) && Math.abs(at - alongMm) < pairReach);
    if (nearest < 0) return { share: alongMm / a.reachMm, side: 'a' as const, apart: '' };
    paired.add(nearest);
    const apart = Math.abs(onB[nearest]! - alongMm);
    return { share: alongMm / a.reachMm, side: 'both' as const, apart: say.slight(apart) };
  });
  const alone = onB.filter((_, i) => !paired.has(i));
  return [...ofA, ...alone.map(at => ({ share: at / a.reachMm, side: 'b' as const, apart: '' }))];
}
