import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

const axe = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

interface Axe {
  readonly axe: {
    run(
      what: Document,
      how: object,
    ): Promise<{
      readonly violations: readonly {
        readonly id: string;
        readonly nodes: readonly { readonly html: string }[];
      }[];
    }>;
  };
}

/** Looked over by axe-core in every state; done by keyboard alone; read as a list. */
export const forEveryone = (opened: () => Opened) =>
  describe('for everyone', () => {
    const violations = async (page: Page): Promise<readonly string[]> => {
      await page.evaluate(await readFile(axe, 'utf8'));
      return page.evaluate(async () => {
        const found = await (window as unknown as Axe).axe.run(document, { resultTypes: ['violations'] });
        return found.violations.map(v => `${v.id}: ${v.nodes.map(n => n.html.slice(0, 90)).join(' ')}`);
      });
    };

    test.each([
      ['a desk', 1440, 900, 'light'],
      ['a telephone in the dark', 360, 780, 'dark'],
    ] as const)('axe finds nothing on %s, whatever is open', async (_, width, height, colorScheme) => {
      const page = await opened().another(opened().file, { viewport: { width, height }, colorScheme });
      expect(await violations(page)).toEqual([]);
      await page.locator('.corner button').first().click();
      await page.locator('.shelf').waitFor();
      expect(await violations(page)).toEqual([]);
      await page.keyboard.press('Escape');
      await page.locator('.table path.reach[data-piece="back"][data-name="hem"]').dispatchEvent('click');
      await page.locator('.slip').waitFor();
      expect(await violations(page)).toEqual([]);
      await page.locator('.slip .plain').click();
      await page
        .locator('details')
        .first()
        .evaluate(d => d.setAttribute('open', ''));
      await page.locator('.and-then input').fill('dart');
      await page.locator('.blank.name .value').first().click();
      expect(await violations(page)).toEqual([]);
      await page.keyboard.press('Escape');
      await page.locator('.rows button').first().click();
      await page.locator('.walking').waitFor();
      expect(await violations(page)).toEqual([]);
      // Nothing is wider than the window.
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
      await page.context().close();
    });

    test('by keyboard alone: a sentence begun, its blanks filled, a handle moved, a piece found in the list', async () => {
      const page = await opened().another(opened().file);
      await page.locator('.and-then input').focus();
      await page.keyboard.type('lengthen sleeve');
      await page.keyboard.press('Enter');
      const step = page.locator('.step').last();
      await expect.poll(() => step.locator('.sentence').textContent()).toContain('Lengthen');
      const blanks = step.locator('.blank > .value');
      await blanks.nth(0).press('Enter');
      await page.locator('.choices button', { hasText: 'sleeve' }).press('Enter');
      await page.keyboard.press('Escape');
      await blanks.nth(1).press('Enter');
      await page.locator('.choices button', { hasText: 'hem' }).press('Enter');
      await blanks.nth(2).press('Enter');
      await page.keyboard.type('3 cm');
      await page.keyboard.press('Enter');
      await expect.poll(() => step.locator('.came').first().textContent()).toContain('lengthened by 3 cm');
      const handle = page.locator('.handle[aria-label$="sleeve"]');
      await handle.focus();
      await page.keyboard.press('ArrowUp');
      await expect.poll(() => step.locator('.came').first().textContent()).toContain('3.1 cm');
      await page.locator('.list-view button', { hasText: 'Sleeve' }).focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => page.locator('.slip h3').textContent()).toBe('Sleeve');
      // The list says figures: pieces, edges, darts.
      expect(await page.locator('.list-view').textContent()).toMatch(/hem: \d+(\.\d+)? cm/);
      await page.context().close();
    });

    test('in German: what is chosen, what is measured and every figure', async () => {
      const page = await opened().another(opened().file, { locale: 'de-DE' });
      await expect.poll(() => page.locator('#for-whom ~ .sentence').textContent()).toContain('Kopfumfang');
      expect(await page.locator('#for-whom ~ .sentence').textContent()).toContain('57,2 cm');
      await expect.poll(() => page.locator('.steps').textContent()).toContain('V mit Einsatz');
      await expect
        .poll(() => page.locator('#away ~ .sentence').textContent())
        .toContain('um Vierteldrehungen');
      await page.context().close();
    });

    test('on a telephone by touch alone: a handle dragged, the table pinched, the sheet pulled up', async () => {
      const phone = { viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true };
      const page = await opened().another(opened().file, phone);
      const cdp = await page.context().newCDPSession(page);
      const fingers = (
        type: 'touchStart' | 'touchMove' | 'touchEnd',
        ...at: readonly (readonly [number, number])[]
      ) =>
        cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at.map(([x, y], id) => ({ x, y, id })) });
      const handle = page.locator('.handle').first();
      await handle.waitFor();
      const at = (await handle.boundingBox())!;
      // Big enough for a finger.
      expect(Math.round(Math.min(at.width, at.height))).toBeGreaterThanOrEqual(44);
      const [x, y] = [at.x + at.width / 2, at.y + at.height / 2];
      await fingers('touchStart', [x, y]);
      for (let i = 1; i <= 5; i++) await fingers('touchMove', [x + i * 8, y - i]);
      await fingers('touchEnd');
      const share = page.locator('.step').nth(1).locator('.blank .value').last();
      await expect.poll(() => share.textContent()).not.toBe('0 %');
      const scale = () => page.locator('.lying > g').getAttribute('transform');
      const before = await scale();
      await fingers('touchStart', [150, 150], [200, 150]);
      for (let i = 1; i <= 5; i++) await fingers('touchMove', [150 - i * 6, 150], [200 + i * 6, 150]);
      await fingers('touchEnd');
      await expect.poll(scale).not.toBe(before);
      const sheet = page.locator('.sheet');
      const low = (await sheet.boundingBox())!.y;
      await page.locator('.drawer').tap();
      await expect.poll(async () => (await sheet.boundingBox())!.y).toBeLessThan(low - 100);
      // A seam that is walked is not walked behind it.
      await page.locator('.rows button').first().tap();
      await expect.poll(async () => (await sheet.boundingBox())!.y).toBeGreaterThan(low - 5);
      const walking = (await page.locator('.walking').boundingBox())!;
      expect(walking.y + walking.height).toBeLessThan((await sheet.boundingBox())!.y);
      await page.context().close();
    });

    test('whoever asks for less motion sees none', async () => {
      const page = await opened().another(opened().file, { reducedMotion: 'reduce' });
      await page
        .locator('.step')
        .nth(0)
        .locator('.sentence')
        .click({ position: { x: 3, y: 3 } });
      await page.locator('.handle').first().waitFor();
      expect(await page.getByRole('button', { name: 'see it done' }).count()).toBe(0);
      // The table is where it goes to at once, not after a flight.
      const place = () => page.locator('.lying').evaluate(svg => (svg as SVGElement).style.transform);
      const before = await place();
      await page.locator('.table').press('ArrowRight');
      expect(await place()).not.toBe(before);
      await page.locator('.table').press('0');
      expect(await place()).toBe(before);
      await page.locator('.rows button').first().click();
      await page.locator('.walking').waitFor();
      expect(await page.locator('.walking .doings button').count()).toBe(1);
      await page.context().close();
    });

    test('at twice the size nothing is cut off', async () => {
      // 200 % of a window of 1280 px is a page of 640.
      const page = await opened().another(opened().file, { viewport: { width: 640, height: 400 } });
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
      await page.context().close();
    });
  });
