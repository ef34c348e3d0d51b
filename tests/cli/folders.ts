import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';

const made: string[] = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A folder of its own, gone after the test. */
export function folder(): string {
  const path = mkdtempSync(join(tmpdir(), 'paperhinge-'));
  made.push(path);
  return path;
}
