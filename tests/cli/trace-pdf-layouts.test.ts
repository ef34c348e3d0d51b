// Patterns printed in tiles as others lay them out: frames that meet or overlap, letters in half diamonds at the joins,
// columns before rows, or nothing at all. Written by pdf-lib and pdfkit, every page with its part of the lines alone.
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Point } from '@paperhinge/geometry';
import { PDFDocument as PdfLib, StandardFonts } from 'pdf-lib';
import PdfKit from 'pdfkit';
import { expect, test } from 'vitest';
import { run } from '../../packages/cli/src/run.js';
import { command } from './command.js';
import { folder } from './folders.js';

const builtCommand = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));
const pointsToMm = 72 / 25.4;
const [paperWide, paperHigh] = [210, 297];
/** mm: of a page, the part that shows the pattern. */
const [wide, high, margin] = [180, 260, 15];

/** Two pieces, mm on the whole sheet: 3 × 2 pages at 180 × 260 mm. */
const pieces: readonly (readonly Point[])[] = [
  [
    [30, 40],
    [330, 30],
    [345, 210],
    [250, 430],
    [40, 455],
    [60, 190],
  ],
  [
    [375, 60],
    [505, 75],
    [495, 470],
    [385, 440],
  ],
].map(ring => ring.map(([x, y]) => ({ x: x!, y: y! })));
const areaOf = (ring: readonly Point[]): number =>
  Math.abs(
    ring.reduce((sum, p, i) => {
      const q = ring[(i + 1) % ring.length]!;
      return sum + p.x * q.y - p.y * q.x;
    }, 0),
  ) / 2;

interface Layout {
  readonly overlap: number;
  readonly frames: boolean;
  readonly letters: boolean;
  /** Columns from the top down, instead of rows. */
  readonly down?: true;
}
interface Tile {
  readonly strokes: readonly (readonly [Point, Point])[];
  readonly words: readonly { readonly text: string; readonly at: Point }[];
}

