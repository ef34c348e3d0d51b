import { emptySheet, found, type NotLaid } from './files.js';
import { sheetForShapes, withIds } from './foreign.js';
import type { Garment } from './garment.js';

/** What was said to lay on the table: done, or why not. */
export type Outcome = 'laid' | { readonly not: NotLaid } | { readonly refused: string };

/** Lays files on the table. What lay there before stays on the shelf, and nothing is laid that cannot be read. */
export async function layFiles(garment: Garment, files: readonly File[]): Promise<Outcome> {
  const all = await found(files);
  if ('not' in all) return all;
  const asked = { unit: garment.unit(), language: garment.language() };
  let { pattern, sheet } = all;
  if (all.pictures && !pattern) {
    const name = all.pictures[0]!.name.replace(/\.[^.]*$/, '');
    const traced = await garment.engine.make({ make: { pictures: all.pictures, name }, ...asked });
    if ('refused' in traced) return traced;
    pattern = { name: `${name}.svg`, text: traced.made };
  }
  if (all.record !== undefined && sheet === undefined) {
    const from = await garment.engine.make({ make: { record: all.record }, ...asked });
    if ('refused' in from) return from;
    sheet = from.made;
  }
  if (!pattern) {
    const { name, text } = garment.source();
    return sheet === undefined || text === ''
      ? { not: 'no pattern' }
      : layTried(garment, { patternName: name, pattern: text, sheet });
  }
  return layTried(garment, {
    patternName: pattern.name,
    pattern: pattern.text,
    sheet: sheet ?? emptySheet(pattern.name),
  });
}

async function layTried(
  garment: Garment,
  laid: { readonly patternName: string; readonly pattern: string; readonly sheet: string },
): Promise<Outcome> {
  const asked = { unit: garment.unit(), language: garment.language() };
  const tried = await garment.engine.tryOut({ tried: laid, ...asked });
  if (tried.refused === undefined) {
    garment.lay(laid);
    return 'laid';
  }
  // A drawing that has nothing of ours: its shapes are taken for pieces, to be named by pointing.
  const drawing = withIds(laid.pattern);
  const { shapes = [] } = await garment.engine.tryOut({ tried: { ...laid, pattern: drawing }, ...asked });
  if (shapes.length === 0) return { refused: tried.refused };
  const proposed = {
    patternName: laid.patternName,
    pattern: drawing,
    sheet: sheetForShapes(laid.patternName, shapes),
  };
  const again = await garment.engine.tryOut({ tried: proposed, ...asked });
  if (again.refused !== undefined) return { refused: again.refused };
  garment.lay(proposed);
  return 'laid';
}
