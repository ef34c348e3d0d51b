import type { CurveTellings } from './curve/tellings.js';
import type { CuttingLineTellings } from './cutting-line/tellings.js';
import type { MeasureTellings } from './measure/tellings.js';
import type { PatternTellings } from './pattern/tellings.js';
import type { SvgTellings } from './svg/tellings.js';
import type { DrawingTellings } from './trace/drawing/tellings.js';
import type { MeasuredTellings } from './trace/measured/tellings.js';
import type { PhotoTellings } from './trace/photo/tellings.js';

/** Every code that this package tells, with its facts. Each folder lists its own. */
export interface GeometryTellings
  extends PatternTellings,
    CurveTellings,
    CuttingLineTellings,
    MeasureTellings,
    SvgTellings,
    DrawingTellings,
    MeasuredTellings,
    PhotoTellings {}
