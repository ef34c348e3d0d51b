import type { Heading } from '../job/attention.js';

/** Share of the sheet's height down to which what stands there counts as being read. */
const readDown = 0.25;

/** The section that is being read: the last that begins in the upper part of what is in sight; at the end, the last. */
function headingRead(sheet: HTMLElement): Heading | undefined {
  const { top, height } = sheet.getBoundingClientRect();
  const sections = [...sheet.querySelectorAll('section[aria-labelledby]')];
  const isAtEnd = sheet.scrollTop + sheet.clientHeight >= sheet.scrollHeight - 2;
  const read = isAtEnd
    ? sections.at(-1)
    : sections.findLast(s => s.getBoundingClientRect().top <= top + height * readDown);
  return (read?.getAttribute('aria-labelledby') ?? undefined) as Heading | undefined;
}

const scrolling: ReadonlySet<string> = new Set([
  'PageUp',
  'PageDown',
  'Home',
  'End',
  'ArrowUp',
  'ArrowDown',
  ' ',
]);

/**
 * Tells which heading is read whenever the maker herself scrolls the sheet: by wheel, finger or keys. What scrolls by
 * itself, as a field that is reached by Tab comes into sight, changes nothing on the table.
 */
export function readAlong(sheet: HTMLElement, onRead: (heading: Heading) => void): void {
  let isByHand = false;
  const read = () => {
    const heading = isByHand ? headingRead(sheet) : undefined;
    if (heading !== undefined) onRead(heading);
  };
  // At the end of the sheet a turn of the wheel scrolls nothing, and yet says what is looked at.
  const byHand = () => {
    isByHand = true;
    requestAnimationFrame(read);
  };
  sheet.addEventListener('wheel', byHand, { passive: true });
  sheet.addEventListener('touchmove', byHand, { passive: true });
  sheet.addEventListener('keydown', event => {
    if (scrolling.has(event.key) && event.target === sheet) byHand();
  });
  sheet.addEventListener('focusin', () => {
    isByHand = false;
  });
  sheet.addEventListener('scroll', read);
}
