import { clothFindings, type LaidShape, layCloths } from '@paperhinge/print/cloth';
import { commandSaying } from '@paperhinge/sheet/words';
import type { LaidCloth } from './pictures.js';
import type { Worked } from './work.js';

/** Every cloth as it lies under its pieces, and what there is to buy of it. */
export function clothsOf({ states, words }: Worked): readonly LaidCloth[] {
  const { pattern } = states.at(-1)!;
  const titleOf = (name: string) => pattern.pieces.find(p => p.name === name)?.title || words.say.name(name);
  return layCloths(pattern).map((needed): LaidCloth => {
    const { cloth, widthMm, lays } = needed;
    const [lay] = lays;
    const name = words.say.name(cloth);
    if (!lay) {
      const told = clothFindings([needed]).map(f => {
        const { message, remedy } = words.finding(f);
        return `${message} ${remedy}`;
      });
      return { name, told: told.join(' '), isTooNarrow: true, acrossMm: 0, lengthMm: 0, cut: [] };
    }
    const { way, buyMm, acrossMm, lengthMm, laid } = lay;
    const told = words.sentence(commandSaying('cloth-to-buy', { cloth, widthMm, buyMm, laid: way }));
    const cut = laid.map(shape => ({ title: titleOf(shape.piece), ...drawn(shape) }));
    return { name, told, isTooNarrow: false, acrossMm, lengthMm, cut };
  });
}

function drawn({
  outline,
}: LaidShape): Pick<LaidCloth['cut'][number], 'path' | 'middle' | 'width' | 'height'> {
  const [xs, ys] = [outline.map(p => p.x), outline.map(p => p.y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return {
    path: `M${outline.map(p => `${p.x.toFixed(1)} ${p.y.toFixed(1)}`).join('L')}Z`,
    middle: [(left + right) / 2, (top + bottom) / 2],
    width: right - left,
    height: bottom - top,
  };
}
