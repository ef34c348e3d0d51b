import type { Piece, ToldFinding } from '@paperhinge/geometry';
import { cutWords } from '../drawing/cutting-words.js';
import { inEighths } from '../drawing/widths.js';
import type { Block, Column, FindingItem, Section, WrittenDocument } from './document.js';
import { centimetres, change, eighths, inches, millimetres } from './lengths.js';
import type { MeasuredPattern, RecordFigures, ReportSource } from './source.js';

const left = (title: string, share = 1): Column => ({ title, align: 'left', share });
const right = (title: string, share = 1): Column => ({ title, align: 'right', share });

/** What is said of the printed pages, where there are some: which pages a piece is on. */
export type PagesOf = (piece: string) => string;

/** What a maker cuts and sews by: the part of the report that is printed with the pattern, too. */
export function makersSections(source: ReportSource, pagesOf?: PagesOf): readonly Section[] {
  const { record } = source;
  return [
    section('cutting', 'Cutting list', cuttingList(source, pagesOf)),
    section('bands', 'Bands and strips', bandTable(record)),
    section(
      'order',
      'Order of work',
      record && {
        kind: 'steps',
        items: record.orderOfWork.map(j => ({
          text: j.text,
          ...(j.because.length > 0 ? { detail: j.because.join('; ') } : {}),
        })),
      },
    ),
    section('findings', 'Checks', record && findingsBlock(record.findings)),
    section('cautions', 'Cautions', { kind: 'cautions', items: source.cautions ?? [] }),
    section(
      'steps',
      'What was altered',
      record && { kind: 'steps', items: record.steps.map(s => ({ text: s.did })) },
    ),
  ].filter(s => s.blocks.length > 0);
}

/** The whole report: all of that, and every figure before and after. */
export function writtenReport(source: ReportSource): WrittenDocument {
  const makers = makersSections(source);
  const { record } = source;
  const figures = record
    ? [
        section('girths', 'Girths', girthTable(record)),
        section('edges', 'Edges before and after', ...edgeTables(record.before, record.after)),
        section('seams', 'Seams', seamTable(record.after)),
      ].filter(s => s.blocks.length > 0)
    : [];
  const sections = [...makers, ...figures].sort((a, b) => reading.indexOf(a.id) - reading.indexOf(b.id));
  return { title: titleOf(source), facts: factsOf(source), sections };
}

/** The report tells what happened, then what to cut and sew, then every figure; the cover keeps to cutting and sewing. */
const reading = ['steps', 'findings', 'cutting', 'bands', 'order', 'cautions', 'girths', 'seams', 'edges'];

export const titleOf = (source: ReportSource): string =>
  source.record?.title || source.pattern.name || 'Pattern';
export const factsOf = (source: ReportSource): readonly string[] =>
  [
    source.record?.title && source.record.title !== source.pattern.name
      ? `altered from ${source.pattern.name}`
      : '',
    source.record?.sheet ? `sheet ${source.record.sheet}` : '',
    source.wearer ? `for ${source.wearer}` : '',
    source.date ?? '',
  ].filter(fact => fact !== '');

function section(id: string, title: string, ...blocks: readonly (Block | undefined)[]): Section {
  return { id, title, blocks: blocks.filter((b): b is Block => b !== undefined && !isEmpty(b)) };
}
const isEmpty = (block: Block): boolean =>
  block.kind === 'table' ? block.rows.length === 0 : block.kind !== 'text' && block.items.length === 0;

function cuttingList({ pattern }: ReportSource, pagesOf: PagesOf | undefined): Block {
  const columns = [
    left('Piece', 2),
    left('Cut', 2),
    left('Fabric', 1.4),
    ...(pagesOf ? [left('Pages', 2.6)] : [left('Allowances', 2.6)]),
  ];
  const rows = pattern.pieces.map(piece => [
    piece.title || piece.name,
    cutWords(piece).replace(/^cut /, ''),
    [piece.cutting.fabric, piece.cutting.note].filter(Boolean).join(', '),
    pagesOf ? pagesOf(piece.name) : allowances(piece),
  ]);
  return { kind: 'table', columns, rows };
}

