import type { EdgeRole, LineRole, MarkRole, PieceRole } from '../types.js';

/** Every role an edge can have, as `data-role` writes it. */
export const edgeRoles: readonly EdgeRole[] = [
  ...(['neck', 'shoulder', 'armhole', 'cap', 'side', 'underarm', 'inseam', 'outseam', 'crotch'] as const),
  ...(['waist', 'hem', 'wrist', 'centre', 'panel', 'yoke', 'inset', 'opening'] as const),
];

/** Every role a piece can have. */
export const pieceRoles: readonly PieceRole[] = [
  ...(['bodice', 'yoke', 'sleeve', 'trouser', 'skirt', 'collar', 'cuff', 'band', 'strip', 'facing'] as const),
  ...(['stay', 'binding', 'lining', 'interfacing', 'pocket', 'placket', 'hood', 'gusset'] as const),
];

/** Every role a line within a piece can have. */
export const lineRoles: readonly LineRole[] = [
  ...(['centre', 'neck', 'bust', 'underbust', 'waist', 'abdomen', 'hip', 'thigh', 'knee', 'calf'] as const),
  ...(['ankle', 'upper arm', 'elbow', 'wrist'] as const),
];

/** Every role a mark can have. */
export const markRoles: readonly MarkRole[] = ['bust point', 'button', 'buttonhole', 'pocket'];
