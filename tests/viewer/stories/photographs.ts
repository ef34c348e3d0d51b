import { encode } from 'fast-png';
import { describe, expect, test } from 'vitest';
import { smallFloor } from '../../geometry/trace/small-floor.js';
import { has } from '../../print/rendered.js';
import { photograph } from '../../support/photo-scene.js';
import type { Opened } from '../open-table.js';

/** From a photograph of paper pieces to pieces on the table; a record back to its sheet. */
export const photographs = (opened: () => Opened) =>
  describe('photographs and records', () => {
    const lay = async (name: string, mimeType: string, buffer: Buffer) => {
      const table = opened().table;
      if ((await table.locator('.shelf').count()) === 0)
        await table.locator('.corner button').first().click();
      await table.locator('.file input').setInputFiles({ name, mimeType, buffer });
    };

    test.skipIf(!has('pdftoppm'))(
      'a photograph with the printed sheets in it becomes pieces (skipped: no pdftoppm here)',
      async () => {
        const { width, height, rgba } = photograph(await smallFloor());
        const png = Buffer.from(encode({ width, height, data: rgba, channels: 4 }));
        await lay('floor.png', 'image/png', png);
        const table = opened().table;
        await expect.poll(() => table.locator('.shelf').count(), { timeout: 110_000 }).toBe(0);
        await expect.poll(() => table.locator('.table .paper').count()).toBe(2);
        expect(await table.locator('h1').textContent()).toBe('floor');
      },
      180_000,
    );

    test('a picture without those sheets is refused in words', async () => {
      const blank = encode({
        width: 800,
        height: 700,
        data: new Uint8Array(800 * 700 * 4).fill(200),
        channels: 4,
      });
      await lay('blank.png', 'image/png', Buffer.from(blank));
      const told = opened().table.locator('.shelf .refused');
      await expect.poll(() => told.textContent(), { timeout: 30_000 }).toMatch(/\w{4,}.*\./);
      expect(await told.textContent()).not.toMatch(/undefined|Error|\bat \w/);
      await opened().table.keyboard.press('Escape');
    });
  });
