import { type Edge, edgeNamed, type Path, type Piece, pathLength } from '@paperhinge/geometry';
import { reversedPath } from '@paperhinge/geometry/paths';
import type { Became } from '../became/became.js';
import { carriedNotches } from '../became/parts.js';
import { freeName } from '../dividing/joined-ring.js';
import { composed, goneFrom, type Item, itemsOf, partOfRun, type Run } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { gussetLines } from './gusset.js';
import { type Kimono, sleeveLines } from './kimono.js';
import { refusal } from './tellings.js';
import type { UnderarmCurve } from './underarm-curve.js';

/** What the edges of a body are called that came of its sleeve. */
export interface KimonoNames {
  readonly overarm: string;
  readonly hem: string;
  readonly underarm: string;
  /** Both sides of the slash for a gusset: that towards the sleeve, and that towards the side. */
  readonly gusset: readonly [string, string];
}

export function kimonoNames(piece: Piece, hem: string): KimonoNames {
  const taken = new Set(piece.outline.parts.map(part => part.name));
  const free = (name: string): string => {
    const own = freeName(name, taken);
    taken.add(own);
    return own;
  };
  return {
    overarm: free('overarm'),
    hem: free(taken.has(hem) ? `sleeve ${hem}` : hem),
    underarm: free('underarm'),
    gusset: [free('gusset sleeve'), free('gusset side')],
  };
}

/** A body with its sleeve half in the place of its armhole, and what became of both. */
export interface KimonoBody {
  readonly piece: Piece;
  readonly became: Became;
}

/** What is made of the corner under the arm: a slash for a gusset so many mm in, or a curve. */
export type Underarm = { readonly depth: number } | UnderarmCurve;

/**
 * @param corner absent: it stays
 * @throws PatternError `kimono-crosses` where sleeve and body would lie on one another
 */
export function kimonoBody(
  laid: Kimono,
  sleeve: Piece,
  names: KimonoNames,
  corner: Underarm | undefined,
): KimonoBody {
  const { piece, run, shoulder } = laid.body;
  const items = itemsOf(piece);
  const at = items.findIndex(item => item.type === 'run' && item.edge.name === run.edge);
  const tipFirst = laid.body.up === run.reversed;
  const lines = sleeveLines(laid, sleeve);
  const slash = corner && 'depth' in corner ? gussetLines(laid, lines, corner.depth) : undefined;
  const curve = corner && 'side' in corner ? corner : undefined;
  const fresh = (name: string, like: Edge, path: Path, role: Edge['role']): Run => ({
    type: 'run',
    edge: { ...like, name, ...(role ? { role } : {}), corners: {} },
    path: tipFirst ? path : reversedPath(path),
  });
  const seam = edgeNamed(piece, shoulder);
  const { hem } = laid.half;
  const hemLike = edgeNamed(sleeve, hem.edge);
  const against = hem.from > hem.to;
  const hemRun: Run = {
    ...fresh(names.hem, hemLike, lines.hem, hemLike.role),
    was: {
      piece: sleeve.name,
      edge: hem.edge,
      from: Math.min(hem.from, hem.to),
      to: Math.max(hem.from, hem.to),
    },
    ...(against === tipFirst ? { turned: true as const } : {}),
  };
  const outwards: readonly Run[] = [
    fresh(names.overarm, seam, lines.overarm, 'shoulder'),
    hemRun,
    fresh(names.underarm, seam, slash?.underarm ?? curve?.underarm ?? lines.underarm, 'underarm'),
    ...(slash
      ? [
          fresh(names.gusset[0], seam, slash.towardsSleeve, 'underarm'),
          fresh(names.gusset[1], seam, slash.towardsSide, 'underarm'),
        ]
      : []),
    ...(curve ? [fresh(laid.sideEdge, edgeNamed(piece, laid.sideEdge), curve.side, undefined)] : []),
  ];
  const sideAt = (at + (tipFirst ? 1 : -1) + items.length) % items.length;
  const drawn = items.flatMap((item, i): readonly Item[] => {
    if (i === at) return tipFirst ? outwards : [...outwards].reverse();
    return i === sideAt
      ? [withoutEnd(item as Run, tipFirst, laid.dropMm + ((slash ?? curve)?.takenMm ?? 0))]
      : [item];
  });
  const { parts, spans } = composed(piece, drawn);
  const after: Piece = { ...piece, outline: { parts } };
  const where = { piece: piece.name };
  requireSimple(after, () => refusal('kimono-crosses', { piece: where }, where));
  const gone = goneFrom(piece, spans, [after]);
  const became: Became = {
    edges: [...spans, ...gone.edges],
    // Where the armhole was there is cloth now.
    things: [...gone.things, { was: { ...where, edge: run.edge }, now: where }],
  };
  const notches = [...carriedNotches(piece, became), ...carriedNotches(sleeve, { ...became, things: [] })];
  return { piece: { ...after, notches: notches.filter(({ edge }) => has(after, edge)) }, became };
}

const has = ({ outline }: Piece, edge: string): boolean => outline.parts.some(part => part.name === edge);

function withoutEnd(run: Run, atStart: boolean, mm: number): Run {
  const length = pathLength(run.path);
  return atStart ? partOfRun(run, mm, Number.POSITIVE_INFINITY) : partOfRun(run, 0, length - mm);
}
