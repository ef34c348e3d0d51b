import { Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { pxPerMm } from './camera.js';

/** What can be done on the projector: first its square is set, then the pieces are turned over or the square set again. */
export function ProjectorWords(props: {
  readonly garment: Garment;
  readonly setting: boolean;
  readonly onSetting: (setting: boolean) => void;
  readonly scale: number;
  readonly onScale: (scale: number) => void;
  readonly turnedOver: boolean;
  readonly onTurnOver: () => void;
  readonly onClose: () => void;
}) {
  const say = () => pageWords[props.garment.language()];
  return (
    <p>
      <Show
        when={props.setting}
        fallback={
          <>
            <button type="button" onClick={() => props.onSetting(true)}>
              {say().setAgain}
            </button>
            <button type="button" aria-pressed={props.turnedOver} onClick={props.onTurnOver}>
              {say().turnedOver}
            </button>
          </>
        }
      >
        <span>{say().setSquare}</span>
        <input
          type="range"
          aria-label={say().setSquare}
          min={pxPerMm * 0.2}
          max={pxPerMm * 3}
          step={pxPerMm / 1000}
          value={props.scale}
          onInput={event => props.onScale(Number(event.currentTarget.value))}
        />
        <button type="button" onClick={() => props.onSetting(false)}>
          {say().measures}
        </button>
      </Show>
      <button type="button" onClick={props.onClose}>
        {say().close}
      </button>
    </p>
  );
}
