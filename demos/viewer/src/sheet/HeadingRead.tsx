import type { JSX } from 'solid-js';
import type { Heading } from '../job/attention.js';
import type { Garment } from '../job/garment.js';

/** A heading of the sheet; chosen, the table answers it. */
export function HeadingRead(props: {
  readonly garment: Garment;
  readonly heading: Heading;
  readonly children: JSX.Element;
}) {
  return (
    <h2 id={props.heading}>
      <button
        type="button"
        aria-pressed={props.garment.reading() === props.heading}
        onClick={event => {
          props.garment.setReading(props.heading);
          event.currentTarget.closest('section')?.scrollIntoView({ block: 'start' });
        }}
      >
        {props.children}
      </button>
    </h2>
  );
}
