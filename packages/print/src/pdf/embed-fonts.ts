import type { PdfFile } from './file.js';
import type { FontProgram, Glyph } from './font-program.js';
import { characters, type Ref } from './objects.js';
import { subsetFont } from './subset-font.js';
import type { TextRun } from './text-runs.js';
import type { Typefaces } from './typefaces.js';

/** Collects the glyphs that a file sets, then writes each font with those alone. */
export interface FontEmbedder {
  /** The resource name and the hexadecimal glyph codes of a run. */
  encode(run: TextRun): { readonly resource: string; readonly codes: string };
  /** Writes the fonts; what `resources` refers to is complete only then. */
  write(): void;
  /** Font resources by name, filled as faces are first used. */
  resources(): Readonly<Record<string, Ref>>;
}

interface Face {
  readonly program: FontProgram;
  readonly ref: Ref;
  readonly resource: string;
  readonly codes: Map<number, string>;
  /** By code, from 1. */
  readonly glyphs: Glyph[];
}

export function fontEmbedder(file: PdfFile, typefaces: Typefaces): FontEmbedder {
  const faces = new Map<FontProgram, Face>();
  const faceOf = (program: FontProgram): Face => {
    let face = faces.get(program);
    if (!face) {
      const resource = `F${faces.size}`;
      face = { program, ref: file.next(), resource, codes: new Map(), glyphs: [] };
      faces.set(program, face);
    }
    return face;
  };
  return {
    encode(run) {
      const face = faceOf(typefaces.programs[run.face]!);
      return { resource: face.resource, codes: run.glyphs.map(g => codeOf(face, g)).join('') };
    },
    write() {
      for (const face of faces.values()) writeFace(file, face);
    },
    resources: () => Object.fromEntries([...faces.values()].map(f => [f.resource, f.ref])),
  };
}

function codeOf(face: Face, glyph: Glyph): string {
  const known = face.codes.get(glyph.id);
  if (known) return known;
  face.glyphs.push(glyph);
  const code = face.glyphs.length.toString(16).padStart(4, '0');
  face.codes.set(glyph.id, code);
  return code;
}

function writeFace(file: PdfFile, face: Face): void {
  const { program, glyphs } = face;
  const k = 1000 / program.unitsPerEm;
  const name = `PHINGE+${program.name}`;
  // Glyph 0 is what a reader shows for a code it does not find.
  const bytes = subsetFont(program.tables, [0, ...glyphs.map(g => g.id)]);
  const outlines = file.packed(bytes, { Length1: bytes.length });
  const descriptor = file.add({
    Type: 'FontDescriptor',
    FontName: name,
    Flags: 4,
    ItalicAngle: 0,
    StemV: 80,
    FontBBox: program.box.map(v => Math.round(v * k)),
    Ascent: Math.round(program.ascent * k),
    Descent: Math.round(program.descent * k),
    CapHeight: Math.round(program.capHeight * k),
    FontFile2: outlines,
  });
  const descendant = file.add({
    Type: 'Font',
    Subtype: 'CIDFontType2',
    BaseFont: name,
    CIDToGIDMap: 'Identity',
    CIDSystemInfo: { Registry: characters('Adobe'), Ordering: characters('Identity'), Supplement: 0 },
    FontDescriptor: descriptor,
    DW: 1000,
    W: [1, glyphs.map(g => Math.round(g.advanceWidth * k))],
  });
  file.assign(face.ref, {
    Type: 'Font',
    Subtype: 'Type0',
    BaseFont: name,
    Encoding: 'Identity-H',
    DescendantFonts: [descendant],
    ToUnicode: file.packed(toUnicode(glyphs)),
  });
}

/** The map from glyph codes back to characters, so that text can be searched and copied (ISO 32000-1, 9.10.3). */
function toUnicode(glyphs: readonly Glyph[]): string {
  const hex = (n: number) => n.toString(16).padStart(4, '0');
  const utf16 = (codes: readonly number[]) =>
    [...String.fromCodePoint(...codes)]
      .flatMap(c => Array.from({ length: c.length }, (_, i) => hex(c.charCodeAt(i))))
      .join('');
  // Each range of codes, alike but for their last byte, lists what its codes stand for one by one.
  const ranges: string[][] = [];
  let starts: number[] = [];
  for (const [i, { codePoints }] of glyphs.entries()) {
    if (codePoints.length === 0) continue;
    const code = i + 1;
    const open = ranges.at(-1);
    if (open && code === starts.at(-1)! + open.length && code % 256 !== 0)
      open.push(`<${utf16(codePoints)}>`);
    else {
      ranges.push([`<${utf16(codePoints)}>`]);
      starts = [...starts, code];
    }
  }
  const lines = ranges.map(
    (r, i) => `<${hex(starts[i]!)}><${hex(starts[i]! + r.length - 1)}>[${r.join('')}]`,
  );
  const blocks: string[] = [];
  for (let i = 0; i < lines.length; i += 100) {
    const block = lines.slice(i, i + 100);
    blocks.push(`${block.length} beginbfrange\n${block.join('\n')}\nendbfrange`);
  }
  return [
    '/CIDInit /ProcSet findresource begin 12 dict begin begincmap',
    '/CIDSystemInfo <</Registry(Adobe)/Ordering(UCS)/Supplement 0>> def',
    '/CMapName/Adobe-Identity-UCS def/CMapType 2 def',
    '1 begincodespacerange<0000><ffff>endcodespacerange',
    ...blocks,
    'endcmap CMapName currentdict/CMap defineresource pop end end',
  ].join('\n');
}
