import type { Role } from '../drawing/ink.js';
import { type Pen, type PenSet, penOf } from '../drawing/pens.js';

/** What the lines stand on: a dark ground dazzles least on the cutting table, a light one suits a bright room or a plotter. */
export type Ground = 'dark' | 'light';

/** mm. A projector over a table throws about a dot a mm: a line any thinner breaks up. */
const thinnest = 1;
/** The cutting line comes out near 2 mm wide; its middle is where to cut. */
const thicker = 2.6;
/** Dashes as much longer as they still tell the lines apart. */
const longer = 2.4;

/** Lines of the grid: fine, and every fifth. */
const gridWidth = { guide: 0.6, rule: 1 } as const;

const tones = {
  dark: { ground: 0, solid: 1, guide: 0.3, rule: 0.5 },
  light: { ground: 1, solid: 0, guide: 0.78, rule: 0.55 },
} as const;

/** The pieces in the pens of paper made thick, over a grid that stays in the background. */
export function projectorPens(on: Ground): PenSet {
  const tone = tones[on];
  return { ground: tone.ground, solid: tone.solid, pen: role => thickPen(role, on) };
}

const ofTheGrid: ReadonlySet<Role> = new Set(['guide', 'rule', 'test-square', 'text']);

function thickPen(role: Role, on: Ground): Pen {
  const tone = tones[on];
  if (role === 'guide' || role === 'rule')
    return { width: gridWidth[role], grey: tone[role], layer: 'Calibration grid' };
  const { dash, ...pen } = penOf(role);
  return {
    ...pen,
    ...(dash ? { dash: dash.map(d => d * longer) } : {}),
    width: Math.max(pen.width * thicker, thinnest),
    grey: tone.solid,
    layer: ofTheGrid.has(role) ? 'Calibration grid' : pen.layer,
  };
}
