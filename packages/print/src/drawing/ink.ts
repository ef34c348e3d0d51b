import type { Path, Point } from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, apply, applyToVector, norm } from '@paperhinge/geometry/plane';

/**
 * What a line, fill or word on a pattern means. Its look (width, dash, grey, layer) is decided once, in `pens.ts`;
 * writers of PDF, SVG or DXF ask by role and never by look.
 */
export type Role =
  | 'cut'
  | 'fold-edge'
  | 'fold-hairline'
  | 'stitch'
  | 'topstitch'
  | 'grain'
  | 'level'
  | 'lengthen-shorten'
  | 'fold-line'
  | 'placement'
  | 'style-line'
  | 'bracket'
  | 'notch'
  | 'snip'
  | 'mark'
  | 'before'
  | 'tint'
  | 'leader'
  | 'title'
  | 'detail'
  | 'edge-label'
  | 'page-edge'
  | 'join-line'
  | 'match-mark'
  | 'page-text'
  | 'rule'
  | 'test-square'
  | 'guide'
  | 'guide-bold'
  | 'map-page'
  | 'map-piece'
  | 'text';

/** A line drawn by its meaning; the pen is chosen by the exporter. */
export interface Stroke {
  readonly kind: 'stroke';
  readonly role: Role;
  readonly path: Path;
  readonly closed?: boolean;
}

/** A closed area in solid ink: an arrowhead, a notch. */
export interface Fill {
  readonly kind: 'fill';
  readonly role: Role;
  readonly path: Path;
}

/** How heavy words are set. */
export type Weight = 'regular' | 'bold';

/** One line of text; lengths in mm. The box is measured when the text is set, so that layout can keep it clear. */
export interface Lettering {
  readonly kind: 'text';
  readonly role: Role;
  readonly text: string;
  readonly weight: Weight;
  /** Em size, mm. */
  readonly size: number;
  /** Start of the baseline. */
  readonly at: Point;
  /** Unit vector along the baseline. */
  readonly direction: Point;
  /** mm along the baseline. */
  readonly width: number;
}

/** One thing that is drawn: a stroke, a filled shape, or words. Lengths in mm. */
export type Ink = Stroke | Fill | Lettering;

/** A device-independent drawing in mm, y down: what there is to see, not how an exporter shows it. */
export interface Drawing {
  readonly inks: readonly Ink[];
}

/** How wide a text runs, in mm, at an em size in mm. The fonts know; layout asks. */
export interface TypeMeasure {
  /** How much larger than on paper words on pieces are set; 1 if not given. */
  readonly enlarged?: number;
  width(text: string, size: number, weight: Weight): number;
}

/** Share of the em above the baseline that capitals and figures fill, and below it that tails reach. */
export const capShare = 0.72;
export const tailShare = 0.21;

/** The four corners round a text: from tails to capitals, start to end. */
export function letteringBox(text: Pick<Lettering, 'at' | 'direction' | 'size' | 'width'>): readonly Point[] {
  const { at, direction: d, size, width } = text;
  const up = { x: d.y * size * capShare, y: -d.x * size * capShare };
  const down = { x: -d.y * size * tailShare, y: d.x * size * tailShare };
  const end = { x: at.x + d.x * width, y: at.y + d.y * width };
  return [
    { x: at.x + up.x, y: at.y + up.y },
    { x: end.x + up.x, y: end.y + up.y },
    { x: end.x + down.x, y: end.y + down.y },
    { x: at.x + down.x, y: at.y + down.y },
  ];
}

/** The drawing moved by a rigid motion; text turns with it. */
export const movedDrawing = (drawing: Drawing, map: Affine): Drawing => ({
  inks: drawing.inks.map(ink => movedInk(ink, map)),
});

function movedInk(ink: Ink, map: Affine): Ink {
  if (ink.kind !== 'text') return { ...ink, path: transformedPath(ink.path, map) };
  const along = applyToVector(map, ink.direction);
  const length = norm(along);
  return { ...ink, at: apply(map, ink.at), direction: { x: along.x / length, y: along.y / length } };
}
