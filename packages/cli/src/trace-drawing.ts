import { basename, dirname, extname } from 'node:path';
import { type LengthUnit, parseLength } from '@paperhinge/geometry';
import {
  drawingOfSvg,
  type GridWishes,
  type JoinedPages,
  joinedPages,
  piecesOfDrawing,
  readDxf,
  type SizesTrace,
  sizesOfDrawing,
  writeTrace,
} from '@paperhinge/geometry/trace';
import { commandRefusal, commandSaying } from '@paperhinge/sheet/words';
import type { Io } from './io.js';
import { inFile } from './load.js';
import { progress } from './progress.js';
import { utf8 } from './read-input.js';
import { wordsFor } from './speech.js';
import { answer, refusePictureOptions } from './trace-answer.js';
import { figuresOfPatterns } from './trace-figures.js';
import {
  layerWanted,
  refuseForeignOptions,
  sizesIn,
  type TraceArguments,
  traceWishes,
} from './trace-options.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

/** A drawing given to `trace`: what it is, and what it holds. */
export interface DrawingGiven {
  readonly file: string;
  readonly kind: 'svg' | 'dxf' | 'pdf';
  readonly bytes: Uint8Array;
}

/** mm: ends of strokes may lie this far apart at most. */
const widestGap = 2;
const usualGap = 0.2;

/** `paperhinge trace DRAWING -o PATTERN.svg`: the pieces of an SVG, DXF or PDF file of any origin. @returns the exit code */
export async function traceDrawing(given: DrawingGiven, options: TraceArguments, io: Io): Promise<number> {
  const { output, json = false, language } = options;
  refusePictureOptions(options);
  refuseForeignOptions(given.kind, options);
  const { line } = traceWishes(options, 1);
  await checkOutputs(dirname(output), [basename(output)], [given.file]);
  const words = await wordsFor({ ...(language ? { language } : {}) });
  const name = basename(output);
  const { say, end } = progress(io);
  const told: Told = (code, share) => say(words.sentence(commandSaying(code, {})), share);
  const trace = await inFile(given.file, () =>
    taken(given, basename(name, extname(name)), options, told),
  ).finally(end);
  await writeOutputs(dirname(output), [{ name, content: writeTrace(trace, line) }]);
  const { patterns } = trace;
  // Who says that the one line is cut along has answered what would be asked of it.
  const findings = trace.findings.filter(f => line !== 'cutting' || f.code !== 'one-line-drawn');
  const first = patterns[0]!;
  const made = commandSaying('pieces-traced', { pieces: first.pieces.length, sheets: 0 });
  const record = figuresOfPatterns(patterns, { ...trace, by: given.kind });
  return answer({ output, json, findings, made, record }, words, io);
}

/** Told what is being done of a file, and how much of it is done. */
type Told = (code: 'reading-pages' | 'laying-pages', share: number) => void;

/** What a drawing holds, and how truly its pages were joined if it has several. */
type Taken = SizesTrace & Pick<JoinedPages, 'residualMm' | 'worstMm'>;

async function taken(given: DrawingGiven, name: string, options: TraceArguments, told: Told): Promise<Taken> {
  const gap = options.gap === undefined ? usualGap : parseLength(options.gap, 'mm');
  if (!(gap >= 0.05 && gap <= widestGap)) throw commandRefusal('gap-out-of-range', { mostMm: widestGap });
  const { drawing, findings, ...joined } = await readDrawing(given, options, told);
  const layer = layerWanted(options);
  const { sizes } = options;
  if (sizes !== undefined && layer === undefined) {
    const trace = sizesOfDrawing(name, drawing, { gap, sizes: sizesIn(sizes) });
    return { ...joined, ...trace, findings: [...findings, ...trace.findings] };
  }
  const { pattern, ...trace } = piecesOfDrawing(name, drawing, {
    gap,
    ...(layer === undefined ? {} : { layer }),
  });
  return { ...joined, ...trace, patterns: [pattern], findings: [...findings, ...trace.findings] };
}

async function readDrawing(
  { kind, bytes, file }: DrawingGiven,
  options: TraceArguments,
  told: Told,
): Promise<JoinedPages> {
  if (kind === 'svg') return drawingOfSvg(bytes, { file });
  if (kind === 'dxf') return readDxf(utf8(bytes, 'pattern', file), unitOf(options.unit));
  const grid = gridOf(options);
  const { readPdf } = await import('./read-pdf.js');
  const pages = await readPdf(bytes, share => told('reading-pages', share));
  return joinedPages(pages, grid, { onProgress: (_, share) => told('laying-pages', share) });
}

/** mm: pages overlap by less than half a sheet. */
const mostOverlap = 100;

function gridOf({ columns, overlap }: TraceArguments): GridWishes | undefined {
  const overlapMm = overlap === undefined ? 0 : parseLength(overlap, 'mm');
  if (!(overlapMm >= 0 && overlapMm <= mostOverlap))
    throw commandRefusal('page-overlap-out-of-range', { mostMm: mostOverlap });
  if (columns === undefined) {
    if (overlap !== undefined) throw commandRefusal('overlap-without-columns', {});
    return undefined;
  }
  const count = Number(columns);
  if (!(Number.isInteger(count) && count >= 1)) throw commandRefusal('columns-out-of-range', {});
  return { columns: count, overlap: overlapMm };
}

function unitOf(text: string | undefined): LengthUnit | undefined {
  if (text === undefined || text === 'mm' || text === 'cm' || text === 'in') return text;
  throw commandRefusal('unit-unknown', {});
}
