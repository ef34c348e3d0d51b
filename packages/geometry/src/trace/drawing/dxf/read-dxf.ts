import { type Affine, apply, compose, identity, rotation, translation } from '../../../affine.js';
import { line, type Segment } from '../../../curve/segment.js';
import { type Path, polyline, transformedPath } from '../../../path/path.js';
import type { Finding } from '../../../telling.js';
import { angleTolerance } from '../../../tolerance.js';
import { type LengthUnit, millimetresPer } from '../../../units.js';
import type { Point } from '../../../vector.js';
import type { DrawnLine, DrawnWord, ForeignDrawing } from '../drawing.js';
import { finding } from '../tellings.js';
import { arcOf, bulged, pointsOf, splineOf } from './curves.js';
import { type Entity, entitiesIn, numberOf, numbersOf, textOf } from './groups.js';
import { meaningsOf } from './standard-layers.js';

/** A DXF file as a drawing, and what was found. */
export interface DxfReading {
  readonly drawing: ForeignDrawing;
  readonly findings: readonly Finding[];
}

interface Block {
  readonly name: string;
  readonly base: Point;
  readonly entities: readonly Entity[];
}

interface Place {
  /** From the block's axes to mm on the page, y down. */
  readonly map: Affine;
  readonly group?: string;
  readonly depth: number;
}

/** Blocks within blocks, more deeply than any drawing has. */
const deepest = 8;

/**
 * The lines and words of a DXF file in ASCII, R12 to now: LINE, POLYLINE and LWPOLYLINE with bulges, ARC, CIRCLE,
 * ELLIPSE, SPLINE, POINT, TEXT, MTEXT and INSERT of blocks; others are counted. Blocks are the pieces of pattern
 * interchange: what lies in one stays together.
 *
 * @param unit of one of the file's own units, where the file does not say; absent: mm, with a finding
 * @throws PatternError `not-dxf`
 */
export function readDxf(text: string, unit?: LengthUnit): DxfReading {
  const all = entitiesIn(text);
  const { blocks, shown, header } = sectionsOf(all);
  const told = unitOf(header, all);
  const mm = unit ? millimetresPer[unit] : (told ?? 1);
  const layers = new Set([...shown, ...[...blocks.values()].flatMap(b => b.entities)].map(layerOf));
  const meaning = meaningsOf(layers);
  const lines: DrawnLine[] = [],
    words: DrawnWord[] = [];
  let others = 0;
  const draw = (entities: readonly Entity[], place: Place): void => {
    for (const entity of runs(entities)) {
      const word = wordOf(entity);
      if (word) words.push({ ...word, at: apply(place.map, word.at), ...groupOf(place) });
      else if (entity.type === 'INSERT') insert(entity, place);
      else {
        const drawn = pathOfEntity(entity);
        if (!drawn) others += ignored.has(entity.type) ? 0 : 1;
        else {
          const is = meaning(layerOf(entity));
          lines.push({
            path: transformedPath(drawn.path, place.map),
            closed: drawn.closed,
            layer: layerOf(entity),
            ...dashOf(textOf(entity, 6) ?? ''),
            ...(is ? { is } : {}),
            ...groupOf(place),
          });
        }
      }
    }
  };
  const insert = (entity: Entity, { map, group, depth }: Place): void => {
    const block = blocks.get(textOf(entity, 2)?.toUpperCase() ?? '');
    if (!block || depth >= deepest) return;
    const [at = { x: 0, y: 0 }] = pointsOf(entity, 10);
    const scaled: Affine = { a: numberOf(entity, 41, 1), b: 0, c: 0, d: numberOf(entity, 42, 1), e: 0, f: 0 };
    const own = compose(
      compose(translation({ x: -block.base.x, y: -block.base.y }), scaled),
      compose(rotation((numberOf(entity, 50) * Math.PI) / 180), translation(at)),
    );
    draw(block.entities, { map: compose(own, map), group: group ?? block.name, depth: depth + 1 });
  };
  draw(shown, { map: { ...identity, a: mm, d: -mm }, depth: 0 });
  const longestMm = Math.max(
    0,
    ...lines.flatMap(({ path }) => path.segments.flatMap(s => s.map(p => Math.abs(p.x)))),
  );
  return {
    drawing: { lines, words },
    findings: [
      ...(unit === undefined && told === undefined
        ? [finding('warning', 'unit-not-told', {}, { longestMm })]
        : []),
      ...(others > 0 ? [finding('note', 'lines-left-out', {}, { count: others })] : []),
    ],
  };
}

