import {
  type EdgeRef,
  type EdgeRole,
  edgeNamed,
  type Finding,
  type Pattern,
  pieceNamed,
  roleOf,
  type Thing,
} from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Derived } from '../alteration.js';
import { sameEdge } from '../edge-refs.js';
import { type RingOpening, ringOpening } from './ring-opening.js';
import { cuffEdges, garmentPieces, legEdges, lengthInLimb, neckEdges, waistEdges } from './rings.js';
import { stillThere } from './still-there.js';
import { strapsOf } from './straps.js';
import { finding, type Passing } from './tellings.js';
import { measurementOf, unknownHeadGirth, type Wearer } from './wearer.js';

/** How wide a neck opens, stretched as far as its cloth and its band go; lengths in mm. */
export interface NeckOpening extends Omit<RingOpening, 'edgeMm'> {
  /** (E + G) × (1 + stretch) of the neck edge itself. */
  readonly neckMm: number;
  /** A strap that is sewn on by one end alone and tied or fastened: the neck is no ring, and opens as far as one likes. */
  readonly openAt?: Thing;
}

interface Passage {
  readonly pattern: Pattern;
  readonly wearer: Wearer;
  readonly derived: readonly Derived[];
}

/**
 * How wide the neck of a garment opens: its edges are those that a neck band was drafted for, else those whose role
 * it is, with an inset beside them; undefined where there are none.
 */
export function neckOpening(pattern: Pattern, derived: readonly Derived[]): NeckOpening | undefined {
  requireWhole(pattern);
  const necks = neckEdges(pattern);
  const drafted = draftedFor(pattern, derived, necks);
  const found = drafted.length > 0 ? drafted.flatMap(d => d.along) : necks;
  const edges = found.filter((e, i) => i === found.findIndex(f => sameEdge(f, e)));
  if (edges.length === 0) return undefined;
  const held =
    drafted.length > 0
      ? edges
      : edges.filter(({ piece, edge }) => roleOf(edgeNamed(pieceNamed(pattern, piece), edge)) === 'neck');
  const straps = strapsOf(pattern, edges);
  const { edgeMm, ...opening } = ringOpening(pattern, edges, drafted, { held, besideMm: straps.mm });
  return { ...opening, neckMm: edgeMm, ...(straps.open ? { openAt: straps.open } : {}) };
}

/**
 * Whether the wearer passes the garment's openings: the head its neck, the hips the waist of a skirt or trousers, the
 * hands the sleeves, the heels the legs. A note where one does, a fault with the missing millimetres where it does
 * not. Without a head girth the adult's of `unknownHeadGirth` serves, and what is missing is a warning; of the other
 * parts it is said that they were not checked.
 */
export function overTheHead(input: Passage): readonly Finding[] {
  requireWhole(input.pattern);
  return [...throughNeck(input), ...otherPassages(input)];
}

function throughNeck({ pattern, wearer, derived }: Passage): readonly Finding[] {
  const opening = neckOpening(pattern, derived);
  if (!opening) return neckNotFound(pattern);
  if (opening.openAt !== undefined) {
    const { piece, edge } = opening.openAt;
    const where = { piece: piece!, ...(edge === undefined ? {} : { edge }) };
    return [finding('note', 'neck-opens-at-strap', where, { strap: opening.openAt })];
  }
  const known = measurementOf(wearer, 'head girth');
  const headGirthMm = known ?? unknownHeadGirth;
  const { widestMm, openingMm, neckMm, bands, edges } = opening;
  const missingMm = headGirthMm - widestMm;
  const facts = {
    tightest: tightestOf(edges[0]!, neckMm, bands),
    openingMm: widestMm,
    headGirthMm,
    neckMm,
    ...(openingMm > 0 ? { slitMm: openingMm } : {}),
    assumed: known === undefined,
  };
  const { piece, edge } = edges[0]!;
  if (missingMm <= tolerances.coincidenceTolerance)
    return [finding('note', 'head-passes', { piece, edge }, { ...facts, spareMm: -missingMm })];
  const severity = known === undefined ? 'warning' : 'fault';
  return [finding(severity, 'head-does-not-pass', { piece, edge }, { ...facts, missingMm })];
}

