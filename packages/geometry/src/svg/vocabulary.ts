import type { CornerRule, EdgeKind, FabricRole, LineKind, NotchStyle } from '../pattern/types.js';
import type { LengthUnit } from '../units.js';

/** The words of our convention on plain SVG (pattern SVG, design of the format): attribute values and their places. */
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
export const yesNo = ['yes', 'no'] as const;
export const drawnLines = ['stitching', 'cutting'] as const;

/** What an element stands for: the attribute that says so, strongest first. */
export const meanings = ['notch', 'dart', 'edge', 'line', 'mark', 'outline'] as const;
export type Meaning = (typeof meanings)[number];

/** Attributes (without `data-`) that say something wherever they stand, being inherited or harmless. */
const everywhere = ['allowance', 'included-allowance', 'line-drawn', 'derived', 'name'];

/** Attributes that say something on an element of each meaning; `root` and `piece` besides. */
const spoken: Readonly<Record<Meaning | 'root' | 'piece', readonly string[]>> = {
  root: ['pattern', 'unit'],
  piece: ['piece', 'title', 'cut', 'mirrored', 'fabric', 'note', 'role'],
  edge: ['edge', 'kind', 'corner-start', 'corner-end', 'opening', 'role'],
  dart: ['dart', 'pressed'],
  notch: ['notch', 'on'],
  line: ['line', 'role'],
  mark: ['mark', 'role'],
  outline: ['outline'],
};

/** Every attribute of ours, without `data-`. */
export const ourAttributes: readonly string[] = [...everywhere, ...Object.values(spoken).flat()];

/** Attributes that only our patterns carry; drawing programs write `data-name` and the like of their own. */
export const telling: readonly string[] = ['pattern', 'piece', ...meanings].map(name => `data-${name}`);

export function speaks(attribute: string, roles: readonly (Meaning | 'root' | 'piece')[]): boolean {
  return everywhere.includes(attribute) || roles.some(role => spoken[role].includes(attribute));
}