const groupOf = ({ group }: Place): { readonly group?: string } => (group === undefined ? {} : { group });
const layerOf = (entity: Entity): string => textOf(entity, 8) ?? '0';
const ignored: ReadonlySet<string> = new Set([
  'SEQEND',
  'VERTEX',
  'ENDSEC',
  'SECTION',
  'ATTDEF',
  'ATTRIB',
  'VIEWPORT',
  'EOF',
]);

/** What the file says one of its units is, in mm. */
function unitOf(header: Entity | undefined, all: readonly Entity[]): number | undefined {
  const groups = header?.groups ?? [];
  const variable = (name: string): number | undefined => {
    const at = groups.findIndex(({ code, value }) => code === 9 && value.trim() === name);
    return at < 0 ? undefined : Number(groups[at + 1]?.value);
  };
  const units: Readonly<Record<number, number>> = { 1: 25.4, 2: 304.8, 4: 1, 5: 10, 6: 1000 };
  const told = units[variable('$INSUNITS') ?? 0];
  if (told !== undefined) return told;
  // The standard of pattern interchange says it in words [memory].
  const words = all.flatMap(entity => (entity.type === 'TEXT' ? [textOf(entity, 1) ?? ''] : []));
  if (words.some(word => /^units?:\s*metric/i.test(word))) return 1;
  return words.some(word => /^units?:\s*english/i.test(word)) ? 25.4 : undefined;
}

function sectionsOf(all: readonly Entity[]) {
  const blocks = new Map<string, Block>();
  const shown: Entity[] = [];
  let section = '',
    header: Entity | undefined,
    block: { name: string; base: Point; entities: Entity[] } | undefined;
  for (const entity of all) {
    if (entity.type === 'SECTION') {
      section = textOf(entity, 2)?.toUpperCase() ?? '';
      if (section === 'HEADER') header = entity;
    } else if (entity.type === 'BLOCK') {
      const [base = { x: 0, y: 0 }] = pointsOf(entity, 10);
      block = { name: textOf(entity, 2) ?? '', base, entities: [] };
    } else if (entity.type === 'ENDBLK') {
      if (block) blocks.set(block.name.toUpperCase(), block);
      block = undefined;
    } else if (block) block.entities.push(entity);
    else if (section === 'ENTITIES') shown.push(entity);
  }
  return { blocks, shown, header };
}

/** A POLYLINE with the VERTEX entities that follow it as one entity; all others as they stand. */
function runs(entities: readonly Entity[]): readonly Entity[] {
  const out: { type: string; groups: Entity['groups'] }[] = [];
  for (const entity of entities) {
    const last = out.at(-1);
    if (entity.type === 'POLYLINE')
      out.push({ type: 'POLYLINE', groups: entity.groups.filter(g => ![10, 20, 30].includes(g.code)) });
    else if (entity.type === 'VERTEX' && last?.type === 'POLYLINE') {
      // Control points of a fitted curve are not on it.
      if ((numberOf(entity, 70) & 16) === 0) last.groups = [...last.groups, ...vertexGroups(entity)];
    } else out.push(entity);
  }
  return out;
}
const vertexGroups = (entity: Entity): Entity['groups'] => [
  ...entity.groups.filter(({ code }) => code === 10 || code === 20),
  { code: 42, value: String(numberOf(entity, 42)) },
];

