import type { Drawing } from '../drawing/ink.js';
import type { PenSet } from '../drawing/pens.js';
import { type Layer, layers } from '../layers.js';
import type { PageFormat } from '../pages/format.js';
import {
  type ContentContext,
  contentOf,
  matrixNumber,
  matrixOperands,
  penIn,
  unitsPerMm,
} from './content.js';
import { fontEmbedder } from './embed-fonts.js';
import { type PdfFile, pdfFile } from './file.js';
import { characters, type Ref, words } from './objects.js';
import type { Typefaces } from './typefaces.js';

const pointsPerMm = 72 / 25.4;
/** Largest side of a page at UserUnit 1, in points (ISO 32000-1, annex C). */
const largestSide = 14_400;

/** A page: the part of the large sheet it shows, if any, and what is drawn over it, in mm from its window's corner. */
export interface PdfPage {
  readonly window?: readonly [number, number, number, number];
  readonly own: Drawing;
}

export interface PdfInput {
  readonly title: string;
  readonly subject: string;
  readonly language: string;
  /** What the layers are called in that language; English if not given. */
  readonly layerNames?: Readonly<Record<Layer, string>>;
  readonly date?: Date;
  readonly format: PageFormat;
  /** Drawn once, shown through each page's window. */
  readonly sheet: Drawing;
  readonly pages: readonly PdfPage[];
  /** Layers that are off when the file is opened. */
  readonly hidden?: readonly Layer[];
  /** Those of paper if not given. */
  readonly pens?: PenSet;
}

/**
 * The file. The large sheet is stored once as a form and shown through each page's window; what the tiles have of
 * their own (labels, strips, marks) is stored side by side in one form more, of which each page shows its part. So a
 * page more costs a few hundred bytes. The same input gives the same bytes: no clock, no random names.
 */
export function pdfDocument(input: PdfInput, typefaces: Typefaces): Uint8Array {
  const file = pdfFile();
  const groups = layerGroups(file, input);
  const fonts = fontEmbedder(file, typefaces);
  const content: ContentContext = {
    typefaces,
    fonts,
    layerResource: layer => `L${layers.indexOf(layer)}`,
    ...(input.pens ? { pens: input.pens } : {}),
  };
  const [tree, resources] = [file.next(), file.next()];
  const tiles = input.pages.filter(isTile);
  const spread = spreadOf(tiles, input.format);
  const strips = chunks(tiles, pagesInStrip).map(strip =>
    form(file, stripContent(strip, spread, content), resources),
  );
  const forms = Object.fromEntries([
    ['S', form(file, contentOf(input.sheet, content), resources)],
    ...strips.map((ref, i) => [`J${i}`, ref] as const),
  ]);
  const shared = new Map<string, Ref>();
  /** A part of pages' contents that is alike on many is stored once. */
  const part = (operators: string): Ref => {
    const ref = shared.get(operators) ?? file.plain(operators);
    shared.set(operators, ref);
    return ref;
  };
  const format = pageEntries(input);
  const head = part(format.onto);
  const strip = new Map(tiles.map((tile, i) => [tile, Math.floor(i / pagesInStrip)]));
  const pages = input.pages.map(page => {
    const own = isTile(page)
      ? tileContents(page.window, strip.get(page)!, spread, part)
      : [file.packed(contentOf(page.own, content))];
    const contents = [head, ...own];
    return file.add({
      Type: 'Page',
      Parent: tree,
      MediaBox: format.box,
      UserUnit: format.unit,
      Contents: contents,
    });
  });
  // Every page has the resources of the page tree.
  file.assign(tree, { Type: 'Pages', Kids: pages, Count: pages.length, Resources: resources });
  file.assign(resources, {
    Font: fonts.resources(),
    XObject: forms,
    Properties: Object.fromEntries([...groups].map(([layer, ref]) => [`L${layers.indexOf(layer)}`, ref])),
  });
  fonts.write();
  return file.bytes(catalogOf(file, tree, input, groups), infoOf(file, input));
}

/** Tiles whose own drawings lie side by side in one form: readers that count in 32 bits still place them exactly. */
const pagesInStrip = 48;

type Tile = PdfPage & { readonly window: NonNullable<PdfPage['window']> };
const isTile = (page: PdfPage): page is Tile => page.window !== undefined;

/**
 * Tiles' own drawings lie so many times as far apart as their windows: enough that papers of any margins lie clear of
 * one another. So what moves the sheet to a window moves the drawings to that page as well, done so many times.
 */
function spreadOf(tiles: readonly Tile[], { size, stretch }: PageFormat): number {
  const times = (places: readonly number[], paper: number) => {
    const sorted = [...new Set(places)].sort((a, b) => a - b);
    const gap = Math.min(...sorted.slice(1).map((p, i) => p - sorted[i]!));
    return Math.ceil((paper + 2 * beyondPaper) / gap);
  };
  return Math.max(
    1,
    times(
      tiles.map(t => t.window[0]),
      size[0] / stretch.across,
    ),
    times(
      tiles.map(t => t.window[1]),
      size[1] / stretch.down,
    ),
  );
}

