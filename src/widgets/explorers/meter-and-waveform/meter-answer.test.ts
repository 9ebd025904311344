import { describe, expect, it } from 'vitest';
import { factorsOfSamples } from '../../../engine/index.ts';
import { firstMeterSetting, meterAnswer, shapeKinds, waveAt, waveShapeOf } from './meter-answer.ts';

describe('meterAnswer', () => {
  it('shows a sine rightly and a square 11 % too high', () => {
    expect(meterAnswer({ ...firstMeterSetting, shape: 'sine' }).errorRatio).toBeCloseTo(0, 12);
    expect(meterAnswer({ ...firstMeterSetting, shape: 'square' }).errorRatio).toBeCloseTo(0.1107, 4);
  });
  it('shows narrow pulses far too low', () => {
    const answer = meterAnswer({ ...firstMeterSetting, widthRatio: 0.2 });
    expect(answer.crestFactor).toBeCloseTo(Math.sqrt(10), 9);
    expect(answer.readingA).toBeLessThan(5.1);
  });
  it('shows less of a half wave when the direct part does not reach it', () => {
    const all = meterAnswer({ ...firstMeterSetting, shape: 'half-wave' });
    const ac = meterAnswer({ ...firstMeterSetting, shape: 'half-wave', coupling: 'ac' });
    expect(all.errorRatio).toBeCloseTo(-0.2929, 4);
    expect(ac.readingA).toBeLessThan(all.readingA + 1.5);
    expect(ac.errorRatio).not.toBeCloseTo(all.errorRatio, 3);
  });
});

describe('waveAt', () => {
  it('draws the very wave whose factors are told', () => {
    for (const shape of shapeKinds) {
      for (const widthRatio of [0.1, 0.45, 1]) {
        const setting = { ...firstMeterSetting, shape, widthRatio };
        const wave = waveShapeOf(setting);
        const samples = Array.from({ length: 20_000 }, (_, i) => waveAt(wave, (i + 0.5) / 20_000));
        const measured = factorsOfSamples(samples);
        const told = meterAnswer(setting);
        expect(measured.crestFactor).toBeCloseTo(told.crestFactor, 3);
        expect(measured.averagingMeterRatio - 1).toBeCloseTo(told.errorRatio, 3);
      }
    }
  });
});
