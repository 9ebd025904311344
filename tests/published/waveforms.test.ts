import { describe, expect, it } from 'vitest';
import {
  complexMagnitude,
  distortion,
  factorsOfSamples,
  harmonicOfSamples,
  rmsOfHarmonics,
  seriesImpedance,
  type WaveShape,
  waveformFactors,
} from '../../src/engine/ac/index.ts';
import { type Solver, testRows } from './expect-printed.ts';
import { waveformRows } from './rows/waveforms.ts';

type Given = Readonly<Record<string, number>>;

function need(given: Given, name: string): number {
  const value = given[name];
  if (value === undefined) throw new Error(`the row gives no ${name}`);
  return value;
}

/** Factors of a shape, its values scaled to the row's peak, and what an averaging meter would show. */
const shaped =
  (shapeOf: (given: Given) => WaveShape, acCoupled = false): Solver =>
  (given) => {
    const factors = waveformFactors(shapeOf(given), { acCoupled });
    const peak = need(given, 'peak');
    return {
      rms: factors.rms * peak,
      formFactor: factors.formFactor,
      crestFactor: factors.crestFactor,
      averagingMeterRatio: factors.averagingMeterRatio,
      meter: factors.averagingMeterRatio * factors.rms * peak,
      meterErrorPercent: (factors.averagingMeterRatio - 1) * 100,
    };
  };
const pulse = shaped((given) => ({ kind: 'pulse', dutyRatio: need(given, 'dutyRatio') }));
const truncated = shaped((given) => ({ kind: 'truncated-cosine', widthRatio: need(given, 'widthRatio') }));

/** r.m.s. voltage and current of a coil on a voltage with harmonics. */
const coilOnHarmonics: Solver = (given) => {
  const orders = [
    { order: 1, peak: need(given, 'first') },
    { order: 3, peak: need(given, 'third') },
    { order: 5, peak: need(given, 'fifth') },
  ];
  const resistanceOhm = need(given, 'resistanceOhm');
  const peaks = orders.map(({ order, peak }) => {
    const frequencyHz = (order * need(given, 'omega')) / (2 * Math.PI);
    return (
      peak /
      complexMagnitude(
        seriesImpedance({ resistanceOhm, inductanceH: need(given, 'inductanceH'), frequencyHz }),
      )
    );
  });
  const direct = given['direct'] ?? 0;
  const currentA = rmsOfHarmonics({ mean: direct / resistanceOhm, peaks });
  const voltageV = rmsOfHarmonics({ mean: direct, peaks: orders.map(({ peak }) => peak) });
  const realPowerW = currentA ** 2 * resistanceOhm;
  return { currentA, voltageV, realPowerW, powerFactor: realPowerW / (voltageV * currentA) };
};

const threePeaks: Solver = (given) => {
  const currentA = rmsOfHarmonics({
    peaks: [need(given, 'first'), need(given, 'second'), need(given, 'third')],
  });
  return { currentA, realPowerW: currentA ** 2 * (given['resistanceOhm'] ?? 0) };
};

const solvers: Record<string, Solver> = {
  'WF-sine': shaped(() => ({ kind: 'sine' })),
  'WF-square': shaped(() => ({ kind: 'square' })),
  'WF-triangle': shaped(() => ({ kind: 'triangle' })),
  'WF-half-wave': shaped(() => ({ kind: 'half-wave' })),
  'WF-pulse-25': pulse,
  'WF-pulse-1': pulse,
  'WF-full-wave-ac': shaped(() => ({ kind: 'full-wave' }), true),
  'WF-half-wave-ac': shaped(() => ({ kind: 'half-wave' }), true),
  'WF-half-wave-ac-2': shaped(() => ({ kind: 'half-wave' }), true),
  'WF-truncated-50': truncated,
  'WF-truncated-40': truncated,
  'WF-truncated-33': truncated,
  'WF-truncated-25': truncated,
  'NL-12': (given) => ({
    squareTrue: need(given, 'shown') / waveformFactors({ kind: 'square' }).averagingMeterRatio,
    triangleTrue: need(given, 'shown') / waveformFactors({ kind: 'triangle' }).averagingMeterRatio,
  }),
  'NL-14': (given) => {
    const half = need(given, 'squareVpp') / 2;
    const square = factorsOfSamples([half, half, -half, -half]);
    const narrow = waveformFactors({ kind: 'pulse', dutyRatio: need(given, 'dutyRatio') });
    return {
      squareRms: square.rms,
      squareMeter: square.rms * square.averagingMeterRatio,
      pulseRms: narrow.rms * need(given, 'pulseV'),
      pulseCrest: narrow.crestFactor,
    };
  },
  'NL-09': () => {
    const samples = Array.from({ length: 2000 }, (_, index) => (index < 1000 ? 1 : -1));
    const { rms, crestFactor } = factorsOfSamples(samples);
    const fundamental = complexMagnitude(harmonicOfSamples(samples, 1));
    const { distortionFactorRatio, thdRatio } = distortion({ fundamental, total: rms });
    // The fundamental of the bridge's square current is in phase with the voltage, so displacement power factor is 1.
    return {
      distortionFactor: distortionFactorRatio,
      thd: thdRatio,
      crestFactor,
      powerFactor: distortionFactorRatio,
    };
  },
  'NL-04': coilOnHarmonics,
  'NL-05': coilOnHarmonics,
  'NL-06': threePeaks,
  'NL-08': threePeaks,
};

describe('published waveforms', () => {
  testRows(waveformRows, solvers);

  it('NL-09 agrees with 4/π to the digits the source leaves out', () => {
    expect(solvers['NL-09']?.({})['distortionFactor']).toBeCloseTo(0.9003, 4);
    expect(solvers['NL-09']?.({})['thd']).toBeCloseTo(0.4834, 4);
  });

  it('states a meter’s error against the true value: +11 % for a square wave, whichever way reprints turn it', () => {
    const { averagingMeterRatio } = waveformFactors({ kind: 'square' });
    expect((averagingMeterRatio - 1) * 100).toBeCloseTo(11.07, 2);
  });
});
