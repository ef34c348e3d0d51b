import { describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

/** Figures taken hold of where they live on the drawing. */
export const handles = (opened: () => Opened) =>
  describe('handles', () => {
    const table = () => opened().table;
    const figure = () => table().locator('.step').first().locator('.blank .value').nth(2);
    const handle = () => table().locator('.handle[data-way="by"][aria-label$="back"]');

    test('the amount of a shortening is dragged at the hem, before as a ghost, in one step to undo', async () => {
      await table()
        .locator('.step')
        .first()
        .locator('.sentence')
        .click({ position: { x: 3, y: 3 } });
      await handle().waitFor();
      const at = (await handle().boundingBox())!;
      const ghost = () => table().locator('.ghost').nth(1).getAttribute('d');
      const was = await ghost();
      const [x, y] = [at.x + at.width / 2, at.y + at.height / 2];
      await table().mouse.move(x, y);
      await table().mouse.down();
      await table().mouse.move(x, y - 20, { steps: 6 });
      // While the hand holds it, the ghost is the piece as it was when the hand took hold.
      await expect.poll(ghost).not.toBe(was);
      await table().mouse.up();
      await expect.poll(() => figure().textContent()).not.toBe('21 cm');
      const mm = Number.parseFloat((await figure().textContent())!) * 10;
      // Up the piece is shorter: 20 px at about 1.6 mm each, settled on whole half centimetres.
      expect(mm).toBeGreaterThan(225);
      expect(mm).toBeLessThan(265);
      expect(mm % 5).toBe(0);
      // The handle has come along.
      const off = async () => {
        const now = (await handle().boundingBox())!;
        return Math.abs(now.y + now.height / 2 - (y - 20));
      };
      await expect.poll(off).toBeLessThan(6);
      await table().getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => figure().textContent()).toBe('21 cm');
    });

    test('keys move it by a millimetre, and its figure is read aloud', async () => {
      await handle().focus();
      await handle().press('ArrowUp');
      await expect.poll(() => figure().textContent()).toBe('21.1 cm');
      await expect.poll(() => handle().getAttribute('aria-valuetext')).toBe('21.1 cm');
      await handle().press('ArrowDown');
      await expect.poll(() => figure().textContent()).toBe('21 cm');
    });

    test('every figure that moves the drawing has its handle, whatever its verb', async () => {
      const ways = async (step: number) => {
        await table()
          .locator('.step')
          .nth(step)
          .locator('.sentence')
          .click({ position: { x: 3, y: 3 } });
        const all = table().locator('.handle');
        await expect.poll(() => all.count()).toBeGreaterThan(0);
        return [
          ...new Set(await all.evaluateAll(found => found.map(h => h.getAttribute('data-way')))),
        ].sort();
      };
      expect(await ways(1)).toEqual(['share']);
      expect(await ways(2)).toEqual(['by', 'from.at', 'to.at']);
      expect(await ways(4)).toEqual(['depth', 'half width']);
      expect(await ways(7)).toEqual(['join', 'ratio', 'width']);
    });
  });
