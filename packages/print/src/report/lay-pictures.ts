import { escaped } from '../drawing/escape.js';
import type { Polygon } from '../plane/polygon.js';
import type { Reader } from '../words/reader.js';
import type { ReportSource } from './source.js';

/** px across that the widest cloth is drawn. */
const across = 300;

/** Each cloth as it lies under its pieces, the lay that takes least; all to one scale. */
export function layPicturesHtml({ cloth = [] }: ReportSource, reader: Reader): string {
  const widest = Math.max(...cloth.map(c => c.widthMm));
  const pictures = cloth.flatMap(({ cloth: name, lays: [lay] }) => {
    if (!lay) return [];
    const said = `${reader.words.piece.cloth(name)}, ${reader.words.report.cloth.laid[lay.way]}: ${reader.cloth(lay.lengthMm)}`;
    const [width, height] = [lay.acrossMm, lay.lengthMm].map(mm => round((mm * across) / widest));
    const box = [0, 0, lay.acrossMm, lay.lengthMm].map(round).join(' ');
    const pieces = lay.laid.map(({ outline }) => `<path class="cut" d="${pathOf(outline)}"/>`).join('');
    return [
      `<figure><svg role="img" aria-label="${escaped(said)}" width="${width}" height="${height}" viewBox="${box}"><path class="laid-on" d="M0 0H${round(lay.acrossMm)}V${round(lay.lengthMm)}H0Z"/>${pieces}</svg><figcaption>${escaped(said)}</figcaption></figure>`,
    ];
  });
  return pictures.length > 0 ? `<div class="pieces">${pictures.join('')}</div>` : '';
}

const pathOf = (polygon: Polygon): string => `M${polygon.map(p => `${round(p.x)} ${round(p.y)}`).join('L')}Z`;
const round = (value: number): number => Math.round(value * 10) / 10;
