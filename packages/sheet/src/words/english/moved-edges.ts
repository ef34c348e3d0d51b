import type { MovedEdgesTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';
import { stepText, typedLength } from '../step-text.js';
import { instead } from './instead.js';

export const movedEdges: Tellings<MovedEdgesTellings> = {
  'no-hem': ({ piece, lines }, say) => ({
    message: capital(`${say.thing(piece)} has no hem.`),
    remedy: `Write data-kind="hem" on the edge that is its hem; if that is sewn to a cuff or band, ${
      lines.length > 0
        ? `work at a line across the piece: ${lines.map(line => `at: ${line}`).join(' or ')}`
        : 'draw a line across the piece, and work at that'
    }.`,
  }),
  'several-hems': ({ piece, hems }, say) => ({
    message: capital(`${say.thing(piece)} has several hems: ${say.things(hems)}.`),
    remedy: 'Name the one that is meant "hem".',
  }),
  'no-grain-line': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} has no grain line; straight up the page was taken for it.`),
    remedy: 'Draw its grain line.',
  }),
  'no-level-there': ({ piece, from, levels }, say) => ({
    message: capital(
      `${say.thing(piece)} has no ${say.name(from)} above its hem to measure down from${levels.length > 0 ? `; its levels: ${say.list(levels.map(say.name))}` : ''}.`,
    ),
    remedy: 'Name a level that the piece has, and how high it stands above the floor; or draw one on it.',
  }),
  'hem-above-level': ({ piece, from, standsMm, heightMm }, say) => ({
    message: `A hem ${say.length(heightMm)} above the floor lies above the ${say.name(from)} of ${say.thing(piece)}, which stands ${say.length(standsMm)} above it.`,
    remedy: 'Give a smaller height.',
  }),
  'grain-across': ({ piece }, say) => ({
    message: `The grain runs across ${say.thing(piece)}: moving along it does not change its length.`,
    remedy: 'Check which way its grain line is drawn.',
  }),
  'shorten-beyond-piece': ({ piece, byMm, line, meets, meetsMm, dart }, say) => {
    const what = byMm < 0 ? 'lengthened' : 'shortened';
    const where = line ? `at ${say.thing(line)}` : 'at the hem';
    const why = !meets
      ? 'its outline would cross itself'
      : meetsMm === undefined
        ? `more than ${say.thing(meets)} has on that side of the line would be used up`
        : `its hem would no longer meet ${say.thing(meets)}, which is ${say.length(meetsMm)} long`;
    return {
      message: capital(
        `${say.thing(piece)} cannot be ${what} by ${say.length(Math.abs(byMm))} ${where}: ${why}.`,
      ),
      remedy: dart
        ? 'Take less, or close the dart first.'
        : line
          ? 'Take less, or at a lower line.'
          : 'Take less.',
    };
  },
  'unknown-line': ({ piece, name, names }, say) => ({
    message: capital(`${say.thing({ piece })} has no line ${say.written(name)}.`),
    remedy: instead(name, names, 'lines', say),
  }),
  'line-through-corner': ({ line, edge }, say) => ({
    message: capital(`${say.thing(line)} runs through the end of ${say.thing(edge)}.`),
    remedy: 'Draw the line a little away from that corner.',
  }),
  'line-off-piece': ({ line }, say) => ({
    message: capital(`${say.thing(line)} does not part its piece in two.`),
    remedy: 'Draw it across the whole piece.',
  }),
  'line-crosses-edge-twice': ({ line, edge }, say) => ({
    message: capital(`${say.thing(line)} crosses ${say.thing(edge)} twice.`),
    remedy: 'Draw the line where it crosses each edge once.',
  }),
  'dart-redrawn': ({ dart }, say) => ({
    message: capital(
      `the line crosses ${say.thing(dart)}: its legs were drawn anew, straight from its mouth to where its point lies now.`,
    ),
    remedy: 'Nothing to do; give them a curve again by hand if they had one.',
  }),
  'dart-mouth-parted': ({ dart, wasMm, isMm }, say) => ({
    message: capital(
      `the line runs out between the legs of ${say.thing(dart)}: it takes in ${say.length(isMm)} now (it was ${say.length(wasMm)}), and the edge beside it is as long as before.`,
    ),
    remedy: `Let it take in as much as before, so that the edge changes its length instead: ${stepText('resize dart', { piece: dart.piece ?? '', dart: dart.dart ?? '', to: typedLength(wasMm, say.unit) })}. Or draw the line above or below the dart.`,
  }),
  'dart-left-uneven': ({ dart, differenceMm }, say) => ({
    message: capital(
      `the legs of ${say.thing(dart)} would differ by ${say.slight(differenceMm)}: they could not be sewn together.`,
    ),
    remedy: 'Close or move the dart first.',
  }),
  'take-in-too-much': ({ piece, byMm, apart, stays }, say) => ({
    message:
      apart.length > 0
        ? capital(`moved by ${say.length(byMm)}, ${say.things(apart)} no longer meet.`)
        : capital(`moved by ${say.length(byMm)}, the outline of ${say.thing(piece)} would cross itself.`),
    remedy: stays
      ? `Let ${say.thing(stays)} move along: make it one edge with the other, or list it in the seam, too.`
      : 'Move the seam by less.',
  }),
  'unknown-seam': ({ name, names }, say) => ({
    message: `The pattern has no seam ${say.written(name)}.`,
    remedy: instead(name, names, 'seams', say),
  }),
  'position-off-seam': ({ seam, alongMm, lengthMm }, say) => ({
    message: `The place lies ${say.length(alongMm)} along ${say.thing(seam)}, which is ${say.length(lengthMm)} long.`,
    remedy: 'Give a share from 0 to 100 %, or a length within the seam.',
  }),
  'seam-end-ambiguous': ({ seam, from }, say) => ({
    message: capital(`the ${say.name(from)} touches both ends of ${say.thing(seam)}.`),
    remedy: 'Write "from start" or "from end": a seam starts where its first edge is listed to begin.',
  }),
  'seam-end-unknown': ({ seam, from, neighbours }, say) => ({
    message: capital(`the ${say.name(from)} touches neither end of ${say.thing(seam)}.`),
    remedy: `Write ${neighbours.map(name => `"from ${name}"`).join(' or ')}, "from start" or "from end".`,
  }),
};
