// Facings and stays of necks so steep that their inner line would come to the fold or the front edge only far below.
import { draftFacing, draftStay } from '@paperhinge/alter/made';
import {
  at,
  checkPattern,
  cuttingLine,
  definePattern,
  definePiece,
  edgeNames,
  edgePath,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
  polyline,
} from '@paperhinge/geometry';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';

const pointsOf = (piece: Piece, edge: string): readonly Point[] => {
  const { segments } = edgePath(piece, edge);
  return [segments[0]![0], ...segments.map(segment => segment.at(-1)!)];
};

/** A V so steep that lines 40 mm inside it meet the fold 40 / sin(angle) below its point. */
const steepFront = (degrees: number): Piece => {
  const depth = 60 / Math.tan((degrees * Math.PI) / 180);
  return definePiece({
    name: 'front',
    outline: [
      { name: 'neck', path: polyline(at(0, depth), at(60, 0)) },
      { name: 'shoulder', path: polyline(at(60, 0), at(240, 30)) },
      { name: 'side', path: polyline(at(240, 30), at(260, depth + 250)) },
      { name: 'hem', kind: 'hem', path: polyline(at(260, depth + 250), at(0, depth + 250)) },
      { name: 'centre', kind: 'fold', path: polyline(at(0, depth + 250), at(0, depth)) },
    ],
  });
};
const along = [{ piece: 'front', edge: 'neck' }];

describe.each([5, 6, 8])('a V of %d degrees to each side', degrees => {
  const front = steepFront(degrees);
  const pattern = definePattern({ name: 'steep', pieces: [front] });

  test('its facing lies on the fold, and is cut across 2.5 times its width below the point', () => {
    const done = draftFacing(pattern, { name: 'facing', along, width: 40 });
    const facing = pieceNamed(done.pattern, 'facing');
    const fold = foldEdgeOf(facing)!;
    const tip = pointsOf(facing, 'neck')[0]!;
    expect(pathLength(fold.path)).toBeCloseTo(100, 6);
    const [from, to] = pointsOf(facing, 'end-before');
    expect(from!.y).toBeCloseTo(tip.y + 100, 6);
    expect(to!.y).toBeCloseTo(tip.y + 100, 6);
    // By then the inner line, 40 mm inside the V, has come so near.
    const angle = (degrees * Math.PI) / 180;
    expect(Math.abs(from!.x - to!.x)).toBeCloseTo(40 / Math.cos(angle) - 100 * Math.tan(angle), 6);
    expect(checkPattern(done.pattern).filter(f => f.where.piece === 'facing')).toEqual([]);
    expect(cuttingLine(facing, done.pattern).path.segments.length).toBeGreaterThan(3);
  });

  test('its stay is whole, both halves alike', () => {
    const done = draftStay(pattern, { name: 'stay', along, width: 40 });
    const stay = pieceNamed(done.pattern, 'stay');
    expect(edgeNames(stay)).toEqual(['outer', 'end-after', 'inner', 'end-before']);
    expect(pathLength(edgePath(stay, 'outer'))).toBeCloseTo(2 * pathLength(edgePath(front, 'neck')), 6);
    const lowest = (edge: string): number => Math.max(...pointsOf(stay, edge).map(p => p.y));
    expect(lowest('inner')).toBeCloseTo(lowest('outer') + 100, 6);
    expect(pathLength(edgePath(stay, 'end-after'))).toBeCloseTo(pathLength(edgePath(stay, 'end-before')), 6);
  });
});

test('the facing of a waistcoat’s neck follows the front edge, and turns back along it', () => {
  const front = definePiece({
    name: 'front',
    outline: [
      { name: 'neck', path: polyline(at(0, 170), at(40, 0)) },
      { name: 'shoulder', path: polyline(at(40, 0), at(128, 26)) },
      { name: 'side', path: polyline(at(128, 26), at(180, 330)) },
      { name: 'hem', kind: 'hem', path: polyline(at(180, 330), at(0, 336)) },
      { name: 'front-edge', path: polyline(at(0, 336), at(0, 170)) },
    ],
  });
  const pattern = definePattern({ name: 'waistcoat', pieces: [front] });
  const done = draftFacing(pattern, { name: 'facing', along, width: 40 });
  const facing = pieceNamed(done.pattern, 'facing');
  expect(edgeNames(facing)).toEqual(['neck', 'shoulder', 'inner', 'end-before', 'front-edge']);
  expect(pathLength(edgePath(facing, 'front-edge'))).toBeCloseTo(100, 6);
  expect(checkPattern(done.pattern).map(f => f.code)).not.toContain('turned-back-end-off');
});

test('an edge that runs on with the faced one is not followed', () => {
  const piece = definePiece({
    name: 'front',
    outline: [
      { name: 'neck', path: polyline(at(0, 0), at(90, 0)) },
      { name: 'on', path: polyline(at(90, 0), at(220, -4)) },
      { name: 'side', path: polyline(at(220, -4), at(220, 300)) },
      { name: 'hem', kind: 'hem', path: polyline(at(220, 300), at(0, 300)) },
      { name: 'left', path: polyline(at(0, 300), at(0, 0)) },
    ],
  });
  const done = draftFacing(definePattern({ name: 'p', pieces: [piece] }), {
    name: 'facing',
    along,
    width: 30,
  });
  expect(edgeNames(pieceNamed(done.pattern, 'facing'))).toEqual(['neck', 'end-after', 'inner', 'left']);
});

test('a stay ends square at a corner: the neck beside an inset is not followed', () => {
  const piece = definePiece({
    name: 'front',
    outline: [
      { name: 'neck', path: polyline(at(40, 257), at(85, 160)) },
      { name: 'round', path: pathOf([at(85, 160), at(118, 140), at(130, 95), at(150, 48)]) },
      { name: 'shoulder', path: polyline(at(150, 48), at(253, 92)) },
      { name: 'side', path: polyline(at(253, 92), at(300, 500)) },
      { name: 'hem', kind: 'hem', path: polyline(at(300, 500), at(40, 500)) },
      { name: 'centre', kind: 'fold', path: polyline(at(40, 500), at(40, 257)) },
    ],
  });
  const done = draftStay(definePattern({ name: 'p', pieces: [piece] }), { name: 'stay', along, width: 18 });
  expect(pathLength(edgePath(pieceNamed(done.pattern, 'stay'), 'end-after'))).toBeCloseTo(18, 6);
});
