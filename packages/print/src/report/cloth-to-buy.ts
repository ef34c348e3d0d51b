import { selvedge, soldBy, spare } from '../cloth/lay-cloths.js';
import type { Reader } from '../words/reader.js';
import { columnOf } from './columns.js';
import type { Block } from './document.js';
import type { ReportSource } from './source.js';

/** How much of each cloth to buy, laid one way and the other, and what is in the figure. */
export function clothToBuy({ cloth = [] }: ReportSource, reader: Reader): readonly Block[] {
  const { words } = reader;
  const [left, right] = [columnOf(reader, 'left'), columnOf(reader, 'right')];
  const rows = cloth.flatMap(({ cloth: name, widthMm, lays }) =>
    lays.map(({ way, lengthMm, buyMm }, i) => [
      i === 0 ? words.piece.cloth(name) : '',
      i === 0 ? reader.length(widthMm) : '',
      words.report.cloth.laid[way],
      reader.cloth(lengthMm),
      reader.cloth(buyMm),
    ]),
  );
  if (rows.length === 0) return [];
  const over = reader.percent(spare - 1);
  return [
    {
      kind: 'table',
      caption: words.report.sections.cloth,
      columns: [
        left('cloth', 1.3),
        right('width', 0.9),
        left('laid', 2.6),
        right('takes'),
        right('buy', 0.8),
      ],
      rows,
    },
    {
      kind: 'text',
      text: words.report.cloth.reckoned(reader.length(selvedge), over, reader.cloth(soldBy(reader.unit))),
    },
  ];
}
