import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  accelerationTime,
  affinityPoint,
  combinedLoad,
  compressorLoad,
  constantLoad,
  freeLoad,
  gearedLoad,
  kineticEnergyJ,
  pumpLoad,
  quadraticLoad,
  referredInertia,
} from './index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pump = {
  ratedFlowM3PerS: 0.002,
  ratedHeadM: 40,
  shutOffHeadM: 50,
  staticHeadM: 30,
  efficiencyRatio: 0.6,
  ratedSpeedRadPerS: 300,
  inertiaKgM2: 0.002,
};

describe('affinity laws', () => {
  it('raise flow, head and power by the first, second and third power of speed', () => {
    fc.assert(
      fc.property(between(0.2, 3), (speedRatio) => {
        const found = affinityPoint({ flowM3PerS: 1, headM: 1, powerW: 1 }, { speedRatio });
        fc.pre(Math.abs(speedRatio - 1) > 1e-3);
        const exponentOf = (value: number) => Math.log(value) / Math.log(speedRatio);
        expect(exponentOf(found.flowM3PerS)).toBeCloseTo(1, 9);
        expect(exponentOf(found.headM)).toBeCloseTo(2, 9);
        expect(exponentOf(found.powerW)).toBeCloseTo(3, 9);
      }),
    );
  });

  it('undo themselves', () => {
    const there = affinityPoint(
      { flowM3PerS: 2, headM: 3, powerW: 5 },
      { speedRatio: 1.7, diameterRatio: 0.8 },
    );
    const back = affinityPoint(there, { speedRatio: 1 / 1.7, diameterRatio: 1 / 0.8 });
    expect(back.powerW).toBeCloseTo(5, 12);
    expect(back.flowM3PerS).toBeCloseTo(2, 12);
  });

  it('hold for a pump without static head, for its torque too', () => {
    const free = pumpLoad({ ...pump, staticHeadM: 0 });
    fc.assert(
      fc.property(between(0.05, 1.5), (n) => {
        expect(free.flowM3PerS(300 * n)).toBeCloseTo(0.002 * n, 12);
        expect(free.headM(300 * n)).toBeCloseTo(40 * n * n, 9);
        expect(free.torqueNm(300 * n) / free.torqueNm(300)).toBeCloseTo(n * n, 9);
      }),
    );
  });
});

describe('a pump with static head', () => {
  const load = pumpLoad(pump);

  it('works at its rated point at rated speed', () => {
    expect(load.flowM3PerS(300)).toBeCloseTo(0.002, 15);
    expect(load.headM(300)).toBeCloseTo(40, 12);
    // By hand: 1000·9.81·0.002·40/0.6 W over 300 rad/s.
    expect(load.torqueNm(300)).toBeCloseTo(1308 / 300, 12);
  });

  it('meets the head of its pipework at every speed at which it delivers', () => {
    for (const speed of [235, 250, 280, 310]) {
      const flowShare = load.flowM3PerS(speed) / 0.002;
      expect(load.headM(speed)).toBeCloseTo(30 + 10 * flowShare ** 2, 9);
    }
  });

  it('delivers nothing below the speed whose shut-off head equals the static head', () => {
    // By hand: n² = 30/50, so 300·√0.6 = 232.38 rad/s.
    expect(load.flowM3PerS(232.3)).toBe(0);
    expect(load.flowM3PerS(232.5)).toBeGreaterThan(0);
    expect(load.torqueNm(150) / load.torqueNm(300)).toBeCloseTo(0.5 * 0.25, 12);
  });

  it('holds its seals at standstill', () => {
    expect(load.torqueNm(0)).toBe(0);
    expect(pumpLoad({ ...pump, standstillTorqueNm: 0.4 }).torqueNm(0)).toBe(0.4);
  });

  it('refuses a head curve that does not fall, and a lift above its head', () => {
    expect(() => pumpLoad({ ...pump, shutOffHeadM: 40 })).toThrow(/shutOffHeadM/);
    expect(() => pumpLoad({ ...pump, staticHeadM: 41 })).toThrow(/staticHeadM/);
  });
});

describe('a fan', () => {
  it('asks for a quarter of its torque at half speed, above its bearings', () => {
    const fan = quadraticLoad({
      ratedTorqueNm: 22,
      ratedSpeedRadPerS: 150,
      standstillTorqueNm: 2,
      inertiaKgM2: 1,
    });
    expect([fan.torqueNm(0), fan.torqueNm(75), fan.torqueNm(150)]).toEqual([2, 7, 22]);
  });
});

