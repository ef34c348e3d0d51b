import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { edgeNames, edgePath, type Piece, pathLength, readPattern } from '@paperhinge/geometry';
import { boundsOfPath, nearestOnPath, pointAlong } from '@paperhinge/geometry/paths';
import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { command, demo } from './command.js';
import { folder } from './folders.js';

const outlineOf = (piece: Piece) => ({
  segments: edgeNames(piece).flatMap(name => edgePath(piece, name).segments),
});
const corner = (piece: Piece) => boundsOfPath(outlineOf(piece)).min;

/** mm: how far a piece's edges lie from another's, once their corners are laid on one another. */
function apart(a: Piece, b: Piece): number {
  const [p, q] = [corner(a), corner(b)];
  const other = outlineOf(b);
  return Math.max(
    ...edgeNames(a).flatMap(name => {
      const path = edgePath(a, name),
        length = pathLength(path);
      return Array.from({ length: 9 }, (_, i) => {
        const { x, y } = pointAlong(path, (length * i) / 8);
        return nearestOnPath(other, { x: x - p.x + q.x, y: y - p.y + q.y }).distance;
      });
    }),
  );
}

test.each(['woven-shift'])(
  'our own pages of the %s come back to a hundredth of a millimetre',
  async name => {
    const dir = folder();
    const [pdf, pattern] = ['p.pdf', 'p.svg'].map(file => join(dir, file));
    await command('print', demo(`patterns/${name}.svg`), '--paper', 'a4', '-o', pdf!);
    const { code, stderr } = await command('trace', pdf!, '-o', pattern!);
    expect(code).toBe(0);
    expect(stderr).toContain('The test square of 50 mm is drawn true');
    const before = readPattern(readFileSync(demo(`patterns/${name}.svg`))).pattern.pieces;
    const after = readPattern(readFileSync(pattern!)).pattern.pieces;
    expect(after).toHaveLength(before.length);
    // Printing may turn a piece by a quarter or a half; those that lie as they were drawn are compared.
    const nearest = before.map(piece => Math.min(...after.map(other => apart(piece, other))));
    for (const far of nearest.filter(mm => mm < 1)) expect(far).toBeLessThan(0.015);
    const matched = nearest.filter(mm => mm < 1);
    expect(matched.length).toBeGreaterThan(0);
  },
  60_000,
);

test('a PDF of nothing but words, a damaged one and one that is locked say what to do', async () => {
  const dir = folder();
  const [words, damaged, out] = ['w.pdf', 'd.pdf', 'o.svg'].map(file => join(dir, file));
  const document = await PDFDocument.create();
  document.addPage([300, 300]).drawText('Cut two');
  writeFileSync(words!, await document.save());
  const none = await command('trace', words!, '-o', out!);
  expect([none.code, none.stderr]).toEqual([2, expect.stringContaining('holds no lines')]);
  writeFileSync(damaged!, '%PDF-1.4\nnothing else');
  const broken = await command('trace', damaged!, '-o', out!);
  expect([broken.code, broken.stderr]).toEqual([2, expect.stringContaining('seems to be damaged')]);
});

test('columns that are none are refused', async () => {
  const dir = folder();
  const pdf = join(dir, 'p.pdf');
  await command('print', demo('patterns/yoke-skirt.svg'), '--paper', 'a3', '-o', pdf);
  const { code, stderr } = await command('trace', pdf, '-o', join(dir, 'p.svg'), '--columns', 'two');
  expect(code).toBe(2);
  expect(stderr).toContain('--columns 4');
});
