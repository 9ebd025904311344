import { checkedNumber } from './checked-number.ts';
import { factorsOfValues, type WaveFactors } from './factors-of-values.ts';
import { rmsOfSamples } from './rms-of-samples.ts';

/**
 * Form factor, crest factor and averaging-meter reading of any sampled waveform.
 *
 * @param samples            whole periods, evenly spaced, at least one, not all nought, all finite
 * @param options.acCoupled  true where the meter blocks the direct part, so that the mean is taken off first; default false
 * @returns the factors, values in the unit of the samples
 * @throws   {RangeError} no samples, one that is not finite, or nothing left to measure
 * Valid for: sampling well above twice the highest frequency present; the peak is that of the samples.
 * Source:   kuphaldt, AC ch. 1
 * Example:  factorsOfSamples([2, 0, 0, 0]).crestFactor → 2
 */
export function factorsOfSamples(
  samples: readonly number[],
  options: { acCoupled?: boolean } = {},
): WaveFactors {
  checkedNumber('samples.length', samples.length, { min: 1 });
  const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const fullMean = checkedNumber('mean of samples', meanOf(samples));
  const values = options.acCoupled ? samples.map((sample) => sample - fullMean) : samples;
  return factorsOfValues({
    mean: options.acCoupled ? 0 : fullMean,
    rms: rmsOfSamples(values),
    rectifiedMean: meanOf(values.map(Math.abs)),
    peak: values.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0),
  });
}
