import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether an outside program is here; tests that need it say so by their name when they are left out. */
export const has = (program: string): boolean => spawnSync('which', [program]).status === 0;

/** A page as grey pixels, 0 black to 255 white. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

/** Dots to a mm at 254 dpi. */
export const perMm = 10;

/** The pages of a PDF rendered by poppler at 254 dpi, ten dots to a mm. */
export const rendered = (pdf: Uint8Array, first = 1, last = 999, dpi = 254): readonly Pixels[] =>
  pictures(pdf, ['-r', String(dpi), '-f', String(first), '-l', String(last)]);

/** The same part of each page: its corner and size in dots at 254 dpi. */
export const renderedPart = (
  pdf: Uint8Array,
  x: number,
  y: number,
  w: number,
  h: number,
): readonly Pixels[] =>
  pictures(pdf, ['-r', '254', ...[x, y, w, h].flatMap((n, i) => [['-x', '-y', '-W', '-H'][i]!, String(n)])]);

function pictures(pdf: Uint8Array, how: readonly string[]): readonly Pixels[] {
  return inFolder(pdf, (folder, file) => {
    execFileSync('pdftoppm', ['-gray', ...how, file, join(folder, 'p')], { stdio: 'pipe' });
    const files = readdirSync(folder)
      .filter(f => f.endsWith('.pgm'))
      .sort();
    return files.map(f => pixelsOf(readFileSync(join(folder, f))));
  });
}

/** Runs something on a PDF in a folder of its own that is gone afterwards. */
export function inFolder<T>(pdf: Uint8Array, work: (folder: string, file: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'pages-'));
  try {
    const file = join(folder, 'pages.pdf');
    writeFileSync(file, pdf);
    return work(folder, file);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A portable grey map: "P5 width height 255" and the bytes. */
export function pixelsOf(bytes: Uint8Array): Pixels {
  const head: string[] = [];
  let at = 0;
  while (head.length < 4) {
    let word = '';
    while (bytes[at]! > 32) word += String.fromCharCode(bytes[at++]!);
    at++;
    head.push(word);
  }
  return { width: Number(head[1]), height: Number(head[2]), grey: bytes.subarray(at) };
}

export const darkAt = (page: Pixels, x: number, y: number): boolean =>
  x >= 0 && y >= 0 && x < page.width && y < page.height && page.grey[y * page.width + x]! < 128;

/** The words of a PDF, or of its first pages, as poppler finds them. */
export const wordsOf = (pdf: Uint8Array, last = 9999): string =>
  inFolder(pdf, (_, file) =>
    execFileSync('pdftotext', ['-raw', '-l', String(last), file, '-'], { encoding: 'utf8' }),
  );