/** mm beyond its paper that a page's own drawing may reach. */
const beyondPaper = 20;

const stripContent = (strip: readonly Tile[], spread: number, content: ContentContext): string =>
  strip
    .map(({ window: [x, y], own }) => {
      const at = [x, y].map(mm => matrixNumber(mm * spread * unitsPerMm)).join(' ');
      return `q 1 0 0 1 ${at} cm\n${contentOf(own, content)}Q\n`;
    })
    .join('');

/** The sheet through its window, then what joins the pages, which reaches beyond it. Moves are shared by rows and columns. */
function tileContents(
  [x, y, width, height]: Tile['window'],
  strip: number,
  spread: number,
  part: (operators: string) => Ref,
): readonly Ref[] {
  const shift = [
    ...(x === 0 ? [] : [part(`1 0 0 1 ${matrixNumber(-x * unitsPerMm)} 0 cm\n`)]),
    ...(y === 0 ? [] : [part(`1 0 0 1 0 ${matrixNumber(-y * unitsPerMm)} cm\n`)]),
  ];
  return [
    part(`q 0 0 ${matrixNumber(width * unitsPerMm)} ${matrixNumber(height * unitsPerMm)} re W n\n`),
    ...shift,
    part('/S Do Q\n'),
    ...Array.from({ length: spread }, () => shift).flat(),
    part(`/J${strip} Do\n`),
  ];
}

const chunks = <T>(list: readonly T[], size: number): readonly (readonly T[])[] =>
  Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));

/** An optional-content group for each layer that has something on it, in the order of the layers. */
function layerGroups(file: PdfFile, { sheet, pages, pens, layerNames }: PdfInput): ReadonlyMap<Layer, Ref> {
  const drawings = [sheet, ...pages.map(p => p.own)];
  const pen = penIn(pens);
  const used = new Set(drawings.flatMap(d => d.inks.map(i => pen(i.role).layer)));
  return new Map(
    layers
      .filter(l => used.has(l))
      .map(layer => [layer, file.add({ Type: 'OCG', Name: words(layerNames?.[layer] ?? layer) })]),
  );
}

/** A form in sheet units; its box is left wide open, as each page clips it. */
function form(file: PdfFile, content: string, resources: Ref): Ref {
  const reach = 110_000 * unitsPerMm;
  return file.packed(content, {
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [-reach, -reach, reach, reach],
    Resources: resources,
  });
}

/**
 * A page's paper, in its units, and what puts the sheet onto it: sheet units, y down, to points, y up, the window's
 * corner at the margins.
 */
function pageEntries({ format, pens }: PdfInput): {
  readonly box: readonly number[];
  /** None where it is 1. */
  readonly unit: number | undefined;
  readonly onto: string;
} {
  const { size, margins, stretch } = format;
  const unit = Math.max(Math.ceil((Math.max(...size) * pointsPerMm) / largestSide), 1);
  const k = pointsPerMm / unit;
  const [w, h] = [size[0] * k, size[1] * k];
  const [sx, sy] = [(stretch.across * k) / unitsPerMm, (stretch.down * k) / unitsPerMm];
  const onto = { a: sx, b: 0, c: 0, d: -sy, e: margins.left * k, f: h - margins.top * k };
  const ground = pens ? `${exact(pens.ground)} g 0 0 ${exact(w)} ${exact(h)} re f\n` : '';
  return {
    box: [0, 0, exact(w), exact(h)],
    unit: unit > 1 ? unit : undefined,
    onto: `${ground}${matrixOperands(onto)} cm\n`,
  };
}

/** Points to six decimals, a ten-thousandth of what any renderer resolves. */
const exact = (points: number): number => Number(points.toFixed(6));

function infoOf(file: PdfFile, { title, subject, date }: PdfInput): Ref {
  const made = date && characters(`D:${date.toISOString().replace(/[-:T]|\.\d+/g, '')}`);
  return file.add({
    Title: words(title),
    Subject: words(subject),
    Creator: words('paperhinge'),
    Producer: words('paperhinge'),
    CreationDate: made,
    ModDate: made,
  });
}

function catalogOf(
  file: PdfFile,
  pages: Ref,
  { language, hidden = [] }: PdfInput,
  groups: ReadonlyMap<Layer, Ref>,
): Ref {
  const refs = [...groups.values()];
  const off = [...groups].filter(([layer]) => hidden.includes(layer)).map(([, ref]) => ref);
  return file.add({
    Type: 'Catalog',
    Pages: pages,
    Lang: characters(language),
    ViewerPreferences: { DisplayDocTitle: true, PrintScaling: 'None' },
    OCProperties:
      refs.length === 0
        ? undefined
        : {
            OCGs: refs,
            D: {
              Name: words('As printed'),
              Order: refs,
              BaseState: 'ON',
              ON: refs.filter(ref => !off.includes(ref)),
              OFF: off.length > 0 ? off : undefined,
            },
          },
  });
}
