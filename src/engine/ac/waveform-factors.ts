import { checkedNumber } from './checked-number.ts';
import { factorsOfValues, type WaveFactors } from './factors-of-values.ts';

/** Shapes with a peak of 1. */
export type WaveShape =
  /** Square is symmetrical; triangle stands for the sawtooth as well; half-wave and full-wave are rectified sines. */
  | { kind: 'sine' | 'square' | 'triangle' | 'half-wave' | 'full-wave' }
  /** Height 1 for a part of the period, nought for the rest. */
  | { kind: 'pulse'; dutyRatio: number }
  /** One half-sine pulse in each half period, up and down in turn, `widthRatio` of the half period wide: a rectifier's current. */
  | { kind: 'truncated-cosine'; widthRatio: number };

type PlainValues = { mean: number; rms: number; rectifiedMean: number; peak: number };

function direct(shape: WaveShape): PlainValues {
  switch (shape.kind) {
    case 'sine':
      return { mean: 0, rms: Math.SQRT1_2, rectifiedMean: 2 / Math.PI, peak: 1 };
    case 'square':
      return { mean: 0, rms: 1, rectifiedMean: 1, peak: 1 };
    case 'triangle':
      return { mean: 0, rms: 1 / Math.sqrt(3), rectifiedMean: 1 / 2, peak: 1 };
    case 'half-wave':
      return { mean: 1 / Math.PI, rms: 1 / 2, rectifiedMean: 1 / Math.PI, peak: 1 };
    case 'full-wave':
      return { mean: 2 / Math.PI, rms: Math.SQRT1_2, rectifiedMean: 2 / Math.PI, peak: 1 };
    case 'pulse': {
      const dutyRatio = checkedNumber('dutyRatio', shape.dutyRatio, { above: 0, max: 1 });
      return { mean: dutyRatio, rms: Math.sqrt(dutyRatio), rectifiedMean: dutyRatio, peak: 1 };
    }
    case 'truncated-cosine': {
      const widthRatio = checkedNumber('widthRatio', shape.widthRatio, { above: 0, max: 1 });
      return { mean: 0, rms: Math.sqrt(widthRatio / 2), rectifiedMean: (2 / Math.PI) * widthRatio, peak: 1 };
    }
  }
}

/** Mean of |x − m| for a shape with mean m: twice the area above m, because as much lies above as below. */
function rectifiedMeanAround(shape: WaveShape, mean: number): number {
  if (shape.kind === 'pulse') return 2 * mean * (1 - mean);
  // Area of sin θ above m between its crossings θ₁ and π − θ₁, per period of 2π (half-wave) or π (full-wave).
  const crossing = Math.asin(mean);
  const area = 2 * Math.cos(crossing) - mean * (Math.PI - 2 * crossing);
  return (2 * area) / (shape.kind === 'half-wave' ? 2 * Math.PI : Math.PI);
}

/**
 * Form factor, crest factor and averaging-meter reading of ideal waveforms, in closed form.
 *
 * @param shape              waveform with peak 1; dutyRatio and widthRatio above 0 up to 1
 * @param options.acCoupled  true where the meter blocks the direct part; default false
 * @returns the factors; values for a peak of 1 (with a.c. coupling, `peak` is the largest distance from the mean)
 * @throws   {RangeError} a ratio outside its limits, or an a.c.-coupled pulse that is always on
 * Valid for: ideal shapes; for measured ones take factorsOfSamples.
 * Source:   kuphaldt, AC ch. 1; storey, ch. 3, ex. 3.4; derived (a.c.-coupled and truncated shapes)
 * Example:  waveformFactors({ kind: 'square' }).averagingMeterRatio → 1.111
 */
export function waveformFactors(shape: WaveShape, options: { acCoupled?: boolean } = {}): WaveFactors {
  const values = direct(shape);
  if (!options.acCoupled || values.mean === 0) return factorsOfValues(values);
  const { mean } = values;
  return factorsOfValues({
    mean: 0,
    rms: Math.sqrt(Math.max(0, values.rms ** 2 - mean ** 2)),
    rectifiedMean: rectifiedMeanAround(shape, mean),
    peak: Math.max(1 - mean, mean),
  });
}
