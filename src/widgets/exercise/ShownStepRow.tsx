import type { VNode } from 'preact';
import type { ShownStep } from '../../course/exercises/public-view.ts';
import { WorkedStep } from './WorkedStep.tsx';
import { words } from './words.ts';

/** A step worked before the learner's eyes. */
export function ShownStepRow({
  step,
  sources,
}: {
  step: ShownStep;
  sources: Readonly<Record<string, string>>;
}): VNode {
  return (
    <li class="ws-step ws-shown">
      <p class="ws-prompt">{step.prompt}</p>
      <p class="ws-tolerance">{words.labels.worked}</p>
      <div class="ws-working">
        <WorkedStep step={step} sources={sources} />
      </div>
    </li>
  );
}