/** A garment with shoulders or armholes has a neck: where none is known, its check is not passed over in silence. */
function neckNotFound(pattern: Pattern): readonly Finding[] {
  const upper = garmentPieces(pattern).filter(piece =>
    piece.outline.parts.some(p => p.type === 'edge' && upperRoles.has(roleOf(p))),
  );
  const pieces = upper.map(({ name }) => ({ piece: name }));
  return pieces.length === 0 ? [] : [finding('warning', 'neck-not-found', pieces[0]!, { pieces })];
}

const upperRoles: ReadonlySet<EdgeRole | undefined> = new Set<EdgeRole>(['shoulder', 'armhole']);

/** The other openings of a garment, and the body's measure that must pass each. */
const passages: readonly {
  readonly part: Exclude<Passing, 'head'>;
  readonly measure: string;
  readonly edges: (pattern: Pattern) => readonly EdgeRef[];
  readonly inLimb: boolean;
}[] = [
  { part: 'hips', measure: 'hip girth', edges: waistEdges, inLimb: false },
  { part: 'hand', measure: 'hand girth', edges: cuffEdges, inLimb: true },
  { part: 'heel', measure: 'heel girth', edges: legEdges, inLimb: true },
];

function otherPassages({ pattern, wearer, derived }: Passage): readonly Finding[] {
  const there = passages.map(p => ({ ...p, found: p.edges(pattern) })).filter(p => p.found.length > 0);
  const unknown = there.filter(p => wearer[p.measure] === undefined);
  const checked = there.flatMap(({ part, measure, found, inLimb }) => {
    const bodyMm = measurementOf(wearer, measure);
    return bodyMm === undefined ? [] : [throughRing(pattern, derived, found, { part, bodyMm, inLimb })];
  });
  if (unknown.length === 0) return checked;
  const facts = { parts: unknown.map(p => p.part), measures: unknown.map(p => p.measure) };
  return [...checked, finding('note', 'passage-not-checked', {}, facts)];
}

function throughRing(
  pattern: Pattern,
  derived: readonly Derived[],
  edges: readonly EdgeRef[],
  { part, bodyMm, inLimb }: { readonly part: Passing; readonly bodyMm: number; readonly inLimb: boolean },
): Finding {
  const drafted = draftedFor(pattern, derived, edges);
  const { widestMm, edgeMm, bands, openingMm } = ringOpening(
    pattern,
    edges,
    drafted,
    inLimb ? { lengthOf: lengthInLimb } : {},
  );
  const missingMm = bodyMm - widestMm;
  const slit = openingMm > 0 ? { slitMm: openingMm } : {};
  const facts = {
    part,
    tightest: tightestOf(edges[0]!, edgeMm, bands),
    openingMm: widestMm,
    bodyMm,
    ...slit,
  };
  const { piece, edge } = edges[0]!;
  return missingMm <= tolerances.coincidenceTolerance
    ? finding('note', 'part-passes', { piece, edge }, { ...facts, spareMm: -missingMm })
    : finding('fault', 'part-does-not-pass', { piece, edge }, { ...facts, missingMm });
}

/** What opens least: a band by its name, or the edge itself. */
function tightestOf({ piece, edge }: EdgeRef, edgeMm: number, bands: RingOpening['bands']): Thing {
  const least = bands.reduce<{ name?: string; reachMm: number }>((t, b) => (b.reachMm < t.reachMm ? b : t), {
    reachMm: edgeMm,
  });
  return least.name === undefined ? { piece, edge } : { piece: least.name };
}

/** The bands and bindings that were drafted for a ring and are still there. */
const draftedFor = (
  pattern: Pattern,
  derived: readonly Derived[],
  ring: readonly EdgeRef[],
): readonly Derived[] =>
  stillThere(pattern, derived).filter(
    d => (d.kind === 'band' || d.kind === 'binding') && d.along.some(e => ring.some(r => sameEdge(r, e))),
  );
