import type { Reader } from '../words/reader.js';
import { columnOf, plainName } from './columns.js';
import type { Block } from './document.js';
import type { RecordFigures } from './source.js';

const none = '–';

/** Round the body at each level: the wearer's, before, after, and the ease. */
export function girthTable({ girths = {} }: RecordFigures, reader: Reader): Block {
  const left = columnOf(reader, 'left'),
    right = columnOf(reader, 'right');
  const say = (mm: number | undefined) => (mm === undefined ? none : reader.length(mm));
  return {
    kind: 'table',
    caption: reader.words.report.sections.girths,
    columns: [left('level', 1.5), right('body'), right('before'), right('after'), right('ease')],
    rows: Object.entries(girths).map(([level, g]) => [
      plainName(level),
      say(g.bodyMm),
      say(g.beforeMm),
      say(g.afterMm),
      g.easeMm === undefined ? none : reader.change(g.easeMm),
    ]),
  };
}

/** Every edge of every piece, before and after. */
export function edgeTable({ before, after }: RecordFigures, reader: Reader): Block {
  const left = columnOf(reader, 'left'),
    right = columnOf(reader, 'right');
  const { gone, made } = reader.words.report;
  const pieces = [...new Set([...Object.keys(after.pieces), ...Object.keys(before.pieces)])];
  const rows = pieces.flatMap(piece => {
    const then = before.pieces[piece]?.edges ?? {},
      now = after.pieces[piece]?.edges ?? {};
    const names = [...new Set([...Object.keys(now), ...Object.keys(then)])];
    return names.map((edge, i) => {
      const a = then[edge],
        b = now[edge];
      return [
        i === 0 ? plainName(piece) : '',
        plainName(edge),
        a ? reader.length(a.lengthMm) : none,
        b ? reader.length(b.lengthMm) : none,
        a && b ? reader.change(b.lengthMm - a.lengthMm) : a ? gone : made,
        b ? reader.allowance(b.allowanceMm) : none,
      ];
    });
  });
  return {
    kind: 'table',
    caption: reader.words.report.sections.edges,
    columns: [
      left('piece', 1.3),
      left('edge', 1.5),
      right('before'),
      right('after'),
      right('change'),
      right('allowance'),
    ],
    rows,
  };
}

/** Both sides of every seam as they were walked. */
export function seamTable({ after }: RecordFigures, reader: Reader): Block {
  const left = columnOf(reader, 'left'),
    right = columnOf(reader, 'right');
  const { sews, doesNotMatch } = reader.words.report;
  return {
    kind: 'table',
    caption: reader.words.report.sections.seams,
    columns: [
      left('seam', 1.5),
      right('oneSide'),
      right('otherSide'),
      right('difference'),
      right('easeWanted'),
      left('result', 0.9),
    ],
    rows: Object.entries(after.seams).map(([name, s]) => [
      plainName(name),
      reader.length(s.aMm),
      reader.length(s.bMm),
      reader.change(s.differenceMm),
      reader.change(s.easeWantedMm),
      s.matches ? sews : doesNotMatch,
    ]),
  };
}
