import { createSignal, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { createFullScreen } from './full-screen.js';
import { Projected } from './Projected.jsx';
import { ProjectorWords } from './ProjectorWords.jsx';
import { projectorKeys } from './projector-keys.js';
import { createProjectorScale } from './projector-scale.js';

/** mm: the side of the square that the projector is set by. */
const square = 200;

/** The pieces at true scale on the whole screen, for a projector over the cutting table; first set by a square. */
export function Projector(props: { readonly garment: Garment; readonly onDone: () => void }) {
  const { garment } = props;
  const { scale, set, grow } = createProjectorScale();
  const [setting, setSetting] = createSignal(true);
  const [over, setOver] = createSignal(false);
  const [at, setAt] = createSignal<readonly [number, number]>([60, 60]);
  const move = (dx: number, dy: number) => setAt(([x, y]) => [x + dx, y + dy]);
  const drag = createDrag(move);
  let all: HTMLElement | undefined;
  const done = () => props.onDone();
  const leaveFullScreen = createFullScreen(() => all, done);
  const close = () => {
    leaveFullScreen();
    done();
  };
  return (
    <section
      class="projector"
      ref={all}
      tabindex="0"
      aria-label={pageWords[garment.language()].project}
      onKeyDown={projectorKeys({ close, grow, move })}
    >
      <svg
        width="100%"
        height="100%"
        aria-hidden="true"
        onPointerDown={drag.down}
        onPointerMove={drag.move}
        onPointerUp={drag.up}
      >
        <Show
          when={!setting()}
          fallback={<rect x="40" y="90" width={square * scale()} height={square * scale()} />}
        >
          <Projected
            pieces={garment.engine.view()?.pieces ?? []}
            at={at()}
            scale={scale()}
            turnedOver={over()}
          />
        </Show>
      </svg>
      <ProjectorWords
        garment={garment}
        setting={setting()}
        onSetting={isSetting => {
          setSetting(isSetting);
          if (!isSetting) all?.focus();
        }}
        scale={scale()}
        onScale={set}
        turnedOver={over()}
        onTurnOver={() => setOver(o => !o)}
        onClose={close}
      />
    </section>
  );
}

/** The pieces follow the pointer while it is held. */
function createDrag(move: (dx: number, dy: number) => void) {
  let from: readonly [number, number] | undefined;
  return {
    down: (event: PointerEvent) => {
      from = [event.clientX, event.clientY];
    },
    move: (event: PointerEvent) => {
      if (!from) return;
      move(event.clientX - from[0], event.clientY - from[1]);
      from = [event.clientX, event.clientY];
    },
    up: () => {
      from = undefined;
    },
  };
}
