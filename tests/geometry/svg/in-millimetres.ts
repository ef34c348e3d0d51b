import { type ForeignShape, readShapes } from '@paperhinge/geometry';

/** A drawing in which one unit is one millimetre. */
export const inMillimetres = (content: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="1000mm" height="1000mm" viewBox="0 0 1000 1000">${content}</svg>`;

export const shapesIn = (content: string): readonly ForeignShape[] =>
  readShapes(inMillimetres(content)).shapes;
export const codesIn = (content: string): readonly string[] =>
  readShapes(inMillimetres(content)).findings.map(f => f.code);

/** The only shape of a path with this data. */
export function shapeOf(d: string): ForeignShape {
  const [shape] = shapesIn(`<path d="${d}"/>`);
  if (!shape) throw new Error('nothing was drawn');
  return shape;
}
