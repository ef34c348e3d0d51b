import { readFileSync } from 'node:fs';
import { Command, Option } from 'commander';
import type { Io } from './io.js';
import type { UsageTexts } from './usage/english.js';
import type { Usage } from './usage/usage.js';

// What the command is asked with. Each command's own work is loaded when it is run.

type Exit = (code: number) => void;

/** What a command is added to, how its arguments are said, and what its work is done with. */
interface Adding {
  readonly program: Command;
  readonly texts: UsageTexts;
  readonly io: Io;
  readonly exit: Exit;
}

/** The arguments that there are. */
export function commandLine(io: Io, exit: Exit, { texts, help }: Usage): Command {
  const program = new Command('paperhinge')
    .description(texts.program)
    .version(version(), '--version', texts.version)
    .helpOption('--help', texts.help)
    .helpCommand(false)
    .exitOverride()
    // What is wrong with the arguments is told by `tell`, as one line.
    .configureOutput({ writeOut: io.stdout, writeErr: io.stderr, outputError: () => {} });
  if (help) program.configureHelp(help);
  const adding = { program, texts, io, exit };
  addAlter(adding);
  addCheck(adding);
  addMeasure(adding);
  addPrint(adding);
  addTrace(adding);
  addSheet(adding);
  addName(adding);
  program.addHelpText('after', `\n${texts.exitCodes}`);
  return program;
}

const sheetOption = ({ given, any }: UsageTexts) => new Option(`--sheet <${given.sheet}>`, any.sheet);
const languageOption = ({ given, any }: UsageTexts) =>
  new Option(`--language <${given.tag}>`, any.language).choices(['en', 'de']);

function addAlter({ program, texts, io, exit }: Adding): void {
  const { given, any, alter: say } = texts;
  program
    .command('alter')
    .description(say.does)
    .argument(`<${given.sheet}>`, say.sheet)
    .requiredOption(`-o, --output <${given.folder}>`, say.output)
    .option('--json', any.json)
    .action(async (path, options) => {
      const { alterCommand } = await import('./alter-command.js');
      exit(await alterCommand(path, options, io));
    });
}

function addCheck({ program, texts, io, exit }: Adding): void {
  const { given, any, check: say } = texts;
  program
    .command('check')
    .description(say.does)
    .argument(`<${given.pattern}>`, say.pattern)
    .option(`--picture <${given.file}>`, say.picture)
    .addOption(sheetOption(texts))
    .addOption(languageOption(texts))
    .option('--json', any.json)
    .action(async (path, options) => {
      const { checkCommand } = await import('./check-command.js');
      exit(await checkCommand(path, options, io));
    });
}

function addMeasure({ program, texts, io, exit }: Adding): void {
  const { given, any, measure: say } = texts;
  program
    .command('measure')
    .description(say.does)
    .argument(`<${given.pattern}>`, say.pattern)
    .addOption(sheetOption(texts))
    .addOption(languageOption(texts))
    .option('--json', any.json)
    .action(async (path, options) => {
      const { measureCommand } = await import('./measure-command.js');
      exit(await measureCommand(path, options, io));
    });
}

function addPrint({ program, texts, io, exit }: Adding): void {
  const { given, any, print: say } = texts;
  const command = program
    .command('print')
    .description(say.does)
    .argument(`[${given.pattern}]`, say.pattern)
    .requiredOption(`-o, --output <${given.file}>`, say.output);
  addPageOptions(command, texts)
    // Before what it implies, so that a clash names the option that was written.
    .addOption(
      new Option(`--show <${given.how}>`, say.show)
        .choices(['opened-out', 'mirrored'])
        .implies({ projector: 'dark' })
        .conflicts('paper'),
    )
    .addOption(
      new Option(`--projector <${given.ground}>`, say.projector)
        .choices(['dark', 'light'])
        .conflicts('paper'),
    )
    .option('--photo-frame', say.photoFrame)
    .option(`--sheets <${given.count}>`, say.sheets)
    .addOption(sheetOption(texts))
    .addOption(languageOption(texts))
    .option('--json', any.json)
    .action(async (path, options) => {
      const { printOrFrame } = await import('./print-or-frame.js');
      exit(await printOrFrame(path, options, io));
    });
}

