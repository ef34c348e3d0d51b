import type { Pattern, Piece, ToldFinding } from '@paperhinge/geometry';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { greatestStretchOf } from '../drawing/greatest-stretch.js';
import type { SectionName } from '../words/page-words.js';
import { type Reader, readerOf } from '../words/reader.js';
import { clothNotes } from './cloth-notes.js';
import { clothToBuy } from './cloth-to-buy.js';
import { columnOf, plainName } from './columns.js';
import type { Block, FindingItem, Section, WrittenDocument } from './document.js';
import { edgeTable, girthTable, seamTable } from './figure-tables.js';
import type { RecordFigures, ReportSource } from './source.js';

/** What is said of the printed pages, where there are some: which pages a piece is on. */
export type PagesOf = (piece: string) => string;

/** Whom a source is written for. */
export const readerFor = ({ pattern, language, unit = pattern.unit }: ReportSource): Reader =>
  readerOf(unit, language);

/** What a maker cuts and sews by: the part of the report that is printed with the pattern, too. */
export function makersSections(source: ReportSource, pagesOf?: PagesOf): readonly Section[] {
  const { record } = source;
  const reader = readerFor(source);
  const steps = record && {
    kind: 'steps' as const,
    items: record.orderOfWork.map(j => ({
      text: j.text,
      ...(j.because.length > 0 ? { detail: j.because.join('; ') } : {}),
    })),
  };
  return [
    section(
      reader,
      'cutting',
      cuttingList(source, reader, pagesOf),
      ...clothNotes(source.pattern, reader).map(text => ({ kind: 'text' as const, text })),
    ),
    section(reader, 'cloth', ...clothToBuy(source, reader)),
    section(reader, 'bands', record && bandTable(record, reader)),
    section(reader, 'order', steps),
    section(reader, 'findings', record && findingsBlock(record.findings, reader)),
    section(reader, 'cautions', { kind: 'cautions', items: source.cautions ?? [] }),
    section(reader, 'steps', record && { kind: 'steps', items: record.steps.map(s => ({ text: s.did })) }),
  ].filter(s => s.blocks.length > 0);
}

/** The whole report: all of that, and every figure before and after. */
export function writtenReport(source: ReportSource): WrittenDocument {
  const { record } = source;
  const reader = readerFor(source);
  const figures = record
    ? [
        section(reader, 'girths', girthTable(record, reader)),
        section(reader, 'edges', edgeTable(record, reader)),
        section(reader, 'seams', seamTable(record, reader)),
      ].filter(s => s.blocks.length > 0)
    : [];
  const sections = [...makersSections(source), ...figures].sort(
    (a, b) => reading.indexOf(a.id) - reading.indexOf(b.id),
  );
  return { title: titleOf(source), facts: factsOf(source), sections };
}

/** The report tells what happened, then what to cut and sew, then every figure; the cover keeps to cutting and sewing. */
const reading = [
  'steps',
  'findings',
  'cutting',
  'cloth',
  'bands',
  'order',
  'cautions',
  'girths',
  'seams',
  'edges',
];

export const titleOf = (source: ReportSource): string =>
  source.record?.title || source.pattern.name || readerFor(source).words.report.pattern;

export function factsOf(source: ReportSource): readonly string[] {
  const { record, pattern, wearer, date = '' } = source;
  const { words } = readerFor(source);
  return [
    record?.title && record.title !== pattern.name ? words.report.alteredFrom(pattern.name) : '',
    pattern.size ? words.piece.size(pattern.size) : '',
    record?.sheet ? words.report.sheetName(record.sheet) : '',
    wearer ? words.report.wearer(wearer) : '',
    date,
  ].filter(fact => fact !== '');
}

function section({ words }: Reader, id: SectionName, ...blocks: readonly (Block | undefined)[]): Section {
  return {
    id,
    title: words.report.sections[id],
    blocks: blocks.flatMap(block => (block === undefined || isEmpty(block) ? [] : [block])),
  };
}
const isEmpty = (block: Block): boolean =>
  block.kind === 'table' ? block.rows.length === 0 : block.kind !== 'text' && block.items.length === 0;

