import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';

export const root = fileURLToPath(new URL('../../', import.meta.url));
const viewer = join(root, 'demos/viewer');
const dist = join(viewer, 'dist');

/** Debian's Chromium; where there is none the tests skip and say so. */
export const browserPath = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync);

/** The page in a browser, shared by every story; what was asked of any network, and what went wrong. */
export interface Opened {
  readonly browser: Browser;
  /** The one file, as by a double-click. */
  readonly file: string;
  /** The address at which the other build is served. */
  readonly address: string;
  readonly table: Page;
  readonly asked: string[];
  readonly failures: string[];
  /** Another window with nothing kept in it. */
  readonly another: (address: string, options?: BrowserContextOptions) => Promise<Page>;
  readonly close: () => Promise<void>;
}

/** Builds the page both ways, serves one and opens the other. */
export async function openTable(): Promise<Opened> {
  // As it is published: a test runner's own environment would build it for development.
  const env = { ...process.env, NODE_ENV: 'production' };
  const build = (...more: string[]) =>
    promisify(execFile)('npx', ['vite', 'build', '--logLevel', 'error', ...more], { cwd: viewer, env });
  await build();
  await build('--mode', 'single');
  const server = createServer(async ({ url = '/' }, response) => {
    const path = normalize(new URL(url, 'http://localhost').pathname);
    const file = join(dist, path === '/' ? 'index.html' : path);
    try {
      const body = await readFile(file);
      response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve));
  const browser = await chromium.launch({
    executablePath: browserPath!,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
    ],
  });
  const asked: string[] = [],
    failures: string[] = [];
  const another = async (address: string, options: BrowserContextOptions = {}) => {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      acceptDownloads: true,
      ...options,
    });
    context.on('request', request => asked.push(request.url()));
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    page.on('pageerror', error => failures.push(error.message));
    await page.goto(address);
    await page.locator('.verdict strong').first().waitFor({ timeout: 60_000 });
    return page;
  };
  const file = pathToFileURL(join(dist, 'table.html')).href;
  return {
    browser,
    file,
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    table: await another(file),
    asked,
    failures,
    another,
    close: async () => {
      await browser.close();
      server.close();
    },
  };
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};
