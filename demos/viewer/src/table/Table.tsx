import type { Where } from '@paperhinge/geometry';
import {
  createEffect,
  createMemo,
  createSignal,
  Index,
  on,
  onCleanup,
  onMount,
  Show,
  untrack,
} from 'solid-js';
import type { Box, PieceView, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { Corner } from './Corner.jsx';
import { createCamera } from './camera.js';
import { Drawn } from './Drawn.jsx';
import { createGestures } from './gestures.js';
import { Handles } from './Handles.jsx';
import { ListView } from './ListView.jsx';
import { Measure } from './Measure.jsx';
import { areApart, placesOf } from './places.js';
import { Shelf } from './Shelf.jsx';
import { Slip } from './Slip.jsx';
import { around, WalkedPieces } from './WalkedPieces.jsx';
import { Walking } from './Walking.jsx';
import { boxOfWhole, WholeGarment } from './Whole.jsx';

/** px within which a measurement goes to a named point. */
const pointPull = 12;
/** px that a key pans by. */
const keyPan = 40;

/** The table with the pieces on it: panned, zoomed, touched. */
export function Table(props: {
  readonly garment: Garment;
  readonly onReady: (fly: (where: Where) => void) => void;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const control = createCamera();
  const { camera, show, fly, pan, zoom } = control;
  const gestures = createGestures(control, () => table!);
  const [room, setRoom] = createSignal({ width: 800, height: 600 });
  const [ghosts, setGhosts] = createSignal(true);
  const [slipAt, setSlipAt] = createSignal<readonly [number, number]>([40, 40]);
  const [station, setStation] = createSignal(0);
  createEffect(
    on(
      () => garment.walk()?.seam,
      seam => {
        setStation(0);
        const first = garment.walk()?.stations[0];
        const piece = pieces().find(p => p.name === first?.a);
        if (seam !== undefined && piece) fly(around(piece.box), room(), 0.04);
        else if (shown !== '') fly(whole(), room());
      },
      { defer: true },
    ),
  );
  createEffect(
    on(
      () => garment.whole() !== undefined,
      isWhole => {
        const box = isWhole ? boxOfWhole(garment.whole()!) : whole();
        if (box && shown !== '') fly(box, room());
      },
      { defer: true },
    ),
  );
  const [shelf, setShelf] = createSignal(false);
  let table: HTMLElement | undefined;
  const pieces = () => garment.engine.view()?.pieces ?? [];
  /** The stitching lines as they were when the hand took hold, while it holds. */
  const [held, setHeld] = createSignal<ReadonlyMap<string, string>>();
  const heldGhost = ({ name, stitching }: PieceView) => {
    const had = held()?.get(name);
    return had === stitching ? undefined : had;
  };
  // Places change with the pieces' number and order, and where pieces have grown over one another once the hand lets go:
  // nothing jumps while a figure is dragged.
  const layout = createMemo<{ key: string; places: ReturnType<typeof placesOf> }>(
    had => {
      const key = `${garment.source().id} ${pieces()
        .map(p => p.name)
        .join('|')}`;
      if (had && had.key === key && (held() || areApart(pieces(), had.places))) return had;
      return { key, places: placesOf(pieces(), untrack(room)) };
    },
    { key: '', places: new Map() },
  );
  const placeOf = (name: string) => layout().places.get(name) ?? [0, 0];

  const whole = (): Box => {
    const boxes = pieces().map(({ name, room: [x, y, w, h] }): Box => {
      const [dx, dy] = placeOf(name);
      return [x + dx, y + dy, w, h];
    });
    const x = Math.min(...boxes.map(b => b[0])),
      y = Math.min(...boxes.map(b => b[1]));
    return [x, y, Math.max(...boxes.map(b => b[0] + b[2])) - x, Math.max(...boxes.map(b => b[1] + b[3])) - y];
  };
  let shown = '';
  createEffect(() => {
    const { key } = layout();
    const size = room();
    if (pieces().length > 0 && shown !== `${key} ${size.width > 0}`) {
      shown = `${key} ${size.width > 0}`;
      show(whole(), size);
    }
  });
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
      fly([x + dx, y + dy, w, h], room(), 0.18);
      const name = where.edge ?? where.dart;
      garment.setTouched(
        name === undefined
          ? { kind: 'piece', piece: piece.name }
          : { kind: where.edge === undefined ? 'dart' : 'edge', piece: piece.name, name },
      );
    });
  });

  const keys = (event: KeyboardEvent) => {
    const { width, height } = room();
    const doings: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => pan(keyPan, 0),
      ArrowRight: () => pan(-keyPan, 0),
      ArrowUp: () => pan(0, keyPan),
      ArrowDown: () => pan(0, -keyPan),
      '+': () => zoom(1.25, width / 2, height / 2),
      '-': () => zoom(0.8, width / 2, height / 2),
      '0': () => fly(whole(), room()),
      Escape: () => {
        garment.setTouched(undefined);
        garment.setMeasuring(undefined);
        garment.setSeenWhole(false);
      },
    };
    const doing = event.target === table || event.key === 'Escape' ? doings[event.key] : undefined;
    if (!doing) return;
    event.preventDefault();
    doing();
  };
  const touch = (event: MouseEvent, thing: Touched) => {
    if (gestures.hasMoved()) return;
    event.stopPropagation();
    const { left, top, width, height } = table!.getBoundingClientRect();
    const [x, y] = event.clientX > 0 ? [event.clientX - left, event.clientY - top] : [width / 2, height / 2];
    setSlipAt([
      Math.min(x + 18, Math.max(12, width - 320)),
      Math.min(Math.max(y - 40, 12), Math.max(12, height - 330)),
    ]);
    garment.setTouched(thing);
  };
  /** Where a measurement ends: at a named point that is near, else where the piece is touched. */
  const measureTo = (event: MouseEvent) => {
    const from = garment.measuring()!;
    const { left, top } = table!.getBoundingClientRect();
    const [dx, dy] = placeOf(from.piece);
    const { scale, x, y } = camera();
    const here = [(event.clientX - left - x) / scale - dx, (event.clientY - top - y) / scale - dy] as const;
    const near = garment.engine
      .held()
      .points.filter(p => p.piece === from.piece)
      .map(p => ({ at: p.at, px: Math.hypot(p.at[0] - here[0], p.at[1] - here[1]) * scale }))
      .sort((p, q) => p.px - q.px)[0];
    const to = near && near.px < pointPull ? near.at : here;
    void garment.engine
      .measure({ piece: from.piece, from: from.from, to })
      .then(came => garment.setMeasuring({ ...from, to, came }));
  };
  /** What was drawn under the pointer says itself what it is. */
  const click = (event: MouseEvent) => {
    if (gestures.hasMoved() || (event.target as Element).closest('.slip, .corner, .shelf, .walking')) return;
    if (garment.measuring() && !garment.measuring()!.came) {
      measureTo(event);
      return;
    }
    garment.setMeasuring(undefined);
    if (garment.walk() || garment.whole()) return;
    const drawn = (event.target as Element).closest<SVGElement>('[data-kind]');
    const { kind, piece, name } = drawn?.dataset ?? {};
    // The empty table offers what begins with nothing; touched again, or with a slip on it, it is only the table.
    if (!kind || !piece) {
      if (garment.touched()) garment.setTouched(undefined);
      else touch(event, { kind: 'table' });
    } else touch(event, { kind: kind as Touched['kind'], piece, ...(name === undefined ? {} : { name }) });
  };
  const isTouched = (piece: string, name?: string) =>
    garment.touched()?.piece === piece && garment.touched()?.name === name;
  const Lying = () => (
    <Index each={pieces()}>
      {piece => (
        <g transform={`translate(${placeOf(piece().name).join(' ')})`}>
          <Show when={!held() && ghosts() && piece().before}>
            {ghost => <path class="ghost" d={ghost()} />}
          </Show>
          <Drawn
            piece={piece()}
            scale={camera().scale}
            isTouched={name => isTouched(piece().name, name)}
            isLit={name => garment.lit()?.has(`${piece().name}.${name}`) ?? false}
          />
          <Show when={heldGhost(piece())}>{ghost => <path class="ghost" d={ghost()} />}</Show>
        </g>
      )}
    </Index>
  );
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
      onKeyDown={keys}
      onClick={click}
      style={{
        'background-size': `${square()}px ${square()}px`,
        'background-position': `${camera().x}px ${camera().y}px`,
      }}
    >
      <svg width="100%" height="100%" aria-hidden="true">
        <g transform={`translate(${camera().x} ${camera().y}) scale(${camera().scale})`}>
          <Show
            when={garment.walk()}
            fallback={
              <Show when={garment.whole()} fallback={<Lying />}>
                {whole => <WholeGarment whole={whole()} ghosts={ghosts()} />}
              </Show>
            }
          >
            {walk => (
              <WalkedPieces walk={walk()} station={station()} pieces={pieces()} scale={camera().scale} />
            )}
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
      <Show when={garment.touched() && !garment.walk() && garment.touched()}>
        {thing => (
          <Slip
            garment={garment}
            thing={thing()}
            at={slipAt()}
            piece={pieces().find(p => p.name === thing().piece)}
          />
        )}
      </Show>
    </section>
  );
}
