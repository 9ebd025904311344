import type { VNode } from 'preact';
import words from '../../../../content/strings/explorers.en.json' with { type: 'json' };
import { fill } from '../../strings/fill.ts';
import { stepped } from './stepped.ts';
import { stillWhileSame } from './still-while-same.ts';

export interface SliderProps {
  label: string;
  value: number;
  min: number;
  max: number;
  step: number;
  /** How far a step button goes; default one step. */
  buttonStep?: number;
  /** The value in words, with its unit. */
  text: string;
  disabled?: boolean;
  onChange: (value: number) => void;
}

/** Letters that fit beside most names. */
const longText = 9;

function DrawnSlider(props: SliderProps): VNode {
  const { label, value, min, max, step, buttonStep = step, text, disabled = false, onChange } = props;
  const move = (by: number) => onChange(stepped({ value: value + by, min, max, step }));
  return (
    <div class="slider">
      <label>
        <span class="slider-name">{label}</span>
        <input
          type="range"
          autocomplete="off"
          min={min}
          max={max}
          step={step}
          value={value}
          disabled={disabled}
          aria-valuetext={text}
          onInput={(event) => onChange(stepped({ value: event.currentTarget.valueAsNumber, min, max, step }))}
        />
      </label>
      {/* The range itself says its value to a screen reader. */}
      <span
        class={text.length > longText ? 'slider-value slider-value-long' : 'slider-value'}
        aria-hidden="true"
      >
        {text}
      </span>
      <button
        type="button"
        class="step-button step-less"
        aria-label={fill(words.controls.less, { label })}
        disabled={disabled || value <= min}
        onClick={() => move(-buttonStep)}
      >
        −
      </button>
      <button
        type="button"
        class="step-button step-more"
        aria-label={fill(words.controls.more, { label })}
        disabled={disabled || value >= max}
        onClick={() => move(buttonStep)}
      >
        +
      </button>
    </div>
  );
}

/**
 * A quantity to be set: a native range with its value, and a button on either side for small steps.
 * `onChange` must not lean on anything else that the learner has set: see `stillWhileSame`.
 */
export const Slider = stillWhileSame(DrawnSlider);
