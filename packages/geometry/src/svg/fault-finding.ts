import type { Report } from './report.js';
import type { ShapeFault } from './shapes.js';
import { type Element, elementLabel } from './xml.js';

interface FaultText {
  readonly at: number;
  readonly message: string;
  readonly remedy: string;
}

/** A fault in an element's geometry in words, and where it stands in the file. */
export function describeFault(
  report: Report,
  element: Element,
  { attribute, index, reason }: ShapeFault,
): FaultText {
  const place = element.attributes.get(attribute);
  const at = place && index !== undefined ? report.within(place, index) : (place?.offset ?? element.offset);
  const isPath = attribute === 'd' || attribute === 'points';
  return {
    at,
    message: isPath
      ? `The path data of ${elementLabel(element)} breaks off: ${reason}.`
      : `The ${attribute} of ${elementLabel(element)} cannot be used: ${reason}.`,
    remedy: isPath ? 'Draw the line again, or mend its data.' : 'Write it as SVG does, or remove it.',
  };
}

/** Says that a shape is drawn up to its fault, or without the attribute that is at fault. */
export function faultFinding(report: Report, element: Element, fault: ShapeFault): void {
  const { at, message, remedy } = describeFault(report, element, fault);
  const isPath = fault.attribute === 'd' || fault.attribute === 'points';
  report.add('warning', isPath ? 'path-data-broken' : 'attribute-not-understood', at, {
    message: `${message} ${isPath ? 'It is drawn up to there.' : 'It is left out.'}`,
    remedy,
  });
}
