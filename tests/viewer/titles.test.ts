// Titles on the table: as large at any scale, so small pieces have theirs underneath and lie far enough apart for it.
import { expect, test } from 'vitest';
import type { PieceView } from '../../demos/viewer/src/engine/view.js';
import { placesOf } from '../../demos/viewer/src/table/places.js';
import { cutLines, roomTaken, standsBelow } from '../../demos/viewer/src/table/title.js';

const piece = (name: string, width: number, height: number, middleRoom = height / 2): PieceView => ({
  name,
  title: name,
  cut: 'cut 2, mirrored',
  box: [0, 0, width, height],
  room: [0, 0, width, height],
  cutting: '',
  stitching: '',
  parts: [],
  middle: [width / 2, height / 2],
  middleRoom,
  before: '',
  told: '',
});

test('a title stands on a piece that has room for it, else underneath', () => {
  expect(standsBelow(piece('Front', 300, 600), 0.4)).toBe(false);
  expect(standsBelow(piece('Front', 300, 600), 0.1)).toBe(true);
  expect(standsBelow(piece('Waist facing of the front yoke', 400, 300), 0.4)).toBe(true);
  // A line runs close by the only place there is.
  expect(standsBelow(piece('Front', 300, 600, 20), 0.4)).toBe(true);
});

test('how it is cut is said in lines of its own, or not at all', () => {
  expect(cutLines(piece('Front', 300, 600), 0.4, false)).toEqual(['cut 2, mirrored']);
  expect(cutLines(piece('Front', 300, 600, 130), 0.3, false)).toEqual(['cut 2, mirrored']);
  // Neither across nor down is there more room than the two lines take.
  expect(cutLines(piece('Front', 300, 600, 68), 0.8, true)).toEqual(['cut 2, mirrored']);
  expect(cutLines(piece('Front', 50, 600, 68), 0.4, true)).toEqual(['cut 2,', 'mirrored']);
  expect(cutLines(piece('Front', 300, 600, 30), 0.4, false)).toEqual([]);
});

test('in their rows no title runs into another, or into the piece below', () => {
  const room = { width: 900, height: 700 };
  const pieces = [
    ...['Waist facing of the front yoke', 'Waist facing of the back yoke', 'Collar stand'].map(name =>
      piece(name, 180, 60),
    ),
    piece('Front', 600, 900),
    piece('Back', 600, 900),
    piece('Patch pocket', 120, 150),
  ];
  const places = placesOf(pieces, room);
  const boxes = pieces.map(p => [...p.box].map((v, i) => v + (places.get(p.name)![i] ?? 0)));
  const width = Math.max(...boxes.map(b => b[0]! + b[2]!)),
    height = Math.max(...boxes.map(b => b[1]! + b[3]!));
  // As the table then shows them: all of it, with a tenth of the room left free at each side.
  const scale = Math.min(room.width / width, room.height / height) * 0.8;
  const taken = pieces.map(p => {
    const [x, y, w, h] = roomTaken(p, scale);
    const [dx, dy] = places.get(p.name)!;
    return { left: x + dx, right: x + w + dx, top: y + dy, bottom: y + h + dy };
  });
  for (const [i, p] of taken.entries())
    for (const q of taken.slice(i + 1)) {
      const apart = p.right <= q.left || q.right <= p.left || p.bottom <= q.top || q.bottom <= p.top;
      expect(apart).toBe(true);
    }
});
