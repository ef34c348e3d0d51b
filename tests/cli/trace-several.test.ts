import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { encode as encodePng } from 'fast-png';
import { expect, test } from 'vitest';
import { smallFloor } from '../geometry/trace/small-floor.js';
import { has } from '../print/rendered.js';
import { photograph } from '../support/photo-scene.js';
import { command } from './command.js';
import { folder } from './folders.js';

test.skipIf(!has('pdftoppm'))(
  'of several pictures the one that cannot be measured by is told by its file (needs pdftoppm)',
  async () => {
    const dir = folder();
    const [floor, copy] = ['floor.png', 'copy.png'].map(name => join(dir, name));
    const { width, height, rgba } = photograph(await smallFloor());
    writeFileSync(floor!, encodePng({ width, height, data: rgba, channels: 4 }));
    writeFileSync(copy!, encodePng({ width: 8, height: 8, data: new Uint8Array(256), channels: 4 }));
    for (const files of [
      [floor!, copy!],
      [copy!, floor!],
    ]) {
      const { code, stderr } = await command('trace', ...files, '-o', join(dir, 'p.svg'));
      expect(code).toBe(2);
      expect(stderr).toContain(`${copy}:1:1: Picture ${files.indexOf(copy!) + 1} is too small`);
    }
  },
);
