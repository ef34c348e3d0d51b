import type { Where } from '@paperhinge/geometry';
import { createSignal, Show } from 'solid-js';
import { createDropped } from './job/dropped.js';
import { createGarment } from './job/garment.js';
import { undoByKeys } from './job/undo-keys.js';
import { AsText } from './sheet/AsText.jsx';
import { Drawer, halfOpen } from './sheet/Drawer.jsx';
import { LongWork } from './sheet/LongWork.jsx';
import { VerdictLine } from './sheet/VerdictLine.jsx';
import { Written } from './sheet/Written.jsx';
import { Projector } from './table/Projector.jsx';
import { Table } from './table/Table.jsx';
import { pageWords } from './words.js';

/** What of the sheet is answered on the table: headings, seams, findings, the verdict. */
const answered = 'h2 button, .rows button, .findings button, .verdict button';

/** One written sheet, one table. */
export function App() {
  const garment = createGarment();
  const [asText, setAsText] = createSignal(false);
  const [drawer, setDrawer] = createSignal(halfOpen);
  const [projecting, setProjecting] = createSignal(false);
  let fly: (where: Where) => void = () => {};
  /** A seam is walked; any other thing is flown to. */
  const goTo = (where: Where) => {
    if (where.seam !== undefined && garment.engine.proof()?.seams.some(row => row.seam === where.seam))
      garment.setWalking(where.seam);
    else fly(where);
  };
  /** What the table answers must not stay hidden under a drawer that is pulled up. */
  const showTable = ({ target }: MouseEvent) => {
    if ((target as Element).closest(answered)) setDrawer(share => Math.min(share, halfOpen));
  };
  undoByKeys(garment);
  const dropped = createDropped(garment);

  return (
    <div
      class="page"
      style={{ '--drawer': `${drawer() * 100}dvh` }}
      lang={garment.language()}
      classList={{ dropping: dropped.over() }}
    >
      <Show when={dropped.told()}>
        <p class="told refused" role="alert">
          ▲ {dropped.told()}{' '}
          <button type="button" class="plain" onClick={dropped.clear}>
            {pageWords[garment.language()].close}
          </button>
        </p>
      </Show>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: it hears its buttons, and keys press those, too */}
      <main class="sheet" onClick={showTable}>
        <Drawer garment={garment} height={drawer()} onHeight={setDrawer} />
        <Written
          garment={garment}
          asText={asText()}
          onAsText={() => setAsText(t => !t)}
          onProject={() => setProjecting(true)}
          goTo={goTo}
        />
        <LongWork garment={garment} />
        <VerdictLine garment={garment} goTo={goTo} />
      </main>
      <Show when={projecting()}>
        <Projector garment={garment} onDone={() => setProjecting(false)} />
      </Show>
      <Show when={asText()}>
        <AsText garment={garment} onDone={() => setAsText(false)} />
      </Show>
      <Table
        garment={garment}
        onReady={to => {
          fly = to;
        }}
      />
    </div>
  );
}
