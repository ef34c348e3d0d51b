import { edgeRoles } from '../pattern/roles/role-names.js';
import type { Edge, EdgeKind } from '../pattern/types.js';
import { largestAllowance } from '../tolerance.js';
import { lengthOf, roleGiven, wordOf } from './attribute-values.js';
import type { Item } from './gather.js';
import type { PieceContext } from './read-piece.js';
import { cornerRules, drawnLines, edgeKinds } from './vocabulary.js';
import type { Attribute } from './xml.js';

/** What the drawing says of an edge besides its line. */
export interface EdgeReader {
  readonly attributes: Pick<Edge, 'kind' | 'role' | 'allowance' | 'corners' | 'opening'>;
  /** mm that the drawn line lies outside the stitching line; 0 where the stitching line is drawn. */
  readonly included: number;
}

/**
 * Kind, allowance, corners and opening of an edge. The allowance is its own or that of the nearest enclosing element;
 * where the cutting line is drawn, the allowance it includes. None at all is 0, with a finding.
 */
export function edgeReader(item: Item, name: string, context: PieceContext): EdgeReader {
  const { element } = item;
  const owner = { ...context.owner, edge: name };
  const kind =
    context.sheet?.kinds?.[name] ?? wordOf(element, 'data-kind', edgeKinds, context.report, owner) ?? 'seam';
  const isCutting = drawnLine(item, context, owner) === 'cutting';
  const allowance = allowanceOf(item, kind, isCutting, name, context);
  const start = wordOf(element, 'data-corner-start', cornerRules, context.report, owner);
  const end = wordOf(element, 'data-corner-end', cornerRules, context.report, owner);
  const open = element.attributes.get('data-opening');
  return {
    attributes: {
      kind,
      ...roleGiven(element, edgeRoles, context.report, owner),
      allowance,
      corners: { ...(start ? { start } : {}), ...(end ? { end } : {}) },
      ...(open ? { opening: positive(open, 'data-opening', 'opening-out-of-range', context, owner) } : {}),
    },
    included: isCutting ? allowance : 0,
  };
}

type Owner = PieceContext['owner'] & { readonly edge: string };

function drawnLine(
  { inherited }: Item,
  { sheet, report }: PieceContext,
  owner: Owner,
): 'stitching' | 'cutting' {
  if (sheet?.lineDrawn) return sheet.lineDrawn;
  const { lineDrawn } = inherited;
  return (lineDrawn && wordOf(lineDrawn, 'data-line-drawn', drawnLines, report, owner)) ?? 'stitching';
}

function allowanceOf(
  item: Item,
  kind: EdgeKind,
  isCutting: boolean,
  name: string,
  context: PieceContext,
): number {
  if (kind === 'fold' || kind === 'raw') return 0;
  const { sheet, report, unit } = context;
  const owner = { ...context.owner, edge: name };
  const fromSheet = isCutting ? (sheet?.includedAllowance ?? sheet?.allowance) : sheet?.allowance;
  if (fromSheet !== undefined) return checked(fromSheet, item.element.offset, context, owner);
  const which = isCutting ? 'data-included-allowance' : 'data-allowance';
  const written = isCutting ? item.inherited.includedAllowance : item.inherited.allowance;
  if (written) return checked(lengthOf(written, which, unit, report, owner), written.offset, context, owner);
  report.add('note', 'allowance-not-given', item.element.offset, {
    message: `No allowance is given for this edge; it was taken as 0.`,
    remedy: `Write ${which} on the edge, its piece or the drawing.`,
    ...owner,
  });
  return 0;
}

function checked(allowance: number, at: number, context: PieceContext, owner: Owner): number {
  if (allowance >= 0 && allowance <= largestAllowance) return allowance;
  throw context.report.error('allowance-out-of-range', at, {
    message: `An allowance must be from 0 to ${largestAllowance} mm.`,
    remedy: 'Check its sign and its unit.',
    ...owner,
  });
}

function positive(
  attribute: Attribute,
  name: string,
  code: string,
  context: PieceContext,
  owner: Owner,
): number {
  const mm = lengthOf(attribute, name, context.unit, context.report, owner);
  if (mm > 0) return mm;
  throw context.report.error(code, attribute.offset, {
    message: `${name} must be longer than 0.`,
    remedy: 'Give its length, or leave it out.',
    ...owner,
  });
}
