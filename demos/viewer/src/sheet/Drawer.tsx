import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** Shares of the window's height that the drawer settles on: pulled down, half open, pulled up. */
const rests = [0.2, 0.58, 0.92];
export const halfOpen = rests[1]!;

/** On a telephone the sheet is a drawer over the table: pulled by this grip, or stepped by a touch or keys. */
export function Drawer(props: {
  readonly garment: Garment;
  /** As a share of the window's. */
  readonly height: number;
  readonly onHeight: (share: number) => void;
}) {
  const height = () => props.height;
  const set = (share: number) => props.onHeight(Math.min(Math.max(share, rests[0]!), rests[2]!));
  const nearest = () =>
    rests.reduce((best, rest) => (Math.abs(rest - height()) < Math.abs(best - height()) ? rest : best));
  let from: { readonly y: number; readonly height: number } | undefined;
  let moved = false;
  return (
    <div
      class="drawer"
      role="slider"
      tabIndex={0}
      aria-label={pageWords[props.garment.language()].drawer}
      aria-orientation="vertical"
      aria-valuemin={rests[0]! * 100}
      aria-valuemax={rests[2]! * 100}
      aria-valuenow={Math.round(height() * 100)}
      onPointerDown={event => {
        event.currentTarget.setPointerCapture(event.pointerId);
        from = { y: event.clientY, height: height() };
        moved = false;
      }}
      onPointerMove={event => {
        if (!from) return;
        const by = (from.y - event.clientY) / innerHeight;
        moved ||= Math.abs(by) > 0.01;
        set(from.height + by);
      }}
      onPointerUp={() => {
        from = undefined;
        if (moved) set(nearest());
        else set(rests[(rests.indexOf(nearest()) + 1) % rests.length]!);
      }}
      onPointerCancel={() => {
        from = undefined;
      }}
      onKeyDown={event => {
        const by = { ArrowUp: 1, ArrowDown: -1 }[event.key];
        if (by === undefined) return;
        event.preventDefault();
        set(rests[Math.min(Math.max(rests.indexOf(nearest()) + by, 0), rests.length - 1)]!);
      }}
    />
  );
}
