import { readFileSync } from 'node:fs';
import { PatternError } from '@paperhinge/geometry';
import { faultsIn } from '@paperhinge/sheet';
import { Command, CommanderError, Option } from 'commander';
import { alterCommand } from './alter-command.js';
import { checkCommand } from './check-command.js';
import { done, ourFailure, unusable } from './exit-codes.js';
import type { Io } from './io.js';
import { measureCommand } from './measure-command.js';
import { errorLine, named, oneLine } from './one-line.js';
import { photoFrameCommand } from './photo-frame-command.js';
import { printCommand } from './print-command.js';
import { addTraceCommand } from './trace-command.js';
import { wordsIn } from './words.js';

/**
 * The command `paperhinge`: runs what the arguments ask for.
 * @param args without the program's name
 * @returns the exit code: 0 done, 1 done but something will not sew or fit, 2 unusable input, 3 our own failure
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  let code: number = done;
  const program = commandLine(io, exit => {
    code = exit;
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    return told(error, args, io);
  }
}

/** Says what went wrong, one line a fault. */
function told(error: unknown, args: readonly string[], io: Io): number {
  if (error instanceof CommanderError) {
    if (error.exitCode === 0) return done;
    if (error.code === 'commander.help') return unusable;
    const what = oneLine(error.message.replace(/^error: /, '').replace(/\.$/, ''));
    return refused(
      [new PatternError('arguments', { message: what, remedy: 'See paperhinge --help.' })],
      args,
      io,
    );
  }
  if (error instanceof PatternError) return refused(faultsIn(error), args, io);
  const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
  io.stderr(
    `paperhinge failed; this is a fault of ours, not of your files. Please report it with these lines:\n${words}\n`,
  );
  return ourFailure;
}

function refused(faults: readonly PatternError[], args: readonly string[], io: Io): number {
  const words = wordsIn('mm');
  for (const fault of faults) io.stderr(`${errorLine(fault, words)}\n`);
  if (args.includes('--json')) {
    const errors = faults.map(fault => named(fault, words));
    io.stdout(`${JSON.stringify({ errors }, null, 2)}\n`);
  }
  return unusable;
}

function commandLine(io: Io, exit: (code: number) => void): Command {
  const program = new Command('paperhinge')
    .description(
      'Alters sewing patterns: a pattern and an alteration sheet in, pages and the proof that it sews out.',
    )
    .version(version(), '--version', 'show the version')
    .helpOption('--help', 'show this help')
    .helpCommand(false)
    .exitOverride()
    // What is wrong with the arguments is told by `told`, as one line.
    .configureOutput({ writeOut: io.stdout, writeErr: io.stderr, outputError: () => {} });
  const json = ['--json', 'one JSON document on stdout'] as const;
  const sheet = ['--sheet <sheet>', 'read the pattern as this sheet says (its "pieces")'] as const;
  program
    .command('alter')
    .description('do what an alteration sheet says')
    .argument('<sheet>', 'alteration sheet, YAML or JSON')
    .requiredOption(
      '-o, --output <folder>',
      'where to write altered.svg, the pages, report.html and record.json',
    )
    .option(...json)
    .action(async (path, options) => exit(await alterCommand(path, options, io)));
  program
    .command('check')
    .description('walk every seam of a pattern')
    .argument('<pattern>', 'pattern SVG')
    .option(...sheet)
    .option(...json)
    .action(async (path, options) => exit(await checkCommand(path, options, io)));
  program
    .command('measure')
    .description('measure a pattern, or the shapes of any SVG')
    .argument('<pattern>', 'pattern SVG, or any SVG')
    .option(...sheet)
    .option(...json)
    .action(async (path, options) => exit(await measureCommand(path, options, io)));
  program
    .command('print')
    .description('lay a pattern out at true scale: on pages, for a projector, or as DXF for another program')
    .argument('[pattern]', 'pattern SVG; none for a photo frame')
    .requiredOption('-o, --output <file>', 'the file to write: .pdf, or .dxf for pattern interchange')
    .option(
      '--paper <paper>',
      'a4, letter ..., or sizes such as "600 x 900 mm"; several by commas (default: a4)',
    )
    .option(
      '--orientation <way>',
      'portrait, landscape, or auto: whichever needs fewer pages (default: auto)',
    )
    .option(
      '--margins <lengths>',
      'left blank round each page: one length, or top,right,bottom,left (default: 10)',
    )
    .option('--overlap <length>', 'by which pages are glued over one another (default: 10)')
    .option('--edge-to-edge', 'pages are cut to the line and laid edge to edge')
    .option(
      '--arrange <how>',
      'fewest-pages, reading-order, or own-pages for each piece (default: fewest-pages)',
    )
    .option('--turn <pieces>', 'none, half, quarter or any: how far pieces may be turned (default: half)')
    .option('--measured <across,down>', 'what the printed 50 mm square measured (in inches: the 2 in square)')
    .option('--before <pattern>', 'ghost the outlines of this pattern under the pieces of the same names')
    .option('--grid', 'a fine grid in centimetres over all pages')
    .option('--tint', 'a pale tint over each piece')
    .option('--notches <kind>', 'inwards, outwards or snips (default: inwards)')
    .option(
      '--hide <layers>',
      'off when the file is opened: cutting-lines, stitching-lines, marks, names, before, joining, grid, tint',
    )
    .option('--large-sheet', 'write the sheet as one SVG drawing, too')
    .option('--date <text>', 'printed on the cover')
    .option('--initials <text>', 'whom it is for, printed on the cover')
    .addOption(
      new Option(
        '--projector <ground>',
        'one sheet of thick lines on a dark or a light ground, with a grid to set a projector by',
      )
        .choices(['dark', 'light'])
        .conflicts('paper'),
    )
    .option('--photo-frame', 'sheets to lay round pieces that are photographed, for paperhinge trace')
    .option('--sheets <count>', 'of the photo frame: 4 to 9 (default: 9)')
    .option(...sheet)
    .option(...json)
    .action(async (path, options) => exit(await printOrFrame(path, options, io)));
  addTraceCommand(program, io, exit);
  program.addHelpText(
    'after',
    '\nExit codes: 0 done; 1 done, but something will not sew or fit; 2 unusable input; 3 our own failure.',
  );
  return program;
}

/** A photo frame is of no pattern; everything else that is printed is. */
function printOrFrame(
  path: string | undefined,
  options: Parameters<typeof printCommand>[1] &
    Parameters<typeof photoFrameCommand>[0] & { photoFrame?: true },
  io: Io,
): Promise<number> {
  if (options.photoFrame && path === undefined) return photoFrameCommand(options, io);
  if (path !== undefined && !options.photoFrame && options.sheets === undefined)
    return printCommand(path, options, io);
  throw new PatternError(
    'arguments',
    path === undefined
      ? { message: 'There is no pattern to print', remedy: 'Give the pattern SVG, or --photo-frame.' }
      : {
          message: 'A photo frame is printed without a pattern',
          remedy: 'Leave out the pattern, or --photo-frame and --sheets.',
        },
  );
}

const version = (): string =>
  (JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { version: string })
    .version;
