import type { Edge, Notch, Piece } from '@paperhinge/geometry';
import type { Became } from '../became/became.js';
import { thingsOn } from '../became/by-names.js';
import { follow } from '../became/follow.js';
import type { CutPiece } from '../hinge/cut-piece.js';
import { withGrainOf } from './grain-for.js';
import { type Part, partOf } from './parted.js';

/** The two parts of a piece cut in two, and what became of all that lay on it. */
export interface InTwo {
  /** The part that keeps the piece's name. */
  readonly kept: Piece;
  readonly off: Piece;
  readonly became: Became;
}

/**
 * A piece cut once from outline to outline, as two pieces where it lies: each with its part of the outline, its notches,
 * lines and marks, and a grain line of the piece's way.
 *
 * @param keeping the section that keeps the piece's name
 * @param name what the other is called
 * @param fresh what the edge along the cut is called and how it is treated, on both
 */
export function inTwo(cutPiece: CutPiece, keeping: number, name: string, fresh: Edge): InTwo {
  const { piece, sections } = cutPiece;
  const parts = sections.map((_, section) =>
    partOf(cutPiece, section, section === keeping ? piece.name : name, fresh),
  );
  const became = becameOf(piece, parts);
  const [kept, off] = [parts[keeping]!, parts[1 - keeping]!].map(part => {
    const own = withGrainOf(part.piece, piece);
    return { ...own, notches: notchesOn(piece, became, own.name) };
  });
  return { kept: kept!, off: off!, became };
}

/** The notches of the piece that lie on one of its parts now. */
const notchesOn = (piece: Piece, became: Became, part: string): readonly Notch[] =>
  piece.notches.flatMap(notch =>
    follow(became, { piece: piece.name, edge: notch.edge, at: notch.at }).flatMap(place =>
      place.piece === part ? [{ ...notch, edge: place.edge, at: place.at }] : [],
    ),
  );

/** Every stretch and thing where one of the parts has it; the legs of darts that the cut ends at are gone. */
function becameOf(piece: Piece, parts: readonly Part[]): Became {
  const things = parts.flatMap(part => part.things);
  const left = new Set(things.map(({ was }) => JSON.stringify(was)));
  const gone = thingsOn(piece).filter(thing => !left.has(JSON.stringify(thing)));
  return { edges: parts.flatMap(part => part.spans), things: [...things, ...gone.map(was => ({ was }))] };
}
