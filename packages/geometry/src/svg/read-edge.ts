import { edgeRoles } from '../pattern/roles/role-names.js';
import type { Edge, EdgeKind } from '../pattern/types.js';
import { cornerRules, edgeKinds, finishes } from '../pattern/words.js';
import { largestAllowance } from '../tolerance.js';
import { lengthOf, positiveLength, type ReadingPlace, roleGiven, wordOf } from './attribute-values.js';
import type { Item } from './gather.js';
import type { PieceContext } from './piece-context.js';

import { drawnLines } from './vocabulary.js';

/** What the drawing says of an edge besides its line. */
export interface EdgeReader {
  readonly attributes: Omit<Edge, 'type' | 'name' | 'path'>;
  /** mm that the drawn line lies outside the stitching line; 0 where the stitching line is drawn. */
  readonly included: number;
}

/**
 * All that is said of an edge besides its line. The allowance is its own or that of the nearest enclosing element;
 * where the cutting line is drawn, the allowance it includes. None at all is 0, with a finding.
 */
export function edgeReader(item: Item, name: string, context: PieceContext): EdgeReader {
  const { element } = item;
  const { sheet } = context;
  const place: ReadingPlace = { ...context, owner: { ...context.owner, edge: name } };
  const kind = sheet?.kinds?.[name] ?? wordOf(element, 'data-kind', edgeKinds, place) ?? 'seam';
  const isCutting = drawnLine(item, context, place) === 'cutting';
  const allowance = allowanceOf(item, kind, isCutting, name, context);
  const start = wordOf(element, 'data-corner-start', cornerRules, place);
  const end = wordOf(element, 'data-corner-end', cornerRules, place);
  const role = sheet?.roles?.[name];
  return {
    attributes: {
      kind,
      ...(role === undefined ? roleGiven(element, edgeRoles, place) : { role }),
      allowance,
      corners: { ...(start ? { start } : {}), ...(end ? { end } : {}) },
      ...finishOf(element, place),
    },
    included: isCutting ? allowance : 0,
  };
}

/** How it opens and how it is finished. */
function finishOf(
  element: Item['element'],
  place: ReadingPlace,
): Pick<Edge, 'opening' | 'finish' | 'topstitch' | 'interfacing'> {
  const opening = positiveLength(element, 'data-opening', place);
  const finish = wordOf(element, 'data-finish', finishes, place);
  const topstitch = positiveLength(element, 'data-topstitch', place);
  const interfacing = positiveLength(element, 'data-interfacing', place);
  return {
    ...(opening === undefined ? {} : { opening }),
    ...(finish === undefined ? {} : { finish }),
    ...(topstitch === undefined ? {} : { topstitch }),
    ...(interfacing === undefined ? {} : { interfacing }),
  };
}

function drawnLine(
  { inherited }: Item,
  { sheet }: PieceContext,
  place: ReadingPlace,
): 'stitching' | 'cutting' {
  if (sheet?.lineDrawn) return sheet.lineDrawn;
  const { lineDrawn } = inherited;
  return (lineDrawn && wordOf(lineDrawn, 'data-line-drawn', drawnLines, place)) ?? 'stitching';
}

function allowanceOf(
  item: Item,
  kind: EdgeKind,
  isCutting: boolean,
  name: string,
  context: PieceContext,
): number {
  if (kind === 'fold' || kind === 'raw') return 0;
  const { sheet, report } = context;
  const owner = { ...context.owner, edge: name };
  const checked = (allowance: number, at: number): number => {
    if (allowance >= 0 && allowance <= largestAllowance) return allowance;
    throw report.refuse('allowance-out-of-range', at, { mostMm: largestAllowance }, owner);
  };
  const fromSheet = isCutting ? (sheet?.includedAllowance ?? sheet?.allowance) : sheet?.allowance;
  if (fromSheet !== undefined) return checked(fromSheet, item.element.offset);
  const attribute = isCutting ? 'data-included-allowance' : 'data-allowance';
  const written = isCutting ? item.inherited.includedAllowance : item.inherited.allowance;
  if (written) return checked(lengthOf(written, attribute, { ...context, owner }), written.offset);
  report.add('note', 'allowance-not-given', item.element.offset, { edge: owner, attribute }, owner);
  return 0;
}