interface Drawn {
  readonly path: Path;
  readonly closed: boolean;
}

function pathOfEntity(entity: Entity): Drawn | undefined {
  const open = (segments: readonly Segment[]): Drawn | undefined =>
    segments.length > 0 ? { path: { segments }, closed: false } : undefined;
  const [at = { x: 0, y: 0 }] = pointsOf(entity, 10);
  const radius = numberOf(entity, 40);
  const circle = { centre: at, across: { x: radius, y: 0 }, ratio: 1 };
  const radians = (code: number): number => (numberOf(entity, code) * Math.PI) / 180;
  switch (entity.type) {
    case 'LINE':
      return open([line(at, pointsOf(entity, 11)[0] ?? at)]);
    case 'POINT':
      return { path: polyline(at, at), closed: false };
    case 'POLYLINE':
    case 'LWPOLYLINE':
      return polylineOf(entity);
    case 'CIRCLE':
      return { path: { segments: arcOf(circle, 0, 2 * Math.PI) }, closed: true };
    case 'ARC': {
      const [from, to] = [radians(50), radians(51)];
      return open(arcOf(circle, from, to > from ? to : to + 2 * Math.PI));
    }
    case 'ELLIPSE': {
      const [across = { x: 1, y: 0 }] = pointsOf(entity, 11);
      const [from, to] = [numberOf(entity, 41), numberOf(entity, 42, 2 * Math.PI)];
      const segments = arcOf(
        { centre: at, across, ratio: numberOf(entity, 40, 1) },
        from,
        to > from ? to : to + 2 * Math.PI,
      );
      return { path: { segments }, closed: Math.abs(to - from - 2 * Math.PI) < angleTolerance };
    }
    case 'SPLINE': {
      const path = splineOf(entity);
      return path && { path, closed: (numberOf(entity, 70) & 1) === 1 };
    }
    default:
      return undefined;
  }
}

function polylineOf(entity: Entity): Drawn | undefined {
  const points = pointsOf(entity, 10);
  const closed = (numberOf(entity, 70) & 1) === 1;
  const bulges = entity.type === 'POLYLINE' ? numbersOf(entity, 42) : bulgesOf(entity);
  const ring = closed ? [...points, ...points.slice(0, 1)] : points;
  const segments = ring.slice(1).flatMap((to, i) => bulged(ring[i]!, to, bulges[i] ?? 0));
  return segments.length > 0 ? { path: { segments }, closed } : undefined;
}

/** A light polyline gives a bulge only where there is one, after its point. */
function bulgesOf({ groups }: Entity): readonly number[] {
  const bulges: number[] = [];
  for (const { code, value } of groups) {
    if (code === 10) bulges.push(0);
    else if (code === 42 && bulges.length > 0) bulges[bulges.length - 1] = Number(value) || 0;
  }
  return bulges;
}

function wordOf(entity: Entity): DrawnWord | undefined {
  if (entity.type !== 'TEXT' && entity.type !== 'MTEXT') return undefined;
  const [at = { x: 0, y: 0 }] = pointsOf(entity, 10);
  const long = entity.groups.filter(({ code }) => code === 3).map(({ value }) => value);
  const text = [...long, textOf(entity, 1) ?? ''].join('');
  const plain = text
    .replace(/\\U\+([0-9A-Fa-f]{4})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)))
    .replace(/\\P/g, ' ')
    .replace(/\\[A-Za-z][^;\\]*;|[{}]/g, '')
    .trim();
  return plain === '' ? undefined : { text: plain, at };
}

/** A line's kind by its name, as the format's usual ones are called. */
const dashOf = (kind: string): Pick<DrawnLine, 'dashed' | 'dash'> =>
  /DASH|HIDDEN|DOT|CENTER/i.test(kind) ? { dashed: true, dash: kind.toLowerCase() } : { dashed: false };
