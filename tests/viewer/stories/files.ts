import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readPattern } from '@paperhinge/geometry';
import { printPattern } from '@paperhinge/print';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { type Opened, root } from '../open-table.js';

/** Files laid on the table, the shelf, the lessons, a friend's bundle; nothing of a file is ever run. */
export const files = (opened: () => Opened) =>
  describe('files and the shelf', () => {
    const table = () => opened().table;
    const shelf = async (page: Page) => {
      if ((await page.locator('.shelf').count()) === 0) await page.locator('.corner button').first().click();
      await page.locator('.shelf').waitFor();
    };
    const choose = async (page: Page, name: string, content: string | Uint8Array) => {
      await shelf(page);
      const file = { name, mimeType: 'text/plain', buffer: Buffer.from(content as Uint8Array) };
      await page.locator('.file input').setInputFiles(file);
    };
    const title = (page: Page) => page.locator('h1').textContent();

    test('each lesson lies on the table without a fault, one click away, and the first stays on the shelf', async () => {
      for (const [i, name] of ['Flared skirt', 'Easy trousers', 'Child’s smock', 'Easy shirt'].entries()) {
        await shelf(table());
        await table()
          .locator('.shelf ul')
          .first()
          .locator('button')
          .nth(i + 1)
          .click();
        await expect.poll(() => title(table())).toBe(name);
        await expect.poll(() => table().locator('.step').count()).toBeGreaterThan(4);
        await expect.poll(() => table().locator('.verdict .sound').count()).toBeGreaterThan(0);
        await expect.poll(() => table().locator('.step.wrong, .verdict .fault').count()).toBe(0);
      }
      await shelf(table());
      await table().locator('.kept button', { hasText: 'Cellist’s top' }).first().click();
      await expect.poll(() => title(table())).toBe('Cellist’s top');
    });

    test('a bad file is told in plain words, and what lies on the table stays', async () => {
      await choose(table(), 'pages.pdf', '%PDF-1.7 and so on');
      await expect.poll(() => table().locator('.shelf .refused').textContent()).toContain('PDF');
      await choose(table(), 'broken.svg', '<svg><g data-piece="front"><path d="M0 0"');
      await expect.poll(() => table().locator('.shelf .refused').textContent()).toMatch(/line/i);
      await choose(table(), 'words.txt', 'my own words');
      await expect.poll(() => table().locator('.shelf .refused').textContent()).toContain('neither');
      await table().keyboard.press('Escape');
      expect(await title(table())).toBe('Cellist’s top');
    });

    test('a drawing from elsewhere has its shapes taken for pieces', async () => {
      const drawing =
        '<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">' +
        '<rect id="bag" x="10" y="10" width="200" height="150"/><path d="M250 10h100v200h-100z"/></svg>';
      await choose(table(), 'bag.svg', drawing);
      await expect.poll(() => table().locator('.table .paper').count()).toBe(2);
      const edge = (name: string) =>
        table().locator(`.table path.reach[data-piece="bag"][data-kind="edge"][data-name="${name}"]`);
      expect(await table().locator('.table path.reach[data-piece="bag"][data-kind="edge"]').count()).toBe(4);
      // Named by pointing, made a hem, sewn to an edge of the other piece.
      await edge('edge-2').dispatchEvent('click');
      const blanks = table().locator('.naming .value');
      await blanks.nth(0).press('Enter');
      await table().keyboard.type('mouth');
      await table().keyboard.press('Enter');
      await expect.poll(() => edge('mouth').count()).toBe(1);
      await blanks.nth(1).press('Enter');
      await table().locator('.choices button', { hasText: 'hem' }).press('Enter');
      await expect.poll(() => table().locator('.table path.edge.hem').count()).toBe(1);
      await blanks.nth(2).press('Enter');
      await table().locator('.choices button', { hasText: 'piece-1.edge-1' }).press('Enter');
      await expect.poll(() => table().locator('.rows').first().textContent()).toContain('mouth');
      await table().keyboard.press('Escape');
    });

    test('a DXF drawing of another program lies on the table in its own size, with names proposed', async () => {
      const page = await opened().another(opened().file);
      // 10 by 8 inches, and 5 by 8 beside it; group 70 is the unit, 1 for inches.
      const box = (x: number, width: number) =>
        [
          [x, 0, x + width, 0],
          [x + width, 0, x + width, 8],
          [x + width, 8, x, 8],
          [x, 8, x, 0],
        ].map(([x1, y1, x2, y2]) => `0\nLINE\n8\n0\n10\n${x1}\n20\n${y1}\n11\n${x2}\n21\n${y2}\n`);
      const drawing = [
        '0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n1\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n',
        ...box(0, 10),
        ...box(20, 5),
        '0\nENDSEC\n0\nEOF\n',
      ].join('');
      await choose(page, 'two boxes.dxf', drawing);
      await expect.poll(() => page.locator('.table .paper').count()).toBe(2);
      const sizes = await page
        .locator('.table path.edge')
        .evaluateAll(edges => edges.map(edge => (edge as SVGPathElement).getTotalLength()));
      const inInches = sizes.map(mm => Number((mm / 25.4).toFixed(3))).sort((p, q) => p - q);
      expect(inInches).toEqual([5, 5, 8, 8, 8, 8, 10, 10]);
      await choose(page, 'empty.dxf', '0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF\n');
      await expect.poll(() => page.locator('.shelf .refused').textContent()).toContain('no lines');
      await page.context().close();
    });

    test('a drawing in loose strokes lies on the table as the pieces that they go round', async () => {
      const page = await opened().another(opened().file);
      const strokes = ['M10 10H210', 'M210 10V160', 'M210 160H10', 'M10 160V10'];
      const drawing =
        '<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">' +
        strokes.map(d => `<path fill="none" stroke="black" d="${d}"/>`).join('') +
        '</svg>';
      await choose(page, 'strokes.svg', drawing);
      await expect.poll(() => page.locator('.table .paper').count()).toBe(1);
      const lengths = await page
        .locator('.table path.edge')
        .evaluateAll(edges => edges.map(edge => (edge as SVGPathElement).getTotalLength()));
      expect(lengths.map(Math.round).sort((p, q) => p - q)).toEqual([150, 150, 200, 200]);
      await page.context().close();
    });

    test('strokes on two layers, ends a little apart: the drawing is taken otherwise by its sentence', async () => {
      const page = await opened().another(opened().file);
      const layer = (name: string, paths: readonly string[]) =>
        `<g id="${name}" fill="none" stroke="black">${paths.map(d => `<path d="${d}"/>`).join('')}</g>`;
      const drawing = `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">
        ${layer('small', ['M10 10H160', 'M160 10V110', 'M160 110H10', 'M10 110V10'])}
        ${layer('large', ['M200 10H380', 'M380.5 10V160', 'M380 160H200', 'M200 160V10'])}</svg>`;
      await choose(page, 'two sizes.svg', drawing);
      const pieces = page.locator('.table .paper');
      await expect.poll(() => pieces.count()).toBe(1);
      const blank = (name: string) => page.locator(`.traced .value[aria-label^="${name}:"]`);
      await blank('gap').click();
      await page.keyboard.press('Control+A');
      await page.keyboard.type('0.8');
      await page.keyboard.press('Enter');
      await expect.poll(() => pieces.count()).toBe(2);
      await blank('layer').click();
      await page.locator('.traced .choices button', { hasText: 'large' }).click();
      await expect.poll(() => pieces.count()).toBe(1);
      expect(await blank('layer').textContent()).toBe('large');
      // One garment on the shelf, not one for each way it was taken.
      await page.getByRole('button', { name: 'Lay another pattern on the table' }).click();
      await expect.poll(() => page.locator('.shelf button', { hasText: 'two sizes' }).count()).toBe(1);
      await page.context().close();
    });

    test('printed pages come back as pieces, named and sewn as far as they tell', async () => {
      const page = await opened().another(opened().file);
      const svg = await readFile(join(root, 'demos/patterns/yoke-skirt.svg'), 'utf8');
      const { pattern } = readPattern(svg, { file: 'yoke-skirt.svg' });
      const { pdf } = await printPattern(pattern, { paper: 'a4' });
      await choose(page, 'printed.pdf', pdf);
      await expect
        .poll(() => page.locator('.table .paper').count(), { timeout: 30_000 })
        .toBe(pattern.pieces.length);
      expect(await page.locator('.traced').textContent()).toMatch(/^Taken from the printed pages/);
      expect(await page.locator('#sews ~ .rows li').count()).toBeGreaterThan(2);
      await choose(page, 'locked.pdf', '%PDF-1.7 nothing more');
      await expect.poll(() => page.locator('.shelf .refused').textContent()).toMatch(/PDF/);
      await page.context().close();
    });

    test('a sheet that gives its pieces by measured points needs no drawing, and is there after a reload', async () => {
      const page = await opened().another(opened().file);
      const sheet = await readFile(join(root, 'demos/sheets/skirt-by-figures.yaml'), 'utf8');
      await choose(page, 'skirt-by-figures.yaml', sheet);
      await expect.poll(() => title(page)).toBe('Skirt by figures');
      const lies = async () => {
        await expect.poll(() => page.locator('.table .paper').count()).toBe(2);
        await expect.poll(() => page.locator('.verdict .sound').count()).toBeGreaterThan(0);
        expect(await page.locator('.step.wrong, .verdict .fault').count()).toBe(0);
      };
      await lies();
      await shelf(page);
      await page.locator('.kept button', { hasText: 'Skirt by figures' }).waitFor();
      await page.reload();
      await expect.poll(() => title(page)).toBe('Skirt by figures');
      await lies();
      await page.context().close();
    });

    test('a garment goes to a friend in one file, and lies on her table as it lay here', async () => {
      await shelf(table());
      await table().locator('.kept button', { hasText: 'Cellist’s top' }).first().click();
      await expect.poll(() => title(table())).toBe('Cellist’s top');
      const download = table().waitForEvent('download');
      await table().locator('.away button', { hasText: 'for a friend' }).click();
      const bundle = await readFile(await (await download).path(), 'utf8');
      const hers = await opened().another(opened().file, { viewport: { width: 820, height: 1180 } });
      await choose(hers, 'top.json', bundle);
      await expect.poll(() => hers.locator('.shelf').count()).toBe(0);
      expect(await hers.locator('.step').count()).toBe(9);
      // Hers is her own: laid as a new garment beside the demo she was shown.
      await shelf(hers);
      await expect.poll(() => hers.locator('.kept').count()).toBe(2);
      await hers.context().close();
    });

    test('what was done is there after a reload, with all that can be undone; start again loses nothing', async () => {
      const page = await opened().another(opened().file);
      const share = page.locator('.step').nth(1).locator('.blank .value').last();
      expect(await share.textContent()).toBe('0 %');
      await share.press('PageUp');
      await expect.poll(() => share.textContent()).toBe('10 %');
      await page.waitForTimeout(700);
      await page.reload();
      await expect.poll(() => share.textContent()).toBe('10 %');
      await page.getByRole('button', { name: 'Start again from the original' }).click();
      await expect.poll(() => share.textContent()).toBe('0 %');
      await page.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => share.textContent()).toBe('10 %');
      await page.context().close();
    });

    test('a page that is killed in the middle of the work loses nothing that stood for a moment', async () => {
      const page = await opened().another(opened().file);
      const share = (of: Page) => of.locator('.step').nth(1).locator('.blank .value').last();
      await share(page).press('PageUp');
      await share(page).press('ArrowUp');
      await expect.poll(() => share(page).textContent()).toBe('11 %');
      await page.waitForTimeout(700);
      const killed = page.waitForEvent('crash');
      const cdp = await page.context().newCDPSession(page);
      void cdp.send('Page.crash').catch(() => undefined);
      await killed;
      const next = await page.context().newPage();
      await next.goto(opened().file);
      await expect.poll(() => share(next).textContent(), { timeout: 20_000 }).toBe('11 %');
      await next.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => share(next).textContent()).toBe('10 %');
      await next.context().close();
    });

    test('two windows on one garment lose nothing; a window that may keep nothing says so', async () => {
      const one = await opened().another(opened().file);
      const share = (page: Page) => page.locator('.step').nth(1).locator('.blank .value').last();
      await share(one).press('PageUp');
      await expect.poll(() => share(one).textContent()).toBe('10 %');
      await one.waitForTimeout(700);
      const two = await one.context().newPage();
      await two.goto(opened().file);
      await expect.poll(() => share(two).textContent()).toBe('10 %');
      await share(two).press('ArrowUp');
      await two.waitForTimeout(700);
      // The first window does not know of it: what it keeps lies beside, not over it.
      await share(one).press('PageUp');
      await one.waitForTimeout(700);
      await shelf(one);
      await expect.poll(() => one.locator('.kept').count()).toBe(2);
      await one.context().close();
      const context = await opened().browser.newContext();
      await context.addInitScript(() => {
        Object.defineProperty(window, 'indexedDB', { value: undefined });
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new Error('not here');
          },
        });
      });
      const private_ = await context.newPage();
      await private_.goto(opened().file);
      await private_.locator('.verdict strong').first().waitFor();
      await expect.poll(() => private_.locator('header').textContent()).toContain('cannot keep it');
      await context.close();
    });

    test('nothing that a hostile drawing, sheet or bundle says is run or asked for', async () => {
      const pattern = (await readFile(join(root, 'demos/patterns/woven-shift.svg'), 'utf8'))
        .replace(
          '</svg>',
          '<script>window.ran = 1</script><image href="http://example.invalid/a.png"/></svg>',
        )
        .replace('data-title="Front"', 'data-title="&lt;img src=x onerror=&quot;window.ran=1&quot;&gt;"');
      const sheet = `title: "<img src=x onerror='window.ran=1'>"\npattern: p.svg\nsteps:\n  - "<svg onload=window.ran=1>": { by: 1 }\n`;
      const page = await opened().another(opened().file);
      await choose(page, 'hostile.svg', pattern);
      await expect.poll(() => page.locator('.title text').first().textContent()).toContain('<img');
      await choose(
        page,
        'hostile.json',
        JSON.stringify({ paperhinge: 'bundle', pattern: { name: 'p', text: pattern }, sheet }),
      );
      await expect.poll(() => page.locator('.shelf .refused').count()).toBe(1);
      expect(await page.evaluate(() => (window as unknown as { ran?: number }).ran)).toBeUndefined();
      expect(opened().asked.some(url => url.includes('example.invalid'))).toBe(false);
      await page.context().close();
    });
  });
