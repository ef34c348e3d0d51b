import type { Layer } from '../layers.js';
import type { Role } from './ink.js';

/** How a role is drawn: mm for width and dashes, grey from 0 (black) to 1 (paper). */
export interface Pen {
  readonly width: number;
  readonly dash?: readonly number[];
  readonly roundCaps?: boolean;
  readonly grey: number;
  readonly layer: Layer;
}

/**
 * The look of the house, in one place. Every line says what it is by width and dash alone, so that a photocopy or a
 * black-and-white printer loses nothing: the only grey is the outline before the alteration, which may be lost.
 */
const pens: Readonly<Record<Role, Pen>> = {
  cut: { width: 0.7, grey: 0, layer: 'Cutting lines' },
  'fold-edge': { width: 0.75, dash: [9, 2, 2, 2], grey: 0, layer: 'Cutting lines' },
  'fold-hairline': { width: 0.28, grey: 0, layer: 'Cutting lines' },
  notch: { width: 0.35, grey: 0, layer: 'Cutting lines' },
  snip: { width: 0.3, grey: 0, layer: 'Cutting lines' },
  stitch: { width: 0.25, dash: [2.6, 1.4], grey: 0, layer: 'Stitching lines and darts' },
  topstitch: { width: 0.25, dash: [1.2, 0.8], grey: 0, layer: 'Stitching lines and darts' },
  grain: { width: 0.35, grey: 0, layer: 'Grain, levels and marks' },
  bracket: { width: 0.35, grey: 0, layer: 'Grain, levels and marks' },
  level: { width: 0.25, dash: [6, 1.2, 1.2, 1.2], grey: 0, layer: 'Grain, levels and marks' },
  'lengthen-shorten': { width: 0.25, grey: 0, layer: 'Grain, levels and marks' },
  'fold-line': { width: 0.25, dash: [5, 1.2, 0.6, 1.2], grey: 0, layer: 'Stitching lines and darts' },
  placement: { width: 0.4, dash: [0, 1.3], roundCaps: true, grey: 0, layer: 'Grain, levels and marks' },
  'style-line': { width: 0.25, grey: 0, layer: 'Grain, levels and marks' },
  mark: { width: 0.25, grey: 0, layer: 'Grain, levels and marks' },
  leader: { width: 0.25, grey: 0, layer: 'Names and notes' },
  title: { width: 0, grey: 0, layer: 'Names and notes' },
  detail: { width: 0, grey: 0, layer: 'Names and notes' },
  'edge-label': { width: 0, grey: 0, layer: 'Names and notes' },
  'page-edge': { width: 0.25, grey: 0, layer: 'Joining the pages' },
  'join-line': { width: 0.25, dash: [1.2, 1.2], grey: 0, layer: 'Joining the pages' },
  'match-mark': { width: 0.25, grey: 0, layer: 'Joining the pages' },
  'page-text': { width: 0, grey: 0, layer: 'Joining the pages' },
  guide: { width: 0.1, grey: 0.74, layer: 'Fine grid' },
  'guide-bold': { width: 0.12, grey: 0.58, layer: 'Fine grid' },
  'test-square': { width: 0.25, grey: 0, layer: 'Cover' },
  rule: { width: 0.25, grey: 0, layer: 'Cover' },
  'map-page': { width: 0.25, grey: 0, layer: 'Cover' },
  'map-piece': { width: 0.5, grey: 0, layer: 'Cover' },
  text: { width: 0, grey: 0, layer: 'Cover' },
  tint: { width: 0, grey: 0.93, layer: 'Tint' },
  before: { width: 0.25, dash: [0.8, 1], grey: 0.55, layer: 'Before the alteration' },
};

/** Other pens than those of paper: for a projector, which shows thin lines badly and dark ground best. */
export interface PenSet {
  pen(role: Role): Pen;
  /** Grey of words and filled shapes. */
  readonly solid: number;
  /** Grey of the whole page under the drawing. */
  readonly ground: number;
}

/** The pen that a line of this meaning is drawn with: width and dashes in mm. */
export const penOf = (role: Role): Pen => pens[role];
