import { basename, dirname, extname, join } from 'node:path';
import { PatternError, parseLength, pathLength, writePattern } from '@paperhinge/geometry';
import { boundsOfPath, joined } from '@paperhinge/geometry/paths';
import { signedArea } from '@paperhinge/geometry/regions';
import {
  checkedSquare,
  type PhotoTrace,
  type PrintedStretch,
  patternOfTrace,
  tracePhotos,
} from '@paperhinge/geometry/trace';
import { loadPicture } from './decode-picture.js';
import { codeFor } from './exit-codes.js';
import type { Io } from './io.js';
import { inFile } from './load.js';
import { findingLine } from './one-line.js';
import { pictureOfTrace } from './picture-of-trace.js';
import { progress } from './progress.js';
import { wordsIn } from './words.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

interface TraceOptions {
  readonly output: string;
  readonly measured?: string;
  readonly line: 'stitching' | 'cutting';
  readonly picture?: string;
  readonly json?: boolean;
}

const stages = {
  targets: 'Looking for the sheets',
  camera: 'Measuring the floor',
  floor: 'Flattening the picture',
  outlines: 'Tracing the pieces',
} as const;

/** `paperhinge trace PICTURE... -o PATTERN.svg`. @returns the exit code @throws PatternError */
export async function traceCommand(files: readonly string[], options: TraceOptions, io: Io): Promise<number> {
  const { output, json = false, line, picture } = options;
  if (line !== 'stitching' && line !== 'cutting')
    throw new PatternError('arguments', {
      message: 'A piece is cut along its stitching line or its cutting line',
      remedy: 'Write --line stitching or --line cutting.',
    });
  const printed = options.measured === undefined ? undefined : printedStretch(options.measured);
  const outputs = [output, ...(picture === undefined ? [] : [picture])];
  for (const path of outputs) await checkOutputs(dirname(path), [basename(path)], files);
  const { say, end } = progress(io);
  try {
    say('Reading the pictures');
    const pictures = await Promise.all(files.map(loadPicture));
    const trace = await inFile(files[0]!, () =>
      tracePhotos(pictures, { ...(printed ? { printed } : {}), onStage: stage => say(stages[stage]) }),
    );
    const name = basename(output, extname(output));
    say('Writing');
    await writeOutputs(dirname(output), [{ name: basename(output), content: patternSvg(trace, name, line) }]);
    if (picture !== undefined)
      await writeOutputs(dirname(picture), [
        { name: basename(picture), content: await pictureOfTrace(trace) },
      ]);
    end();
    const told = trace.findings.map(wordsIn('mm').finding);
    for (const finding of told) io.stderr(`${findingLine(finding)}\n`);
    io.stdout(
      json
        ? `${JSON.stringify({ ...figuresOf(trace, printed), findings: told }, null, 2)}\n`
        : `${summaryOf(trace)} in ${join(dirname(output), basename(output))}\n`,
    );
    return codeFor(told);
  } finally {
    end();
  }
}

/** "49.8" or "49.8,49.9": what the checked squares measured, across and down. */
function printedStretch(text: string): PrintedStretch {
  const sides = text.split(',').map(side => parseLength(side.trim(), 'mm'));
  const [across, down = across] = sides;
  if (
    across === undefined ||
    down === undefined ||
    sides.length > 2 ||
    sides.some(s => !(Math.abs((s ?? 0) / checkedSquare - 1) < 0.05))
  )
    throw new PatternError('arguments', {
      message: 'The square on the sheets measures 50 mm, or a little more or less',
      remedy: 'Write what its sides measured, as in --measured 49.8 or --measured 49.8,50.1.',
    });
  return { across: across / checkedSquare, down: down / checkedSquare };
}

/** The pattern with its allowances left open, as nothing is known of them; the line that was traced is said. */
function patternSvg(trace: PhotoTrace, name: string, line: 'stitching' | 'cutting'): string {
  const svg = writePattern(patternOfTrace(name, trace.pieces)).replaceAll(' data-allowance="0 mm"', '');
  return line === 'stitching'
    ? svg
    : svg.replace(' data-pattern=', ' data-line-drawn="cutting" data-pattern=');
}

function figuresOf(trace: PhotoTrace, printed: PrintedStretch | undefined) {
  const { residualMm, worstMm, dotMm, sheets, pieces } = trace;
  const side = (stretch: number | undefined) => checkedSquare * (stretch ?? 1);
  return {
    residualMm,
    worstMm,
    scale: {
      by: 'photo frame',
      sheets: sheets.length,
      mmPerDot: dotMm,
      squareMm: [side(printed?.across), side(printed?.down)],
    },
    pieces: pieces.map(({ name, edges }) => {
      const outline = joined(...edges);
      const { min, max } = boundsOfPath(outline);
      return {
        piece: name,
        areaMm2: Math.abs(signedArea(outline)),
        lengthMm: edges.reduce((sum, edge) => sum + pathLength(edge), 0),
        sizeMm: [max.x - min.x, max.y - min.y],
        edges: Object.fromEntries(edges.map((edge, i) => [`edge-${i + 1}`, { lengthMm: pathLength(edge) }])),
      };
    }),
  };
}

function summaryOf({ pieces, residualMm, sheets }: PhotoTrace): string {
  const count = pieces.length === 1 ? '1 piece' : `${pieces.length} pieces`;
  return `${count}, measured by ${sheets.length} sheets that agree to ${residualMm.toFixed(2)} mm,`;
}
