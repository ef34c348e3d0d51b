import type { Catalogue } from '../catalogue.js';
import { adjust, adjusted } from './adjust.js';
import { became } from './became.js';
import { commandSentences } from './command.js';
import { curve } from './curve.js';
import { cuttingLine } from './cutting-line.js';
import { darts, dartsDone } from './darts.js';
import { derive, drafts } from './derive.js';
import { did } from './did.js';
import { dividing, dividingDone } from './dividing.js';
import { drawings } from './drawings.js';
import { cautions, fit } from './fit.js';
import { foreign } from './foreign.js';
import { fullness, fullnessDone } from './fullness.js';
import { goal, measures } from './goal.js';
import { grammar } from './grammar.js';
import { hinge, slashes } from './hinge.js';
import { lapels, lapelsDone } from './lapels.js';
import { matching, matchingDone } from './matching.js';
import { measure } from './measure.js';
import { measured } from './measured.js';
import { movedEdges } from './moved-edges.js';
import { neckline } from './neckline.js';
import { operations } from './operations.js';
import { order, orderTellings } from './order.js';
import { pattern } from './pattern.js';
import { patternDrawings } from './pattern-drawings.js';
import { photo } from './photo.js';
import { print } from './print.js';
import { redrawnEdges, redrawnEdgesDone } from './redrawn-edges.js';
import { sheet } from './sheet.js';
import { sleeves, sleevesDid } from './sleeves.js';
import { truing } from './truing.js';
import { opened, unfold } from './unfold.js';
import { verb } from './verb.js';

/** What the project says, in English. */
export const english: Catalogue = {
  grammar,
  tellings: {
    ...curve,
    ...cuttingLine,
    ...pattern,
    ...drawings,
    ...patternDrawings,
    ...photo,
    ...print,
    ...verb,
    ...truing,
    ...sleeves,
    ...movedEdges,
    ...neckline,
    ...unfold,
    ...became,
    ...hinge,
    ...measure,
    ...matching,
    ...measured,
    ...foreign,
    ...derive,
    ...lapels,
    ...operations,
    ...darts,
    ...dividing,
    ...fullness,
    ...redrawnEdges,
    ...fit,
    ...adjust,
    ...goal,
    ...orderTellings,
    ...sheet,
  },
  sentences: {
    ...did,
    ...sleevesDid,
    ...adjusted,
    ...dartsDone,
    ...dividingDone,
    ...fullnessDone,
    ...redrawnEdgesDone,
    ...opened,
    ...slashes,
    ...drafts,
    ...lapelsDone,
    ...cautions,
    ...measures,
    ...order,
    ...commandSentences,
    ...matchingDone,
  },
};
