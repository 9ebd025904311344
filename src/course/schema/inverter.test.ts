import { describe, expect, it } from 'vitest';
import { inverterSchema } from './inverter.ts';

const written = () => ({
  id: 'trial-3',
  name: 'Trial 3',
  'dc-nominal': '24 V',
  'ac-nominal': '230 V',
  frequency: '50 Hz',
  'reference-ambient': '25 °C',
  continuous: { power: '2400 W', 'power-factor': 0.8 },
  hot: { power: '2640 VA', ambient: '40 °C' },
  'long-duration': { power: '3.7 kVA', for: '30 min' },
  surge: { power: '6 kVA', for: '60 s' },
  'current-limit': { power: '6.3 kVA' },
  'heat-sink-time-constant': '70 min',
  'idle-loss': '18 W',
  efficiency: { 'at-half': '94.5 %', 'at-full': '92 %' },
  'warning-at': '90 %',
  'voltage-held-from': '88 %',
  'voltage-lost-after': '25 cycles',
  wait: '30 s',
  reclaim: '2 min',
  'stops-to-lockout': 3,
  altitude: { 'full-rating-up-to': '1000 m', 'loss-per-100-m': '1 %', 'usable-up-to': '4000 m' },
  mass: '17 kg',
  'cost-index': 120,
});

const faultsOf = (change: object): string[] => {
  const result = inverterSchema.safeParse({ ...written(), ...change });
  if (result.success) return [];
  return result.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
};

describe('inverterSchema', () => {
  it('reads figures with units into SI', () => {
    const sheet = inverterSchema.parse(written());
    expect(sheet.continuous.power).toEqual({ value: 2400, unit: 'W', powerFactor: 0.8 });
    expect(sheet.hot).toEqual({ power: { value: 2640, unit: 'VA', powerFactor: 1 }, ambientC: 40 });
    expect(sheet.longDuration.durationS).toBe(1800);
    expect(sheet.heatSinkTimeConstantS).toBe(4200);
    expect(sheet.efficiencyHalfRatio).toBe(0.945);
    expect(sheet.voltageLostCycles).toBe(25);
    expect(sheet.altitude).toEqual({ fromM: 1000, lossPer100mRatio: 0.01, maxM: 4000 });
  });

  it('leaves power factor 1 when watts stand alone', () => {
    const sheet = inverterSchema.parse({ ...written(), hot: { power: '2600 W', ambient: '40 °C' } });
    expect(sheet.hot.power).toEqual({ value: 2600, unit: 'W', powerFactor: 1 });
  });

  it('names field, expected, found and hint of a figure without unit', () => {
    expect(faultsOf({ wait: '30' })).toEqual([
      'wait: expected time such as 30 s, found "30" (unit-missing); hint: write figure and unit',
    ]);
    expect(faultsOf({ surge: { power: '6000', for: '60 s' } })).toEqual([
      'surge.power: expected a power such as 3 kVA or 2400 W, found "6000"; hint: write figure and unit',
    ]);
    expect(faultsOf({ 'dc-nominal': '36 V' })).toEqual([
      'dc-nominal: expected 12 V or 24 V or 48 V, found 36 V; hint: choose one of them',
    ]);
  });

  it('refuses a power factor beside volt-amperes, and one outside 0 to 1', () => {
    expect(faultsOf({ continuous: { power: '3 kVA', 'power-factor': 0.8 } })).toEqual([
      'continuous.power-factor: expected none beside VA, found 0.8; hint: state it only beside W',
    ]);
    expect(faultsOf({ continuous: { power: '3 kW', 'power-factor': 1.2 } })).toEqual([
      'continuous.power-factor: expected above 0 up to 1, found 1.2; hint: correct it or leave it out for 1',
    ]);
  });

  it('refuses an unknown field', () => {
    expect(faultsOf({ colour: 'green' })[0]).toContain('colour');
    expect(faultsOf({ surge: { power: '6 kVA', duration: '60 s' } }).join()).toContain('duration');
  });

  it('refuses a share beyond 100 % and an id that is none', () => {
    expect(faultsOf({ 'warning-at': '120 %' })[0]).toContain('warning-at: expected a share');
    expect(faultsOf({ id: 'Trial 3' })[0]).toContain('id: expected a kebab-case id');
  });

  it('refuses a datasheet that no heat network satisfies, at the point to blame and in the author’s words', () => {
    expect(faultsOf({ 'long-duration': { power: '2.9 kVA', for: '30 min' } })).toEqual([
      'long-duration.power: expected more than continuous.power (13.04 A), found 12.61 A; to mend: raise long-duration.power or lower continuous.power',
    ]);
    expect(faultsOf({ 'long-duration': { power: '3.7 kVA', for: '3 h' } })[0]).toMatch(
      /^long-duration\.power: expected a rating that lasts less than .* of the heat sink alone, found 10800 s; to mend: .*heat-sink-time-constant$/,
    );
  });
});
