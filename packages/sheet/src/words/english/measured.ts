import type { MeasuredTellings } from '@paperhinge/geometry/sayings';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';

/** What is said of pieces given by measured points. */
export const measured: Tellings<MeasuredTellings> = {
  'point-not-named': ({ name, names }, say) => ({
    message: `There is no point ${say.written(name)} among those measured.`,
    remedy: `Measure it, or name one of ${say.list(names.map(say.written))}.`,
  }),
  'points-in-a-round': ({ names }, say) => ({
    message: `${say.list(names.map(say.written))} are each given by one another, so none of them has a place.`,
    remedy: 'Give one of them by how far it lies across and down.',
  }),
  'distances-too-few': ({ name }, say) => ({
    message: `One distance does not tell where ${say.written(name)} lies.`,
    remedy: 'Measure how far it is from a second point.',
  }),
  'distances-do-not-meet': ({ name, from, gapMm }, say) => ({
    message: `The distances of ${say.written(name)} from ${say.list(from.map(say.written))} miss each other by ${say.length(gapMm)}.`,
    remedy: `Measure both again, and the way between ${say.list(from.map(say.written))}.`,
  }),
  'point-in-two-places': ({ name, ways }, say) => ({
    message: `By these distances ${say.written(name)} may lie in two places.`,
    remedy: `Say which is meant: ${ways.map(way => `towards: ${way}`).join(', or ')}.`,
  }),
  'point-measured-over': ({ name, from, worstMm }, say) => ({
    message: `The distances of ${say.written(name)} agree to within ${say.slight(worstMm)}; the one from ${say.written(from)} agrees least.`,
    remedy: `If that is too much, measure from ${say.written(from)} to ${say.written(name)} again.`,
  }),
  'mirror-line-missing': ({ name }, say) => ({
    message: `The line over which ${say.written(name)} is mirrored begins and ends at one place.`,
    remedy: 'Name two points that lie apart on the line of the fold.',
  }),
  'too-few-measured-edges': ({ edges }) => ({
    message: `${edges === 1 ? 'One edge does' : 'No edge does'} not go round a piece.`,
    remedy: 'Name the edges once round the piece, each with the points that it runs through.',
  }),
  'edge-of-one-point': ({ edge }, say) => ({
    message: `${capital(say.thing(edge))} has fewer than two points.`,
    remedy: 'Name the points that it runs through, from its beginning to its end.',
  }),
  'edges-do-not-meet': ({ edges, points }, say) => ({
    message: `${capital(say.things(edges.slice(0, 1)))} ends at ${say.written(points[0]!)}, and ${say.things(edges.slice(1))}, which comes after it, begins at ${say.written(points[1]!)}.`,
    remedy: 'Name the edges in their order round the piece, each from where the last one ended.',
  }),
  'dart-off-its-edge': ({ dart, points }, say) => ({
    message: `No edge runs past the mouth of ${say.thing(dart)}.`,
    remedy: `Name ${say.list(points.map(say.written))} one after the other in the edge that it opens into.`,
  }),
  'dart-of-wrong-points': ({ dart, points }, say) => ({
    message: `${capital(say.thing(dart))} has ${points === 1 ? '1 point' : `${points} points`}.`,
    remedy:
      'Give three: in the edge, the point of the dart, in the edge; or four for a dart within the piece.',
  }),
  'edges-wait-for-one-another': ({ edges }, say) => ({
    message: `${capital(say.things(edges))} each wait to see how the other runs.`,
    remedy: 'Let one of them end without square or smooth, or give it one point more.',
  }),
  'nothing-to-meet': ({ edge }, say) => ({
    message: `${capital(say.thing(edge))} has a dart beside it, and no edge that it could meet square or smooth.`,
    remedy: 'Leave starts or ends away there, or give one point more near the dart.',
  }),
  'edge-measured-otherwise': ({ edge, drawnMm, givenMm }, say) => ({
    message: `${capital(say.thing(edge))} comes to ${say.length(drawnMm)} by its points, and ${say.length(givenMm)} was measured.`,
    remedy: 'Measure its points again; if it is a curve, name one point more that it runs through.',
  }),
  'notch-point-off-edge': ({ name, awayMm }, say) => ({
    message: `The notch at ${say.written(name)} lies ${say.length(awayMm)} from the nearest edge.`,
    remedy: 'Name a point that lies on an edge.',
  }),
};
