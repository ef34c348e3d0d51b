// The page in a real browser: Debian's Chromium, one for all stories. Where there is none they skip and say so.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { browserPath, type Opened, openTable } from './open-table.js';
import { files } from './stories/files.js';
import { inFirefox } from './stories/firefox.js';
import { forEveryone } from './stories/for-everyone.js';
import { handles } from './stories/handles.js';
import { headings } from './stories/headings.js';
import { offline } from './stories/offline.js';
import { photographs } from './stories/photographs.js';
import { sheet } from './stories/sheet.js';
import { onTheTable } from './stories/table.js';
import { walking } from './stories/walking.js';

describe.skipIf(browserPath === undefined)(
  'the table, in Chromium (skipped: no Chromium here)',
  () => {
    let opened: Opened;
    beforeAll(async () => {
      opened = await openTable();
    }, 300_000);
    afterAll(() => opened?.close());

    sheet(() => opened);
    handles(() => opened);
    onTheTable(() => opened);
    headings(() => opened);
    walking(() => opened);
    files(() => opened);
    photographs(() => opened);
    forEveryone(() => opened);
    offline(() => opened);
    inFirefox(() => opened);

    test('nothing was asked of any network, and nothing failed', () => {
      const { asked, address, failures } = opened;
      expect(asked.filter(url => !/^(file|blob|data):/.test(url) && !url.startsWith(address))).toEqual([]);
      expect(failures).toEqual([]);
    });
  },
  120_000,
);
