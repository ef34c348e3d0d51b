import { Show } from 'solid-js';
import type { Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { spokenBy } from '../job/reader.js';
import { Blank } from '../sheet/Blank.jsx';
import { pageWords } from '../words.js';

const kinds = ['seam', 'hem', 'fold', 'raw'];

/** What the sheet says of a piece that was drawn as one closed path. */
interface Said {
  readonly outline?: string;
  readonly edges?: readonly string[];
  readonly kinds?: Readonly<Record<string, string>>;
}

/** An edge of a drawing from elsewhere is named where it is touched, and what it is sewn to is chosen. */
export function Naming(props: { readonly garment: Garment; readonly thing: Touched }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const piece = () => props.thing.piece ?? '';
  const edge = () => props.thing.name ?? '';
  const said = (): Said | undefined =>
    (garment.values().pieces as Record<string, Said> | undefined)?.[piece()];
  /** As they are called before any step. */
  const edges = () => garment.engine.view()?.names[0]?.edges ?? {};
  const call = (name: string) => {
    const own = edges()[piece()] ?? [];
    if (name.trim() === '' || own.includes(name)) return;
    garment.set(
      ['pieces', piece(), 'edges'],
      own.map(e => (e === edge() ? name : e)),
    );
    garment.setTouched({ ...props.thing, name });
  };
  const others = () =>
    Object.entries(edges()).flatMap(([of, names]) =>
      names.filter(n => of !== piece() || n !== edge()).map(n => `${of}.${n}`),
    );
  const sew = (to: string) =>
    garment.set(['seams', `${edge()} ${to.split('.').at(-1)}`], { a: `${piece()}.${edge()}`, b: to });
  const blank = (
    label: string,
    value: unknown,
    choices: readonly string[],
    onChange: (value: string) => void,
  ) => (
    <Blank
      label={label}
      field={
        choices.length > 0
          ? { kind: 'choice', giving: 'usual', words: choices }
          : { kind: 'text', giving: 'usual' }
      }
      value={value}
      choices={choices}
      unit="mm"
      written="mm"
      spoken={spokenBy(garment, 'kinds')}
      onChange={next => onChange(String(next))}
    />
  );
  return (
    <Show when={props.thing.kind === 'edge' && said()?.outline !== undefined}>
      <p class="naming">
        {say().called} {blank(say().called, edge(), [], call)}; {say().isA}{' '}
        {blank(say().isA, said()?.kinds?.[edge()] ?? 'seam', kinds, kind =>
          garment.set(['pieces', piece(), 'kinds', edge()], kind),
        )}
        ; {say().sewnTo} {blank(say().sewnTo, undefined, others(), sew)}.
      </p>
    </Show>
  );
}
