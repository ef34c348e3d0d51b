import {
  bodyPieces,
  type EdgeRef,
  edgeNamed,
  edgeNames,
  type Finding,
  lengthInGarment,
  neighboursOf,
  type Pattern,
  pieceNamed,
  runLabel,
  tolerances,
} from '@paperhinge/geometry';
import type { Derived } from '../alteration.js';
import { stretchOf } from './cloth.js';
import { stillThere } from './still-there.js';
import { unknownHeadGirth, type Wearer } from './wearer.js';

/** How wide a neck opens, stretched as far as its cloth and its band go; lengths in mm. */
export interface NeckOpening {
  /** The edges that make the neck. */
  readonly edges: readonly EdgeRef[];
  /** (E + G) × (1 + stretch) of the neck edge itself. */
  readonly neckMm: number;
  /** (length − 2 join) × (1 + stretch) of each band sewn to it. */
  readonly bands: readonly { readonly name: string; readonly reachMm: number }[];
  /** Plackets and zips that open it, each once. */
  readonly openingMm: number;
  /** The least of neck and bands, plus twice the openings. */
  readonly widestMm: number;
}

/**
 * How wide the neck of a garment opens: its edges are those that a neck band was drafted for, else those of the body
 * pieces that are named for the neck, with an inset beside them; undefined where there are none. A piece that is sewn to the neck and was not drafted
 * in this run (its own old neckband) holds it in like a band.
 */
export function neckOpening(pattern: Pattern, derived: readonly Derived[]): NeckOpening | undefined {
  const drafted = stillThere(pattern, derived).filter(
    d =>
      (d.kind === 'band' || d.kind === 'binding') &&
      (d.along.some(e => isNeckName(e.edge)) || /\b(neck|collar)/i.test(d.name)),
  );
  const found = drafted.length > 0 ? drafted.flatMap(d => d.along) : neckEdges(pattern);
  const edges = found.filter((e, i) => i === found.findIndex(f => f.piece === e.piece && f.edge === e.edge));
  if (edges.length === 0) return undefined;
  const stretches = edges.map(e => stretchOf(pattern, pieceNamed(pattern, e.piece).cutting.fabric));
  const gapMm = Math.max(0, ...drafted.map(d => d.figures.gapMm ?? 0));
  const grown = (mm: number, percent: number) => mm * (1 + percent / 100);
  const neckMm =
    edges.reduce((sum, e, i) => sum + grown(lengthInGarment(pattern, e), stretches[i]!), 0) +
    grown(gapMm, Math.min(...stretches));
  const bands = [
    ...drafted.map(d => ({
      name: d.name,
      reachMm: grown(d.lengthMm - 2 * (d.figures.joinMm ?? 0), stretchOf(pattern, d.fabric)),
    })),
    ...oldBands(
      pattern,
      edges.filter(e => drafted.length > 0 || isNeckName(e.edge)),
      drafted,
    ),
  ];
  const openingMm = openings(pattern, edges);
  const widestMm = Math.min(neckMm, ...bands.map(b => b.reachMm)) + 2 * openingMm;
  return { edges, neckMm, bands, openingMm, widestMm };
}

/**
 * Whether the wearer's head passes the neck: a note where it does, a fault with the missing millimetres where it does
 * not. Without a head girth the adult's of `unknownHeadGirth` serves, and what is missing is a warning.
 */
export function overTheHead(input: {
  readonly pattern: Pattern;
  readonly wearer: Wearer;
  readonly derived: readonly Derived[];
}): readonly Finding[] {
  const opening = neckOpening(input.pattern, input.derived);
  if (!opening) return [];
  const known = input.wearer['head girth'];
  const headGirthMm = known ?? unknownHeadGirth;
  const { widestMm, openingMm, neckMm, bands, edges } = opening;
  const head =
    known === undefined
      ? `an adult head of ${headGirthMm} mm (99th percentile)`
      : `a head of ${headGirthMm.toFixed(1)} mm`;
  const tightest = bands.reduce((t, b) => (b.reachMm < t.reachMm ? b : t), {
    name: 'the neck edge',
    reachMm: neckMm,
  });
  const missingMm = headGirthMm - widestMm;
  const figures = {
    openingMm: widestMm,
    headGirthMm,
    neckMm,
    ...(openingMm > 0 ? { slitMm: openingMm } : {}),
  };
  const limit = `${tightest.name} opens to ${widestMm.toFixed(1)} mm${openingMm > 0 ? ` with its opening of ${openingMm.toFixed(1)} mm` : ''}`;
  if (missingMm <= tolerances.coincidenceTolerance)
    return [
      {
        severity: 'note',
        code: 'head-passes',
        where: edges[0]!,
        message: `Over the head: ${limit}; ${head} passes with ${(-missingMm).toFixed(1)} mm to spare.`,
        figures: { ...figures, spareMm: -missingMm },
        remedy:
          known === undefined
            ? "Give the wearer's head girth to check against it."
            : 'Nothing to do; try it on before the last stitching all the same.',
      },
    ];
  return [
    {
      severity: known === undefined ? 'warning' : 'fault',
      code: 'head-does-not-pass',
      where: edges[0]!,
      message: `Over the head: ${limit}; ${head} does not pass, ${missingMm.toFixed(1)} mm are missing.`,
      figures: { ...figures, missingMm },
      remedy:
        `Open ${tightest.name} by ${missingMm.toFixed(1)} mm (a wider neck, a longer band or cloth that stretches ` +
        `more), or give it a placket of at least ${(missingMm / 2).toFixed(1)} mm.`,
    },
  ];
}

