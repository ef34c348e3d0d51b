#!/usr/bin/env node

import { unusable } from './exit-codes.js';
import { freshBundle } from './fresh-bundle.js';

// Where nobody reads any more, nothing is lost: `| head` closes the pipe once it has seen enough.
process.stderr.on('error', () => {});
process.stdout.on('error', error => {
  const { code = 'unknown' } = error as NodeJS.ErrnoException;
  if (code === 'EPIPE') return;
  process.exitCode = unusable;
  void import('./told.js').then(({ answerNotWritten }) => process.stderr.write(answerNotWritten(code)));
});

const { run } = (await freshBundle()) ?? (await import('./run.js'));
const code = await run(process.argv.slice(2), {
  stdout: text => void process.stdout.write(text),
  stderr: text => void process.stderr.write(text),
  watched: process.stderr.isTTY === true,
  environment: process.env,
});
// An answer that could not be written may have been told by now.
process.exitCode ??= code;
