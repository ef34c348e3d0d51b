import { createMemo, Show } from 'solid-js';
import { Grip } from './Grip.jsx';
import { createReading, type StepProps } from './reading.js';
import { StepDoings } from './StepDoings.jsx';
import { StepSentence } from './StepSentence.jsx';
import { WhatCame } from './WhatCame.jsx';

/** One step: its sentence with its blanks, what came of it in smaller type, and what can be done with the step itself. */
export function Step(props: StepProps) {
  const { garment } = props;
  const isOpen = () => garment.open() === props.index;
  const reading = createReading(props, isOpen);
  const fault = createMemo(() => garment.engine.view()?.steps[props.index]?.fault);
  const isWrong = () => fault() !== undefined && !reading.isUnfinished();
  return (
    <li
      class="step"
      classList={{
        pale: props.index >= garment.needle() || props.step.off,
        open: isOpen(),
        wrong: isWrong(),
      }}
      onFocusIn={() => garment.setOpen(props.index)}
      onPointerDown={() => garment.setOpen(props.index)}
    >
      <Grip garment={garment} index={props.index} />
      <StepSentence {...props} reading={reading} />
      <WhatCame {...props} isOpen={isOpen()} isUnfinished={reading.isUnfinished()} />
      <Show when={isOpen()}>
        <StepDoings {...props} reading={reading} />
      </Show>
    </li>
  );
}
