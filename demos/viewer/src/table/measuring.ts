import type { Garment } from '../job/garment.js';
import type { Place } from './camera.js';

/** px within which a measurement goes to a named point. */
const pointPull = 12;

/** Ends the measurement that was begun: at a named point of its piece that is near, else where the piece is touched. */
export async function measureTo(garment: Garment, here: Place, scale: number): Promise<void> {
  const begun = garment.measuring();
  if (!begun) return;
  const [near] = garment.engine
    .held()
    .points.filter(p => p.piece === begun.piece)
    .map(p => ({ at: p.at, px: Math.hypot(p.at[0] - here[0], p.at[1] - here[1]) * scale }))
    .sort((p, q) => p.px - q.px);
  const to = near && near.px < pointPull ? near.at : here;
  const came = await garment.engine.measure({ piece: begun.piece, from: begun.from, to });
  garment.setMeasuring({ ...begun, to, came });
}
