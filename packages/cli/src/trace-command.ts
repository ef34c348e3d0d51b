import { basename, dirname, extname, join } from 'node:path';
import { PatternError } from '@paperhinge/geometry';
import { locating } from '@paperhinge/geometry/sayings';
import {
  type PhotoTrace,
  type Picture,
  patternsOfTrace,
  type TraceStage,
  tracePhotos,
  traceScan,
  writeTrace,
} from '@paperhinge/geometry/trace';
import { commandSaying } from '@paperhinge/sheet/words';
import { loadPicture } from './decode-picture.js';
import { codeFor } from './exit-codes.js';
import { fileToWrite } from './file-to-write.js';
import type { Io } from './io.js';
import { kindOfFile } from './kind-of-file.js';
import { inFile } from './load.js';
import { findingLine } from './one-line.js';
import { pictureOfTrace } from './picture-of-trace.js';
import { progress } from './progress.js';
import { readInput } from './read-input.js';
import { wordsFor } from './speech.js';
import { spokenIn } from './told.js';
import { traceDrawing } from './trace-drawing.js';
import { figuresOfTrace } from './trace-figures.js';
import {
  refuseForeignOptions,
  sizesOfPicture,
  type TraceArguments,
  type TraceWishes,
  traceWishes,
} from './trace-options.js';
import { traceSheet } from './trace-sheet.js';
import { checkOutputs, writeTogether } from './write-outputs.js';

const stages = {
  targets: 'looking-for-sheets',
  camera: 'measuring-floor',
  floor: 'flattening-picture',
  outlines: 'tracing-pieces',
} as const;

/**
 * `paperhinge trace FILE... -o PATTERN.svg`: photographs or a scan, an SVG or DXF drawing of any origin, or a sheet that
 * gives pieces by measured points, told by what they hold.
 * @returns the exit code @throws PatternError
 */
export const traceCommand = (files: readonly string[], wanted: TraceArguments, io: Io): Promise<number> =>
  spokenIn({ language: wanted.language ?? 'en', unit: 'mm' }, async () => {
    // Arguments are looked at before any file is.
    traceWishes(wanted, files.length);
    const options = {
      ...wanted,
      output: fileToWrite(wanted.output, 'drawing'),
      ...(wanted.picture === undefined ? {} : { picture: fileToWrite(wanted.picture, 'picture') }),
    };
    // Corners are clicked in pictures alone.
    if (options.at !== undefined) sizesOfPicture(options);
    const [file] = files;
    if (files.length !== 1 || file === undefined) return tracedPictures(files, options, io);
    const bytes = await readInput(file, 'picture', { file });
    const kind = kindOfFile(bytes);
    if (kind === 'sheet') return traceSheet(file, options, io);
    if (kind === 'drawing') return traceDrawing({ file, kind: 'svg', bytes }, options, io);
    if (kind === 'dxf' || kind === 'pdf') return traceDrawing({ file, kind, bytes }, options, io);
    return tracedPictures(files, options, io);
  });

async function tracedPictures(files: readonly string[], options: TraceArguments, io: Io): Promise<number> {
  const { output, json = false, picture, language } = options;
  refuseForeignOptions('picture', options);
  const sizes = sizesOfPicture(options);
  const wishes = { ...traceWishes(options, files.length), ...(sizes ? { sizes } : {}) };
  for (const path of [output, ...(picture === undefined ? [] : [picture])])
    await checkOutputs(dirname(path), [basename(path)], files);
  const words = await wordsFor({ ...(language ? { language } : {}) });
  const { say, end } = progress(io);
  try {
    say(words.sentence(commandSaying('reading-pictures', {})));
    const pictures = await Promise.all(files.map(loadPicture));
    const stage = (at: TraceStage, share: number) =>
      say(words.sentence(commandSaying(stages[at], {})), share);
    const trace = await inFile(files[0]!, () => inOwnFile(files, () => traced(pictures, wishes, stage)));
    say(words.sentence(commandSaying('writing', {})));
    const name = basename(output);
    // Nothing is known of allowances: they are left open, and the line that was traced is said.
    const patterns = patternsOfTrace(basename(name, extname(name)), trace);
    const svg = writeTrace({ patterns, bothLines: false }, wishes.line);
    // All is made before any of it is written: who stops the work has all of it or nothing.
    const seen = picture === undefined ? [] : [{ path: picture, content: await pictureOfTrace(trace) }];
    await writeTogether([...seen, { path: output, content: svg }]);
    end();
    const told = trace.findings.map(words.finding);
    for (const finding of told) io.stderr(`${findingLine(finding, words)}\n`);
    const { pieces, sheets, residualMm } = trace;
    const counts = { pieces: pieces.length, sheets: sheets.length };
    const what = [
      commandSaying('pieces-traced', residualMm === undefined ? counts : { ...counts, residualMm }),
    ];
    const said = commandSaying('in-files', { what, files: [join(dirname(output), name)] });
    io.stdout(
      json
        ? `${JSON.stringify({ ...figuresOfTrace(trace, wishes), findings: told }, null, 2)}\n`
        : `${words.sentence(said)}\n`,
    );
    return codeFor(told);
  } finally {
    end();
  }
}

/** Does work on pictures; an error that is of one of them is told as of its file. */
function inOwnFile<T>(files: readonly string[], work: () => T): T {
  try {
    return work();
  } catch (error) {
    const picture = error instanceof PatternError ? Number(error.facts.picture) : Number.NaN;
    const file = files[picture - 1];
    return locating(file === undefined ? {} : { file }, () => {
      throw error;
    });
  }
}

function traced(
  pictures: readonly Picture[],
  { dotsToMm, printed, at, pen, sizes }: TraceWishes,
  onProgress: (stage: TraceStage, share: number) => void,
): PhotoTrace {
  const how = { ...(at ? { at } : {}), ...(pen ? { pen } : {}), ...(sizes ? { sizes } : {}), onProgress };
  return dotsToMm === undefined
    ? tracePhotos(pictures, { ...(printed ? { printed } : {}), ...how })
    : traceScan(pictures[0]!, { dotsToMm, ...how });
}
