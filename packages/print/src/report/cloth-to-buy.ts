import { type ClothLay, selvedge, soldBy, spare } from '../cloth/lay-cloths.js';
import type { Reader } from '../words/reader.js';
import { columnOf } from './columns.js';
import type { Block } from './document.js';
import type { ReportSource } from './source.js';

/** How much of each cloth to buy, laid one way and the other, and what is in the figure. */
export function clothToBuy({ cloth = [] }: ReportSource, reader: Reader): readonly Block[] {
  const { words } = reader;
  const [left, right] = [columnOf(reader, 'left'), columnOf(reader, 'right')];
  const rows = cloth.flatMap(({ cloth: name, widthMm, lays }) =>
    laysTold(lays, reader).map((told, i) => [
      i === 0 ? words.piece.cloth(name) : '',
      i === 0 ? reader.length(widthMm) : '',
      ...told,
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

/** Each way to lay a cloth, what its pieces take so and what to buy; ways that come to the same in one row. */
function laysTold(lays: readonly ClothLay[], reader: Reader): readonly (readonly string[])[] {
  const { laid } = reader.words.report.cloth;
  const told = lays.map(({ way, lengthMm, buyMm }) => [
    laid[way],
    reader.cloth(lengthMm),
    reader.cloth(buyMm),
  ]);
  const [one, ...others] = told;
  const isAlike =
    others.length > 0 && others.every(([, ...figures]) => String(figures) === String(one!.slice(1)));
  return isAlike ? [[laid.either, ...one!.slice(1)]] : told;
}
