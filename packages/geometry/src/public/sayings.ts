// Codes, figures and references that are put into words at the outer edge.

export type { CurveTellings } from '../curve/tellings.js';
export type { CuttingLineTellings } from '../cutting-line/tellings.js';
export { locating } from '../errors.js';
export type { MeasureTellings } from '../measure/tellings.js';
export { listed, nearestName, quoted, suggestion } from '../naming.js';
export type { PatternTellings } from '../pattern/tellings.js';
export type { FindingOf, NoFacts, RefusalOf, SayingOf, SayingTable } from '../sayings.js';
export { anyFinding, anyRefusal, anySaying, factsOf } from '../sayings.js';
export type { SvgTellings } from '../svg/tellings.js';
export type { Tellable } from '../telling.js';
export type { GeometryTellings } from '../tellings.js';
export type { DrawingTellings } from '../trace/drawing/tellings.js';
export type { MeasuredTellings } from '../trace/measured/tellings.js';
export type { PhotoTellings, PlaceInPicture } from '../trace/photo/tellings.js';
