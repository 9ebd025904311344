import type { VNode } from 'preact';
import type { ExplainedStep } from '../../course/explanation/explain.ts';
import { MathView } from '../shared/MathView.tsx';
import { fill, words } from './words.ts';

/** One line of a worked solution: why, the formula, the numbers in it, the result, where it comes from. */
export function WorkedStep({
  step,
  sources,
}: {
  step: Omit<ExplainedStep, 'prompt'>;
  sources: Readonly<Record<string, string>>;
}): VNode {
  return (
    <>
      <p>{step.why}</p>
      {step.formula && <MathView node={step.formula} />}
      {step.substituted && <MathView node={step.substituted} />}
      <p class="ws-result">
        <strong>{step.result}</strong>
      </p>
      <p class="ws-source">{fill(words.labels.source, { source: sources[step.source] ?? step.source })}</p>
    </>
  );
}
