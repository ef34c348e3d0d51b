import type { Where } from '@paperhinge/geometry';
import { type Accessor, createEffect, createMemo, on } from 'solid-js';
import type { Box, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { boxOfLaidPages, boxOfSewn } from './Answered.jsx';
import { placedCloths } from './Cloths.jsx';
import type { CameraControl } from './camera.js';
import type { Layout } from './layout.js';
import { boxLying } from './lie.js';
import type { Room } from './room.js';
import { around } from './WalkedPieces.jsx';
import { boxOfWhole } from './Whole.jsx';

/** What lies on the table is shown whole when it is laid there; later the table flies to what is looked at. */
export function createFlights(
  garment: Garment,
  { pieces, lieOf, whole, key: laid }: Layout,
  { show, fly, refit }: CameraControl,
  room: Accessor<Room>,
) {
  let shown = '';
  createEffect(() => {
    const key = `${laid()} ${room().width > 0}`;
    if (pieces().length === 0 || shown === key) return;
    shown = key;
    show(whole(), room());
  });
  createEffect(on(room, refit, { defer: true }));
  const flyTo = (box: Box | undefined, margin?: number) => {
    if (box && shown !== '') fly(box, room(), margin);
  };
  // The same seam walked again, as its pieces change, is not flown to again.
  const seam = createMemo(() => garment.walk()?.seam);
  const toSeam = (walked: string | undefined) => {
    const piece = pieces().find(p => p.name === garment.walk()?.stations[0]?.a);
    if (walked !== undefined && piece) flyTo(around(piece.box), 0.04);
    else flyTo(whole());
  };
  createEffect(on(seam, toSeam, { defer: true }));
  const isSeenWhole = createMemo(() => garment.whole() !== undefined);
  createEffect(
    on(isSeenWhole, isWhole => flyTo(isWhole ? boxOfWhole(garment.whole()!) : whole()), { defer: true }),
  );
  // What the heading that is read shows is flown to when it comes and when it goes; cloths also as they grow.
  const answered = createMemo(() => {
    const reading = garment.reading();
    if (reading === 'cloth' && garment.cloths())
      return `cloth ${placedCloths(garment.cloths()!, room())?.box.join(' ')}`;
    if (reading === 'away' && garment.pages()) return reading;
    return garment.sewn() ? `sewn ${garment.sewn()!.lit.join(' ')}` : '';
  });
  const toAnswer = (answer: string) => {
    if (answer.startsWith('cloth')) flyTo(placedCloths(garment.cloths()!, room())?.box);
    else if (answer === 'away') flyTo(boxOfLaidPages(garment));
    else flyTo(garment.sewn() ? boxOfSewn(garment.sewn()!) : whole());
  };
  createEffect(on(answered, toAnswer, { defer: true }));
  return {
    /** Flies to a piece and touches what is meant of it. */
    goTo: (where: Where): void => {
      garment.setReading('sews');
      const piece = pieces().find(p => p.name === where.piece);
      if (!piece) return;
      flyTo(boxLying(piece.box, lieOf(piece.name)), 0.18);
      garment.setTouched(touchedAt(where, piece.name));
    },
  };
}

/** What a place on a piece means: its edge, its dart, else the piece. */
function touchedAt({ edge, dart }: Where, piece: string): Touched {
  const name = edge ?? dart;
  return name === undefined
    ? { kind: 'piece', piece }
    : { kind: edge === undefined ? 'dart' : 'edge', piece, name };
}
