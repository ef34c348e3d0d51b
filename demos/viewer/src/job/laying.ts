import type { Given, Taken } from '../engine/questions.js';
import { emptySheet, type Found, found, givesItsPieces, type NotLaid, stemOf } from './files.js';
import { isOurs, sheetForShapes, withIds } from './foreign.js';
import type { Garment } from './garment.js';
import type { Laid } from './lessons.js';

/** What was said to lay on the table: done, or why not. */
export type Outcome = 'laid' | { readonly not: NotLaid } | { readonly refused: string };

/** Lays files on the table. What lay there before stays on the shelf, and nothing is laid that cannot be read. */
export async function layFiles(garment: Garment, files: readonly File[]): Promise<Outcome> {
  const all = await found(files);
  if ('not' in all) return all;
  const sheet = await sheetIn(garment, all);
  if (typeof sheet === 'object') return sheet;
  if (all.pattern) return layDrawing(garment, all.pattern, sheet);
  if (all.dxf)
    return layTraced(
      garment,
      { drawing: all.dxf.text, kind: 'dxf', name: stemOf(all.dxf.name) || 'pattern' },
      sheet,
    );
  if (all.pdf) {
    const drawing = new Uint8Array(await all.pdf.arrayBuffer());
    return layTraced(garment, { drawing, kind: 'pdf', name: stemOf(all.pdf.name) || 'pattern' }, sheet);
  }
  if (all.pictures) return layPictures(garment, all.pictures, sheet);
  if (sheet === undefined) return { not: 'no pattern' };
  if (givesItsPieces(sheet))
    return layTried(garment, { patternName: all.sheetName || 'sheet.yaml', pattern: '', sheet });
  const { name, text } = garment.source();
  return text === '' ? { not: 'no pattern' } : layTried(garment, { patternName: name, pattern: text, sheet });
}

/** In whose unit and language the engine is to answer. */
const asked = (garment: Garment) => ({ unit: garment.unit(), language: garment.language() });

/** The sheet among what was found, one of a record turned back into it; undefined: there is none. */
async function sheetIn(garment: Garment, { sheet, record }: Found) {
  if (sheet !== undefined || record === undefined) return sheet;
  const from = await garment.engine.make({ make: { record }, ...asked(garment) });
  return 'refused' in from ? from : from.made;
}

const layDrawing = (
  garment: Garment,
  { name, text }: { readonly name: string; readonly text: string },
  sheet: string | undefined,
): Promise<Outcome> =>
  layTried(garment, { patternName: name, pattern: text, sheet: sheet ?? emptySheet(name) });

/** Photographs of pieces, traced. */
async function layPictures(
  garment: Garment,
  pictures: readonly File[],
  sheet: string | undefined,
): Promise<Outcome> {
  const name = stemOf(pictures[0]!.name);
  return layTraced(garment, { pictures, kind: 'photograph', name }, sheet);
}

/** What is traced first; without a sheet of its own, with one that proposes names where it is a drawing. */
async function layTraced(garment: Garment, given: Given, sheet: string | undefined): Promise<Outcome> {
  const traced = await garment.engine.make({ make: given, ...asked(garment) });
  if ('refused' in traced) return traced;
  const file = `${given.name}.svg`;
  const outcome = await layDrawing(garment, { name: file, text: traced.made }, sheet ?? traced.sheet);
  if (outcome === 'laid')
    garment.setTracedFrom({ given, layers: traced.layers ?? [], id: garment.source().id });
  return outcome;
}

/** What lies there traced again, taken otherwise; what lay there stays unless it can be. */
export async function takeOtherwise(garment: Garment, taken: Taken): Promise<Outcome> {
  const { given } = garment.tracedFrom()!;
  const traced = await garment.engine.make({ make: { ...given, taken }, ...asked(garment) });
  if ('refused' in traced) return traced;
  const { name: patternName } = garment.source();
  const laid = { patternName, pattern: traced.made, sheet: traced.sheet ?? emptySheet(patternName) };
  const tried = await garment.engine.tryOut({ tried: laid, ...asked(garment) });
  if (tried.refused !== undefined) return { refused: tried.refused };
  garment.layAgain(laid);
  garment.setTracedFrom(had => had && { ...had, given: { ...had.given, taken } });
  return 'laid';
}

/**
 * A drawing in loose strokes, traced as the pieces that they go round.
 * @param refused what is told where they go round none, where the drawing is one of ours with a fault in it, or
 *   where it came with a sheet
 */
async function layStrokes(
  garment: Garment,
  { patternName, pattern: drawing, sheet }: Laid,
  refused: string,
): Promise<Outcome> {
  if (isOurs(drawing) || sheet !== emptySheet(patternName)) return { refused };
  const given = { drawing, kind: 'svg', name: stemOf(patternName) } as const;
  const traced = await garment.engine.make({ make: given, ...asked(garment) });
  // Stopped, it says nothing; else why the drawing itself could not be read.
  if ('refused' in traced) return { refused: traced.refused && refused };
  const laid = { patternName, pattern: traced.made, sheet: traced.sheet ?? emptySheet(patternName) };
  const tried = await garment.engine.tryOut({ tried: laid, ...asked(garment) });
  if (tried.refused !== undefined) return { refused: tried.refused };
  garment.lay(laid);
  garment.setTracedFrom({ given, layers: traced.layers ?? [], id: garment.source().id });
  return 'laid';
}

async function layTried(garment: Garment, laid: Laid): Promise<Outcome> {
  const tried = await garment.engine.tryOut({ tried: laid, ...asked(garment) });
  if (tried.refused === undefined) {
    garment.lay(laid);
    return 'laid';
  }
  // A drawing that has nothing of ours: its shapes are taken for pieces, to be named by pointing.
  const pattern = withIds(laid.pattern);
  const { shapes = [] } = await garment.engine.tryOut({ tried: { ...laid, pattern }, ...asked(garment) });
  if (shapes.length === 0) return layStrokes(garment, laid, tried.refused);
  const sheet = sheetForShapes(laid.patternName, shapes);
  const proposed = { patternName: laid.patternName, pattern, sheet };
  const again = await garment.engine.tryOut({ tried: proposed, ...asked(garment) });
  if (again.refused !== undefined) return { refused: again.refused };
  garment.lay(proposed);
  return 'laid';
}
