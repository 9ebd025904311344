import { describe } from 'vitest';
import {
  accelerationTime,
  affinityPoint,
  combinedLoad,
  constantLoad,
  freeLoad,
  gearedLoad,
  kineticEnergyJ,
} from '../../src/engine/motors/shaft-loads/index.ts';
import { need } from './ac-solvers.ts';
import { type Solver, testRows } from './expect-printed.ts';
import { shaftLoadRows } from './rows/shaft-loads.ts';

type Given = Readonly<Record<string, number>>;

const runUp = (given: Given, inertiaKgM2: number) => {
  const toRadPerS = (need(given, 'speedRpm') * Math.PI) / 30;
  const ratedTorqueNm = need(given, 'ratedPowerW') / toRadPerS;
  const { durationS } = accelerationTime({
    motorTorqueNm: ratedTorqueNm * need(given, 'motorRatio'),
    loadTorqueNm: ratedTorqueNm * need(given, 'loadRatio'),
    inertiaKgM2,
    toRadPerS,
  });
  return { durationS, ratedTorqueNm, inertiaKgM2 };
};

const pointOf = (given: Given) => ({
  flowM3PerS: need(given, 'flowM3PerS'),
  headM: need(given, 'headM'),
  powerW: need(given, 'powerW'),
});

const solvers: Record<string, Solver> = {
  'A-5': (given) => runUp(given, need(given, 'inertiaKgM2')),
  'A-6': (given) => {
    const speedRadPerS = (need(given, 'speedRpm') * Math.PI) / 30;
    const perKgM2 = kineticEnergyJ({ inertiaKgM2: 1, speedRadPerS });
    return runUp(given, need(given, 'storedEnergyJ') / perKgM2);
  },
  'A-7': (given) => {
    const geared = gearedLoad({
      load: constantLoad({
        torqueNm: need(given, 'loadTorqueNm'),
        inertiaKgM2: need(given, 'loadInertiaKgM2'),
      }),
      speedRatio: need(given, 'speedRatio'),
      efficiencyRatio: need(given, 'efficiencyRatio'),
    });
    const all = combinedLoad([freeLoad({ inertiaKgM2: need(given, 'motorInertiaKgM2') }), geared]);
    const speedRadPerS = (need(given, 'motorRpm') * Math.PI) / 30;
    const torqueNm = all.torqueNm(speedRadPerS);
    return { inertiaKgM2: all.inertiaKgM2, torqueNm, powerW: torqueNm * speedRadPerS };
  },
  'P-8': (given) => {
    const found = affinityPoint(pointOf(given), { speedRatio: need(given, 'speedRatio') });
    return {
      flowRisePercent: (found.flowM3PerS - 1) * 100,
      headRisePercent: (found.headM - 1) * 100,
      powerRisePercent: (found.powerW - 1) * 100,
    };
  },
  'P-9': (given) => ({ ...affinityPoint(pointOf(given), { speedRatio: need(given, 'speedRatio') }) }),
  'P-11': (given) => {
    const diameterRatio = Math.cbrt(need(given, 'newFlowM3PerS') / need(given, 'flowM3PerS'));
    const { headM, flowM3PerS } = affinityPoint(pointOf(given), { diameterRatio });
    return { diameterM: need(given, 'diameterM') * diameterRatio, headM, flowM3PerS };
  },
};

describe('published shaft loads', () => {
  testRows(shaftLoadRows, solvers);
});