/** The part of a line that lies in a window, by halving; both ends to 1e-9 of its length. */
function within(from: Point, to: Point, isIn: (p: Point) => boolean): readonly [Point, Point] | undefined {
  const at = (t: number): Point => ({ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
  const steps = 4000;
  const inside = Array.from({ length: steps + 1 }, (_, k) => k / steps).filter(t => isIn(at(t)));
  if (inside.length === 0) return undefined;
  const edge = (good: number, bad: number): number => {
    for (let i = 0; i < 40; i++) {
      const middle = (good + bad) / 2;
      if (isIn(at(middle))) good = middle;
      else bad = middle;
    }
    return good;
  };
  const [first, last] = [inside[0]!, inside.at(-1)!];
  return [
    at(first === 0 ? 0 : edge(first, first - 1 / steps)),
    at(last === 1 ? 1 : edge(last, last + 1 / steps)),
  ];
}

/** The pages, in the order in which they are printed; places on the paper in mm, y down. */
function tiles({ overlap, frames, letters, down }: Layout): readonly Tile[] {
  const [columns, rows] = [3, 2];
  const order = down
    ? Array.from({ length: 6 }, (_, i) => [Math.floor(i / rows), i % rows] as const)
    : Array.from({ length: 6 }, (_, i) => [i % columns, Math.floor(i / columns)] as const);
  return order.map(([column, row]): Tile => {
    const left = column * (wide - overlap),
      top = row * (high - overlap);
    const onPaper = ({ x, y }: Point): Point => ({ x: x - left + margin, y: y - top + margin });
    const isIn = ({ x, y }: Point): boolean => x >= left && x <= left + wide && y >= top && y <= top + high;
    const lines = pieces.flatMap(ring =>
      ring.flatMap((p, i) => {
        const part = within(p, ring[(i + 1) % ring.length]!, isIn);
        return part ? [[onPaper(part[0]), onPaper(part[1])] as const] : [];
      }),
    );
    const corner = (x: number, y: number): Point => ({ x: margin + x * wide, y: margin + y * high });
    const frame = (
      [
        [0, 0, 1, 0],
        [1, 0, 1, 1],
        [1, 1, 0, 1],
        [0, 1, 0, 0],
      ] as const
    ).map(([a, b, c, d]) => [corner(a, b), corner(c, d)] as const);
    const marks = [
      ...(column > 0 ? [{ text: `${'ABC'[row]}${column}`, side: [0, 0.5] as const }] : []),
      ...(column < columns - 1 ? [{ text: `${'ABC'[row]}${column + 1}`, side: [1, 0.5] as const }] : []),
      ...(row > 0 ? [{ text: `${'XYZ'[column]}${row}`, side: [0.5, 0] as const }] : []),
      ...(row < rows - 1 ? [{ text: `${'XYZ'[column]}${row + 1}`, side: [0.5, 1] as const }] : []),
    ];
    return {
      strokes: [
        ...lines,
        ...(frames ? frame : []),
        ...(letters ? marks.flatMap(({ side }) => halfDiamond(corner(side[0], side[1]), side)) : []),
      ],
      words: letters
        ? marks.map(({ text, side: [x, y] }) => {
            const at = corner(x, y);
            return { text, at: { x: at.x + (0.5 - x) * 8 - 2, y: at.y + (0.5 - y) * 8 + 1 } };
          })
        : [],
    };
  });
}

/** A triangle whose base lies on the frame; half of a diamond once pages are joined. */
function halfDiamond({ x, y }: Point, [sx, sy]: readonly [number, number]): Tile['strokes'] {
  const [inX, inY] = [(0.5 - sx) * 2, (0.5 - sy) * 2];
  const tip = { x: x + 6 * inX, y: y + 6 * inY };
  const ends = [-6, 6].map(d => ({ x: x + d * (1 - Math.abs(inX)), y: y + d * (1 - Math.abs(inY)) }));
  return ends.map(end => [end, tip] as const);
}

async function byPdfLib(pages: readonly Tile[]): Promise<Uint8Array> {
  const document = await PdfLib.create();
  const font = await document.embedFont(StandardFonts.Helvetica);
  for (const { strokes, words } of pages) {
    const page = document.addPage([paperWide * pointsToMm, paperHigh * pointsToMm]);
    const at = ({ x, y }: Point) => ({ x: x * pointsToMm, y: (paperHigh - y) * pointsToMm });
    for (const [from, to] of strokes) page.drawLine({ start: at(from), end: at(to), thickness: 0.7 });
    for (const word of words) page.drawText(word.text, { ...at(word.at), size: 9, font });
  }
  return document.save();
}

async function byPdfKit(pages: readonly Tile[]): Promise<Uint8Array> {
  const document = new PdfKit({ autoFirstPage: false });
  const parts: Uint8Array[] = [];
  document.on('data', (part: Uint8Array) => void parts.push(part));
  const ended = new Promise(resolve => void document.on('end', resolve));
  for (const { strokes, words } of pages) {
    document.addPage({ size: [paperWide * pointsToMm, paperHigh * pointsToMm], margin: 0 });
    document.lineWidth(0.7);
    for (const [from, to] of strokes)
      document
        .moveTo(from.x * pointsToMm, from.y * pointsToMm)
        .lineTo(to.x * pointsToMm, to.y * pointsToMm)
        .stroke();
    document.fontSize(9);
    for (const { text, at } of words)
      document.text(text, at.x * pointsToMm, at.y * pointsToMm - 7, { lineBreak: false });
  }
  document.end();
  await ended;
  return Buffer.concat(parts);
}

interface Told {
  readonly residualMm: number;
  readonly pieces: readonly { readonly areaMm2: number }[];
  readonly findings: readonly { readonly code: string; readonly message: string }[];
}

async function traced(pdf: Uint8Array) {
  const dir = folder();
  const file = join(dir, 'tiles.pdf');
  writeFileSync(file, pdf);
  const { code, stdout, stderr } = await command('trace', file, '-o', join(dir, 'p.svg'), '--json');
  return { code, stderr, told: stdout ? (JSON.parse(stdout) as Told) : undefined };
}

const layouts: readonly (readonly [string, Layout, string])[] = [
  ['frames butted', { overlap: 0, frames: true, letters: false }, '3 in a row'],
  ['frames over one another by 10 mm', { overlap: 10, frames: true, letters: false }, '10 mm over'],
  ['half diamonds with letters', { overlap: 0, frames: true, letters: true }, 'letters at their edges'],
  [
    'letters, in columns from the top down',
    { overlap: 0, frames: true, letters: true, down: true },
    'letters',
  ],
  [
    'frames, in columns from the top down',
    { overlap: 0, frames: true, letters: false, down: true },
    '3 in a row',
  ],
];

test.each(
  layouts.flatMap(([name, layout, words]) => [
    [name, 'pdf-lib', layout, words] as const,
    [name, 'pdfkit', layout, words] as const,
  ]),
)('%s, written by %s: the pieces come back whole', async (_, maker, layout, words) => {
  const pages = tiles(layout);
  const { code, told, stderr } = await traced(await (maker === 'pdfkit' ? byPdfKit : byPdfLib)(pages));
  expect([code, stderr]).toEqual([0, stderr]);
  const areas = told!.pieces.map(piece => piece.areaMm2);
  const wanted = pieces.map(areaOf);
  expect(areas).toHaveLength(wanted.length);
  expect(told!.residualMm).toBeLessThan(0.05);
  for (const [i, area] of [...areas].sort((a, b) => b - a).entries())
    expect(Math.abs(area / wanted[i]! - 1)).toBeLessThan(2e-4);
  expect(told!.findings.find(f => f.code === 'pages-laid-by-themselves')?.message).toContain(words);
});

test('a person at a terminal sees how far it has come, and whoever stops it finds nothing half-written', async () => {
  const dir = folder();
  const file = join(dir, 'tiles.pdf');
  writeFileSync(file, await byPdfLib(tiles({ overlap: 0, frames: true, letters: false })));
  let seen = '';
  const io = {
    stdout: () => {},
    stderr: (text: string) => {
      seen += text;
    },
    watched: true,
  };
  expect(await run(['trace', file, '-o', join(dir, 'p.svg')], io)).toBe(0);
  expect(seen).toMatch(/Reading the pages … \d+ %/);
  expect(seen).toMatch(/Laying the pages beside one another … \d+ %/);
  const child = spawn(process.execPath, [builtCommand, 'trace', file, '-o', join(dir, 'q.svg')]);
  await new Promise(resolve => setTimeout(resolve, 150));
  child.kill('SIGINT');
  await new Promise(resolve => child.once('exit', resolve));
  // Whole, if it was too late to stop it; else not there.
  const left = readdirSync(dir).sort();
  expect(left.filter(name => name !== 'q.svg')).toEqual(['p.svg', 'tiles.pdf']);
  if (left.includes('q.svg')) expect(readFileSync(join(dir, 'q.svg'), 'utf8')).toContain('</svg>');
});

test('pages of which nothing tells how they lie are refused, with what to say', async () => {
  // One piece a page: no line runs on, no letter, no frame.
  const ring = pieces[1]!.map(({ x, y }) => ({ x: (x - 360) * 0.9 + margin, y: y * 0.5 + margin }));
  const page: Tile = { strokes: ring.map((p, i) => [p, ring[(i + 1) % 4]!] as const), words: [] };
  const bent: Tile = {
    ...page,
    strokes: page.strokes.map(([p, q]) => [p, { ...q, y: q.y * 1.02 }] as const),
  };
  const { code, stderr } = await traced(await byPdfLib([page, bent]));
  expect(code).toBe(2);
  expect(stderr).toContain('--columns');
});
