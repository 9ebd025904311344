/** How a motor answers at one slip, for 1 V at each phase of its supply. Currents follow the voltage, torque its square. */
export interface MachineAnswer {
  /** admittance of one phase, counted as star; of the whole motor when single-phase [S] */
  conductanceS: number;
  /** negative when the current lags [S] */
  susceptanceS: number;
  /** torque in the air gap, all phases together [N·m/V²] */
  torqueNmPerV2: number;
  /** heat in the rotor, all phases together [W/V²] */
  rotorLossWPerV2: number;
}

/**
 * What a run-up needs to know of a motor: at a given slip it is an impedance, and its torque goes with the square of
 * the voltage.
 */
export interface RunUpMachine {
  /** of the supply: one phase has the voltage of the source across it */
  readonly phases: 1 | 3;
  readonly polePairs: number;
  /** friction and windage [N·m per rad/s] */
  readonly frictionNmS: number;
  /** a centrifugal switch, as shares of synchronous speed (0–1) */
  readonly speedSwitch?: { readonly opensAtRatio: number; readonly closesAtRatio: number };
  /**
   * Answer at a slip (1 at standstill, 0 at synchronous speed) and a frequency [Hz], with the centrifugal switch open
   * or not. It is written into `into`, so that a run of thousands of steps allocates nothing.
   */
  readonly answer: (
    slipRatio: number,
    frequencyHz: number,
    isSwitchOpen: boolean,
    into: MachineAnswer,
  ) => void;
}

/** An answer to be filled. */
export const emptyAnswer = (): MachineAnswer => ({
  conductanceS: 0,
  susceptanceS: 0,
  torqueNmPerV2: 0,
  rotorLossWPerV2: 0,
});

/** Speed of the rotating field [rad/s]. */
export const fieldRadPerS = (polePairs: number, frequencyHz: number): number =>
  (2 * Math.PI * frequencyHz) / polePairs;
