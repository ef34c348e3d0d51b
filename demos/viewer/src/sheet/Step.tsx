import { inSheet } from '@paperhinge/alter/verb';
import type { LengthUnit, ToldFinding } from '@paperhinge/geometry';
import type { VerbWords } from '@paperhinge/sheet';
import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Declared } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { play, playable } from '../job/play.js';
import { type WrittenStep, withoutStep, withStep, withStepMoved, withStepSwitched } from '../job/written.js';
import { pageWords } from '../words.js';
import { Blank } from './Blank.jsx';
import { choicesOf, litBy } from './choices.js';
import { asGiven } from './figures.js';
import { Grip } from './Grip.jsx';
import { fieldAt, partsOf, type SentencePart, spoken, valueAt } from './sentence.js';

export const sentenceOf = (verb: Declared, own: VerbWords): string =>
  own[verb.verb]?.sentence ?? verb.sentence;

/** Whoever asks for less motion is shown no step in motion. */
const still = matchMedia('(prefers-reduced-motion: reduce)').matches;

/** One step: its sentence with its blanks, what came of it in smaller type, and what can be done with the step itself. */
export function Step(props: {
  readonly garment: Garment;
  readonly step: WrittenStep;
  readonly index: number;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const verb = () => garment.engine.verbs().find(v => v.verb === props.step.verb);
  const isOpen = () => garment.open() === props.index;
  const [isAll, setAll] = createSignal(false);
  /** Said: what is given; of alternatives that are all open each; what else may be said, once it is asked for. */
  const isGiven = (name: string): boolean => {
    if (valueAt(props.step.fields, name) !== undefined) return true;
    if (!isOpen()) return false;
    const among = verb()?.oneOf?.find(names => names.map(inSheet).includes(name));
    return among ? among.every(n => props.step.fields[inSheet(n)] === undefined) : isAll();
  };
  const saysAll = () => {
    const known = verb();
    return (
      known === undefined ||
      partsOf(sentenceOf(known, garment.verbWords()), isGiven).length ===
        partsOf(sentenceOf(known, garment.verbWords()), name => isGiven(name) || !isAlternative(name)).length
    );
  };
  const isAlternative = (name: string) =>
    verb()?.oneOf?.some(names => names.map(inSheet).includes(name)) ?? false;
  // The same parts stay the same blanks: one that is dragged or typed in must not be made anew under the hand.
  const parts = createMemo<readonly SentencePart[]>(had => {
    const known = verb();
    const now = known ? partsOf(sentenceOf(known, garment.verbWords()), isGiven) : [];
    const left = [...had];
    return now.map(part => {
      const same = left.findIndex(h => JSON.stringify(h) === JSON.stringify(part));
      return same < 0 ? part : left.splice(same, 1)[0]!;
    });
  }, []);
  /** Something that must be given is still open. */
  const isUnfinished = () =>
    Object.entries(verb()?.fields ?? {}).some(
      ([name, field]) => field.giving === 'needed' && props.step.fields[inSheet(name)] === undefined,
    ) || (verb()?.oneOf ?? []).some(names => names.every(n => props.step.fields[inSheet(n)] === undefined));
  const came = () => garment.engine.view()?.steps[props.index];
  /** A later step may have mended what this one left: then it is no longer told. */
  const stillStands = ({ code, where }: ToldFinding) =>
    garment.engine
      .view()
      ?.findings.some(
        f =>
          f.code === code &&
          f.where.seam === where.seam &&
          f.where.piece === where.piece &&
          f.where.edge === where.edge,
      );
  const write = (text: string) => garment.history.write(text);
  const text = () => garment.history.now();
  return (
    <li
      class="step"
      classList={{
        pale: props.index >= garment.needle() || props.step.off,
        open: isOpen(),
        wrong: came()?.fault !== undefined && !isUnfinished(),
      }}
      onFocusIn={() => garment.setOpen(props.index)}
      onPointerDown={() => garment.setOpen(props.index)}
    >
      <Grip garment={garment} index={props.index} />
      <p class="sentence">
        <Show when={verb()} fallback={<span>{props.step.verb}</span>}>
          {known => (
            <>
              <For each={parts()}>
                {part =>
                  // A node of its own: a bare text would be made anew, and all that follows it moved.
                  'words' in part ? (
                    <span>{part.words}</span>
                  ) : (
                    <Show when={fieldAt(known(), part.field)} fallback={`{${part.field}}`}>
                      {field => (
                        <Blank
                          label={part.field}
                          field={asGiven(field(), valueAt(props.step.fields, part.field))}
                          value={valueAt(props.step.fields, part.field)}
                          choices={choicesOf(
                            field(),
                            props.step.fields,
                            garment.engine.view()?.names[props.index],
                          )}
                          unit={garment.unit()}
                          written={(garment.values().unit as LengthUnit | undefined) ?? 'mm'}
                          and={say().and}
                          onLight={name => garment.setLit(litBy(field(), props.step.fields, name))}
                          onChange={(value, settled) =>
                            garment.set(
                              ['steps', props.index, props.step.verb, ...part.field.split('.')],
                              value,
                              settled,
                            )
                          }
                        />
                      )}
                    </Show>
                  )
                }
              </For>
              .
            </>
          )}
        </Show>
      </p>
      <Show when={props.step.off}>
        <p class="came">{say().notDone}</p>
      </Show>
      <Show when={came()?.fault}>
        {fault => (
          <Show when={!isUnfinished()} fallback={<p class="came">{say().fillIn}</p>}>
            <p class="came fault">▲ {fault()}</p>
          </Show>
        )}
      </Show>
      <Show when={!came()?.fault && came()?.did}>{did => <p class="came">{did()}</p>}</Show>
      <Show when={isOpen()}>
        <For each={came()?.findings.filter(f => f.severity !== 'note' && stillStands(f))}>
          {finding => (
            <p
              class="came"
              classList={{ fault: finding.severity === 'fault', care: finding.severity === 'warning' }}
            >
              ▲ {finding.message} {finding.remedy}
            </p>
          )}
        </For>
        <p class="doings">
          <Show when={isAll() || !saysAll()}>
            <button type="button" aria-expanded={isAll()} onClick={() => setAll(a => !a)}>
              {isAll() ? say().lessSaid : say().moreSaid}
            </button>
          </Show>
          <Show when={!still && playable(garment, props.index)}>
            {handle => (
              <button type="button" onClick={() => play(garment, handle())}>
                {say().play}
              </button>
            )}
          </Show>
          <button type="button" onClick={() => write(withStepSwitched(text(), props.index, !props.step.off))}>
            {props.step.off ? say().on : say().off}
          </button>
          <button
            type="button"
            onClick={() => write(withStep(text(), props.step.verb, props.step.fields, props.index + 1))}
          >
            {say().copy}
          </button>
          <button
            type="button"
            disabled={props.index === 0}
            onClick={() => write(withStepMoved(text(), props.index, props.index - 1))}
          >
            {say().earlier}
          </button>
          <button
            type="button"
            disabled={props.index === garment.steps().length - 1}
            onClick={() => write(withStepMoved(text(), props.index, props.index + 1))}
          >
            {say().later}
          </button>
          <button type="button" onClick={() => write(withoutStep(text(), props.index))}>
            {say().remove}
          </button>
        </p>
      </Show>
    </li>
  );
}

/** The words of a sentence without its blanks filled in: "Close the … dart of the … into the …". */
export const bareSentence = (
  verb: Declared,
  own: VerbWords,
  given: Readonly<Record<string, unknown>> = {},
): string =>
  partsOf(sentenceOf(verb, own), name => valueAt(given, name) !== undefined)
    .map(part => ('words' in part ? part.words : spoken(valueAt(given, part.field), '')))
    .join('');
