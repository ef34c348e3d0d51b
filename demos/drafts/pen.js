// What the drafts share: lines and curves by their points in mm (y down), their lengths, and pieces as readable SVG.
import { pathLength, pathOf } from '../../packages/geometry/dist/index.js';

/** The direction from one point to another. */
export const towards = ([x, y], [u, v]) => [u - x, v - y];
/**
 * A curve that leaves its start square to the edge that arrives there (direction `arriving`), and meets at its end the
 * edge that goes on (direction `leaving`) square, so that lines run on across seams and folds. `reach`: how far the
 * handles go, as a share of the chord.
 */
export function squared(start, arriving, end, leaving, reach = [0.33, 0.33]) {
  const chord = Math.hypot(end[0] - start[0], end[1] - start[1]);
  const along = ([x, y], by) => [(x / Math.hypot(x, y)) * by, (y / Math.hypot(x, y)) * by];
  const out = along([-arriving[1], arriving[0]], chord * reach[0]),
    into = along([leaving[1], -leaving[0]], chord * reach[1]);
  return curve(start, [start[0] + out[0], start[1] + out[1]], [end[0] - into[0], end[1] - into[1]], end);
}
export const up = [0, -1];
/** From a fold at the left: leaves it level. */
export const fromFold = (start, end, leaving, reach) => squared(start, up, end, leaving, reach);
/** To a fold at the left: meets it level. */
export const toFold = (start, arriving, end, reach) => squared(start, arriving, end, up, reach);

/** A chain from a point on: `L` a straight line to a point, `C` a curve by two handles and its end. */
export function chain(start, ...steps) {
  let from = start;
  const segments = steps.map(([kind, ...points]) => {
    const segment = kind === 'L' ? [from, points[0]] : [from, ...points];
    from = points.at(-1);
    return segment;
  });
  return { segments, start, end: from };
}
export const line = (a, b) => chain(a, ['L', b]);
export const curve = (a, h1, h2, b) => chain(a, ['C', h1, h2, b]);

const at = ([x, y]) => ({ x, y });
/** mm */
export const lengthOf = (...chains) =>
  chains.reduce((sum, c) => sum + pathLength(pathOf(...c.segments.map(s => s.map(at)))), 0);

/** The number between two at which a growing or falling difference is nothing. */
export function solve(low, high, difference) {
  const sign = Math.sign(difference(low));
  if (sign === Math.sign(difference(high))) throw new Error(`No draft between ${low} and ${high}.`);
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (Math.sign(difference(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The place a share of the way from one point to another. */
export const between = ([x, y], [u, v], share) => [x + (u - x) * share, y + (v - y) * share];
export const mirrored = ({ segments }) => ({
  segments: segments.map(s => s.map(([x, y]) => [-x, y]).reverse()).reverse(),
});

const figure = n => String(Number(n.toFixed(3)));
const point = p => p.map(figure).join(',');
export const dataOf = ({ segments }) =>
  segments
    .map(
      (s, i) =>
        `${i === 0 ? `M${point(s[0])} ` : ''}${s.length === 2 ? 'L' : 'C'}${s.slice(1).map(point).join(' ')}`,
    )
    .join(' ');

const attributes = given =>
  Object.entries(given)
    .map(([name, value]) => ` data-${name}="${value}"`)
    .join('');

/** One path of a piece: `edge('neck', chain, { kind: 'fold' })`; an edge that darts interrupt is several chains. */
export const edge = (name, drawn, more = {}) =>
  `    <path data-edge="${name}"${attributes(more)} class="${more.kind === 'fold' ? 'fold' : 'stitch'}" d="${[drawn].flat().map(dataOf).join(' ')}"/>`;
export const dart = (name, a, apex, b) =>
  `    <path data-dart="${name}" class="stitch" d="${dataOf(chain(a, ['L', apex], ['L', b]))}"/>`;
export const pleat = (name, a, b, more) =>
  `    <path data-pleat="${name}"${attributes(more)} class="stitch" d="${dataOf(line(a, b))}"/>`;
export const grain = (a, b) => `    <path data-line="grain" class="grain" d="${dataOf(line(a, b))}"/>`;
export const level = (name, a, b) =>
  `    <path data-line="level" data-name="${name}" class="inside" d="${dataOf(line(a, b))}"/>`;
export const foldLine = (name, a, b) =>
  `    <path data-line="fold" data-name="${name}" class="fold" d="${dataOf(line(a, b))}"/>`;
export const placement = (name, drawn) =>
  `    <path data-line="placement" data-name="${name}" class="inside" d="${dataOf(drawn)}"/>`;
export const mark = (kind, name, [x, y]) =>
  `    <circle data-mark="${kind}" data-name="${name}" cx="${figure(x)}" cy="${figure(y)}" r="2"/>`;
/** A notch across an edge at a point. */
export const notch = (style, [x, y]) =>
  `    <path data-notch="${style}" class="inside" d="M${figure(x - 4)},${figure(y)} L${figure(x + 4)},${figure(y)}"/>`;

/** @param place where the piece's own origin lies on the sheet */
export const piece = (name, place, given, ...lines) =>
  [
    `  <g data-piece="${name}"${attributes(given)} transform="translate(${point(place)})">`,
    ...lines,
    '  </g>',
  ].join('\n');

/** A whole drawing. `facts` are seams, fabrics and fastenings as pattern SVG writes them. */
export function drawing({ name, about, size: [width, height], unit = 'mm', facts, pieces }) {
  const rows = Object.entries(facts).map(
    ([key, entries]) =>
      `    "${key}": {\n${Object.entries(entries)
        .map(([k, v]) => `      ${JSON.stringify(k)}: ${JSON.stringify(v)}`)
        .join(',\n')}\n    }`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<!-- ${about} Drawn on the stitching line, 1 unit = 1 mm. Open it in any vector editor. -->
<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" data-pattern="${name}" data-unit="${unit}" data-paperhinge="2">
  <title>${name}</title>
  <metadata>{
${rows.join(',\n')}
  }</metadata>
  <style>
    path, circle { fill: none; stroke: #222; stroke-width: 0.6 }
    .fold { stroke-dasharray: 12 3 2 3 }
    .grain { stroke-width: 0.4 }
    .inside { stroke-width: 0.35 }
  </style>
${pieces.join('\n')}
</svg>
`;
}
