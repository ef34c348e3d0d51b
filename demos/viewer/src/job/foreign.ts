// A drawing from elsewhere: its closed shapes become pieces by their ids, so each shape needs one. The drawing is parsed
// beside the page and never put into it, so that nothing in it can run or load anything.

const shapes = 'path, polygon, rect, ellipse, circle';

/** Whether a drawing tells of its pieces as ours do: then what is wrong in it is told, and nothing is guessed. */
export const isOurs = (drawing: string): boolean => /\sdata-(pattern|piece)\s*=/.test(drawing);

/** The drawing with an id on every shape. */
export function withIds(drawing: string): string {
  const parsed = new DOMParser().parseFromString(drawing, 'image/svg+xml');
  if (parsed.querySelector('parsererror')) return drawing;
  let next = 1;
  for (const shape of parsed.querySelectorAll(shapes)) {
    while (!shape.id && parsed.getElementById(`piece-${next}`)) next++;
    if (!shape.id) shape.id = `piece-${next}`;
  }
  return new XMLSerializer().serializeToString(parsed);
}

/** A sheet that takes shapes of the drawing for pieces: stitching lines, until the maker says otherwise. */
export function sheetForShapes(patternName: string, ids: readonly string[]): string {
  const pieces = ids.map(id => `  ${JSON.stringify(id)}: { outline: ${JSON.stringify(id)} }`);
  return `pattern: ${JSON.stringify(patternName)}\nunit: cm\npieces:\n${pieces.join('\n')}\nsteps: []\n`;
}
