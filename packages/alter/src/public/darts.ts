// Darts closed, shared out, moved, opened, changed into something else. Every name is listed; nothing is exported by star.

export type { AddContourDart } from '../operations/add-contour-dart.js';
export { addContourDart } from '../operations/add-contour-dart.js';
export type { ChangeDart } from '../operations/change-dart.js';
export { changeDart } from '../operations/change-dart.js';
export type { CloseDart } from '../operations/close-dart.js';
export { closeDart } from '../operations/close-dart.js';
export type { JoinDarts } from '../operations/join-darts.js';
export { joinDarts } from '../operations/join-darts.js';
export type { MoveDart } from '../operations/move-dart.js';
export { moveDart } from '../operations/move-dart.js';
export type { MoveDartPoint } from '../operations/move-dart-point.js';
export { moveDartPoint } from '../operations/move-dart-point.js';
export type { OpenDart } from '../operations/open-dart.js';
export { openDart } from '../operations/open-dart.js';
export type { PinchOut } from '../operations/pinch-out.js';
export { pinchOut } from '../operations/pinch-out.js';
export type { ResizeDart } from '../operations/resize-dart.js';
export { resizeDart } from '../operations/resize-dart.js';
export type { DartPart, ShareDart } from '../operations/share-dart.js';
export { shareDart } from '../operations/share-dart.js';
export type { TrueDart } from '../operations/true-dart.js';
export { trueDart } from '../operations/true-dart.js';
