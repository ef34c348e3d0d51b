import type { Where } from '@paperhinge/geometry';
import { createEffect, createMemo, createSignal, on, onCleanup, onMount, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { Corner } from './Corner.jsx';
import { createCamera } from './camera.js';
import { createGestures } from './gestures.js';
import { Handles } from './Handles.jsx';
import { ListView } from './ListView.jsx';
import { Lying } from './Lying.jsx';
import { createLayout } from './layout.js';
import { Measure } from './Measure.jsx';
import { Shelf } from './Shelf.jsx';
import { Slip } from './Slip.jsx';
import { tableKeys } from './table-keys.js';
import { createTouching } from './touching.js';
import { around, WalkedPieces } from './WalkedPieces.jsx';
import { Walking } from './Walking.jsx';
import { boxOfWhole, WholeGarment } from './Whole.jsx';

/** The table with the pieces on it: panned, zoomed, touched. */
export function Table(props: {
  readonly garment: Garment;
  readonly onReady: (fly: (where: Where) => void) => void;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  let table: HTMLElement | undefined;
  const control = createCamera();
  const { camera, show, fly } = control;
  // Panning moves the whole drawing as it is; only another scale draws anew.
  const scale = createMemo(() => camera().scale);
  const gestures = createGestures(control, () => table!);
  const [room, setRoom] = createSignal({ width: 800, height: 600 });
  const [ghosts, setGhosts] = createSignal(true);
  const [station, setStation] = createSignal(0);
  const [shelf, setShelf] = createSignal(false);
  /** The stitching lines as they were when the hand took hold, while it holds. */
  const [held, setHeld] = createSignal<ReadonlyMap<string, string>>();
  const layout = createLayout(garment, room, scale, () => held() !== undefined);
  const { pieces, placeOf, whole } = layout;
  const touching = createTouching(garment, layout, { table: () => table!, camera, ...gestures });
  const { touch, isTouched } = touching;

  let shown = '';
  createEffect(() => {
    const key = `${layout.key()} ${room().width > 0}`;
    if (pieces().length === 0 || shown === key) return;
    shown = key;
    show(whole(), room());
  });
  const flyTo = (box: ReturnType<typeof whole> | undefined, margin?: number) => {
    if (box && shown !== '') fly(box, room(), margin);
  };
  // The same seam walked again, as its pieces change, goes on where it was.
  const seam = createMemo(() => garment.walk()?.seam);
  createEffect(
    on(
      seam,
      walked => {
        setStation(0);
        const piece = pieces().find(p => p.name === garment.walk()?.stations[0]?.a);
        if (walked !== undefined && piece) flyTo(around(piece.box), 0.04);
        else flyTo(whole());
      },
      { defer: true },
    ),
  );
  const isSeenWhole = createMemo(() => garment.whole() !== undefined);
  createEffect(
    on(isSeenWhole, isWhole => flyTo(isWhole ? boxOfWhole(garment.whole()!) : whole()), { defer: true }),
  );
  onMount(() => {
    const watch = new ResizeObserver(([entry]) => {
      const { width, height } = entry!.contentRect;
      setRoom({ width, height });
    });
    watch.observe(table!);
    onCleanup(() => watch.disconnect());
    props.onReady(where => {
      const piece = pieces().find(p => p.name === where.piece);
      if (!piece) return;
      const [dx, dy] = placeOf(piece.name);
      const [x, y, w, h] = piece.box;
      flyTo([x + dx, y + dy, w, h], 0.18);
      const name = where.edge ?? where.dart;
      garment.setTouched(
        name === undefined
          ? { kind: 'piece', piece: piece.name }
          : { kind: where.edge === undefined ? 'dart' : 'edge', piece: piece.name, name },
      );
    });
  });
  const square = () => 100 * camera().scale;

  return (
    <section
      class="table"
      ref={table}
      tabindex="0"
      aria-label={say().table}
      onPointerDown={gestures.down}
      onPointerMove={gestures.move}
      onPointerUp={gestures.up}
      onPointerCancel={gestures.up}
      on:wheel={{ handleEvent: gestures.wheel, passive: false }}
      onKeyDown={tableKeys(garment, control, layout, room)}
      onClick={touching.click}
      style={{
        'background-size': `${square()}px ${square()}px`,
        'background-position': `${camera().x}px ${camera().y}px`,
      }}
    >
      <svg
        class="lying"
        width="100%"
        height="100%"
        aria-hidden="true"
        style={{ transform: `translate(${camera().x}px, ${camera().y}px)` }}
      >
        <g transform={`scale(${scale()})`}>
          <Show
            when={garment.walk()}
            fallback={
              <Show
                when={garment.whole()}
                fallback={
                  <Lying
                    garment={garment}
                    layout={layout}
                    scale={scale()}
                    ghosts={ghosts()}
                    held={held()}
                    isTouched={isTouched}
                  />
                }
              >
                {seen => <WholeGarment whole={seen()} ghosts={ghosts()} />}
              </Show>
            }
          >
            {walk => <WalkedPieces walk={walk()} station={station()} pieces={pieces()} scale={scale()} />}
          </Show>
        </g>
      </svg>
      <ListView pieces={pieces()} onTouch={touch} />
      <Measure garment={garment} camera={camera()} placeOf={placeOf} />
      <Show when={!garment.walk() && !garment.whole() && !garment.measuring()}>
        <Handles
          garment={garment}
          camera={camera()}
          placeOf={placeOf}
          onDrag={dragging =>
            setHeld(dragging ? new Map(pieces().map(p => [p.name, p.stitching])) : undefined)
          }
        />
      </Show>
      <Corner
        garment={garment}
        ghosts={ghosts()}
        onGhosts={() => setGhosts(g => !g)}
        shelf={shelf()}
        onShelf={() => setShelf(s => !s)}
      />
      <Show when={shelf()}>
        <Shelf garment={garment} onDone={() => setShelf(false)} />
      </Show>
      <p class="scale">
        {say().squares}, 1 : {(96 / 25.4 / camera().scale).toFixed(1)}
      </p>
      <Show when={garment.walk()}>
        {walk => (
          <Walking
            garment={garment}
            walk={walk()}
            station={Math.min(station(), walk().stations.length - 1)}
            onStation={setStation}
            onDone={() => garment.setWalking(undefined)}
          />
        )}
      </Show>
      <Show when={!garment.walk() && garment.touched()}>
        {thing => (
          <Slip
            garment={garment}
            thing={thing()}
            at={touching.slipAt()}
            piece={pieces().find(p => p.name === thing().piece)}
          />
        )}
      </Show>
    </section>
  );
}
