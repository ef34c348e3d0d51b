import { afterAll, describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

/** The table answers the heading that is read. */
export const headings = (opened: () => Opened) =>
  describe('the heading that is read', () => {
    const table = () => opened().table;
    const read = (heading: string) => table().locator(`#${heading} button`).click();
    const lying = () => table().locator('.table .paper');
    afterAll(() => read('alter'));

    test('for whom: girths as level lines across the pieces, the body beside each', async () => {
      await read('for-whom');
      const girths = table().locator('.table .girth');
      // Bust, waist and hip, on front and back.
      await expect.poll(() => girths.count()).toBe(6);
      const said = await girths.first().textContent();
      expect(said).toMatch(/^bust [\d.]+ cmbody 102 cm, \+[\d.]+ cm$/);
      await read('alter');
      await expect.poll(() => girths.count()).toBe(0);
    });

    test('of what cloth: the pieces laid on it, and what to buy', async () => {
      await read('cloth');
      await expect.poll(() => table().locator('.table .cloth').count()).toBe(3);
      // Front and back whole, two sleeves, band and stay.
      expect(await lying().count()).toBe(6);
      const told = await table().locator('.to-buy .came').allTextContents();
      expect(told[0]).toMatch(/^Buy 1\.\d+ m of main 150 cm wide, opened out\.$/);
      // The four of the first cloth lie between its selvedges, once the table has flown to it.
      const beyond = () =>
        table().evaluate(() => {
          const box = (e: Element) => e.getBoundingClientRect();
          const { left, right } = box(document.querySelector('.table .cloth')!);
          const pieces = [...document.querySelectorAll('.table .paper')].slice(0, 4).map(box);
          return Math.max(...pieces.flatMap(p => [left - p.left, p.right - right]));
        });
      await expect.poll(beyond).toBeLessThan(1);
    });

    test('how to make it: the pieces of a step, joined where they are joined by then', async () => {
      await read('making');
      const jobs = table().locator('.making button');
      // Each has its picture beside it, once it is in sight.
      const pictures = table().locator('.making li').first().locator('.job-picture path');
      await expect.poll(() => pictures.count()).toBeGreaterThan(1);
      // A dart is sewn while the front lies alone; the sleeve goes in once the shoulders are joined.
      await jobs.filter({ hasText: 'dart' }).first().focus();
      await expect.poll(() => table().locator('.table .sewn .paper').count()).toBe(1);
      await jobs.filter({ hasText: /^Sew the sleeve cap/ }).focus();
      await expect.poll(() => table().locator('.table .sewn .paper').count()).toBe(3);
      expect(await table().locator('.table .sewn .lit').count()).toBe(3);
    });

    test('to take away: the pages, cut apart as they will come out', async () => {
      await read('away');
      await expect.poll(() => table().locator('.table .pages .tile').count()).toBeGreaterThan(8);
      expect(await table().locator('.table .pages .placed').count()).toBe(5);
    });

    test('the sheet scrolled by hand is followed; what comes into sight by Tab is not', async () => {
      await read('alter');
      await expect.poll(() => table().locator('.table .pages').count()).toBe(0);
      await table().locator('.away button').first().focus();
      await table().waitForTimeout(300);
      expect(await table().locator('.table .pages').count()).toBe(0);
      const written = (await table().locator('.written').boundingBox())!;
      await table().mouse.move(written.x + 12, written.y + written.height / 2);
      await table().mouse.wheel(0, 40_000);
      await expect.poll(() => table().locator('.table .pages .tile').count()).toBeGreaterThan(8);
      await table().mouse.wheel(0, -40_000);
      await expect.poll(() => table().locator('.table .girth').count()).toBe(6);
    });
  });
