import type { LengthUnit } from '../units.js';
import type {
  CornerRule,
  EdgeKind,
  FabricRole,
  FasteningKind,
  Finish,
  LineKind,
  NotchStyle,
  PleatKind,
  TakenUp,
} from './types.js';

// Every word that the model knows, by what it is said of.

/** Units that lengths are written in. */
export const units: readonly LengthUnit[] = ['mm', 'cm', 'in'];
/** What becomes of an edge. */
export const edgeKinds: readonly EdgeKind[] = ['seam', 'hem', 'fold', 'raw'];
export const cornerRules: readonly CornerRule[] = ['mitre', 'pressed-open', 'turned-up'];
/** How many snips a notch may have. */
export const notchStyles: readonly NotchStyle[] = ['single', 'double', 'triple'];
export const lineKinds: readonly LineKind[] = [
  'grain',
  'level',
  'lengthen-shorten',
  'fold',
  'placement',
  'style',
  'dart',
];
/** What a cloth may be for. */
export const fabricRoles: readonly FabricRole[] = ['main', 'contrast', 'lining', 'interfacing', 'stabiliser'];
export const pressings = ['start', 'end', 'open'] as const;
export const pleatKinds: readonly PleatKind[] = ['knife', 'box', 'inverted', 'tuck'];
export const ends = ['start', 'end'] as const;
/** How an edge may be finished. */
export const finishes: readonly Finish[] = [
  'turned once',
  'turned twice',
  'rolled',
  'faced',
  'bound',
  'banded',
];
export const stretchWays = ['across', 'along'] as const;
/** How a difference between the sides of a seam may be taken up. */
export const takenUpWays: readonly TakenUp[] = ['eased', 'gathered', 'stretched', 'pleated'];
/** What a fastening may be. */
export const fasteningKinds: readonly FasteningKind[] = [
  'zip',
  'buttons',
  'hooks',
  'snaps',
  'elastic',
  'drawcord',
];
