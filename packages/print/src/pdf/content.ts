import type { Path, Point } from '@paperhinge/geometry';
import { isLine } from '@paperhinge/geometry/curves';
import type { Affine } from '@paperhinge/geometry/plane';
import type { Drawing, Fill, Ink, Lettering, Role, Stroke } from '../drawing/ink.js';
import { type Pen, type PenSet, penOf } from '../drawing/pens.js';
import type { Layer } from '../layers.js';
import type { FontEmbedder } from './embed-fonts.js';
import { runWidth, type Typefaces } from './typefaces.js';

/** Content is written in whole hundredths of a millimetre: rounding stays under 0.005 mm, and figures stay short. */
export const unitsPerMm = 100;

export interface ContentContext {
  readonly typefaces: Typefaces;
  readonly fonts: FontEmbedder;
  /** The resource name of a layer's optional-content group; without it layers are not marked. */
  readonly layerResource?: (layer: Layer) => string;
  /** Those of paper if not given. */
  readonly pens?: PenSet;
}

/** The operators that draw a drawing (y down, hundredths of a mm), layer by layer, each pen set once. */
export function contentOf(drawing: Drawing, context: ContentContext): string {
  const byLayer = new Map<Layer, Ink[]>();
  for (const ink of drawing.inks) {
    const { layer } = penIn(context.pens)(ink.role);
    const list = byLayer.get(layer);
    if (list) list.push(ink);
    else byLayer.set(layer, [ink]);
  }
  return [...byLayer]
    .map(([layer, inks]) => {
      const content = layerContent(inks, context);
      return context.layerResource ? `/OC /${context.layerResource(layer)} BDC\n${content}EMC\n` : content;
    })
    .join('');
}

function layerContent(inks: readonly Ink[], context: ContentContext): string {
  const strokes = inks.filter((i): i is Stroke => i.kind === 'stroke');
  const fills = inks.filter((i): i is Fill => i.kind === 'fill');
  const texts = inks.filter((i): i is Lettering => i.kind === 'text');
  const roles = [...new Set(strokes.map(s => s.role))];
  const parts = roles.map(role => {
    const own = strokes.filter(s => s.role === role);
    return `${penOperators(penIn(context.pens)(role))}${own.map(s => pathOperators(s.path, s.closed ?? false)).join('')}S\n`;
  });
  const solid = grey(context.pens?.solid ?? 0);
  const tints = fills.filter(f => f.role === 'tint');
  if (tints.length > 0) parts.push(`${grey(penOf('tint').grey)} g\n${tints.map(fillOperators).join('')}`);
  const solids = fills.filter(f => f.role !== 'tint');
  if (solids.length > 0) parts.push(`${solid} g\n${solids.map(fillOperators).join('')}`);
  if (texts.length > 0)
    parts.push(`${solid} g\nBT\n${texts.map(t => textOperators(t, context)).join('')}ET\n`);
  return parts.join('');
}

/** The pen of each role. */
export const penIn = (pens: PenSet | undefined): ((role: Role) => Pen) =>
  pens ? role => pens.pen(role) : penOf;

export function penOperators(pen: Pen): string {
  const dash = (pen.dash ?? []).map(d => coordinate(d)).join(' ');
  return `${coordinate(pen.width)} w [${dash}] 0 d ${pen.roundCaps ? 1 : 0} J 1 j ${grey(pen.grey)} G\n`;
}

const grey = (value: number): string => String(Math.round(value * 100) / 100);
const coordinate = (mm: number): string => String(Math.round(mm * unitsPerMm));
const pair = (p: Point): string => `${coordinate(p.x)} ${coordinate(p.y)}`;

/**
 * A filled shape from an origin of its own, its first point: the same mark elsewhere differs in nothing but its place,
 * which packs far smaller. Filling closes the shape.
 */
function fillOperators({ path }: Fill): string {
  const [first] = path.segments;
  if (!first) return '';
  const start = { x: Math.round(first[0].x * unitsPerMm), y: Math.round(first[0].y * unitsPerMm) };
  return `q 1 0 0 1 ${start.x} ${start.y} cm\n${pathOperators(path, true, start)}f Q\n`;
}

/**
 * A path's operators, from an origin in whole units; a gap in the chain (an edge over a dart's mouth) starts a new subpath.
 */
export function pathOperators(path: Path, closed: boolean, origin: Point = { x: 0, y: 0 }): string {
  const pair = (p: Point) =>
    `${Math.round(p.x * unitsPerMm) - origin.x} ${Math.round(p.y * unitsPerMm) - origin.y}`;
  let out = '';
  let end: Point | undefined;
  let chains = 0;
  for (const segment of path.segments) {
    const [start] = segment;
    if (!end || pair(end) !== pair(start)) {
      out += `${pair(start)} m\n`;
      chains++;
    }
    if (isLine(segment)) {
      const [, to] = segment;
      // Closing draws the last straight side by itself.
      const closes =
        closed && chains === 1 && segment === path.segments.at(-1) && pair(to) === pair(path.segments[0]![0]);
      if (pair(start) !== pair(to) && !closes) out += `${pair(to)} l\n`;
      end = to;
    } else {
      const [, c1, c2, to] = segment;
      out += `${pair(c1)} ${pair(c2)} ${pair(to)} c\n`;
      end = to;
    }
  }
  return closed ? `${out}h\n` : out;
}

/** Glyphs stand upright although y runs down: the text matrix turns the em over. */
function textOperators(text: Lettering, context: ContentContext): string {
  const { direction: d, size } = text;
  let along = 0;
  return context.typefaces
    .runs(text.text, text.weight)
    .map(run => {
      const { resource, codes } = context.fonts.encode(run);
      const at = { x: text.at.x + d.x * along, y: text.at.y + d.y * along };
      along += runWidth(context.typefaces.programs[run.face]!, run) * size;
      const [c, s] = [short(d.x), short(d.y)];
      return `/${resource} ${coordinate(size)} Tf ${c} ${s} ${s} ${short(-d.x)} ${pair(at)} Tm <${codes}> Tj\n`;
    })
    .join('');
}

/** A matrix entry: six decimals turn a 3 m line by less than 0.01 mm. */
export const short = (value: number): string => {
  const rounded = Math.round(value * 1e6) / 1e6;
  return String(rounded === 0 ? 0 : rounded);
};

/** Operands of `cm` that carry sheet units onto the page, in points. */
export const matrixOperands = (m: Affine): string =>
  [m.a, m.b, m.c, m.d, m.e, m.f].map(matrixNumber).join(' ');

/** Nine decimals: 10 m of hundredths of a mm times the last is a thousandth of a point. */
export const matrixNumber = (value: number): string => String(Number(value.toFixed(9)) || 0);
