import { CommanderError } from 'commander';
import { commandLine } from './command-line.js';
import { done, unusable } from './exit-codes.js';
import type { Io } from './io.js';
import { usageFor } from './usage/usage-for.js';

/**
 * The command `paperhinge`: runs what the arguments ask for. What a command needs is loaded when it is run.
 * @param args without the program's name
 * @returns the exit code: 0 done, 1 done but something will not sew or fit, 2 unusable input, 3 our own failure
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  let code: number = done;
  const usage = await usageFor(args, io);
  const program = commandLine(
    io,
    exit => {
      code = exit;
    },
    usage,
  );
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError && error.exitCode === 0) return done;
    // The help was shown instead of an error.
    if (error instanceof CommanderError && error.code === 'commander.help') return unusable;
    const { tell } = await import('./told.js');
    return tell(error, io, args.includes('--json'), usage);
  }
}
