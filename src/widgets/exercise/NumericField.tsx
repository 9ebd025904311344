import type { VNode } from 'preact';

export interface FieldProps {
  id: string;
  text: string;
  isLocked: boolean;
  isInvalid: boolean;
  labelledBy: string;
  describedBy: string;
  onEnter(text: string): void;
}

/** A figure with its unit, as a learner types it. */
export function NumericField({
  id,
  text,
  isLocked,
  isInvalid,
  labelledBy,
  describedBy,
  onEnter,
}: FieldProps): VNode {
  return (
    <input
      id={id}
      type="text"
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      enterkeyhint="next"
      maxLength={80}
      value={text}
      readOnly={isLocked}
      aria-invalid={isInvalid}
      aria-labelledby={labelledBy}
      aria-describedby={describedBy}
      onInput={(event) => onEnter(event.currentTarget.value)}
    />
  );
}
