import type { Dart, Piece } from '@paperhinge/geometry';
import { type Item, itemsOf, type Run } from '../moved-edges/composed.js';
import { refusal } from './tellings.js';

/** The outline of a piece as items, and the two runs of edges on either side of a dart. */
export interface BesideDart {
  /** The piece's name. */
  readonly name: string;
  readonly items: readonly Item[];
  readonly dart: Dart;
  readonly before: Run;
  readonly after: Run;
}

/** @throws PatternError `dart-beside-nothing` where another dart or pleat begins where this one ends */
export function besideDart(piece: Piece, dart: Dart): BesideDart {
  const items = itemsOf(piece);
  const i = items.indexOf(dart);
  const before = items[(i + items.length - 1) % items.length]!,
    after = items[(i + 1) % items.length]!;
  if (before.type !== 'run' || after.type !== 'run' || before === after)
    throw refusal('dart-beside-nothing', {
      dart: { piece: piece.name, dart: dart.name },
      toMm: 0,
      roomMm: 0,
    });
  return { name: piece.name, items, dart, before, after };
}

/** The ring with other items in the place of a dart and the runs beside it. */
export function replacedRound(
  { items, dart, before, after }: BesideDart,
  fresh: readonly Item[],
): readonly Item[] {
  return items.flatMap(item => (item === dart ? fresh : item === before || item === after ? [] : [item]));
}
