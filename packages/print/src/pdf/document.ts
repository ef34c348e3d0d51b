import { type PDFContext, PDFDocument, PDFHexString, PDFName, type PDFRef, PrintScaling } from 'pdf-lib';
import type { Drawing } from '../drawing/ink.js';
import { type Layer, type Look, layers } from '../drawing/pens.js';
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
  readonly date?: Date;
  readonly format: PageFormat;
  /** Drawn once, shown through each page's window. */
  readonly sheet: Drawing;
  readonly pages: readonly PdfPage[];
  /** Layers that are off when the file is opened. */
  readonly hidden?: readonly Layer[];
  /** The look of paper if not given. */
  readonly look?: Look;
}

/**
 * The file. The large sheet is stored once as a form and shown through each page's window; what the tiles have of
 * their own (labels, strips, marks) is stored side by side in one form more, of which each page shows its part. So a
 * page more costs a few hundred bytes. The same input gives the same bytes: no clock, no random names.
 */
export async function pdfDocument(input: PdfInput, typefaces: Typefaces): Promise<Uint8Array> {
  const doc = await PDFDocument.create({ updateMetadata: false });
  const { context } = doc;
  const groups = layerGroups(context, [input.sheet, ...input.pages.map(p => p.own)], input.look);
  const fonts = fontEmbedder(context, typefaces);
  const content: ContentContext = {
    typefaces,
    fonts,
    layerResource: layer => `L${layers.indexOf(layer)}`,
    ...(input.look ? { look: input.look } : {}),
  };
  const resources = context.nextRef();
  const tiles = input.pages.filter(p => p.window);
  const strips = chunks(tiles, pagesInStrip).map(strip =>
    form(context, stripContent(strip, input.format, content), resources),
  );
  const forms = Object.fromEntries([
    ['S', form(context, contentOf(input.sheet, content), resources)],
    ...strips.map((ref, i) => [`J${i}`, ref] as const),
  ]);
  const shared = new Map<string, PDFRef>();
  /** What every page's content begins with is stored once. */
  const begin = (operators: string): PDFRef => {
    const ref = shared.get(operators) ?? context.register(context.stream(operators));
    shared.set(operators, ref);
    return ref;
  };
  for (const page of input.pages)
    addPage(doc, input.format, page, tiles.indexOf(page), resources, content, begin);
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

/** mm from one page's drawing to the next in a strip: papers of any width lie clear of one another. */
const slotOf = (format: PageFormat): number => Math.ceil(format.size[0]) + 20;

const stripContent = (strip: readonly PdfPage[], format: PageFormat, content: ContentContext): string =>
  strip
    .map((page, i) => `q 1 0 0 1 ${i * slotOf(format) * unitsPerMm} 0 cm\n${contentOf(page.own, content)}Q\n`)
    .join('');

const chunks = <T>(list: readonly T[], size: number): readonly (readonly T[])[] =>
  Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));

/** An optional-content group for each layer that has something on it, in the order of the layers. */
function layerGroups(
  context: PDFContext,
  drawings: readonly Drawing[],
  look: Look | undefined,
): ReadonlyMap<Layer, PDFRef> {
  const pen = penIn(look);
  const used = new Set(drawings.flatMap(d => d.inks.map(i => pen(i.role).layer)));
  return new Map(
    layers
      .filter(l => used.has(l))
      .map(layer => [layer, context.register(context.obj({ Type: 'OCG', Name: text(layer) }))]),
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

function addPage(
  doc: PDFDocument,
  format: PageFormat,
  page: PdfPage,
  tile: number,
  resources: PDFRef,
  content: ContentContext,
  begin: (operators: string) => PDFRef,
): void {
  const { size, margins, stretch } = format;
  const userUnit = Math.max(Math.ceil((Math.max(...size) * pointsPerMm) / largestSide), 1);
  const k = pointsPerMm / userUnit;
  const [w, h] = [size[0] * k, size[1] * k];
  const [sx, sy] = [(stretch.across * k) / unitsPerMm, (stretch.down * k) / unitsPerMm];
  const left = margins.left * k,
    top = h - margins.top * k;
  // Sheet units, y down, to points, y up: the window's corner comes to lie at the margins. The same on every page.
  const onto = matrixOperands({ a: sx, b: 0, c: 0, d: -sy, e: left, f: top });
  const put = (x: number, y: number) =>
    `1 0 0 1 ${matrixNumber(-x * unitsPerMm)} ${matrixNumber(-y * unitsPerMm)} cm`;
  const { look } = content;
  const ground = look ? `${exact(look.ground)} g 0 0 ${exact(w)} ${exact(h)} re f\n` : '';
  let head = `${ground}${onto} cm\n`;
  let out: string;
  if (page.window) {
    const [x, y, width, height] = page.window;
    head += `q 0 0 ${matrixNumber(width * unitsPerMm)} ${matrixNumber(height * unitsPerMm)} re W n\n`;
    const slot = (tile % pagesInStrip) * slotOf(format);
    // The sheet is clipped to the window; what joins the pages reaches beyond it.
    out = `${put(x, y)}/S Do Q ${put(slot, 0)}/J${Math.floor(tile / pagesInStrip)} Do\n`;
  } else out = contentOf(page.own, content);
  const added = doc.addPage([exact(w), exact(h)]);
  const { context } = doc;
  // A line or two is shorter as it is than packed.
  const stream = page.window ? context.stream(out) : context.flateStream(out);
  added.node.set(PDFName.of('Contents'), context.obj([begin(head), context.register(stream)]));
  added.node.set(PDFName.of('Resources'), resources);
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
