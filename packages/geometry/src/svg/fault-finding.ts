import type { PatternError } from '../errors.js';
import type { Owner, Report } from './report.js';
import type { ShapeFault } from './shapes.js';
import { type Element, elementFacts } from './xml.js';

/** Where a fault in an element's geometry stands in the file. */
function placeOf(report: Report, element: Element, { attribute, index }: ShapeFault): number {
  const place = element.attributes.get(attribute);
  return place && index !== undefined ? report.within(place, index) : (place?.offset ?? element.offset);
}

const isPathData = ({ attribute }: ShapeFault): boolean => attribute === 'd' || attribute === 'points';

/** A fault in an element's geometry as an error to throw. */
export function faultError(report: Report, element: Element, fault: ShapeFault, owner: Owner): PatternError {
  const { attribute, reason } = fault;
  const at = placeOf(report, element, fault);
  const facts = { ...elementFacts(element), reason };
  return isPathData(fault)
    ? report.refuse('path-data-broken', at, { ...facts, drawnSoFar: false }, owner)
    : report.refuse('attribute-not-understood', at, { ...facts, attribute, leftOut: false }, owner);
}

/** Says that a shape is drawn up to its fault, or without the attribute that is at fault. */
export function faultFinding(report: Report, element: Element, fault: ShapeFault): void {
  const { attribute, reason } = fault;
  const at = placeOf(report, element, fault);
  const facts = { ...elementFacts(element), reason };
  if (isPathData(fault)) report.add('warning', 'path-data-broken', at, { ...facts, drawnSoFar: true });
  else report.add('warning', 'attribute-not-understood', at, { ...facts, attribute, leftOut: true });
}
