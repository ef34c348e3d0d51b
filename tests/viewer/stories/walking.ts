import { describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

/** A seam walked: one piece rolls along the other, and what is left over at the end is seen. */
export const walking = (opened: () => Opened) =>
  describe('walking a seam', () => {
    const table = () => opened().table;
    const scrubTo = (share: number) =>
      table()
        .locator('.walking input')
        .evaluate((input, s) => {
          const range = input as HTMLInputElement;
          range.value = String(Math.round(Number(range.max) * s));
          range.dispatchEvent(new Event('input', { bubbles: true }));
        }, share);
    const rolling = async () => {
      const text = (await table().locator('.rolling').getAttribute('transform'))!;
      return text.slice(7, -1).split(' ').map(Number) as [number, number, number, number, number, number];
    };

    test('the back rolls along the front side seam, neither stretched nor skewed, and comes out even', async () => {
      await table().locator('.rows button', { hasText: 'side' }).click();
      await table().locator('.walking').waitFor();
      const seen = [];
      for (const share of [0, 0.3, 0.7, 1]) {
        await scrubTo(share);
        const [a, b, c, d] = await rolling();
        expect(Math.abs(a * d - b * c)).toBeCloseTo(1, 9);
        expect(a * c + b * d).toBeCloseTo(0, 9);
        seen.push(`${a} ${b}`);
      }
      expect(new Set(seen).size).toBeGreaterThan(2);
      const figures = (await table().locator('.walking .figure').textContent())!.split(' · ');
      expect(figures[0]).toBe(figures[1]);
      expect(await table().locator('.walking').textContent()).toContain('run on across the seam');
      await table().keyboard.press('Escape');
      expect(await table().locator('.walking').count()).toBe(0);
    });

    test('a seam that does not match says by how much, and shows it at ten times its size', async () => {
      const pieces = table().locator('.step').first().locator('.blank.name .value').first();
      await pieces.click();
      await table().locator('.choices button', { hasText: 'back' }).click();
      await table().keyboard.press('Escape');
      // The back keeps 21 cm that the front has lost.
      await expect.poll(() => table().locator('.rows .fault').count()).toBeGreaterThan(0);
      // The verdict flies to the fault: the seam is walked.
      await table().locator('.verdict .fault').click();
      await table().locator('.walking').waitFor();
      await table().keyboard.press('Escape');
      await table().locator('.rows .fault button', { hasText: 'side' }).click();
      await table().locator('.walking').waitFor();
      await scrubTo(1);
      await expect
        .poll(() => table().locator('.walking .fault').textContent())
        .toMatch(/left over at the end: 2\d(\.\d+)? cm/);
      expect(Number(await table().locator('.tenfold').getAttribute('width'))).toBeGreaterThan(200);
      await table().keyboard.press('Escape');
      await table().getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => table().locator('.rows .fault').count()).toBe(0);
    });
  });
