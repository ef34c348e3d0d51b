// The whole catalogue: each table of words is answered for by one of the tests of remedies, code by code.
import { english } from '@paperhinge/sheet/words';
import { expect, test } from 'vitest';
import { adjust } from '../../packages/sheet/src/words/english/adjust.js';
import { became } from '../../packages/sheet/src/words/english/became.js';
import { curve } from '../../packages/sheet/src/words/english/curve.js';
import { cuttingLine } from '../../packages/sheet/src/words/english/cutting-line.js';
import { darts } from '../../packages/sheet/src/words/english/darts.js';
import { derive } from '../../packages/sheet/src/words/english/derive.js';
import { dividing } from '../../packages/sheet/src/words/english/dividing.js';
import { drawings } from '../../packages/sheet/src/words/english/drawings.js';
import { fit } from '../../packages/sheet/src/words/english/fit.js';
import { foreign } from '../../packages/sheet/src/words/english/foreign.js';
import { fullness } from '../../packages/sheet/src/words/english/fullness.js';
import { goal } from '../../packages/sheet/src/words/english/goal.js';
import { hinge } from '../../packages/sheet/src/words/english/hinge.js';
import { lapels } from '../../packages/sheet/src/words/english/lapels.js';
import { matching } from '../../packages/sheet/src/words/english/matching.js';
import { measure } from '../../packages/sheet/src/words/english/measure.js';
import { measured } from '../../packages/sheet/src/words/english/measured.js';
import { movedEdges } from '../../packages/sheet/src/words/english/moved-edges.js';
import { neckline } from '../../packages/sheet/src/words/english/neckline.js';
import { operations } from '../../packages/sheet/src/words/english/operations.js';
import { orderTellings } from '../../packages/sheet/src/words/english/order.js';
import { pattern } from '../../packages/sheet/src/words/english/pattern.js';
import { patternDrawings } from '../../packages/sheet/src/words/english/pattern-drawings.js';
import { photo } from '../../packages/sheet/src/words/english/photo.js';
import { print } from '../../packages/sheet/src/words/english/print.js';
import { redrawnEdges } from '../../packages/sheet/src/words/english/redrawn-edges.js';
import { sheet } from '../../packages/sheet/src/words/english/sheet.js';
import { sleeves } from '../../packages/sheet/src/words/english/sleeves.js';
import { truing } from '../../packages/sheet/src/words/english/truing.js';
import { unfold } from '../../packages/sheet/src/words/english/unfold.js';
import { verb } from '../../packages/sheet/src/words/english/verb.js';

test('every table of words is answered for by a test of remedies', () => {
  const answered = [
    adjust,
    became,
    curve,
    cuttingLine,
    darts,
    derive,
    dividing,
    drawings,
    fit,
    foreign,
    fullness,
    goal,
    hinge,
    lapels,
    matching,
    measure,
    measured,
    movedEdges,
    neckline,
    operations,
    orderTellings,
    pattern,
    patternDrawings,
    photo,
    print,
    redrawnEdges,
    sheet,
    sleeves,
    truing,
    unfold,
    verb,
  ].flatMap(table => Object.keys(table));
  expect(Object.keys(english.tellings).filter(code => !answered.includes(code))).toEqual([]);
});
