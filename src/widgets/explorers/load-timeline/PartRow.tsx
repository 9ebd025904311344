import type { VNode } from 'preact';
import { NumberField } from '../../shared/controls/NumberField.tsx';
import { Slider } from '../../shared/controls/Slider.tsx';
import { stillWhileSame } from '../../shared/controls/still-while-same.ts';
import { fill, voltAmperes, words } from '../words.ts';
import { minuteRange, type PatternPart } from './pattern.ts';

const text = words.loadTimeline;

interface PartRowProps {
  part: PatternPart;
  number: number;
  count: number;
  range: { min: number; max: number; step: number };
  onChange: (change: { loadVa?: number; minutes?: number }) => void;
  onMove: (by: number) => void;
  onRemove: () => void;
}

function DrawnPartRow({ part, number, count, range, onChange, onMove, onRemove }: PartRowProps): VNode {
  const named = (sentence: string) => fill(sentence, { number });
  return (
    <li class="part-row">
      <Slider
        label={named(text.load)}
        value={part.loadVa}
        {...range}
        buttonStep={range.step * 5}
        text={voltAmperes(part.loadVa)}
        onChange={(loadVa) => onChange({ loadVa })}
      />
      <div class="part-tools">
        <NumberField
          label={text.minutesShort}
          fullLabel={named(text.minutes)}
          unit={text.minutesUnit}
          value={part.minutes}
          {...minuteRange}
          onChange={(minutes) => onChange({ minutes })}
        />
        <button
          type="button"
          class="step-button"
          aria-label={named(text.earlier)}
          disabled={number === 1}
          onClick={() => onMove(-1)}
        >
          ↑
        </button>
        <button
          type="button"
          class="step-button"
          aria-label={named(text.later)}
          disabled={number === count}
          onClick={() => onMove(1)}
        >
          ↓
        </button>
        <button
          type="button"
          class="step-button"
          aria-label={named(text.remove)}
          disabled={count === 1}
          onClick={onRemove}
        >
          ×
        </button>
      </div>
    </li>
  );
}

/** One part of a pattern: load, minutes, and buttons to move it and take it away. */
export const PartRow = stillWhileSame(DrawnPartRow);
