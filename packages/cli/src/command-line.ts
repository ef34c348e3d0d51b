import { readFileSync } from 'node:fs';
import { Command, Option } from 'commander';
import type { Io } from './io.js';

// What the command is asked with. Each command's own work is loaded when it is run.

type Exit = (code: number) => void;

const json = ['--json', 'one JSON document on stdout'] as const;
const sheet = [
  '--sheet <sheet>',
  'read the pattern as this sheet says (its "pieces"), and answer as it asks',
] as const;
const language = () =>
  new Option('--language <tag>', "what to answer in: en or de (default: en, or the sheet's)").choices([
    'en',
    'de',
  ]);

/** The arguments that there are. */
export function commandLine(io: Io, exit: Exit): Command {
  const program = new Command('paperhinge')
    .description(
      'Alters sewing patterns: a pattern and an alteration sheet in, pages and the proof that it sews out.',
    )
    .version(version(), '--version', 'show the version')
    .helpOption('--help', 'show this help')
    .helpCommand(false)
    .exitOverride()
    // What is wrong with the arguments is told by `tell`, as one line.
    .configureOutput({ writeOut: io.stdout, writeErr: io.stderr, outputError: () => {} });
  addAlter(program, io, exit);
  addCheck(program, io, exit);
  addMeasure(program, io, exit);
  addPrint(program, io, exit);
  addTrace(program, io, exit);
  addSheet(program, io, exit);
  addName(program, io, exit);
  program.addHelpText(
    'after',
    '\nExit codes: 0 done; 1 done, but something will not sew or fit; 2 unusable input; 3 our own failure.',
  );
  return program;
}

function addAlter(program: Command, io: Io, exit: Exit): void {
  program
    .command('alter')
    .description('do what an alteration sheet says')
    .argument('<sheet>', 'alteration sheet, YAML or JSON')
    .requiredOption(
      '-o, --output <folder>',
      'where to write altered.svg, the pages, report.html and record.json',
    )
    .option(...json)
    .action(async (path, options) => {
      const { alterCommand } = await import('./alter-command.js');
      exit(await alterCommand(path, options, io));
    });
}

function addCheck(program: Command, io: Io, exit: Exit): void {
  program
    .command('check')
    .description('walk every seam of a pattern')
    .argument('<pattern>', 'pattern SVG')
    .option('--picture <file>', "also write each piece with its edges' names and where each begins, as SVG")
    .option(...sheet)
    .addOption(language())
    .option(...json)
    .action(async (path, options) => {
      const { checkCommand } = await import('./check-command.js');
      exit(await checkCommand(path, options, io));
    });
}

function addMeasure(program: Command, io: Io, exit: Exit): void {
  program
    .command('measure')
    .description('measure a pattern, or the shapes of any SVG')
    .argument('<pattern>', 'pattern SVG, or any SVG')
    .option(...sheet)
    .addOption(language())
    .option(...json)
    .action(async (path, options) => {
      const { measureCommand } = await import('./measure-command.js');
      exit(await measureCommand(path, options, io));
    });
}

function addPrint(program: Command, io: Io, exit: Exit): void {
  const command = program
    .command('print')
    .description('lay a pattern out at true scale: on pages, for a projector, or as DXF for another program')
    .argument('[pattern]', 'pattern SVG; none for a photo frame')
    .requiredOption('-o, --output <file>', 'the file to write: .pdf, or .dxf for pattern interchange');
  addPageOptions(command)
    // Before what it implies, so that a clash names the option that was written.
    .addOption(
      new Option(
        '--show <how>',
        'for a projector: half pieces opened out at their fold, or every piece mirrored; on a dark ground unless --projector says otherwise',
      )
        .choices(['opened-out', 'mirrored'])
        .implies({ projector: 'dark' })
        .conflicts('paper'),
    )
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
    .addOption(language())
    .option(...json)
    .action(async (path, options) => {
      const { printOrFrame } = await import('./print-or-frame.js');
      exit(await printOrFrame(path, options, io));
    });
}

function addTrace(program: Command, io: Io, exit: Exit): void {
  program
    .command('trace')
    .description(
      'make a pattern of photographs, a scan, an SVG, DXF or PDF drawing, or a sheet of measured points',
    )
    .argument(
      '<files...>',
      'photographs of one floor (JPEG, PNG), joined by the sheets they share; or one drawing or sheet',
    )
    .requiredOption('-o, --output <file>', 'the pattern SVG to write')
    .option('--measured <across,down>', 'what the 50 mm square on the sheets measured')
    .option('--dpi <dots>', 'the picture is a flat scan of so many dots to the inch')
    .option('--known <length>', 'the picture is flat, and so long between two of its places')
    .option(
      '--between <places>',
      'those two places in dots, such as two marks of a ruler: "412,880 2950,905"',
    )
    .option(
      '--at <corners>',
      'a piece drawn on paper: its corners in order, in dots of the first picture; once for each piece',
      (corners: string, before: readonly string[] = []) => [...before, corners],
    )
    .option(
      '--line <line>',
      'what the pieces were cut along: stitching or cutting (default: stitching)',
      'stitching',
    )
    .option(
      '--gap <length>',
      'of a drawing: how far ends of lines may lie apart and still meet (default: 0.2 mm)',
    )
    .option('--layer <name>', 'of a drawing: only this layer or colour, such as one size of several')
    .option('--sizes <list>', 'of a nest: every size with its layer or colour, such as "S=red, M=green"')
    .option('--columns <count>', 'of a PDF in tiles whose pages do not tell: how many stand in a row')
    .option('--overlap <length>', 'of such pages: how far each lies over the next (default: 0)')
    .option('--unit <unit>', 'of a DXF file that does not say: mm, cm or in')
    .option('--picture <file>', 'also write what was seen from straight above, with what was taken, as PNG')
    .addOption(language())
    .option(...json)
    .action(async (files, options) => {
      const { traceCommand } = await import('./trace-command.js');
      exit(await traceCommand(files, options, io));
    });
}

function addSheet(program: Command, io: Io, exit: Exit): void {
  program
    .command('sheet')
    .description('turn a record back into the sheet it is the record of, its sums worked out')
    .argument('<record>', 'record.json of an alteration')
    .requiredOption('-o, --output <file>', 'the alteration sheet to write')
    .option('--pattern <pattern>', 'the pattern SVG it is for (default: as the record says)')
    .action(async (path, options) => {
      const { sheetCommand } = await import('./sheet-command.js');
      exit(await sheetCommand(path, options, io));
    });
}

function addName(program: Command, io: Io, exit: Exit): void {
  program
    .command('name')
    .description('propose what the pieces, edges and seams of a pattern are, as a sheet to edit')
    .argument('<pattern>', 'pattern SVG, such as trace writes')
    .requiredOption('-o, --output <file>', 'the sheet to write')
    .option('--picture <file>', 'also write each piece with the names proposed for its edges, as SVG')
    .addOption(language())
    .option(...json)
    .action(async (path, options) => {
      const { nameCommand } = await import('./name-command.js');
      exit(await nameCommand(path, options, io));
    });
}

const addPageOptions = (command: Command): Command =>
  command
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
    .option('--turn <pieces>', 'none, half, quarter or any: how far pieces may be turned')
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
    .option('--initials <text>', 'whom it is for, printed on the cover');

const version = (): string =>
  (JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { version: string })
    .version;
