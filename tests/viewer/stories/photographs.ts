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

    let taken: Promise<Buffer> | undefined;
    const floor = (): Promise<Buffer> => {
      taken ??= smallFloor().then(scene => {
        const { width, height, rgba } = photograph(scene);
        return Buffer.from(encode({ width, height, data: rgba, channels: 4 }));
      });
      return taken;
    };

    test.skipIf(!has('pdftoppm'))(
      'a photograph with the printed sheets in it becomes pieces (skipped: no pdftoppm here)',
      async () => {
        await lay('floor.png', 'image/png', await floor());
        const table = opened().table;
        await expect.poll(() => table.locator('.shelf').count(), { timeout: 110_000 }).toBe(0);
        await expect.poll(() => table.locator('.table .paper').count()).toBe(2);
        expect(await table.locator('h1').textContent()).toBe('floor');
        // How it was taken stands in a sentence. Squares of 49.5 mm make all of it smaller by a hundredth.
        const sentence = table.locator('.traced');
        expect(await sentence.textContent()).toMatch(/photograph.* measure 50 mm.*the stitching line/);
        const widthOf = () =>
          table
            .locator('.table .paper')
            .first()
            .evaluate(path => (path as SVGPathElement).getBBox().width);
        const before = await widthOf();
        await sentence.locator('.blank .value').first().click();
        await sentence.locator('.blank input').fill('49.5 mm');
        await sentence.locator('.blank input').press('Enter');
        await expect.poll(async () => (await widthOf()) / before, { timeout: 110_000 }).toBeCloseTo(0.99, 2);
        expect(await sentence.textContent()).toContain('measure 49.5 mm');
      },
      300_000,
    );

    test.skipIf(!has('pdftoppm'))(
      'tracing is seen to go on, and is stopped: what lay there stays (skipped: no pdftoppm here)',
      async () => {
        const table = opened().table;
        await lay('another floor.png', 'image/png', await floor());
        const going = table.locator('.shelf .going');
        await going.waitFor();
        expect(await going.locator('[role=status]').textContent()).toMatch(/\w+ the \w+$/);
        await going.locator('button').click();
        await expect.poll(() => going.count()).toBe(0);
        expect(await table.locator('.shelf .refused').count()).toBe(0);
        await table.keyboard.press('Escape');
        expect(await table.locator('h1').textContent()).toBe('floor');
        // Its engine is begun anew for what is asked next.
        const download = table.waitForEvent('download');
        await table.locator('.away button', { hasText: 'as a drawing' }).click();
        expect((await download).suggestedFilename()).toMatch(/^floor.*\.svg$/);
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
