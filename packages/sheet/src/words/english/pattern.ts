import type { PatternTellings } from '@paperhinge/geometry/sayings';
import { capital } from '../capital.js';
import type { Say, Tellings } from '../catalogue.js';
import { shownName } from '../names.js';
import { instead, oneOf } from './instead.js';
import { roles } from './roles.js';

export const pattern: Tellings<PatternTellings> = {
  'length-not-understood': ({ attribute }, say) => ({
    message: `${attribute === undefined ? 'A length' : `The length in ${say.written(attribute)}`} was not understood.`,
    remedy: 'Write it as 12 mm, 1.2 cm, 3/8 in or 2 7/8".',
  }),
  'length-out-of-range': ({ attribute }, say) => ({
    message: `${attribute === undefined ? 'A length' : `The length in ${say.written(attribute)}`} is over 100 m.`,
    remedy: 'Check its unit.',
  }),
  'percent-not-understood': ({ write, lacksSign }) => ({
    message: lacksSign ? 'A percentage lacks its sign.' : 'A percentage was not understood.',
    remedy:
      write === undefined ? 'Write a percentage such as 80 %.' : `Write ${write}, if that is what you mean.`,
  }),
  'position-not-understood': ({ form }) => ({
    message: 'A place on an edge was not understood.',
    remedy: {
      'from-nothing': 'Name the edge after "from".',
      'share-or-length': 'Write 50 % or 1/2 for a share, or 0.5 mm for a length.',
      any: 'Write it as 1/3, 40 %, 1/3 from EDGE or 60 mm from EDGE.',
    }[form],
  }),
  'position-off-edge': ({ edge, alongMm, edgeMm }, say) =>
    edge !== undefined && alongMm !== undefined && edgeMm !== undefined && alongMm <= edgeMm
      ? {
          message: `The part of ${say.thing(edge)} ends where it begins, or before.`,
          remedy:
            'Of its two places write first the one nearer to the end that "from" names, such as 0 mm to 25 mm.',
        }
      : {
          message:
            edge === undefined || alongMm === undefined || edgeMm === undefined
              ? 'A place lies beyond its edge.'
              : `The place lies ${say.length(alongMm)} along ${say.thing(edge)}, which is ${say.length(edgeMm)} long.`,
          remedy: 'Give a share from 0 to 100 %, or a length within the edge.',
        },
  'ambiguous-end': ({ edge, from }, say) => ({
    message: `The ${say.name(from)} touches both ends of ${say.thing(edge)}.`,
    remedy:
      'Write "from start" or "from end": its start is the end that is met first going clockwise round the piece.',
  }),
  'not-a-neighbour': ({ edge, from, neighbours }, say) => ({
    message: `The ${say.name(from)} does not touch ${say.thing(edge)}.`,
    remedy: `Write ${neighbours.map(name => `"from ${shownName(name)}"`).join(' or ')}.`,
  }),
  'pattern-not-usable': ({ at }) => ({
    message: `The pattern is damaged: "${at}" is missing, or is not what belongs there.`,
    remedy: 'Open the pattern again from its file.',
  }),
  'unknown-piece': ({ name, names, seam }, say) => ({
    message:
      seam === undefined
        ? `The pattern has no piece ${say.written(name)}.`
        : `The ${say.name(seam)} seam is sewn to a piece that is not there: ${say.written(name)}.`,
    remedy: instead(name, names, 'pieces', say),
  }),
  'unknown-edge': ({ name, names, piece, seam, notch }, say) => ({
    message: capital(`${who(seam, notch, say)}${say.thing({ piece })} has no edge ${say.written(name)}.`),
    remedy: instead(name, names, 'edges', say),
  }),
  'name-missing': ({ what }) => ({
    message: `${/^[eo]/.test(what) ? 'An' : 'A'} ${what} has no name.`,
    remedy: `Give every ${what} a name.`,
  }),
  'duplicate-piece': ({ name }, say) => ({
    message: `There are two pieces called ${say.written(name)}.`,
    remedy: 'Give each a name of its own.',
  }),
  'duplicate-seam': ({ name }, say) => ({
    message: `There are two seams called ${say.written(name)}.`,
    remedy: 'Give each a name of its own.',
  }),
  'duplicate-fabric': ({ name }, say) => ({
    message: `There are two cloths called ${say.written(name)}.`,
    remedy: 'Give each a name of its own.',
  }),
  'duplicate-edge': ({ name }, say) => ({
    message: `Two edges, darts or pleats are called ${say.written(name)}.`,
    remedy: 'Give each a name of its own.',
  }),
  'cut-count': ({ most }) => ({
    message: `How often a piece is cut must be a whole number from 1 to ${most}.`,
    remedy: 'Write 1, or 2 for a pair.',
  }),
  'piece-without-outline': () => ({
    message: 'A piece has no edges.',
    remedy: 'Mark its edges with data-edge, or one closed path with data-outline.',
  }),
  'edge-without-length': () => ({
    message: 'An edge or dart leg has no length.',
    remedy: 'Remove it, or draw it.',
  }),
  'open-outline': ({ gapMm, between }, say) => ({
    message:
      gapMm === undefined
        ? `The outline is open: nothing meets the end of ${say.list((between ?? []).map(say.written))}.`
        : `The outline is open${
            between === undefined ? '' : ` between ${say.list(between.map(say.written))}`
          }: a gap of ${say.slight(gapMm)}.`,
    remedy: 'Let each edge start where the last one ends.',
  }),
  'outline-in-parts': ({ name }, say) => ({
    message: `The edges make more than one ring; ${say.written(name)} is not in the first.`,
    remedy: 'Give each ring a piece of its own, or draw its edges so that they meet.',
  }),
  'edge-names-do-not-fit': ({ edges, names }) => ({
    message: `The outline has ${edges} edges between its corners, but ${names} names are given.`,
    remedy: "Name every edge, clockwise from the corner at or after the path's first point.",
  }),
  'dart-without-apex': () => ({
    message: 'A dart has no point: its line has no corner.',
    remedy: "Draw it from one leg's end to the point and back to the other leg's end.",
  }),
  'self-crossing': ({ xMm, yMm, edges }, say) => ({
    message: `The outline crosses itself, ${say.length(xMm)} across and ${say.length(yMm)} down: ${say.list(edges.map(say.written))}.`,
    remedy: 'Redraw the edges so that they meet only at their ends.',
  }),
  'edge-in-parts': ({ name }, say) => ({
    message: `The edge ${say.written(name)} lies in separate places.`,
    remedy: 'Give each part a name of its own; only darts, pleats or one other edge may interrupt an edge.',
  }),
  'allowance-out-of-range': ({ mostMm }, say) => ({
    message: `An allowance must be from 0 to ${say.atMost(mostMm)}.`,
    remedy: 'Check its sign and its unit.',
  }),
  'allowance-on-fold': () => ({
    message: 'A fold or raw edge has no allowance.',
    remedy: 'Set its allowance to 0, or make it a seam.',
  }),
  'opening-out-of-range': () => ({
    message: 'An opening must be longer than 0.',
    remedy: 'Give its length, or leave it out.',
  }),
  'dart-legs-differ': ({ dart, firstMm, secondMm, limitMm }, say) => ({
    message: `The legs of ${say.thing(dart)} differ by ${say.slight(Math.abs(firstMm - secondMm))}: ${say.length(firstMm)} and ${say.length(secondMm)}.`,
    remedy:
      Math.abs(firstMm - secondMm) > limitMm
        ? `Draw them equally long, within ${say.allowance(limitMm)}.`
        : 'Sewn, its ends will step by that much: draw them equally long.',
  }),
  'outline-without-area': () => ({
    message: 'The outline encloses nothing.',
    remedy: 'Check that its edges are not drawn on top of each other.',
  }),
  'outline-anticlockwise': () => ({
    message: 'The outline runs anticlockwise.',
    remedy: 'List its edges clockwise as seen on the page.',
  }),
  'notch-off-edge': ({ alongMm, edgeMm }, say) => ({
    message: `A notch lies ${say.length(alongMm)} along an edge that is ${say.length(edgeMm)} long.`,
    remedy: 'Move it onto the edge.',
  }),
  'word-not-understood': ({ attribute, near, words, readAs }, say) => ({
    message: `${say.written(attribute)} says a word that is not one of its own${readAs === undefined ? '' : `; it was read as ${say.written(readAs)}`}.`,
    remedy: oneOf(near, words, say),
  }),
  'length-not-positive': ({ attribute }, say) => ({
    message: `${say.written(attribute)} must be longer than 0.`,
    remedy: 'Give its length, or leave it out.',
  }),
  'stretch-out-of-range': ({ most }) => ({
    message: `A stretch or recovery must be from 0 to ${most} %.`,
    remedy: 'Check the figure.',
  }),
  'sizes-differ': ({ part, sizes: [first, second], piece }, say) => ({
    message: `The sizes ${say.name(first)} and ${say.name(second)} differ in more than their lengths: ${
      piece === undefined ? unlike[part] : `${unlike[part]} of ${say.thing(piece)}`
    } are not the same.`,
    remedy: 'Draw both sizes with the same names in the same order.',
  }),
  'share-out-of-range': () => ({
    message: 'How much of the larger size is wanted must be from 0 to 100 %.',
    remedy: 'Write 50 % for a size half way between.',
  }),
  'unknown-level': ({ level, names }, say) => ({
    message: `No piece has a level called ${say.written(level)}.`,
    remedy: instead(level, names, 'levels', say),
  }),
  'role-guessed': ({ edge, role }, say) => ({
    message: `Going by its name and place, ${say.thing(edge)} was taken to be the ${roles[role]}.`,
    remedy: `Write data-role="${role}" on it in the drawing, or what else it is.`,
  }),
  'empty-seam': ({ name }, say) => ({
    message: `One side of the ${say.name(name)} seam has no edge.`,
    remedy: 'Give both sides, a and b.',
  }),
};

const unlike = {
  pieces: 'the pieces',
  outline: 'edges, darts and pleats',
  kinds: 'the kinds of the edges',
  notches: 'the notches',
  lines: 'the lines',
  marks: 'the marks',
  seams: 'the seams',
} as const;

/** Who speaks of an edge that is not there. */
const who = (seam: string | undefined, notch: boolean | undefined, say: Say): string =>
  seam !== undefined
    ? `The ${say.name(seam)} seam names an edge that is not there: `
    : notch
      ? 'A notch lies on an edge that is not there: '
      : '';
