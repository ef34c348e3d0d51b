import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { run } from '../../packages/cli/src/run.js';

export interface Outcome {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** The command run in this process. */
export async function command(...args: readonly string[]): Promise<Outcome> {
  let stdout = '',
    stderr = '';
  const code = await run(args, {
    stdout: text => {
      stdout += text;
    },
    stderr: text => {
      stderr += text;
    },
    watched: false,
  });
  return { code, stdout, stderr };
}

const main = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));

/** The built command, as a maker runs it on a machine that speaks no language of its own. */
export function built(args: readonly string[], cwd?: string): Outcome {
  const env = { ...process.env, LC_ALL: 'C' };
  const { status, stdout, stderr } = spawnSync(process.execPath, [main, ...args], {
    cwd,
    env,
    encoding: 'utf8',
  });
  return { code: status ?? -1, stdout, stderr };
}

export const demo = (path: string): string => fileURLToPath(new URL(`../../demos/${path}`, import.meta.url));
