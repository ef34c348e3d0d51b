import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

/** The served build: light at first, and there without a network. */
export const offline = (opened: () => Opened) =>
  describe('the served page', () => {
    test('asks for less than 300 kB of page, scripts and styles before its first view, and then opens offline', async () => {
      const { address, browser } = opened();
      const context = await browser.newContext();
      const page = await context.newPage();
      const sizes: number[] = [];
      const sized: Promise<void>[] = [];
      page.on('response', response => {
        if (!/\.(html|js|css)$|\/$/.test(response.url()) || response.url().endsWith('offline.js')) return;
        sized.push(
          response.body().then(body => {
            sizes.push(gzipSync(body, { level: 9 }).length);
          }),
        );
      });
      await page.goto(address);
      await page.locator('.verdict strong').first().waitFor({ timeout: 60_000 });
      await Promise.all(sized);
      const total = sizes.reduce((sum, size) => sum + size, 0);
      expect(sizes.length).toBeGreaterThan(3);
      expect(total).toBeLessThan(300_000);
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await context.setOffline(true);
      await page.reload();
      await page.locator('.verdict strong').first().waitFor({ timeout: 60_000 });
      expect(await page.locator('h1').textContent()).toBe('Cellist’s top');
      await context.close();
    });
  });
