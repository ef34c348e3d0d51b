import { type Accessor, createEffect } from 'solid-js';
import { createAnew } from '../job/asked-anew.js';
import type { Garment } from '../job/garment.js';
import { createInSight } from './in-sight.js';

/** The pages on a paper, laid out anew after each change while their place is in sight; or why there are none. */
export function createPages(garment: Garment, paper: Accessor<string>, place: () => HTMLElement) {
  const seen = createInSight(place);
  const answer = createAnew(
    garment.engine.view,
    () => (seen() || garment.reading() === 'away' ? paper() : undefined),
    garment.engine.pages,
  );
  const picture = () => {
    const came = answer();
    return came && 'pages' in came ? came.pages : undefined;
  };
  // The table shows the same.
  createEffect(() => garment.setPages(picture()));
  return {
    picture,
    refused: (): string => {
      const came = answer();
      return came && 'refused' in came ? came.refused : '';
    },
  };
}