/** "5/8 in (15.9 mm); hem 25.4 mm": each allowance of a piece once. */
function allowances(piece: Piece): string {
  const edges = piece.outline.parts
    .filter(p => p.type === 'edge')
    .filter(e => e.kind === 'seam' || e.kind === 'hem');
  const say = (kind: 'seam' | 'hem') =>
    [
      ...new Set(
        edges.filter(e => e.kind === kind).map(e => inEighths(e.allowance) ?? millimetres(e.allowance)),
      ),
    ].join(', ');
  const hem = say('hem');
  return [say('seam'), hem && `hem ${hem}`].filter(Boolean).join('; ');
}

function bandTable(record: RecordFigures | undefined): Block | undefined {
  if (!record) return undefined;
  const columns = [
    left('Piece', 1.6),
    left('', 1.1),
    right('Exact, cm', 1.1),
    right('Nearest mm', 1.1),
    right('Exact, in', 1.1),
    right('Nearest 1/8 in', 1.3),
  ];
  const row = (piece: string, what: string, mm: number) => [
    piece,
    what,
    centimetres(mm),
    `${Math.round(mm)} mm`,
    inches(mm),
    eighths(mm),
  ];
  const rows = Object.entries(record.derived).flatMap(([name, d]) => [
    row(name, 'length', d.lengthMm),
    row('', 'width', d.widthMm),
    ...(typeof d.quarterMm === 'number' ? [row('', 'quarter mark', d.quarterMm)] : []),
  ]);
  return { kind: 'table', columns, rows };
}

const weight = { fault: 0, warning: 1, note: 2 } as const;

/** Findings with the gravest first; the same words about the same place are said once. */
function findingsBlock(findings: readonly ToldFinding[]): Block {
  const items = findings
    .map(
      (f): FindingItem => ({
        severity: f.severity,
        where: whereWords(f),
        message: f.message,
        remedy: f.remedy,
      }),
    )
    .filter((f, i, all) => all.findIndex(g => g.where === f.where && g.message === f.message) === i)
    .sort((a, b) => weight[a.severity] - weight[b.severity]);
  if (items.length === 0) return { kind: 'text', text: 'Every seam was walked and every check passed.' };
  return { kind: 'findings', items };
}

const whereWords = ({ where }: ToldFinding): string =>
  [where.step === undefined ? '' : `step ${where.step}`, [where.piece, where.edge].filter(Boolean).join('.')]
    .filter(Boolean)
    .join(', ');

function girthTable(record: RecordFigures): Block {
  const say = (mm: number | undefined) => (mm === undefined ? '–' : millimetres(mm));
  return {
    kind: 'table',
    columns: [left('Level', 1.5), right('Body'), right('Before'), right('After'), right('Ease')],
    rows: Object.entries(record.girths ?? {}).map(([level, g]) => [
      level,
      say(g.bodyMm),
      say(g.beforeMm),
      say(g.afterMm),
      g.easeMm === undefined ? '–' : change(g.easeMm),
    ]),
  };
}

function edgeTables(before: MeasuredPattern, after: MeasuredPattern): readonly Block[] {
  const pieces = [...new Set([...Object.keys(after.pieces), ...Object.keys(before.pieces)])];
  const rows = pieces.flatMap(piece => {
    const then = before.pieces[piece]?.edges ?? {},
      now = after.pieces[piece]?.edges ?? {};
    const names = [...new Set([...Object.keys(now), ...Object.keys(then)])];
    return names.map((edge, i) => {
      const a = then[edge],
        b = now[edge];
      return [
        i === 0 ? piece : '',
        edge,
        a ? millimetres(a.lengthMm) : '–',
        b ? millimetres(b.lengthMm) : '–',
        a && b ? change(b.lengthMm - a.lengthMm) : a ? 'gone' : 'new',
        b ? millimetres(b.allowanceMm) : '–',
      ];
    });
  });
  return [
    {
      kind: 'table',
      columns: [
        left('Piece', 1.3),
        left('Edge', 1.5),
        right('Before'),
        right('After'),
        right('Change'),
        right('Allowance'),
      ],
      rows,
    },
  ];
}

function seamTable(after: MeasuredPattern): Block {
  return {
    kind: 'table',
    columns: [
      left('Seam', 1.5),
      right('One side'),
      right('Other side'),
      right('Difference'),
      right('Ease wanted'),
      left('', 0.9),
    ],
    rows: Object.entries(after.seams).map(([name, s]) => [
      name,
      millimetres(s.aMm),
      millimetres(s.bMm),
      change(s.differenceMm),
      change(s.easeWantedMm),
      s.matches ? 'sews' : 'does not match',
    ]),
  };
}
