import type { Finding } from '../../telling.js';
import type { Point } from '../../vector.js';
import type { FloorMap, Shot } from './floor-map.js';
import type { FloorKnown } from './ground.js';
import type { TracedPiece } from './photo-trace.js';
import { cellsIn } from './polygon-cells.js';
import { finding, type PlaceInPicture } from './tellings.js';

/** The floor, who took it, and what of it is known to be paper. */
export interface FloorLookedAt {
  readonly map: FloorMap;
  readonly shots: readonly Shot[];
  readonly known: Pick<FloorKnown, 'codes'>;
}

/** What a tracing leaves open: what is hardly to be told from the ground is never passed over in silence. */
export function faintFindings(
  pieces: readonly TracedPiece[],
  loose: readonly Point[],
  { map, shots: [shot], known }: FloorLookedAt,
): readonly Finding[] {
  const places = new Map(
    loose.map(p => placeIn(shot!, p)).map(place => [`${place.down} ${place.across}`, place]),
  );
  const sharePercent = 100 * brightShare(map, known.codes, pieces);
  return [
    finding('note', 'pieces-counted', {}, { pieces: pieces.length }),
    ...pieces
      .filter(piece => !piece.isClear)
      .map(({ name }) => finding('warning', 'piece-faint', { piece: name }, { piece: name })),
    ...[...places.values()].map(place => finding('warning', 'edge-faint', {}, place)),
    ...(sharePercent > mostBright ? [finding('warning', 'floor-too-bright', {}, { sharePercent })] : []),
  ];
}

function placeIn({ picture, view }: Shot, p: Point): PlaceInPicture {
  const { x, y } = view.toPicture(p.x, p.y);
  const third = <T>(at: number, names: readonly [T, T, T]): T =>
    names[Math.min(2, Math.max(0, Math.floor(3 * at)))]!;
  return {
    down: third(y / picture.height, ['top', 'middle', 'bottom'] as const),
    across: third(x / picture.width, ['left', 'middle', 'right'] as const),
  };
}

/** Of 255: a channel that reads as much has lost what it showed. */
const brightest = 254;
/** Per cent of the floor: less is a gleam. */
const mostBright = 4;

/** Of the ground that is seen, how much is so bright that two of its channels have lost what they showed. */
function brightShare(map: FloorMap, codes: Uint8Array, pieces: readonly TracedPiece[]): number {
  const { rgb, from } = map;
  const taken = Uint8Array.from(codes);
  for (const { points } of pieces)
    cellsIn(map, points, cell => {
      taken[cell] = 1;
    });
  let seen = 0,
    bright = 0;
  for (let k = 0; k < from.length; k++) {
    if (from[k] === 0 || taken[k] !== 0) continue;
    seen++;
    const lost = [0, 1, 2].filter(c => rgb[3 * k + c]! >= brightest).length;
    if (lost > 1) bright++;
  }
  return bright / Math.max(1, seen);
}
