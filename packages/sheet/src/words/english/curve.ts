import type { CurveTellings } from '@paperhinge/geometry/sayings';
import type { Tellings } from '../catalogue.js';

export const curve: Tellings<CurveTellings> = {
  'coordinate-out-of-range': () => ({
    message: 'A point is not a number, or lies more than 100 m away.',
    remedy: 'Check the unit the drawing was saved in.',
  }),
  'not-a-number': ({ what }) => ({
    message: `The ${what} is not a number.`,
    remedy: `Give the ${what} as a number.`,
  }),
  'not-a-segment': () => ({
    message: 'A part of a line has two points, or four for a curve.',
    remedy: 'Give its start and its end, with both handles between them for a curve.',
  }),
  'path-empty': () => ({
    message: 'A line was given that has no parts.',
    remedy: 'Draw the line, or leave it out.',
  }),
  'tolerance-not-positive': () => ({
    message: 'No curve can be drawn as exactly as that.',
    remedy: 'Give a tolerance above 0 mm.',
  }),
  'length-too-short': ({ lengthMm, straightMm }, say) => ({
    message: `A curve of ${say.length(lengthMm)} does not reach over ${say.length(straightMm)}.`,
    remedy: 'Give a length of at least the straight distance between the ends.',
  }),
  'length-too-long': ({ lengthMm, straightMm }, say) => ({
    message: `A curve of ${say.length(lengthMm)} between ends ${say.length(straightMm)} apart would cross itself.`,
    remedy: 'Give a shorter length, or move the ends apart.',
  }),
  'too-few-points': () => ({
    message: 'A curve cannot be laid through fewer than two points.',
    remedy: 'Give at least two points that differ.',
  }),
  'no-direction': () => ({
    message: 'A curve was asked for with an end direction of no length.',
    remedy: 'Give a direction that points somewhere.',
  }),
  'ends-meet': () => ({
    message: 'The two lines meet already: there is no room for a curve between them.',
    remedy: 'Leave them as they are, or move them apart.',
  }),
  'no-curvature-join': () => ({
    message: 'No single curve runs on from one line into the other without a change of bend.',
    remedy: 'Join them smoothly only, or leave more room between them.',
  }),
  'unknown-continuity': () => ({
    message: 'Two lines are joined in one tangent or in one curvature.',
    remedy: 'Write "tangent" or "curvature".',
  }),
  'region-not-closed': () => ({
    message: 'Two shapes run so near to each other that where one ends cannot be told.',
    remedy: 'Move them apart, or onto each other.',
  }),
};
