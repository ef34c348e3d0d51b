import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** The few words in the table's corner: another pattern, the unit, before and after, the language. */
export function Corner(props: {
  readonly garment: Garment;
  readonly ghosts: boolean;
  readonly onGhosts: () => void;
  readonly shelf: boolean;
  readonly onShelf: () => void;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  return (
    <p class="corner">
      <button type="button" aria-expanded={props.shelf} onClick={props.onShelf}>
        <span class="wide">{say().another}</span>
        <span class="narrow">{say().shelf}</span>
      </button>
      <button
        type="button"
        aria-label={`${say().unit}: ${garment.unit()}`}
        onClick={() => garment.setUnit(u => (u === 'cm' ? 'in' : u === 'in' ? 'mm' : 'cm'))}
      >
        {garment.unit()}
      </button>
      <button type="button" aria-pressed={props.ghosts} onClick={props.onGhosts}>
        {props.ghosts ? say().before : say().afterOnly}
      </button>
      <button
        type="button"
        aria-pressed={garment.seenWhole()}
        onClick={() => garment.setSeenWhole(seen => !seen)}
      >
        {garment.seenWhole() ? say().pieceByPiece : say().seenWhole}
      </button>
      <button
        type="button"
        lang={garment.language() === 'en' ? 'de' : 'en'}
        onClick={() => garment.setLanguage(l => (l === 'en' ? 'de' : 'en'))}
      >
        {garment.language() === 'en' ? 'Deutsch' : 'English'}
      </button>
    </p>
  );
}
