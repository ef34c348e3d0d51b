import type { Box } from '@paperhinge/geometry/curves';
import { toPathData } from '@paperhinge/geometry/svg';
import { layers } from '../layers.js';
import type { Drawing, Ink } from './ink.js';
import { penOf } from './pens.js';

/** A drawing as an SVG document in millimetres, a group for each layer; text stays text. */
export function drawingSvg(drawing: Drawing, box: Box, title: string): string {
  const width = box.max.x - box.min.x,
    height = box.max.y - box.min.y;
  const groups = layers
    .map(layer => {
      const inks = drawing.inks.filter(i => penOf(i.role).layer === layer);
      return inks.length === 0
        ? ''
        : `<g id="${layer.toLowerCase().replace(/[^a-z]+/g, '-')}">\n${inks.map(element).join('\n')}\n</g>\n`;
    })
    .join('');
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="${short(width)}mm" height="${short(height)}mm" viewBox="${[box.min.x, box.min.y, width, height].map(short).join(' ')}">
<title>${escapedXml(title)}</title>
${groups}</svg>
`;
}

function element(ink: Ink): string {
  const pen = penOf(ink.role);
  if (ink.kind === 'fill') {
    const tint = ink.role === 'tint' ? ` fill="${grey(pen.grey)}"` : '';
    return `<path class="${ink.role}"${tint} d="${toPathData(ink.path)} Z"/>`;
  }
  if (ink.kind === 'stroke') {
    const dash = pen.dash ? ` stroke-dasharray="${pen.dash.join(' ')}"` : '';
    const caps = pen.roundCaps ? ' stroke-linecap="round"' : '';
    const d = `${toPathData(ink.path)}${ink.closed ? ' Z' : ''}`;
    return `<path class="${ink.role}" fill="none" stroke="${grey(pen.grey)}" stroke-width="${pen.width}"${dash}${caps} d="${d}"/>`;
  }
  const { at, direction: d, size, weight, width, text } = ink;
  const matrix = [d.x, d.y, -d.y, d.x, at.x, at.y].map(short).join(' ');
  const bold = weight === 'bold' ? ' font-weight="600"' : '';
  return `<text class="${ink.role}" transform="matrix(${matrix})" font-family="'Source Sans 3', sans-serif" font-size="${short(size)}"${bold} textLength="${short(width)}" lengthAdjust="spacingAndGlyphs">${escapedXml(text)}</text>`;
}

const grey = (value: number): string => {
  const level = Math.round(value * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${level}${level}${level}`;
};
const short = (value: number): string => String(Number(value.toFixed(4)));
const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escapedXml = (text: string): string => text.replace(/[&<>"]/g, c => entities[c]!);
