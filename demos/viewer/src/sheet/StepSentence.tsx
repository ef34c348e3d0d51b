import type { Field } from '@paperhinge/alter/verb';
import { createMemo, For, Show } from 'solid-js';
import { spokenBy } from '../job/reader.js';
import { Blank } from './Blank.jsx';
import { choicesOf, litBy } from './choices.js';
import { asGiven } from './figures.js';
import type { Reading, StepProps } from './reading.js';
import { fieldAt, valueAt } from './sentence.js';

/** The sentence of a step with its blanks. */
export function StepSentence(props: StepProps & { readonly reading: Reading }) {
  return (
    <p class="sentence">
      <Show when={props.reading.verb()} fallback={<span>{props.step.verb}</span>}>
        {known => (
          <>
            <For each={props.reading.parts()}>
              {part =>
                // A node of its own: a bare text would be made anew, and all that follows it moved.
                'words' in part ? (
                  <span>{part.words}</span>
                ) : (
                  <Show when={fieldAt(known(), part.field)} fallback={`{${part.field}}`}>
                    {field => <StepBlank {...props} name={part.field} field={field()} />}
                  </Show>
                )
              }
            </For>
            .
          </>
        )}
      </Show>
    </p>
  );
}

/** One blank of it, with what may stand there. */
function StepBlank(props: StepProps & { readonly name: string; readonly field: Field }) {
  const { garment } = props;
  const value = () => valueAt(props.step.fields, props.name);
  const names = createMemo(() => garment.engine.view()?.names[props.index]);
  return (
    <Blank
      label={props.name}
      field={asGiven(props.field, value())}
      value={value()}
      choices={choicesOf(props.field, props.step.fields, names())}
      unit={garment.unit()}
      written={garment.unitWritten()}
      spoken={spokenBy(garment, `${props.step.verb}.${props.name}`)}
      onLight={name => garment.setLit(litBy(props.field, props.step.fields, name))}
      onChange={(to, settled) =>
        garment.set(['steps', props.index, props.step.verb, ...props.name.split('.')], to, settled)
      }
    />
  );
}
