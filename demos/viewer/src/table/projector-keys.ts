/** By how much a key changes the scale. */
const fine = 1.001,
  coarse = 1.01;
/** px that an arrow moves the pieces by; with Shift. */
const stride = 80,
  nudge = 5;

/** The projector by keys: arrows move the pieces, + and − set the scale finely, page keys coarsely, Escape leaves. */
export const projectorKeys =
  (doing: {
    readonly close: () => void;
    readonly grow: (by: number) => void;
    readonly move: (dx: number, dy: number) => void;
  }) =>
  (event: KeyboardEvent): void => {
    const { close, grow, move } = doing;
    const step = event.shiftKey ? nudge : stride;
    const doings: Readonly<Record<string, () => void>> = {
      Escape: close,
      '+': () => grow(fine),
      '-': () => grow(1 / fine),
      PageUp: () => grow(coarse),
      PageDown: () => grow(1 / coarse),
      ArrowLeft: () => move(step, 0),
      ArrowRight: () => move(-step, 0),
      ArrowUp: () => move(0, step),
      ArrowDown: () => move(0, -step),
    };
    const chosen = doings[event.key];
    if (!chosen) return;
    event.preventDefault();
    event.stopPropagation();
    chosen();
  };
