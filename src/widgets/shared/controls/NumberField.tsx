import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { stepped } from './stepped.ts';

export interface NumberFieldProps {
  label: string;
  /** Said to screen readers instead of the label, where the label alone is too short to be clear. */
  fullLabel?: string;
  unit: string;
  value: number;
  min: number;
  max: number;
  step: number;
  onChange: (value: number) => void;
}

/** A number to be typed. What is half typed stays as it is until the field is left; only a sound number counts. */
export function NumberField(props: NumberFieldProps): VNode {
  const { label, fullLabel, unit, value, min, max, step, onChange } = props;
  const [draft, setDraft] = useState<string | null>(null);
  return (
    <label class="number-field">
      <span>{label}</span>
      <input
        type="number"
        inputMode="decimal"
        autocomplete="off"
        aria-label={fullLabel}
        min={min}
        max={max}
        step={step}
        value={draft ?? value}
        onInput={(event) => {
          const field = event.currentTarget;
          setDraft(field.value);
          const typed = field.valueAsNumber;
          if (typed >= min && typed <= max) onChange(stepped({ value: typed, min, max, step }));
        }}
        onBlur={() => setDraft(null)}
      />
      <span>{unit}</span>
    </label>
  );
}
