import { checkedNumber } from '../../ac/checked-number.ts';
import { timeToHeat } from '../../inverter/time-to-heat.ts';
import { directStarter } from '../starters/stepped-starters.ts';
import { type Integration, integrateRunUp } from './integrate-run-up.ts';
import { FAST_HEAT, MOTOR_SQUARE, makePlant, OUTPUT_SQUARE, ROTOR_LOSS, SLOW_HEAT, SPEED } from './plant.ts';
import type { RunUp, RunUpSetup } from './run-up-types.ts';
import { runningSpeed } from './running-speed.ts';

const check = (setup: RunUpSetup): void => {
  const { source, load } = setup;
  checkedNumber('motorInertiaKgM2', setup.motorInertiaKgM2, { above: 0 });
  checkedNumber('load.inertiaKgM2', load.inertiaKgM2, { min: 0 });
  checkedNumber('source.nominalV', source.nominalV, { above: 0 });
  checkedNumber('source.frequencyHz', source.frequencyHz, { above: 0 });
  if (!(source.limitA > 0)) {
    throw new RangeError(`source.limitA: expected more than 0 A, found ${source.limitA}`);
  }
  checkedNumber('untilS', setup.untilS ?? 60, { above: 0 });
  checkedNumber('sampleEveryS', setup.sampleEveryS ?? 1, { above: 0 });
  checkedNumber('toleranceRatio', setup.toleranceRatio ?? 1e-7, { min: 1e-12, max: 1e-2 });
};

/** When the heat would stop the inverter if the end of the run went on. */
const heatStopAfter = (run: Integration, setup: RunUpSetup, endOutputA: number): number | null => {
  const { protection } = setup.source;
  if (!protection) return null;
  if (run.outcome === 'tripped-by-heat') return run.timeS;
  if (run.outcome === 'tripped-by-cycle-counter') return null;
  const more = timeToHeat({
    model: protection.model,
    heat: { fast: run.state[FAST_HEAT] as number, slow: run.state[SLOW_HEAT] as number },
    currentA: endOutputA,
    levelRatio: protection.allowedHeatRatio,
  });
  return more === null ? null : run.timeS + more;
};

/**
 * A motor runs up on a source with a current limit, beside other loads: speed, volts, amperes, heat, and whether the
 * start succeeds.
 *
 * Convention for the dip: the motor at a given slip is a constant impedance (its current falls with the voltage), and
 * while the limit acts the voltage is the highest at which everything connected draws just the limit:
 * V = I_limit/|Y_total|. Not the constant-current rule of stiff networks (dip = S_start/S_shortcircuit), which
 * overstates the dip of a small source and can exceed 100 %.
 *
 * The counter counts mains cycles while the voltage is below the datasheet's held ratio and starts anew when it is
 * back. Started: 98 % of the running speed, last stage of the starter, voltage held. Stalled: settled below that.
 * A load never turns the motor backwards: below its torque at standstill the motor stands.
 *
 * @param setup.machine           see `threePhaseRunUpMachine`, `singlePhaseRunUpMachine`
 * @param setup.motorInertiaKgM2  rotor of the motor [kg·m²], > 0
 * @param setup.load              torque [N·m] against speed [rad/s], inertia [kg·m²] ≥ 0
 * @param setup.source            see `inverterSource`, `stiffSource`
 * @param setup.starter           default direct
 * @param setup.untilS            end of the run at the latest [s], default 60
 * @param setup.sampleEveryS      spacing of samples [s]; none when absent
 * @param setup.toleranceRatio    local error per step as a share of synchronous speed, 1e-12 to 1e-2, default 1e-7
 * @returns outcome with its reason, run-up time [s], voltage, currents, I²t, heat of both nodes, samples
 * @throws  {RangeError} a value outside its limits
 * Valid for: quasi-steady motor currents (the first cycles: `dqStart`); output and loads balanced over the phases
 * Formula: J·dω/dt = T_motor(ω, V) − T_load(ω)
 * Source:  dubey (run-up of induction motors); derived (current limit)
 * Example: runUp({ machine: threePhaseRunUpMachine(exampleCircuit), motorInertiaKgM2: 0.02, load: { torqueNm: () => 0, inertiaKgM2: 0 }, source: stiffSource({ nominalV: 230, frequencyHz: 50 }) }).outcome → started
 */
export const runUp = (setup: RunUpSetup): RunUp => {
  check(setup);
  const starter = setup.starter ?? directStarter;
  const plant = makePlant(setup, starter);
  const runningSpeedRadPerS = runningSpeed(plant, starter.stages.length - 1);
  const run = integrateRunUp({ setup, starter, plant, runningSpeedRadPerS });
  const { protection, nominalV, frequencyHz } = setup.source;
  const at = (component: number): number => run.state[component] as number;
  return {
    outcome: run.outcome,
    reason: run.reason,
    runUpTimeS: run.startedS,
    endS: run.timeS,
    endSpeedRadPerS: at(SPEED),
    runningSpeedRadPerS,
    minimumVoltageRatio: run.minimumVoltageRatio,
    minimumVoltageV: run.minimumVoltageRatio * nominalV,
    peakMotorA: run.peakMotorA,
    peakOutputA: run.peakOutputA,
    limitEndsS: run.limitEndsS,
    voltageLostS: run.longestLostS,
    voltageLostCycles: run.longestLostS * frequencyHz,
    motorSquareA2S: at(MOTOR_SQUARE),
    outputSquareA2S: at(OUTPUT_SQUARE),
    rotorLossJ: at(ROTOR_LOSS),
    heatEnd: protection ? { fast: at(FAST_HEAT), slow: at(SLOW_HEAT) } : null,
    peakHeatRatio: protection ? run.peakHeatRatio : null,
    allowedHeatRatio: protection?.allowedHeatRatio ?? null,
    heatStopS: heatStopAfter(run, setup, plant.outputA),
    evaluations: plant.evaluations,
    samples: run.samples,
  };
};
