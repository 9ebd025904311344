import { checkedNumber } from './checked-number.ts';

/** What a meter may make of a waveform. Values in the unit of the waveform, ratios without unit. */
export type WaveFactors = {
  mean: number;
  rms: number;
  /** Mean of the absolute value. */
  rectifiedMean: number;
  /** Largest absolute value. */
  peak: number;
  /** rms / rectifiedMean, ≥ 1. */
  formFactor: number;
  /** peak / rms, ≥ 1. */
  crestFactor: number;
  /** Reading of an averaging meter scaled for sine waves, divided by the true r.m.s. value. */
  averagingMeterRatio: number;
};

/** Form factor of a sine wave: what an averaging meter multiplies by. */
const sineFormFactor = Math.PI / (2 * Math.SQRT2);

/**
 * Completes the factors of a waveform from its four plain values.
 *
 * @param values.mean           mean, any sign
 * @param values.rms            r.m.s. value, above 0
 * @param values.rectifiedMean  mean of the absolute value, above 0, at most rms
 * @param values.peak           largest absolute value, at least rms
 * @returns the values with form factor, crest factor and averaging-meter ratio
 * @throws   {RangeError} rms or rectified mean not above 0: a waveform that is nought has no factors
 * Formula:  form = rms/rectified mean;  crest = peak/rms;  ratio = 1.1107/form
 * Valid for: averaging meters with full-wave rectification, scaled for sine waves.
 * Source:   kuphaldt, AC ch. 1
 * Example:  factorsOfValues({ mean: 0, rms: 1, rectifiedMean: 1, peak: 1 }).averagingMeterRatio → 1.1107
 */
export function factorsOfValues(values: {
  mean: number;
  rms: number;
  rectifiedMean: number;
  peak: number;
}): WaveFactors {
  const rms = checkedNumber('rms', values.rms, { above: 0 });
  const rectifiedMean = checkedNumber('rectifiedMean', values.rectifiedMean, { above: 0 });
  return {
    mean: values.mean,
    rms,
    rectifiedMean,
    peak: values.peak,
    formFactor: rms / rectifiedMean,
    crestFactor: values.peak / rms,
    averagingMeterRatio: (sineFormFactor * rectifiedMean) / rms,
  };
}
