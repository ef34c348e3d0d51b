import type { HingeSentences, HingeTellings } from '@paperhinge/alter/sayings';
import type { Thing } from '@paperhinge/geometry';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';
import { edgeText, stepText } from '../step-text.js';
import { instead } from './instead.js';

/** Slashes, and what they leave. */
export const hinge: Tellings<HingeTellings> = {
  'unknown-dart': ({ piece, name, names }, say) => ({
    message: capital(`${say.thing({ piece })} has no dart ${say.written(name)}.`),
    remedy: instead(name, names, 'darts', say),
  }),
  'dart-within-piece': ({ piece, name }, say) => ({
    message: `The dart ${say.written(name)} lies within ${say.thing({ piece })}, pointed at both ends: it has no mouth at an edge.`,
    remedy:
      'Cut the piece in two through it, along the line it is widest on (divide): that makes two darts of it. Or let it take in more or less: resize dart.',
  }),
  'slash-leaves-piece': ({ slash, edge }, say) => ({
    message:
      edge === undefined
        ? `The slash ${say.saying(slash)} would lie outside the piece.`
        : `The slash ${say.saying(slash)} would run out of the piece across ${say.thing(edge)}.`,
    remedy: 'Give other places for its ends, so that it stays inside the piece.',
  }),
  'slash-crosses-dart': ({ slash, dart }, say) => ({
    message: `The slash ${say.saying(slash)} would cut through ${say.thing(dart)}.`,
    remedy: 'Place the slash clear of the dart, or close or move the dart first.',
  }),
  'slash-crosses-pleat': ({ slash, pleat }, say) => ({
    message: `The slash ${say.saying(slash)} would cut through ${say.thing(pleat)}.`,
    remedy: 'Place the slash clear of the pleat.',
  }),
  'slashes-cross': ({ first, second }, say) => ({
    message: `The slash ${say.saying(first)} would cross the one ${say.saying(second)}.`,
    remedy: 'Place them so that they meet at their ends only.',
  }),
  'slash-twice': ({ slash }, say) => ({
    message: `Two slashes run ${say.saying(slash)}.`,
    remedy: 'Make one of them, and open it by what both were to open together.',
  }),
  'slashes-too-near': ({ first, second }, say) => ({
    message: `The slash ${say.saying(first)} almost touches the one ${say.saying(second)}: hardly a thread of paper would be left between them.`,
    remedy: 'Let them meet in one point, or place them at least 1 mm (1/16 in) apart.',
  }),
  'slash-too-short': () => ({
    message: 'A slash would begin and end at the same point.',
    remedy: 'Place its two ends apart.',
  }),
  'slash-not-attached': ({ slash }, say) => ({
    message: `The slash ${say.saying(slash)} touches no edge.`,
    remedy: 'Begin it on an edge, or join it to a slash that does.',
  }),
  'dart-torn': ({ dart }, say) => ({
    message: `The two legs of ${say.thing(dart)} would come apart at its point.`,
    remedy: 'Turn about the point of the dart.',
  }),
  'dart-overclosed': ({ dart }, say) => ({
    message: `The legs of ${say.thing(dart)} would cross.`,
    remedy: 'Turn by less than the angle of the dart.',
  }),
  'pivot-out-of-reach': ({ dart }, say) => ({
    message: `The legs of ${say.thing(dart)} cannot be drawn to that point inside the piece.`,
    remedy: 'Turn about a point inside the piece that the dart points to.',
  }),
  'overlap-too-wide': ({ stripMm }, say) => ({
    message: `The overlap would swallow a strip ${say.length(stripMm)} wide.`,
    remedy: 'Overlap by less, or make fewer slashes.',
  }),
  'outline-tangled': ({ piece }, say) => ({
    message: `The outline of ${say.thing({ piece })} would cross itself.`,
    remedy: 'Turn or overlap by less, or place the slash elsewhere.',
  }),
  'outline-open': ({ gapMm }, say) => ({
    message: `The outline gapes by ${say.slight(gapMm)}.`,
    remedy: 'Close the outline of the piece as it is drawn.',
  }),
  'edge-bridged': ({ edge, openedMm, count }, say) => ({
    message: capital(
      `${say.thing(edge)} opened by ${say.length(openedMm)}${places(count)} and is joined straight across.`,
    ),
    remedy: trueIt(edge),
  }),
  'edge-overlapped': ({ edge, openedMm, stepMm, count }, say) => ({
    message: capital(
      `${say.thing(edge)} overlaps by ${say.length(-openedMm)}${places(count)} and is cut ${
        stepMm > 0 ? `half way, with a step of ${say.slight(stepMm)}` : 'where its two sides cross'
      }.`,
    ),
    remedy: trueIt(edge),
  }),
  'hinge-kink': ({ edge, kinkDeg, count }, say) => ({
    message: capital(
      `${say.thing(edge)} bends by ${say.angle(kinkDeg)} at ${count === undefined ? 'the hinge' : `${count} hinges`}.`,
    ),
    remedy: trueIt(edge),
  }),
  'dart-step': ({ dart, stepMm }, say) => ({
    message: `The legs of ${say.thing(dart)} are not equally long: closed, they leave a step of ${say.slight(stepMm)}.`,
    remedy: 'True the edge across it.',
  }),
  'fold-bent': ({ edge, offMm }, say) => ({
    message: capital(
      `${say.thing(edge)} is ${say.slight(offMm)} off a straight line now, and cannot be laid on a fold.`,
    ),
    remedy: 'Draw it straight, or make it a seam.',
  }),
  'lines-parted': ({ lines }, say) => ({
    message: `Slashes cross ${say.things(lines)}: the parts moved with the cloth and are joined straight across.`,
    remedy: 'Redraw what is wanted otherwise.',
  }),
  'grain-line-shortened': ({ line, keptMm }, say) => ({
    message: capital(
      `${say.thing(line)} was slashed; ${say.length(keptMm)} of it, on the cloth that stayed, is kept.`,
    ),
    remedy: 'Draw it longer if it is hard to lay straight.',
  }),
  'grain-line-stays': ({ line }, say) => ({
    message: capital(
      `${say.thing(line)} lay on a part that moved. It stays where it was drawn, as the grain of the part with the centre.`,
    ),
    remedy: 'Move it on to that part, parallel, if it is in the way.',
  }),
};

/** How a slash is named within a sentence. */
export const slashes: Sentences<HingeSentences> = {
  slash: ({ from, to }, say) => `from ${say.saying(from)} to ${say.saying(to)}`,
  'slash-at-edge': ({ edge, alongMm }, say) => `${say.length(alongMm)} along ${say.thing(edge)}`,
  'slash-at-dart': ({ dart }, say) => `the point of ${say.thing(dart)}`,
  'slash-at-point': () => 'a point inside the piece',
};

const places = (count: number | undefined): string => (count === undefined ? '' : ` at ${count} places`);

const trueIt = (edge: Thing): string => `True it: ${stepText('true', { edges: [edgeText(edge)] })}.`;