function cuttingList({ pattern }: ReportSource, reader: Reader, pagesOf: PagesOf | undefined): Block {
  const left = columnOf(reader, 'left');
  const columns = [
    left('piece', 2),
    left('cut', 1.9),
    left('cloth', 1.7),
    pagesOf ? left('pages', 2.2) : left('allowances', 2.6),
  ];
  const rows = pattern.pieces.flatMap(piece => {
    const where = pagesOf ? pagesOf(piece.name) : allowances(piece, reader);
    return [piece.cutting, ...(piece.alsoCut ?? [])].map((cutting, i) => [
      i === 0 ? piece.title || piece.name : '',
      [cutWords(piece, cutting, reader), i === 0 ? stretchWords(piece, pattern, reader) : '']
        .filter(Boolean)
        .join(', '),
      [cutting.fabric, cutting.note].filter(Boolean).join(', '),
      i === 0 ? where : '',
    ]);
  });
  return { kind: 'table', caption: reader.words.report.sections.cutting, columns, rows };
}

function cutWords(piece: Piece, cutting: Piece['cutting'], { words }: Reader): string {
  const said = words.piece.count(cutting, foldEdgeOf(piece) !== undefined);
  return [said, cutting.rightSideUp ? words.piece.rightSideUp : ''].filter(Boolean).join(', ');
}

/** The way the cloth must stretch most, where the pages show it by an arrow. */
function stretchWords(piece: Piece, pattern: Pattern, { words }: Reader): string {
  const way = greatestStretchOf(piece, pattern);
  return way === undefined ? '' : words.piece.stretchesMost[way];
}

/** "5/8 in; hem 1 in": each allowance of a piece once. */
function allowances(piece: Piece, reader: Reader): string {
  const edges = piece.outline.parts
    .filter(p => p.type === 'edge')
    .filter(e => e.kind === 'seam' || e.kind === 'hem');
  const say = (kind: 'seam' | 'hem') =>
    [...new Set(edges.filter(e => e.kind === kind).map(e => reader.allowance(e.allowance)))].join(', ');
  const hem = say('hem');
  return [say('seam'), hem && reader.words.piece.hem(hem)].filter(Boolean).join('; ');
}

function bandTable(record: RecordFigures, reader: Reader): Block {
  const left = columnOf(reader, 'left'),
    right = columnOf(reader, 'right');
  const words = reader.words.report.bandFigures;
  const row = (piece: string, what: string, mm: number) => [piece, what, reader.length(mm)];
  return {
    kind: 'table',
    caption: reader.words.report.sections.bands,
    columns: [left('piece', 1.6), left('figure', 1.1), right('measure', 1.1)],
    rows: Object.entries(record.derived).flatMap(([name, d]) => [
      row(plainName(name), words.length, d.lengthMm),
      row('', words.width, d.widthMm),
      ...(typeof d.quarterMm === 'number' ? [row('', words.quarterMark, d.quarterMm)] : []),
    ]),
  };
}

const weight = { fault: 0, warning: 1, note: 2 } as const;

/** Findings with the gravest first; the same words about the same place are said once. */
function findingsBlock(findings: readonly ToldFinding[], { words }: Reader): Block {
  const { severity, step, allSound } = words.report;
  const items = findings
    .map((f): FindingItem => {
      const { where } = f;
      const place = [where.piece, where.edge].filter(n => n !== undefined).map(plainName);
      const heading = [
        severity[f.severity],
        where.step === undefined ? '' : step(where.step),
        place.join(' '),
      ];
      return {
        severity: f.severity,
        heading: heading.filter(Boolean).join(', '),
        message: f.message,
        remedy: f.remedy,
      };
    })
    .filter((f, i, all) => all.findIndex(g => g.heading === f.heading && g.message === f.message) === i)
    .sort((a, b) => weight[a.severity] - weight[b.severity]);
  return items.length === 0 ? { kind: 'text', text: allSound } : { kind: 'findings', items };
}
