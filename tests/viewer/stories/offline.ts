import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

/** The served build: light at first, and there without a network. */
export const offline = (opened: () => Opened) =>
  describe('the served page', () => {
    test('its first view stands on less than 300 kB, before its engine has come', async () => {
      const context = await opened().browser.newContext();
      const page = await context.newPage();
      await page.route('**/engine.worker*', route => route.abort());
      const sizes: number[] = [];
      const sized: Promise<void>[] = [];
      page.on('response', response => {
        const isFont = response.url().endsWith('.woff2');
        sized.push(
          response.body().then(body => {
            // Fonts are packed already.
            sizes.push(isFont ? body.length : gzipSync(body, { level: 9 }).length);
          }),
        );
      });
      await page.goto(opened().address);
      await page.locator('.verdict strong').first().waitFor();
      expect(await page.locator('.step').count()).toBe(9);
      expect(await page.locator('.table .paper').count()).toBe(5);
      await page.waitForTimeout(500);
      await Promise.all(sized);
      // The page, its script, its style, five fonts.
      expect(sizes.length).toBeGreaterThan(6);
      expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(300_000);
      await context.close();
    });

    test('once opened it opens without a network, engine and all', async () => {
      const context = await opened().browser.newContext();
      const page = await context.newPage();
      await page.goto(opened().address);
      const share = page.locator('.step').nth(1).locator('.blank .value').last();
      const drawn = () => page.locator('.table .paper').first().getAttribute('d');
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await context.setOffline(true);
      await page.reload();
      await page.locator('.verdict strong').first().waitFor();
      const before = await drawn();
      await share.press('PageUp');
      await expect.poll(drawn).not.toBe(before);
      await context.close();
    });
  });
