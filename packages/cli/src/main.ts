#!/usr/bin/env node
import { run } from './run.js';

// A reader that has seen enough (`| head`) closes the pipe; that is no failure.
process.stdout.on('error', error => {
  if ((error as NodeJS.ErrnoException).code !== 'EPIPE') throw error;
});

process.exitCode = await run(process.argv.slice(2), {
  stdout: text => void process.stdout.write(text),
  stderr: text => void process.stderr.write(text),
  watched: process.stderr.isTTY === true,
});
