import {
  type Edge,
  type Finding,
  line,
  type Pattern,
  type Piece,
  type Point,
  pathOf,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { boundsOfPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { freePlace, laidAside } from '../derive/free-place.js';
import { titled } from '../derive/long-piece.js';
import { requireFreePieceName, requireFreeSeamName } from '../dividing/names-free.js';
import { type RingSector, sectorOutline } from '../fullness/ring-sector.js';
import { finding, saying } from '../fullness/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

const parts = { full: 1, 'three-quarter': 3 / 4, half: 1 / 2, quarter: 1 / 4 } as const;

/** Draft a circle skirt from a waist and a length. */
export interface DraftCircleSkirt {
  readonly name: string;
  /** How much of a circle the whole skirt is. */
  readonly part: keyof typeof parts;
  /** mm all round, on the stitching line. */
  readonly waist: number;
  /** mm from waist to hem. */
  readonly length: number;
  /** How many panels, each on the fold; default 2. */
  readonly panels?: number;
  /** mm at waist and sides; default 15. */
  readonly allowance?: number;
  /** mm; default 15. */
  readonly hem?: number;
  readonly fabric?: string;
}

/**
 * Drafts a full, three-quarter, half or quarter circle skirt. The waist is an arc of radius C / 2πf about the middle of the
 * circle, f being the part of the circle; the hem is one of that radius and the length. Each panel is drawn as half of
 * it, on the fold, and cut as often as there are panels; the panels are sewn side to side. Source: common practice
 * (radius [derived]: an arc of angle 2πf is C long).
 *
 * @throws PatternError `piece-name-taken`, `seam-name-taken`; those of `perform`
 */
export const draftCircleSkirt = (pattern: Pattern, parameters: DraftCircleSkirt): Alteration =>
  perform(draftCircleSkirtVerb, pattern, parameters);

export const draftCircleSkirtForm = formOf<DraftCircleSkirt>()({
  verb: 'draft circle skirt',
  does: 'Drafts a skirt that is a full, three-quarter, half or quarter circle, from waist and length, in panels on the fold.',
  fields: {
    name: field.newName(),
    part: field.choice('full', 'three-quarter', 'half', 'quarter'),
    waist: field.size(),
    length: field.size(),
    panels: field.usually(field.count(12), 2),
    allowance: field.usually(field.length({ most: tolerances.largestAllowance }), 15),
    hem: field.usually(field.length({ most: tolerances.largestAllowance }), 15),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name }) => ({ pieces: [name], seams: [`${name} side`] }),
  sentence:
    'Draft a {part} circle skirt "{name}" for a waist of {waist}, {length} long[, in {panels} panels][, with {allowance} of allowance][ and {hem} at the hem][, of the {fabric} cloth]',
  startsAt: { table: [] },
  example: {
    pattern: 'woven-shift',
    step: { name: 'skirt', part: 'half', waist: '72 cm', length: '60 cm' },
  },
});
export const draftCircleSkirtVerb = /* @__PURE__ */ verbFrom(draftCircleSkirtForm, (pattern, parameters) => {
  const { name, part, waist, length, panels } = parameters;
  requireFreePieceName(pattern, name);
  const seam = `${name} side`;
  requireFreeSeamName(pattern, seam);
  const share = parts[part];
  const radius = waist / (2 * Math.PI * share);
  const sector = { inner: radius, outer: radius + length, sweep: (Math.PI * share) / panels };
  const piece = laidAside(pattern, panelOf(pattern, parameters, sector));
  const run = { piece: name, edge: 'side', reversed: false };
  const seams = [...pattern.seams, { name: seam, a: [run], b: [run], ease: { mm: 0 } }];
  return {
    pattern: { ...pattern, pieces: [...pattern.pieces, piece], seams },
    did: saying('drafted-circle-skirt', {
      piece: { piece: name },
      part,
      panels,
      waistMm: waist,
      radiusMm: radius,
      lengthMm: length,
      sweepMm: 2 * Math.PI * share * (radius + length),
    }),
    findings: clothFindings(pattern, piece),
  };
});

type Whole = DraftCircleSkirt & Required<Pick<DraftCircleSkirt, 'panels' | 'allowance' | 'hem'>>;

function panelOf(
  pattern: Pattern,
  { name, fabric, panels, allowance, hem }: Whole,
  sector: RingSector,
): Piece {
  const middle = freePlace(pattern, name);
  const edge = (kind: Edge['kind'], label: string, role: Edge['role'], mm: number): Edge => ({
    type: 'edge',
    name: label,
    ...(role ? { role } : {}),
    path: pathOf(line(middle, middle)),
    kind,
    allowance: mm,
    corners: {},
  });
  const outline = sectorOutline(sector, middle, {
    inner: edge('seam', 'waist', 'waist', allowance),
    side: edge('seam', 'side', 'side', allowance),
    outer: edge('hem', 'hem', 'hem', hem),
    start: edge('fold', 'centre', 'centre', 0),
  });
  return {
    name,
    title: titled(name),
    role: 'skirt',
    outline: { parts: outline },
    notches: [],
    lines: [{ kind: 'grain', name: 'grain', path: grainBeside(middle, sector) }],
    marks: [],
    cutting: {
      count: panels,
      mirrored: false,
      fabric: fabric ?? pattern.fabrics.find(f => f.role === 'main')?.name ?? 'main',
    },
  };
}

/** Share of the panel's length over which its grain line is drawn, a little beside the fold. */
const grainShare = 0.6;

/** Along the fold. */
function grainBeside({ x, y }: Point, { inner, outer, sweep }: RingSector) {
  const beside = Math.min(20, (inner * Math.sin(sweep)) / 2);
  const clear = ((outer - inner) * (1 - grainShare)) / 2;
  return pathOf(line({ x: x + beside, y: y + inner + clear }, { x: x + beside, y: y + outer - clear }));
}

/** A panel opened out must lie on the cloth; cloth that hangs on the bias drops. */
function clothFindings(pattern: Pattern, piece: Piece): readonly Finding[] {
  const where = { piece: piece.name };
  const { min, max } = boundsOfPath(outlinePath(piece.outline));
  const widthMm = 2 * (max.x - min.x);
  const clothMm = pattern.fabrics.find(f => f.name === piece.cutting.fabric)?.width;
  const drops = finding('note', 'bias-hem-hangs', where, { piece: where });
  if (clothMm === undefined || widthMm <= clothMm) return [drops];
  return [drops, finding('warning', 'circle-too-wide-for-cloth', where, { piece: where, widthMm, clothMm })];
}
