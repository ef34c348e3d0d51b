import { describe, expect, test } from 'vitest';
import type { Opened } from '../open-table.js';

/** What the table shows beside the pieces: measurements, the garment whole, a step as it is done. */
export const onTheTable = (opened: () => Opened) =>
  describe('on the table', () => {
    const table = () => opened().table;

    test('a corner is touched, and measured from to another', async () => {
      const corner = (name: string) =>
        table().locator(`.table path.reach[data-piece="sleeve"][data-kind="corner"][data-name="${name}"]`);
      // Once the engine has answered, nothing on the table shifts any more.
      await table().locator('.handle').first().waitFor();
      await corner('underarm-front, hem').dispatchEvent('click');
      await expect.poll(() => table().locator('.slip').textContent()).toMatch(/\d+(\.\d+)?°/);
      await table().getByRole('button', { name: 'Measure from here' }).click();
      const hem = table().locator('.table path.reach[data-piece="sleeve"][data-name="hem"]').first();
      const { x, y, height } = (await hem.boundingBox())!;
      // Near the other corner: the measurement goes to it.
      const other = (await corner('hem, underarm-back').boundingBox())!;
      expect(Math.abs(other.y - y)).toBeLessThan(height + 20);
      const right = other.x > x + 20;
      await table().mouse.click(other.x + other.width / 2 + (right ? -2 : 2), other.y + other.height / 2 + 1);
      const told = table().locator('.tag.still');
      await expect.poll(() => told.textContent()).toMatch(/^\d+(\.\d+)? cm · \d+(\.\d+)? cm along the hem$/);
      const [straight, along] = (await told.textContent())!.split(' · ').map(Number.parseFloat);
      // The hem is a curve between the two, a little longer than the straight line.
      expect(along! - straight!).toBeGreaterThan(0);
      expect(along! - straight!).toBeLessThan(2);
      await table().keyboard.press('Escape');
    });

    test('a piece is taken up by its title and laid elsewhere, and by keys', async () => {
      const title = table().locator('.title text').first();
      const at = async () => (await title.boundingBox())!;
      const { x, y } = await at();
      await table().mouse.move(x + 8, y + 8);
      await table().mouse.down();
      await table().mouse.move(x + 58, y + 48, { steps: 4 });
      await table().mouse.up();
      await expect.poll(async () => Math.round((await at()).x - x)).toBe(50);
      expect(await table().locator('.slip').count()).toBe(0);
      await title.dispatchEvent('click');
      await table().locator('.slip').waitFor();
      const { y: laid } = await at();
      await table().keyboard.press('Alt+ArrowDown');
      await expect.poll(async () => (await at()).y).not.toBe(laid);
      await table().keyboard.press('Escape');
    });

    test('a piece is turned, and what is sewn to an edge is laid to it', async () => {
      const edge = (piece: string, name: string) =>
        table().locator(`.table path.reach[data-piece="${piece}"][data-name="${name}"]`).first();
      const paper = (piece: string) => table().locator(`.table path.paper[data-piece="${piece}"]`);
      const box = async (of: ReturnType<typeof edge>) => (await of.boundingBox())!;
      const upright = await box(paper('sleeve'));
      const title = table().locator('.title[data-piece="sleeve"]');
      await title.dispatchEvent('click');
      await table().getByRole('button', { name: 'Turn it by a quarter' }).click();
      // But for the stroke of what was touched, a few px.
      const isAsWideAs = async (px: number) => Math.abs((await box(paper('sleeve'))).width - px) < 8;
      await expect.poll(() => isAsWideAs(upright.height)).toBe(true);
      // Its title can still be read.
      const words = await box(title.locator('text').first());
      expect(words.width).toBeGreaterThan(words.height);
      await table().keyboard.press('Escape');
      await edge('front', 'shoulder').dispatchEvent('click');
      await table().getByRole('button', { name: 'Lay to it what is sewn there: shoulder' }).click();
      const apart = async () => {
        const [f, b] = [await box(edge('front', 'shoulder')), await box(edge('back', 'shoulder'))];
        return Math.hypot(f.x + f.width / 2 - b.x - b.width / 2, f.y + f.height / 2 - b.y - b.height / 2);
      };
      await expect.poll(apart).toBeLessThan(8);
      await table().locator('section.table').dispatchEvent('click');
      await table().getByRole('button', { name: 'Lay all pieces back in their rows' }).click();
      await expect.poll(() => isAsWideAs(upright.width)).toBe(true);
      expect(await apart()).toBeGreaterThan(50);
    });

    test('the garment is seen whole: front and back, both halves, two sleeves on each', async () => {
      await table().getByRole('button', { name: 'seen whole' }).click();
      await table().locator('.whole').waitFor();
      expect(await table().locator('.whole .paper').count()).toBe(8);
      await table().getByRole('button', { name: 'piece by piece' }).click();
    });

    test('a step is played as the scissors do it, and the sheet stays as it was', async () => {
      await table()
        .locator('.step')
        .nth(2)
        .locator('.sentence')
        .click({ position: { x: 3, y: 3 } });
      await table().getByRole('button', { name: 'see it done' }).waitFor();
      const drawn = () => table().locator('.table .paper').nth(1).getAttribute('d');
      const [after, came] = [
        await drawn(),
        await table().locator('.step').nth(2).locator('.came').first().textContent(),
      ];
      await table().getByRole('button', { name: 'see it done' }).click();
      await expect.poll(drawn).not.toBe(after);
      await expect.poll(drawn).toBe(after);
      expect(await table().locator('.step').nth(2).locator('.came').first().textContent()).toBe(came);
      expect(await table().getByRole('button', { name: 'Redo' }).isDisabled()).toBe(true);
    });

    test('a step is dragged to another place in the order', async () => {
      const words = (i: number) => table().locator('.step').nth(i).locator('.sentence').textContent();
      expect(await words(5)).toMatch(/^Shorten the sleeve/);
      expect(await words(6)).toMatch(/^Set the allowance/);
      await table().locator('.step').nth(5).scrollIntoViewIfNeeded();
      const grip = (await table().locator('.step').nth(5).locator('.stitch').boundingBox())!;
      const below = (await table().locator('.step').nth(6).boundingBox())!;
      await table().mouse.move(grip.x + 1, grip.y + 8);
      await table().mouse.down();
      await table().mouse.move(grip.x + 1, below.y + below.height - 3, { steps: 5 });
      await table().mouse.up();
      await expect.poll(() => words(5)).toMatch(/^Set the allowance/);
      expect(await words(6)).toMatch(/^Shorten the sleeve/);
      await table().getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => words(5)).toMatch(/^Shorten the sleeve/);
    });

    test('a job of the making lights up what it is done to', async () => {
      await table().locator('.making button', { hasText: 'front shoulder' }).focus();
      await expect.poll(() => table().locator('.table path.lit').count()).toBe(2);
      await table().locator('.and-then input').focus();
      await expect.poll(() => table().locator('.table path.lit').count()).toBe(0);
    });

    test('what is chosen from lights up on the table', async () => {
      const blank = table().locator('.step').nth(1).locator('.blank.name > .value').nth(2);
      await blank.click();
      await table().locator('.choices button', { hasText: 'neck' }).first().focus();
      await expect.poll(() => table().locator('.table path.lit').count()).toBeGreaterThan(0);
      await table().keyboard.press('Escape');
      await expect.poll(() => table().locator('.table path.lit').count()).toBe(0);
    });
  });
