import { expect, it } from 'vitest';
import { phasor } from './complex.ts';
import { complexPower } from './complex-power.ts';

it('gives positive reactive power for a lagging current and negative real power for one that flows out', () => {
  const lagging = complexPower(phasor(100, 20), phasor(5, -10));
  expect(lagging.apparentPowerVa).toBeCloseTo(500, 9);
  expect(lagging.realPowerW).toBeCloseTo(500 * Math.cos(Math.PI / 6), 9);
  expect(lagging.reactivePowerVar).toBeCloseTo(250, 9);
  expect(complexPower(phasor(100, 0), phasor(5, 180)).realPowerW).toBeCloseTo(-500, 9);
});
