import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** The few words in the table's corner: another pattern, the unit, before and after, the language. */
export function Corner(props: {
  readonly garment: Garment;
  readonly ghosts: boolean;
  readonly onGhosts: () => void;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const lay = async (files: FileList | null) => {
    const [file] = files ?? [];
    if (!file) return;
    const pattern = await file.text();
    const now = `pattern: ${JSON.stringify(file.name)}\nunit: cm\nsteps: []\n`;
    garment.load({
      patternName: file.name,
      pattern,
      history: { past: [], now, future: [] },
      needle: undefined,
    });
  };
  return (
    <p class="corner">
      <label>
        {say().another}
        <input type="file" accept=".svg,image/svg+xml" onChange={event => lay(event.currentTarget.files)} />
      </label>
      <button
        type="button"
        onClick={() => garment.setUnit(u => (u === 'cm' ? 'in' : u === 'in' ? 'mm' : 'cm'))}
      >
        {garment.unit()}
      </button>
      <button type="button" aria-pressed={props.ghosts} onClick={props.onGhosts}>
        {props.ghosts ? say().before : say().afterOnly}
      </button>
      <button type="button" onClick={() => garment.setLanguage(l => (l === 'en' ? 'de' : 'en'))}>
        {garment.language() === 'en' ? 'Deutsch' : 'English'}
      </button>
    </p>
  );
}
