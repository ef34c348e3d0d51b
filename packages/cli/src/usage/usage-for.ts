import type { Io } from '../io.js';
import { english } from './english.js';
import type { Usage } from './usage.js';

/**
 * The usage in the language that is asked for among the arguments (`--language de`), else in the environment's, else
 * in English. What the command answers is no help: its language is asked for by the argument or the sheet alone.
 * Another language than English is loaded once it is wanted.
 */
export async function usageFor(args: readonly string[], { environment = {} }: Io): Promise<Usage> {
  const wanted = askedLanguage(args) ?? environmentLanguage(environment);
  if (wanted?.toLowerCase() === 'de') return (await import('./german-usage.js')).germanUsage;
  return { texts: english, wrong: (_, message) => message };
}

function askedLanguage(args: readonly string[]): string | undefined {
  const at = args.findLastIndex(arg => arg === '--language' || arg.startsWith('--language='));
  if (at < 0) return undefined;
  const [, joined] = args[at]!.split('=');
  return joined ?? args[at + 1];
}

/** "de" of "de_DE.UTF-8". The first of these that is set holds, as POSIX has it (IEEE 1003.1, 8.2) [memory]. */
const environmentLanguage = ({
  LC_ALL,
  LC_MESSAGES,
  LANG,
}: NonNullable<Io['environment']>): string | undefined => (LC_ALL || LC_MESSAGES || LANG)?.split(/[_.@-]/)[0];
