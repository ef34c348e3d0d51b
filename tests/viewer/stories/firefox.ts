import { existsSync } from 'node:fs';
import { type Browser, firefox, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

// Debian's own Firefox, spoken to by the standard protocol (WebDriver BiDi); of what that leaves out nothing is asked.
const path = ['/usr/bin/firefox-esr', '/usr/bin/firefox'].find(existsSync);

/** The one file in another browser: opened from disk, a handle dragged, a sentence begun by words, pages traced. */
export const inFirefox = (opened: () => Opened) =>
  describe.skipIf(path === undefined)('in Firefox (skipped: no Firefox here)', () => {
    let browser: Browser | undefined, page: Page;
    const failures: string[] = [];
    beforeAll(async () => {
      browser = await firefox.launch({ executablePath: path!, channel: 'moz-firefox' } as object);
      page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
      page.on('pageerror', error => failures.push(error.message));
      await page.goto(opened().file);
      await page.locator('.handle').first().waitFor({ timeout: 60_000 });
    }, 120_000);
    afterAll(() => browser?.close());

    test('a dart is closed by dragging its handle, and the garment still sews', async () => {
      const share = page.locator('.step').nth(1).locator('.blank .value').last();
      expect(await share.textContent()).toBe('0 %');
      const { x, y, width, height } = (await page.locator('.handle.shown').boundingBox())!;
      await page.mouse.move(x + width / 2, y + height / 2);
      await page.mouse.down();
      await page.mouse.move(x + width / 2 + 25, y + height / 2 + 4, { steps: 5 });
      await page.mouse.up();
      await expect.poll(async () => Number.parseFloat((await share.textContent())!)).toBeGreaterThan(10);
      await expect.poll(() => page.locator('.verdict').textContent()).toMatch(/6 of 6/);
    });

    test('a sentence is begun by words, and a figure typed into it', async () => {
      await page.locator('.and-then input').fill('lengthen sleeve');
      await page.keyboard.press('Enter');
      const step = page.locator('.step').last();
      await expect.poll(() => step.locator('.sentence').textContent()).toContain('Lengthen');
      await page.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => step.locator('.sentence').textContent()).not.toContain('Lengthen');
    });

    test('the headings are answered, and nothing failed', async () => {
      await page.locator('#cloth button').click();
      await expect.poll(() => page.locator('.table .cloth').count()).toBe(3);
      await page.locator('#away button').click();
      await expect
        .poll(() => page.locator('.table .pages .tile').count(), { timeout: 30_000 })
        .toBeGreaterThan(8);
      expect(failures).toEqual([]);
    });
  });
