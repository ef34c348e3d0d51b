import { describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

/** The sheet read, and its figures changed where they stand. */
export const sheet = (opened: () => Opened) =>
  describe('the sheet', () => {
    const table = () => opened().table;

    test('opens by itself and shows the demo and its verdict', async () => {
      expect(await table().locator('h1').textContent()).toBe('Cellist’s top');
      expect(await table().locator('.verdict').textContent()).toContain('6 of 6 seams sew together');
      expect(await table().locator('.step').count()).toBe(9);
    });

    test('a figure dragged in its sentence changes the drawing, and can be undone', async () => {
      const drawn = () => table().locator('.table .paper').first().getAttribute('d');
      const before = await drawn();
      const figure = table().locator('.step').first().locator('.blank button').nth(2);
      expect(await figure.textContent()).toBe('21 cm');
      const { x, y } = (await figure.boundingBox())!;
      await table().mouse.move(x + 5, y + 8);
      await table().mouse.down();
      // 15 steps of 8 px, a millimetre each.
      await table().mouse.move(x + 125, y + 8, { steps: 15 });
      await table().mouse.up();
      await expect.poll(() => figure.textContent()).toBe('22.5 cm');
      await expect.poll(drawn).not.toBe(before);
      await table().getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => figure.textContent()).toBe('21 cm');
      await expect.poll(drawn).toBe(before);
    });

    test('a touch on an edge offers the sentences that begin there, and one of them stands in the sheet', async () => {
      const hem = table().locator('.table path.reach[data-piece="back"][data-name="hem"]');
      await hem.dispatchEvent('click');
      expect(await table().locator('.slip h3').textContent()).toBe('Hem of the back');
      // A sentence is spoken with what was touched in its place, the rest left open.
      const offered = await table().locator('.slip li button').allTextContents();
      expect(offered).toContain('Shorten the back at the hem by …');
      for (const words of offered) expect(words).not.toMatch(/function|undefined|\[object/);
      await table().locator('.slip li button').first().click();
      await expect.poll(() => table().locator('.step').count()).toBe(10);
      expect(await table().locator('.step').last().locator('.sentence').textContent()).toContain('back');
      await table().getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => table().locator('.step').count()).toBe(9);
    });

    test('the needle takes the table back, by keys', async () => {
      const needle = table().locator('.needle');
      await needle.focus();
      await needle.press('Home');
      await expect.poll(() => table().locator('.table .ghost').count()).toBe(0);
      await needle.press('End');
      await expect.poll(() => table().locator('.table .ghost').count()).toBeGreaterThan(0);
    });

    test('the pages are taken away as a PDF', async () => {
      const download = table().waitForEvent('download', { timeout: 60_000 });
      await table().locator('.away button').first().click();
      expect((await download).suggestedFilename()).toMatch(/\.pdf$/);
    });
  });
