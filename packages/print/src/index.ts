// The public surface. Every name is listed; nothing is exported by star. What is used less lies in the subpaths drawing,
// pages, place and dxf.

export type { Layer } from './layers.js';
// pages: papers and what is printed where
export type { PageJson, PagesJson, PlacedPieceJson } from './pages/pages-json.js';
export type { Paper } from './pages/papers.js';
export { paperOf, papers } from './pages/papers.js';
// fonts
export type { FontFiles, FontSource, Typefaces } from './pdf/typefaces.js';
export { loadTypefaces } from './pdf/typefaces.js';
// photo frame: sheets of targets that a photograph is measured by
export type { PhotoFrameOptions } from './photo-frame/photo-frame.js';
export { photoFrame } from './photo-frame/photo-frame.js';
export type { Printed, PrintOptions } from './print-pattern.js';
export { printPattern } from './print-pattern.js';
// projector: one sheet of thick lines
export type { ProjectorOptions, ProjectorSheet } from './projector/projector-sheet.js';
export { projectorSheet } from './projector/projector-sheet.js';
export type { Ground } from './projector/thick-pens.js';
// report: the record in writing
export { reportHtml } from './report/html.js';
export type { RecordFigures, ReportSource } from './report/source.js';
export type { PrintTellings } from './tellings.js';
export type { PageLanguage } from './words/reader.js';
