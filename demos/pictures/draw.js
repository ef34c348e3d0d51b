// Draws before-after.svg, or the file that is named, from the demo's own pattern and sheet. After a build:
// node demos/pictures/draw.js [FILE]
import { readFileSync, writeFileSync } from 'node:fs';
import { cuttingLine, readPattern } from '../../packages/geometry/dist/index.js';
import { boundsOfPath } from '../../packages/geometry/dist/public/paths.js';
import { dartsOf, edgeParts, outlinePath } from '../../packages/geometry/dist/public/pattern.js';
import { toPathData } from '../../packages/geometry/dist/public/svg.js';
import { readSheet, runSheet } from '../../packages/sheet/dist/index.js';

const here = name => new URL(`../${name}`, import.meta.url);
const file = 'sheets/cellist-top.yaml';
const sheet = readSheet(readFileSync(here(file), 'utf8'), { file });
const { pattern } = readPattern(readFileSync(here('patterns/woven-shift.svg')), { file: 'woven-shift.svg' });
const { altered, before } = runSheet(sheet, pattern);

const gap = 90;
const rowHeight = 1010;

/** One piece on its cutting line; of an altered piece that was there before, the old outline in dots. */
function drawn(piece, whole, ghost) {
  // Tenths of a millimetre: finer is not seen, and would change with every turn of the arithmetic.
  const path = (kind, d) =>
    `<path class="${kind}" d="${d.replace(/\d+\.\d+/g, n => Number(n).toFixed(1))}"/>`;
  return [
    path('cut', `${toPathData(cuttingLine(piece, whole).path)} Z`),
    ghost ? path('ghost', `${toPathData(outlinePath(ghost.outline))} Z`) : '',
    ...edgeParts(piece).map(e => path(e.kind === 'fold' ? 'fold' : 'stitch', toPathData(e.path))),
    ...dartsOf(piece).map(d => d.legs.map(leg => path('stitch', toPathData(leg))).join('')),
    ...piece.lines.filter(l => l.kind === 'grain').map(l => path('grain', toPathData(l.path))),
  ].join('');
}

function row(patternOfRow, title, top, old) {
  let x = 60;
  const figures = patternOfRow.pieces.map(piece => {
    const ghost = piece.madeFor ? undefined : old?.pieces.find(p => p.name === piece.name);
    const boxes = [cuttingLine(piece, patternOfRow).path, ...(ghost ? [outlinePath(ghost.outline)] : [])].map(
      boundsOfPath,
    );
    const left = Math.min(...boxes.map(b => b.min.x)),
      up = Math.min(...boxes.map(b => b.min.y));
    const width = Math.max(...boxes.map(b => b.max.x)) - left;
    const figure = `<g transform="translate(${(x - left).toFixed(1)},${(top - up).toFixed(1)})">${drawn(piece, patternOfRow, ghost)}</g>
<text class="name" x="${(x + width / 2).toFixed(1)}" y="${top + rowHeight + 6}">${piece.title}</text>`;
    x += width + gap;
    return figure;
  });
  return {
    svg: `<text class="title" x="60" y="${top - 45}">${title}</text>\n${figures.join('\n')}`,
    right: x - gap + 60,
  };
}

const rows = [
  row(before, 'Before: a woven shift', 130, undefined),
  row(altered, 'After: the cellist’s top', 130 + rowHeight + 130, before),
];
const width = Math.ceil(Math.max(...rows.map(r => r.right))),
  height = 2 * (rowHeight + 130) + 20;
writeFileSync(
  process.argv[2] ?? new URL('before-after.svg', import.meta.url),
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="900" font-family="'Noto Sans', 'Helvetica Neue', Arial, sans-serif">
<style>
path { fill: none; stroke: #1d2733; stroke-linecap: round; stroke-linejoin: round }
.cut { fill: #f4efe4; stroke-width: 4 }
.stitch { stroke-width: 1.8; stroke-dasharray: 9 6; stroke: #46566a }
.fold { stroke-width: 2.6; stroke-dasharray: 24 7 4 7 }
.ghost { stroke: #b5482f; stroke-width: 2.2; stroke-dasharray: 2 8 }
.grain { stroke-width: 2 }
.title { font-size: 44px; font-weight: 600; fill: #1d2733 }
.name { font-size: 32px; fill: #46566a; text-anchor: middle }
</style>
<rect width="${width}" height="${height}" fill="#fffdf8"/>
${rows.map(r => r.svg).join('\n')}
</svg>
`,
);
