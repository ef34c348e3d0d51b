// The trade's interchange file.

export { layerOf as dxfLayers } from './layers.js';
export { dxfBlocks, dxfFindings, patternDxf } from './pattern-dxf.js';
