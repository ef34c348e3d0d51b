/** The layers that a reader of the file may switch, named as a maker would ask for them. */
export type Layer =
  | 'Cutting lines'
  | 'Stitching lines and darts'
  | 'Grain, levels and marks'
  | 'Names and notes'
  | 'Before the alteration'
  | 'Joining the pages'
  | 'Cover'
  | 'Fine grid'
  | 'Tint'
  | 'Calibration grid';

/** The layers a drawing is sorted into, as a reader of the PDF lists them. */
export const layers: readonly Layer[] = [
  'Cutting lines',
  'Stitching lines and darts',
  'Grain, levels and marks',
  'Names and notes',
  'Before the alteration',
  'Joining the pages',
  'Cover',
  'Fine grid',
  'Tint',
  'Calibration grid',
];
