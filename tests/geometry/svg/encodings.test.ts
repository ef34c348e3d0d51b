import { readPattern, readShapes } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';

const drawing = (declaration: string, title: string) =>
  `${declaration}<svg xmlns="http://www.w3.org/2000/svg"><g data-piece="p" data-title="${title}" data-allowance="0"><rect data-outline="" width="96" height="96"/></g></svg>`;
const titleIn = (source: Uint8Array | string) => readPattern(source).pattern.pieces[0]!.title;

const utf16 = (text: string, bigEndian: boolean, mark: boolean) => {
  const units = [
    ...(mark ? [0xfeff] : []),
    ...Array.from({ length: text.length }, (_, i) => text.charCodeAt(i)),
  ];
  return Uint8Array.from(units.flatMap(u => (bigEndian ? [u >> 8, u & 255] : [u & 255, u >> 8])));
};
const latin1 = (text: string) => Uint8Array.from(text, c => c.charCodeAt(0));

describe('the encoding of a file', () => {
  test('is UTF-8 where nothing is said, with or without a byte order mark', () => {
    expect(titleIn(new TextEncoder().encode(drawing('', 'Ärmel 袖')))).toBe('Ärmel 袖');
    expect(titleIn(new TextEncoder().encode(`\ufeff${drawing('', 'Ärmel')}`))).toBe('Ärmel');
    expect(titleIn(`\ufeff${drawing('', 'Ärmel')}`)).toBe('Ärmel');
  });

  test.each([
    [true, true],
    [true, false],
    [false, true],
    [false, false],
  ])('is UTF-16 by mark or by its zeros (big-endian %s, mark %s)', (bigEndian, mark) => {
    const source = drawing('<?xml version="1.0" encoding="UTF-16"?>', 'Ärmel 袖');
    expect(titleIn(utf16(source, bigEndian, mark))).toBe('Ärmel 袖');
  });

  test('is Latin-1 where it is declared', () => {
    expect(titleIn(latin1(drawing('<?xml version="1.0" encoding="ISO-8859-1"?>', 'Ärmel')))).toBe('Ärmel');
  });

  test('is refused where it is unknown or broken', () => {
    expect(() => readShapes(latin1(drawing('<?xml version="1.0" encoding="EBCDIC-37"?>', 'a')))).toThrow(
      expect.objectContaining({ code: 'encoding-unknown' }),
    );
    expect(() => readShapes(latin1(drawing('', 'Ärmel')), { file: 'x.svg' })).toThrow(
      expect.objectContaining({ code: 'encoding-broken', where: { file: 'x.svg' } }),
    );
    expect(() => readShapes(Uint8Array.from([0x1f, 0x8b, 8, 0]))).toThrow(
      expect.objectContaining({ code: 'file-compressed' }),
    );
  });
});