const isNeckName = (name: string): boolean => /\bneck/i.test(name);

/**
 * The neck edges of the body: not those of a band, collar or facing, which are sewn to them. An inset beside the neck
 * that no band bridges is a part of it.
 */
const neckEdges = (pattern: Pattern): readonly EdgeRef[] =>
  bodyPieces(pattern)
    .filter(piece => !sewnOn.test(piece.name))
    .flatMap(piece =>
      edgeNames(piece)
        .filter(
          edge =>
            isNeckName(edge) ||
            (/^inset\b/i.test(edge) && Object.values(neighboursOf(piece, edge)).some(isNeckName)),
        )
        .map(edge => ({ piece: piece.name, edge })),
    );

const sewnOn = /band|binding|collar|facing|stay|interfacing|lining|casing/i;

/** Pieces that were there before and are sewn to the whole neck: what their sewn edges reach when stretched. */
function oldBands(pattern: Pattern, edges: readonly EdgeRef[], drafted: readonly Derived[]) {
  const isNeck = (r: EdgeRef) => edges.some(e => e.piece === r.piece && e.edge === r.edge);
  return pattern.seams.flatMap(({ a, b }) =>
    [
      [a, b],
      [b, a],
    ].flatMap(([necks, others]) => {
      if (!necks!.some(isNeck) || others!.some(isNeck)) return [];
      // A piece sewn to a part of the neck only leaves the rest free to open.
      if (!edges.every(e => necks!.some(r => r.piece === e.piece && r.edge === e.edge))) return [];
      const pieces = [...new Set(others!.map(r => r.piece))];
      if (pieces.some(p => drafted.some(d => d.name === p))) return [];
      const once = others!.filter((r, i) => i === others!.findIndex(o => runLabel(o) === runLabel(r)));
      const reachMm = once.reduce((sum, r) => {
        const stretch = stretchOf(pattern, pieceNamed(pattern, r.piece).cutting.fabric);
        return sum + lengthInGarment(pattern, r) * (1 + stretch / 100);
      }, 0);
      return [{ name: pieces.join(' + '), reachMm }];
    }),
  );
}

/**
 * Openings in the neck edges, and those that end at them (a zip in the centre back seam, a placket in a shoulder);
 * where both sides of a seam speak of the same opening it counts once.
 */
function openings(pattern: Pattern, edges: readonly EdgeRef[]): number {
  const counted: (EdgeRef & { readonly opening: number })[] = [];
  for (const { piece: name, edge } of edges) {
    const piece = pieceNamed(pattern, name);
    const { start, end } = neighboursOf(piece, edge);
    for (const other of [edge, start, end].filter(e => edgeNames(piece).includes(e))) {
      const opening = edgeNamed(piece, other).opening ?? 0;
      const ref = { piece: name, edge: other };
      if (opening > 0 && !counted.some(c => isSameOpening(pattern, c, ref)))
        counted.push({ ...ref, opening });
    }
  }
  return counted.reduce((sum, c) => sum + c.opening, 0);
}

function isSameOpening(pattern: Pattern, one: EdgeRef, other: EdgeRef): boolean {
  const is = (r: EdgeRef, ref: EdgeRef) => r.piece === ref.piece && r.edge === ref.edge;
  if (is(one, other)) return true;
  return pattern.seams.some(
    ({ a, b }) =>
      (a.some(r => is(r, one)) && b.some(r => is(r, other))) ||
      (b.some(r => is(r, one)) && a.some(r => is(r, other))),
  );
}
