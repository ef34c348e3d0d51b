import type { Where } from '@paperhinge/geometry';
import { createEffect, createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import type { Box, PieceView, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { createCamera } from './camera.js';
import { placesOf } from './places.js';
import { Slip } from './Slip.jsx';

/** The table with the pieces on it: panned, zoomed, touched. */
export function Table(props: {
  readonly garment: Garment;
  readonly onReady: (fly: (where: Where) => void) => void;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const { camera, show, pan, zoom } = createCamera();
  const [room, setRoom] = createSignal({ width: 800, height: 600 });
  const [ghosts, setGhosts] = createSignal(true);
  const [slipAt, setSlipAt] = createSignal<readonly [number, number]>([40, 40]);
  let table: HTMLElement | undefined;
  const pieces = () => garment.engine.view()?.pieces ?? [];
  // Places change with the pieces' number and order only, so that nothing jumps while a figure is dragged.
  const layout = createMemo<{ key: string; places: ReturnType<typeof placesOf> }>(
    had => {
      const key = `${garment.source().name} ${pieces()
        .map(p => p.name)
        .join('|')}`;
      return had && had.key === key ? had : { key, places: placesOf(pieces()) };
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
      show([x + dx, y + dy, w, h], room(), 0.18);
      const name = where.edge ?? where.dart;
      garment.setTouched(
        name === undefined
          ? { kind: 'piece', piece: piece.name }
          : { kind: where.edge === undefined ? 'dart' : 'edge', piece: piece.name, name },
      );
    });
  });

  const held = new Map<number, { x: number; y: number }>();
  let moved = false;
  const down = (event: PointerEvent) => {
    held.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (held.size === 1) moved = false;
  };
  const move = (event: PointerEvent) => {
    const last = held.get(event.pointerId);
    if (!last) return;
    const now = { x: event.clientX, y: event.clientY };
    const other = [...held].find(([id]) => id !== event.pointerId)?.[1];
    if (!moved && Math.hypot(now.x - last.x, now.y - last.y) < 4 && !other) return;
    if (!moved) table!.setPointerCapture(event.pointerId);
    moved = true;
    if (other) {
      const { left, top } = table!.getBoundingClientRect();
      const apart = (p: typeof now) => Math.hypot(p.x - other.x, p.y - other.y);
      zoom(apart(now) / Math.max(1, apart(last)), (now.x + other.x) / 2 - left, (now.y + other.y) / 2 - top);
    } else pan(now.x - last.x, now.y - last.y);
    held.set(event.pointerId, now);
  };
  const up = (event: PointerEvent) => held.delete(event.pointerId);
  const wheel = (event: WheelEvent) => {
    event.preventDefault();
    const { left, top } = table!.getBoundingClientRect();
    if (event.ctrlKey || !event.shiftKey)
      zoom(1.0015 ** -event.deltaY, event.clientX - left, event.clientY - top);
    else pan(-event.deltaX, -event.deltaY);
  };
  const keys = (event: KeyboardEvent) => {
    const { width, height } = room();
    const step = 40;
    const doings: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => pan(step, 0),
      ArrowRight: () => pan(-step, 0),
      ArrowUp: () => pan(0, step),
      ArrowDown: () => pan(0, -step),
      '+': () => zoom(1.25, width / 2, height / 2),
      '-': () => zoom(0.8, width / 2, height / 2),
      '0': () => show(whole(), room()),
      Escape: () => garment.setTouched(undefined),
    };
    const doing = event.target === table ? doings[event.key] : undefined;
    if (!doing) return;
    event.preventDefault();
    doing();
  };
  const touch = (event: MouseEvent | KeyboardEvent, thing: Touched) => {
    if (moved) return;
    event.stopPropagation();
    const { left, top, width, height } = table!.getBoundingClientRect();
    const at =
      event instanceof MouseEvent && event.clientX > 0
        ? [event.clientX - left, event.clientY - top]
        : [width / 2, height / 2];
    setSlipAt([
      Math.min(at[0]! + 18, Math.max(12, width - 320)),
      Math.min(Math.max(at[1]! - 40, 12), Math.max(12, height - 330)),
    ]);
    garment.setTouched(thing);
  };
  /** What was drawn under the pointer says itself what it is. */
  const click = (event: MouseEvent) => {
    if (moved || (event.target as Element).closest('.slip, .corner')) return;
    const drawn = (event.target as Element).closest<SVGElement>('[data-kind]');
    const { kind, piece, name } = drawn?.dataset ?? {};
    if (!kind || !piece) garment.setTouched(undefined);
    else touch(event, { kind: kind as Touched['kind'], piece, ...(name === undefined ? {} : { name }) });
  };
  const isTouched = (piece: string, name?: string) =>
    garment.touched()?.piece === piece && garment.touched()?.name === name;
  const square = () => 100 * camera().scale;

  return (
    <section
      class="table"
      ref={table}
      tabindex="0"
      aria-label="table"
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={up}
      on:wheel={{ handleEvent: wheel, passive: false }}
      onKeyDown={keys}
      onClick={click}
      style={{
        'background-size': `${square()}px ${square()}px`,
        'background-position': `${camera().x}px ${camera().y}px`,
      }}
    >
      <svg width="100%" height="100%" aria-hidden="true">
        <g transform={`translate(${camera().x} ${camera().y}) scale(${camera().scale})`}>
          <For each={pieces()}>
            {piece => (
              <g transform={`translate(${placeOf(piece.name).join(' ')})`}>
                <Show when={ghosts() && piece.before}>
                  <path class="ghost" d={piece.before} />
                </Show>
                <Drawn piece={piece} scale={camera().scale} isTouched={name => isTouched(piece.name, name)} />
              </g>
            )}
          </For>
        </g>
      </svg>
      <ul class="list-view">
        <For each={pieces()}>
          {piece => (
            <li>
              <button type="button" onClick={event => touch(event, { kind: 'piece', piece: piece.name })}>
                {piece.title}, {piece.cut}
              </button>
              <ul>
                <For each={piece.parts.filter(p => p.kind === 'edge' || p.kind === 'dart')}>
                  {part => (
                    <li>
                      <button
                        type="button"
                        onClick={event =>
                          touch(event, { kind: part.kind as 'edge', piece: piece.name, name: part.name })
                        }
                      >
                        {part.name.replaceAll('-', ' ')}: {part.told}
                      </button>
                    </li>
                  )}
                </For>
              </ul>
            </li>
          )}
        </For>
      </ul>
      <p class="corner">
        <label>
          {say().another}
          <input
            type="file"
            accept=".svg,image/svg+xml"
            onChange={async event => {
              const [file] = event.currentTarget.files ?? [];
              if (!file) return;
              const text = await file.text();
              garment.load({
                patternName: file.name,
                pattern: text,
                history: {
                  past: [],
                  now: `pattern: ${JSON.stringify(file.name)}\nunit: cm\nsteps: []\n`,
                  future: [],
                },
                needle: undefined,
              });
            }}
          />
        </label>
        <button
          type="button"
          onClick={() => garment.setUnit(u => (u === 'cm' ? 'in' : u === 'in' ? 'mm' : 'cm'))}
        >
          {garment.unit()}
        </button>
        <button type="button" aria-pressed={ghosts()} onClick={() => setGhosts(g => !g)}>
          {ghosts() ? say().before : say().afterOnly}
        </button>
        <button type="button" onClick={() => garment.setLanguage(l => (l === 'en' ? 'de' : 'en'))}>
          {garment.language() === 'en' ? 'Deutsch' : 'English'}
        </button>
      </p>
      <p class="scale">
        {say().squares}, 1 : {(96 / 25.4 / camera().scale).toFixed(1)}
      </p>
      <Show when={garment.touched()}>
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

/** One piece as paper: cut edge, stitching line, what lies on it; each part with a broad path that takes the touch. */
function Drawn(props: {
  readonly piece: PieceView;
  readonly scale: number;
  readonly isTouched: (name?: string) => boolean;
}) {
  /** A piece too small for its title has it underneath. */
  const titleAt = (): readonly [number, number] => {
    const [x, y, width, height] = props.piece.box;
    return height * props.scale < 90 || width * props.scale < 90
      ? [x + width / 2, y + height + 20 / props.scale]
      : props.piece.middle;
  };
  /** px, whatever the scale. */
  const px = (size: number) => size / props.scale;
  return (
    <>
      <path
        class="paper"
        classList={{ touched: props.isTouched(undefined) }}
        d={props.piece.cutting}
        data-kind="piece"
        data-piece={props.piece.name}
      />
      <For each={props.piece.parts}>
        {part => (
          <>
            <path
              class={`${part.kind} ${part.sort}`}
              classList={{ touched: props.isTouched(part.name) }}
              d={part.path}
            />
            <path
              class="reach"
              d={part.path}
              stroke-width={px(16)}
              data-kind={part.kind}
              data-piece={props.piece.name}
              data-name={part.name}
            />
          </>
        )}
      </For>
      <g transform={`translate(${titleAt().join(' ')}) scale(${1 / props.scale})`} class="title">
        <text>{props.piece.title}</text>
        <Show when={props.piece.box[2] * props.scale > 130}>
          <text y="18" class="small">
            {props.piece.cut}
          </text>
        </Show>
      </g>
    </>
  );
}
