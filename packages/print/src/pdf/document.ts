import { type PDFContext, PDFDocument, PDFHexString, PDFName, type PDFRef, PrintScaling } from 'pdf-lib';
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
export async function pdfDocument(input: PdfInput, typefaces: Typefaces): Promise<Uint8Array> {
  const doc = await PDFDocument.create({ updateMetadata: false });
  const { context } = doc;
  const groups = layerGroups(context, input);
  const fonts = fontEmbedder(context, typefaces);
  const content: ContentContext = {
    typefaces,
    fonts,
    layerResource: layer => `L${layers.indexOf(layer)}`,
    ...(input.pens ? { pens: input.pens } : {}),
  };
  const resources = context.nextRef();
  const tiles = input.pages.filter(isTile);
  const spread = spreadOf(tiles, input.format);
  const strips = chunks(tiles, pagesInStrip).map(strip =>
    form(context, stripContent(strip, spread, content), resources),
  );
  const forms = Object.fromEntries([
    ['S', form(context, contentOf(input.sheet, content), resources)],
    ...strips.map((ref, i) => [`J${i}`, ref] as const),
  ]);
  const shared = new Map<string, PDFRef>();
  /** A part of pages' contents that is alike on many is stored once. */
  const part = (operators: string): PDFRef => {
    const ref = shared.get(operators) ?? context.register(context.stream(operators));
    shared.set(operators, ref);
    return ref;
  };
  for (const page of input.pages) {
    const contents = isTile(page)
      ? tileContents(page.window, Math.floor(tiles.indexOf(page) / pagesInStrip), spread, part)
      : [context.register(context.flateStream(contentOf(page.own, content)))];
    addPage(doc, input.format, input.pens, contents, part);
  }
  doc.catalog.Pages().set(PDFName.of('Resources'), resources);
  context.assign(
    resources,
    context.obj({
      Font: fonts.resources(),
      XObject: forms,
      Properties: Object.fromEntries([...groups].map(([layer, ref]) => [`L${layers.indexOf(layer)}`, ref])),
    }),
  );
  fonts.write();
  describe(doc, input, groups);
  return doc.save({
    useObjectStreams: true,
    addDefaultPage: false,
    objectsPerTick: Number.POSITIVE_INFINITY,
  });
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
  part: (operators: string) => PDFRef,
): readonly PDFRef[] {
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
function layerGroups(
  context: PDFContext,
  { sheet, pages, pens, layerNames }: PdfInput,
): ReadonlyMap<Layer, PDFRef> {
  const drawings = [sheet, ...pages.map(p => p.own)];
  const pen = penIn(pens);
  const used = new Set(drawings.flatMap(d => d.inks.map(i => pen(i.role).layer)));
  return new Map(
    layers
      .filter(l => used.has(l))
      .map(layer => [
        layer,
        context.register(context.obj({ Type: 'OCG', Name: text(layerNames?.[layer] ?? layer) })),
      ]),
  );
}

/** A form in sheet units; its box is left wide open, as each page clips it. */
function form(context: PDFContext, content: string, resources: PDFRef): PDFRef {
  const reach = 110_000 * unitsPerMm;
  return context.register(
    context.flateStream(content, {
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [-reach, -reach, reach, reach],
      Resources: resources,
    }),
  );
}

/** What a page shows, put onto its paper: sheet units, y down, to points, y up, the window's corner at the margins. */
function addPage(
  doc: PDFDocument,
  format: PageFormat,
  pens: PenSet | undefined,
  contents: readonly PDFRef[],
  part: (operators: string) => PDFRef,
): void {
  const { size, margins, stretch } = format;
  const userUnit = Math.max(Math.ceil((Math.max(...size) * pointsPerMm) / largestSide), 1);
  const k = pointsPerMm / userUnit;
  const [w, h] = [size[0] * k, size[1] * k];
  const [sx, sy] = [(stretch.across * k) / unitsPerMm, (stretch.down * k) / unitsPerMm];
  const onto = { a: sx, b: 0, c: 0, d: -sy, e: margins.left * k, f: h - margins.top * k };
  const ground = pens ? `${exact(pens.ground)} g 0 0 ${exact(w)} ${exact(h)} re f\n` : '';
  const added = doc.addPage([exact(w), exact(h)]);
  const head = part(`${ground}${matrixOperands(onto)} cm\n`);
  added.node.set(PDFName.of('Contents'), doc.context.obj([head, ...contents]));
  // Every page has the resources of the page tree.
  added.node.delete(PDFName.of('Resources'));
  if (userUnit > 1) added.node.set(PDFName.of('UserUnit'), doc.context.obj(userUnit));
}

/** Points to six decimals, a ten-thousandth of what any renderer resolves. */
const exact = (points: number): number => Number(points.toFixed(6));

function describe(doc: PDFDocument, input: PdfInput, groups: ReadonlyMap<Layer, PDFRef>): void {
  const { context, catalog } = doc;
  doc.setTitle(input.title, { showInWindowTitleBar: true });
  doc.setSubject(input.subject);
  doc.setCreator('paperhinge');
  doc.setProducer('paperhinge');
  doc.setLanguage(input.language);
  if (input.date) {
    doc.setCreationDate(input.date);
    doc.setModificationDate(input.date);
  }
  catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const refs = [...groups.values()];
  const isOff = (layer: Layer) => input.hidden?.includes(layer) ?? false;
  const off = [...groups].filter(([layer]) => isOff(layer)).map(([, ref]) => ref);
  if (refs.length > 0)
    catalog.set(
      PDFName.of('OCProperties'),
      context.obj({
        OCGs: refs,
        D: {
          Name: text('As printed'),
          Order: refs,
          BaseState: 'ON',
          ON: refs.filter(ref => !off.includes(ref)),
          ...(off.length > 0 ? { OFF: off } : {}),
        },
      }),
    );
}

const text = (value: string): PDFHexString => PDFHexString.fromText(value);
