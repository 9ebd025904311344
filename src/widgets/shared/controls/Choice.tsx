import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';

export interface ChoiceProps<T extends string> {
  label: string;
  value: T;
  options: readonly { readonly value: T; readonly label: string }[];
  onChange: (value: T) => void;
}

/** One of several: a native select. */
export function Choice<T extends string>({ label, value, options, onChange }: ChoiceProps<T>): VNode {
  const items = useMemo(
    () =>
      options.map((option) => (
        <option key={option.value} value={option.value} selected={option.value === value}>
          {option.label}
        </option>
      )),
    [options, value],
  );
  return (
    <label class="choice">
      <span class="choice-name">{label}</span>
      <select
        autocomplete="off"
        onChange={(event) => {
          const chosen = options.find((option) => option.value === event.currentTarget.value);
          if (chosen) onChange(chosen.value);
        }}
      >
        {items}
      </select>
    </label>
  );
}
