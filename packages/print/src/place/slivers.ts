import { partsIn } from '../plane/parts.js';
import { boxOf, type Polygon } from '../plane/polygon.js';
import { type Cell, ownPart, type PageField, pagesOf } from './field.js';

/** mm: a part of a piece that reaches less than this onto a page is lost before it is joined. */
export const sliver = 8;

/**
 * The pages onto which a polygon reaches with a part less than 8 mm deep, measured from the join that the part lies
 * beyond. A narrow tail that a join crosses is none: it goes on as far as it is long.
 */
export function sliversOf(field: PageField, polygon: Polygon): readonly Cell[] {
  const whole = boxOf([polygon]);
  return pagesOf(field, [polygon]).filter(cell => {
    const [x0, y0, x1, y1] = ownPart(field, cell);
    const cut = { left: whole.x0 < x0, right: whole.x1 > x1, top: whole.y0 < y0, bottom: whole.y1 > y1 };
    if (!cut.left && !cut.right && !cut.top && !cut.bottom) return false;
    return partsIn(polygon, [x0, y0, x1, y1]).some(part => {
      const box = boxOf([part]);
      const across = (cut.left && box.x0 <= x0) || (cut.right && box.x1 >= x1);
      const down = (cut.top && box.y0 <= y0) || (cut.bottom && box.y1 >= y1);
      return (across && box.x1 - box.x0 < sliver) || (down && box.y1 - box.y0 < sliver);
    });
  });
}
