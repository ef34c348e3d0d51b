import { viewOf } from './camera.js';
import { findTargets } from './find-targets.js';
import { floorMap } from './floor-map.js';
import { floorOfSheets } from './floor-of-sheets.js';
import { unlikeGround } from './ground.js';
import { greyOf, type Picture } from './picture.js';
import { inTone } from './read-target.js';
import { type PrintedStretch, sameSheet, seenSheets } from './seen-sheets.js';
import { solved } from './solve.js';
import { toneOf } from './tone.js';
import { traceFloor } from './trace-floor.js';

export function tracePhotos(pictures: readonly Picture[], printed: PrintedStretch = { across: 1, down: 1 }) {
  const looked = pictures.map(picture => {
    const grey = greyOf(picture);
    const { targets } = findTargets(grey);
    const tone = toneOf(grey, targets, printed);
    return {
      ...picture,
      tone,
      sheets: seenSheets(
        targets.map(t => inTone(grey, t, tone)),
        printed,
      ),
    };
  });
  const solution = solved(looked)!;
  const shots = solution.order.map((i, k) => ({
    picture: pictures[i]!,
    view: viewOf(solution.cameras[k]!),
    tone: looked[i]!.tone,
  }));
  const map = floorMap(
    shots,
    solution.sheets.flatMap((sheet, i) => paperCorners(sheet.paper, mapOf(solution.places[i]!))),
  );
  const sheets = solution.sheets.map((sheet, i) => ({
    sheet,
    at: solution.places[i]!,
    targets: looked.flatMap(l => l.sheets.filter(s => sameSheet(s.sheet, sheet)).flatMap(s => s.targets)),
  }));
  const known = floorOfSheets(map, sheets);
  const unlike = unlikeGround(map, known)!;
  const floor = { map, shots, paper: known.paper };
  return { solution, map, unlike, known, sheets, ...traceFloor(floor, unlike) };
}

import { paperCorners } from './target-sheet.js';
import { mapOf } from './unknowns.js';