function addTrace({ program, texts, io, exit }: Adding): void {
  const { given, any, trace: say } = texts;
  program
    .command('trace')
    .description(say.does)
    .argument(`<${given.files}...>`, say.files)
    .requiredOption(`-o, --output <${given.file}>`, say.output)
    .option(`--measured <${given.acrossDown}>`, say.measured)
    .option(`--dpi <${given.dots}>`, say.dpi)
    .option(`--known <${given.length}>`, say.known)
    .option(`--between <${given.places}>`, say.between)
    .option(`--at <${given.corners}>`, say.at, (corners: string, before: readonly string[] = []) => [
      ...before,
      corners,
    ])
    .option(`--pen <${given.name}>`, say.pen)
    .option(`--line <${given.line}>`, say.line, 'stitching')
    .option(`--gap <${given.length}>`, say.gap)
    .option(`--layer <${given.name}>`, say.layer)
    .option(`--sizes <${given.list}>`, say.sizes)
    .option(`--size <${given.name}>`, say.size)
    .option(`--columns <${given.count}>`, say.columns)
    .option(`--overlap <${given.length}>`, say.overlap)
    .option(`--unit <${given.unit}>`, say.unit)
    .option(`--picture <${given.file}>`, say.picture)
    .addOption(languageOption(texts))
    .option('--json', any.json)
    .action(async (files, options) => {
      const { traceCommand } = await import('./trace-command.js');
      exit(await traceCommand(files, options, io));
    });
}

function addSheet({ program, texts, io, exit }: Adding): void {
  const { given, sheet: say } = texts;
  program
    .command('sheet')
    .description(say.does)
    .argument(`<${given.record}>`, say.record)
    .requiredOption(`-o, --output <${given.file}>`, say.output)
    .option(`--pattern <${given.pattern}>`, say.pattern)
    .action(async (path, options) => {
      const { sheetCommand } = await import('./sheet-command.js');
      exit(await sheetCommand(path, options, io));
    });
}

function addName({ program, texts, io, exit }: Adding): void {
  const { given, any, name: say } = texts;
  program
    .command('name')
    .description(say.does)
    .argument(`<${given.pattern}>`, say.pattern)
    .requiredOption(`-o, --output <${given.file}>`, say.output)
    .option(`--picture <${given.file}>`, say.picture)
    .addOption(languageOption(texts))
    .option('--json', any.json)
    .action(async (path, options) => {
      const { nameCommand } = await import('./name-command.js');
      exit(await nameCommand(path, options, io));
    });
}

function addPageOptions(command: Command, { given, print: say }: UsageTexts): Command {
  return command
    .option(`--paper <${given.paper}>`, say.paper)
    .option(`--orientation <${given.way}>`, say.orientation)
    .option(`--margins <${given.lengths}>`, say.margins)
    .option(`--overlap <${given.length}>`, say.overlap)
    .option('--edge-to-edge', say.edgeToEdge)
    .option(`--arrange <${given.how}>`, say.arrange)
    .option(`--turn <${given.pieces}>`, say.turn)
    .option(`--measured <${given.acrossDown}>`, say.measured)
    .option(`--before <${given.pattern}>`, say.before)
    .option('--grid', say.grid)
    .option('--tint', say.tint)
    .option(`--notches <${given.kind}>`, say.notches)
    .option(`--hide <${given.layers}>`, say.hide)
    .option('--large-sheet', say.largeSheet)
    .option(`--date <${given.text}>`, say.date)
    .option(`--initials <${given.text}>`, say.initials);
}

const version = (): string =>
  (JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { version: string })
    .version;
