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

export const units: readonly LengthUnit[] = ['mm', 'cm', 'in'];
export const edgeKinds: readonly EdgeKind[] = ['seam', 'hem', 'fold', 'raw'];
export const cornerRules: readonly CornerRule[] = ['mitre', 'pressed-open', 'turned-up'];
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
export const fabricRoles: readonly FabricRole[] = ['main', 'contrast', 'lining', 'interfacing', 'stabiliser'];
export const pressings = ['start', 'end', 'open'] as const;
export const pleatKinds: readonly PleatKind[] = ['knife', 'box', 'inverted', 'tuck'];
export const ends = ['start', 'end'] as const;
export const finishes: readonly Finish[] = [
  'turned once',
  'turned twice',
  'rolled',
  'faced',
  'bound',
  'banded',
];
export const stretchWays = ['across', 'along'] as const;
export const takenUpWays: readonly TakenUp[] = ['eased', 'gathered', 'stretched', 'pleated'];
export const fasteningKinds: readonly FasteningKind[] = [
  'zip',
  'buttons',
  'hooks',
  'snaps',
  'elastic',
  'drawcord',
];
