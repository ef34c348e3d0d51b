import { readFile } from 'node:fs/promises';
import { PDFDocument } from '@cantoo/pdf-lib';
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
      const figure = table().locator('.step').first().locator('.blank .value').nth(2);
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

    test('the text stands beside it and both are in step: comments kept, a fault at its line', async () => {
      await table().getByRole('button', { name: 'as text' }).click();
      const lines = table().locator('.cm-line');
      await lines.first().waitFor();
      const figure = table().locator('.step').first().locator('.blank .value').nth(2);
      await figure.press('ArrowUp');
      await expect
        .poll(() => lines.filter({ hasText: 'shorten' }).first().textContent())
        .toContain('by: 211');
      expect(await lines.first().textContent()).toContain('# A cellist');
      // Typed into the text, read in the sentence.
      await lines.filter({ hasText: 'by: 211' }).click();
      await table().keyboard.press('End');
      await table().keyboard.press('ArrowLeft');
      await table().keyboard.press('ArrowLeft');
      await table().keyboard.press('Backspace');
      await table().keyboard.type('9');
      await expect.poll(() => figure.textContent()).toBe('21.9 cm');
      // A step with a fault is told at its line, and does not keep the others from being done.
      await table().keyboard.press('Backspace');
      await table().keyboard.type('x');
      await expect.poll(() => table().locator('.cm-lint-marker-error').count()).toBe(1);
      await expect.poll(() => table().locator('.step.wrong').count()).toBe(1);
      expect(await table().locator('.step').count()).toBe(9);
      expect(await table().locator('.verdict .fault').first().textContent()).toContain('1 step could not');
      await table().keyboard.press('Control+z');
      await table().keyboard.press('Control+z');
      await expect.poll(() => figure.textContent()).toBe('21 cm');
      await table().locator('.as-text .plain').click();
    });

    test('a live picture shows the pages that the PDF then has', async () => {
      await table().locator('#away').scrollIntoViewIfNeeded();
      await table().locator('.pages svg').waitFor({ timeout: 60_000 });
      const said = Number.parseInt((await table().locator('.pages .came').first().textContent())!, 10);
      expect(await table().locator('.pages .placed').count()).toBe(5);
      const download = table().waitForEvent('download', { timeout: 60_000 });
      await table().locator('.away button').first().click();
      const file = await download;
      expect(file.suggestedFilename()).toBe('cellist-s-top-a4.pdf');
      const pdf = await PDFDocument.load(await readFile(await file.path()));
      expect(pdf.getPageCount()).toBe(said);
    });

    test('what the page has found is what the record tells', async () => {
      const download = table().waitForEvent('download');
      await table().locator('.away button', { hasText: 'The record' }).click();
      const record = JSON.parse(await readFile(await (await download).path(), 'utf8')) as {
        readonly findings: readonly { readonly message: string }[];
      };
      const shown = await table().locator('.findings li > button').allTextContents();
      const words = (text: string) => text.replace(/^▲ /, '');
      // The record is in the pattern's unit, the page in the reader's: which it is, not how it is counted.
      expect(shown.length).toBe(record.findings.length);
      expect(shown.map(words).filter(text => text.trim() === '')).toEqual([]);
    });

    test('the projector shows pieces at the scale its square was set to', async () => {
      await table().getByRole('button', { name: 'On a projector' }).click();
      const square = table().locator('.projector rect');
      const [before] = [Number(await square.getAttribute('width'))];
      await table().locator('.projector').press('PageUp');
      const set = Number(await square.getAttribute('width'));
      expect(set / before).toBeCloseTo(1.01, 6);
      await table().getByRole('button', { name: 'it measures 20 cm' }).click();
      const scale = /scale\(([\d.]+)/.exec(
        (await table().locator('.projector svg > g').getAttribute('transform'))!,
      )!;
      expect(Number(scale[1])).toBeCloseTo(set / 200, 9);
      await table().keyboard.press('Escape');
      await expect.poll(() => table().locator('.projector').count()).toBe(0);
    });
  });
