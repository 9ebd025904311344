import { describe, expect, it } from 'vitest';
import type { InverterDatasheet } from './datasheet.ts';
import { exampleDatasheet, exampleModel } from './example-model.ts';
import { solveHeatNetwork } from './solve-heat-network.ts';

const va = (value: number) => ({ value, unit: 'VA', powerFactor: 1 }) as const;

const messageFor = (change: Partial<InverterDatasheet>): string => {
  try {
    solveHeatNetwork({ ...exampleDatasheet, ...change });
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    return (error as RangeError).message;
  }
  return 'accepted';
};

const long = (value: number, durationS = 1800) => ({ longDuration: { power: va(value), durationS } });
const surge = (value: number, durationS = 60) => ({ surge: { power: va(value), durationS } });

describe('solveHeatNetwork', () => {
  it('turns every point into its current, whatever the power factor', () => {
    expect(exampleModel.continuousA).toBe(12);
    expect(exampleModel.longDurationA).toBe(15);
    const watts = { value: 2208, unit: 'W', powerFactor: 0.8 } as const;
    const model = solveHeatNetwork({ ...exampleDatasheet, continuous: { power: watts } });
    expect(model.continuousA).toBeCloseTo(12, 12);
  });

  it('puts idle, half and full efficiency into the loss polynomial', () => {
    const { constantW, linearWPerA, squareWPerA2 } = exampleModel.losses;
    expect(constantW).toBe(20);
    expect(constantW + 12 * linearWPerA + 144 * squareWPerA2).toBeCloseTo(2760 / 0.92 - 2760, 9);
    expect(constantW + 6 * linearWPerA + 36 * squareWPerA2).toBeCloseTo(1380 / 0.94 - 1380, 9);
  });

  it.each([
    [
      'hot.power',
      { hot: { power: va(2760), ambientC: 40 } },
      'expected more than hot.power (12.00 A), found 12.00 A',
    ],
    [
      'long not above continuous',
      long(2760),
      'longDuration.power: expected more than continuous.power (12.00 A), found 12.00 A',
    ],
    [
      'surge not above long',
      surge(3450),
      'surge.power: expected more than longDuration.power (15.00 A), found 15.00 A',
    ],
    [
      'limit below surge',
      { currentLimit: { power: va(5500) } },
      'currentLimit.power: expected at least surge.power (24.00 A), found 23.91 A',
    ],
    [
      'surge as long as long',
      surge(5520, 1800),
      'surge.durationS: expected less than longDuration.durationS (1800 s), found 1800 s',
    ],
    [
      'long beyond the heat sink',
      long(3450, 7200),
      'longDuration.power: expected a rating that lasts less than the',
    ],
    ['surge too low', surge(3600), 'raise surge.power or surge.durationS'],
    ['surge too high', surge(5520, 600), 'lower surge.power or surge.durationS'],
    [
      'half efficiency too high',
      { efficiencyHalfRatio: 0.975 },
      'efficiencyHalfRatio: expected a loss at half load',
    ],
    [
      'half efficiency too low',
      { efficiencyHalfRatio: 0.9 },
      'efficiencyFullRatio: expected a loss at full load',
    ],
    ['idle loss above full loss', { idleLossW: 300 }, 'to mend: lower'],
    ['limit too cool', { hot: { power: va(1200), ambientC: 40 } }, 'raise hot.power or lower hot.ambientC'],
    ['limit too hot', { hot: { power: va(2700), ambientC: 40 } }, 'lower hot.power or raise hot.ambientC'],
    [
      'hot not hotter',
      { hot: { power: va(2400), ambientC: 25 } },
      'hot.ambientC: expected hotter than the reference ambient, found 25 °C',
    ],
    ['no wait', { waitS: 0 }, 'waitS: expected more than 0 s, found 0 s'],
    [
      'half a cycle',
      { voltageLostCycles: 0.5 },
      'voltageLostCycles: expected a whole number from 1, found 0.5 cycles',
    ],
    ['warning at the stop', { warnAtHeatRatio: 1 }, 'warnAtHeatRatio: expected between 0 and 1, found 1'],
    [
      'no number',
      { heatSinkTimeConstantS: Number.NaN },
      'heatSinkTimeConstantS: expected more than 0 s, found NaN s',
    ],
    [
      'nothing left at height',
      { altitude: { fromM: 0, lossPer100mRatio: 0.05, maxM: 2000 } },
      'altitude.lossPer100mRatio',
    ],
  ] as [string, Partial<InverterDatasheet>, string][])('refuses %s', (_, change, part) => {
    expect(messageFor(change)).toContain(part);
  });

  it('states a band for the surge that it then accepts, up to its edges', () => {
    const message = messageFor(surge(3600));
    const [from, upTo] = [...message.matchAll(/([\d.]+) kVA/g)].map((match) => Number(match[1]) * 1000);
    const roomy = { currentLimit: { power: va(30_000) } };
    expect(messageFor({ ...surge((from ?? 0) * 1.001), ...roomy })).toBe('accepted');
    expect(messageFor({ ...surge((from ?? 0) * 0.999), ...roomy })).toContain('surge.power');
    expect(messageFor({ ...surge((upTo ?? 0) * 0.999), ...roomy })).toBe('accepted');
    expect(messageFor({ ...surge((upTo ?? 0) * 1.001), ...roomy })).toContain('surge.power');
  });
});
