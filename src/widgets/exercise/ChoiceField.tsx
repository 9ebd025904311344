import type { VNode } from 'preact';
import type { FieldProps } from './NumericField.tsx';
import { words } from './words.ts';

/** One of several answers. */
export function ChoiceField({
  id,
  text,
  isLocked,
  labelledBy,
  describedBy,
  options,
  onEnter,
}: FieldProps & { options: readonly { id: string; text: string }[] }): VNode {
  return (
    <fieldset
      class="ws-choice"
      aria-labelledby={labelledBy}
      aria-describedby={describedBy}
      disabled={isLocked}
    >
      <legend class="visually-hidden">{words.labels.choose}</legend>
      {options.map((option) => (
        <label key={option.id}>
          <input
            type="radio"
            name={id}
            value={option.id}
            checked={text === option.id}
            onChange={() => onEnter(option.id)}
          />
          <span>{option.text}</span>
        </label>
      ))}
    </fieldset>
  );
}