describe('a compressor', () => {
  const plain = { ratedTorqueNm: 6, frictionTorqueNm: 1, ratedSpeedRadPerS: 300, inertiaKgM2: 0.003 };
  const at = (backPressureRatio: number, speed: number, unloadedBelowRadPerS = 0) =>
    compressorLoad({ ...plain, backPressureRatio, unloadedBelowRadPerS }).torqueNm(speed);

  it('starts against its friction when equalised, against everything with full back pressure', () => {
    expect([at(0, 0), at(0.4, 0), at(1, 0)]).toEqual([1, 3, 6]);
    expect([at(0, 150), at(1, 150)]).toEqual([3.5, 6]);
  });

  it('reaches rated torque at rated speed and stays there', () => {
    expect([at(0, 300), at(0.4, 300), at(0.4, 320)]).toEqual([6, 6, 6]);
  });

  it('is held off by its unloader until its speed', () => {
    expect([at(1, 0, 250), at(1, 249, 250), at(1, 250, 250)]).toEqual([1, 1, 6]);
  });

  it('refuses more friction than torque', () => {
    expect(() => compressorLoad({ ...plain, backPressureRatio: 0, frictionTorqueNm: 7 })).toThrow(
      /frictionTorqueNm/,
    );
  });
});

describe('a gear', () => {
  it('refers inertia with the square of its ratio and keeps the energy of motion', () => {
    fc.assert(
      fc.property(between(0.01, 10), between(0.01, 5), (inertiaKgM2, speedRatio) => {
        const referred = referredInertia({ inertiaKgM2, speedRatio });
        expect(referred / inertiaKgM2 / speedRatio ** 2).toBeCloseTo(1, 12);
        const own = kineticEnergyJ({ inertiaKgM2, speedRadPerS: 150 * speedRatio });
        expect(kineticEnergyJ({ inertiaKgM2: referred, speedRadPerS: 150 }) / own).toBeCloseTo(1, 12);
      }),
    );
  });

  it('asks for the power of the load by its efficiency', () => {
    const fan = quadraticLoad({ ratedTorqueNm: 40, ratedSpeedRadPerS: 80, inertiaKgM2: 2 });
    const geared = gearedLoad({ load: fan, speedRatio: 0.5, efficiencyRatio: 0.95 });
    expect(geared.torqueNm(140) * 140 * 0.95).toBeCloseTo(fan.torqueNm(70) * 70, 9);
  });

  it('after a gear is one gear with the product of their ratios', () => {
    const load = constantLoad({ torqueNm: 50, inertiaKgM2: 10 });
    const twice = gearedLoad({ load: gearedLoad({ load, speedRatio: 0.5 }), speedRatio: 0.2 });
    const once = gearedLoad({ load, speedRatio: 0.1 });
    expect(twice.torqueNm(100)).toBeCloseTo(once.torqueNm(100), 12);
    expect(twice.inertiaKgM2).toBeCloseTo(once.inertiaKgM2, 15);
  });
});

describe('loads on one shaft', () => {
  it('add up', () => {
    const sum = combinedLoad([
      freeLoad({ inertiaKgM2: 0.5 }),
      constantLoad({ torqueNm: 3, inertiaKgM2: 0.25 }),
      quadraticLoad({ ratedTorqueNm: 8, ratedSpeedRadPerS: 100, inertiaKgM2: 1 }),
    ]);
    expect([sum.torqueNm(50), sum.inertiaKgM2]).toEqual([5, 1.75]);
    expect(combinedLoad([]).torqueNm(50)).toBe(0);
  });

  it('refuse a negative inertia by name', () => {
    expect(() => freeLoad({ inertiaKgM2: -1 })).toThrow(/inertiaKgM2/);
  });
});

describe('the time to run up', () => {
  it('counts from the speed at which it begins', () => {
    const all = { motorTorqueNm: 20, loadTorqueNm: 5, inertiaKgM2: 0.1, toRadPerS: 150 };
    expect(accelerationTime({ ...all, fromRadPerS: 75 }).durationS).toBeCloseTo(0.5, 12);
  });

  it('does not exist without torque to spare or without inertia', () => {
    const all = { motorTorqueNm: 5, loadTorqueNm: 5, inertiaKgM2: 0.1, toRadPerS: 150 };
    expect(() => accelerationTime(all)).toThrow(/motorTorqueNm: expected .*> 5/);
    expect(() => accelerationTime({ ...all, motorTorqueNm: 9, inertiaKgM2: 0 })).toThrow(/inertiaKgM2/);
  });
});
