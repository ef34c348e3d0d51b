import type { Garment } from '../job/garment.js';
import type { CameraControl } from './camera.js';
import type { Layout } from './layout.js';
import { turnedBy } from './lie.js';
import type { Room } from './room.js';

/** mm and degrees that a key moves a piece by, px that it pans by, and how much nearer it brings the table. */
const keyMove = 20,
  keyTurn = 5,
  keyPan = 40,
  nearer = 1.25;

/** The table by keys: arrows pan, + and − zoom, 0 shows all; with Alt, arrows move the piece that was touched, with Shift besides they turn it. */
export const tableKeys =
  (
    garment: Garment,
    { pan, zoom, fly }: CameraControl,
    { whole, moving, middleOf }: Layout,
    room: () => Room,
  ) =>
  (event: KeyboardEvent & { readonly currentTarget: Element }): void => {
    const { width, height } = room();
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    const piece = garment.touched()?.piece;
    const doings: Readonly<Record<string, () => void>> = {
      '+': () => zoom(nearer, width / 2, height / 2),
      '-': () => zoom(1 / nearer, width / 2, height / 2),
      '0': () => fly(whole(), room()),
    };
    if (event.key === 'Escape') {
      garment.setTouched(undefined);
      garment.setMeasuring(undefined);
      garment.setSeenWhole(false);
    } else if (way && event.altKey && event.shiftKey && piece !== undefined)
      moving.move(piece, turnedBy((way[0]! || way[1]!) * keyTurn, middleOf(piece)));
    else if (way && event.altKey && piece !== undefined)
      moving.shift(piece, way[0]! * keyMove, way[1]! * keyMove);
    else if (event.target !== event.currentTarget) return;
    else if (way) pan(-way[0]! * keyPan, -way[1]! * keyPan);
    else if (doings[event.key]) doings[event.key]!();
    else return;
    event.preventDefault();
  };
