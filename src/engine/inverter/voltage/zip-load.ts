/** Real and reactive power. */
export interface LoadPower {
  /** [W] */
  readonly realW: number;
  /** [var], positive when inductive */
  readonly reactiveVar: number;
}

/**
 * What is connected to one output, split by how it answers a falling voltage. Each share is stated at nominal
 * voltage: impedance (heaters: current falls with voltage), current (stays), power (electronic supplies: rises).
 */
export interface ZipLoad {
  readonly impedance: LoadPower;
  readonly current: LoadPower;
  readonly power: LoadPower;
}

/** Nothing connected. */
export const noLoad: ZipLoad = {
  impedance: { realW: 0, reactiveVar: 0 },
  current: { realW: 0, reactiveVar: 0 },
  power: { realW: 0, reactiveVar: 0 },
};

/**
 * Current that the three shares draw together at a voltage. All shares hang on the same bus, so their currents are
 * added as phasors, not as magnitudes.
 *
 * @param load          shares at nominal voltage [W, var]
 * @param nominalV      nominal voltage [V], > 0
 * @param voltageRatio  voltage as a share of nominal, > 0
 * @returns r.m.s. current [A]
 * @throws  nothing
 * Formula: I(v) = |v·Sz + Si + Sp/v| / V
 * Source:  common-practice (ZIP load model)
 * Example: zipCurrentA({ impedance: { realW: 2300, reactiveVar: 0 }, current: { realW: 0, reactiveVar: 0 }, power: { realW: 1150, reactiveVar: 0 } }, 230, 0.5) → 15
 */
export const zipCurrentA = (load: ZipLoad, nominalV: number, voltageRatio: number): number => {
  const { impedance, current, power } = load;
  const real = voltageRatio * impedance.realW + current.realW + power.realW / voltageRatio;
  const reactive =
    voltageRatio * impedance.reactiveVar + current.reactiveVar + power.reactiveVar / voltageRatio;
  return Math.sqrt(real * real + reactive * reactive) / nominalV;
};

/**
 * Real power the three shares take at a voltage.
 *
 * @param load          shares at nominal voltage [W, var]
 * @param voltageRatio  voltage as a share of nominal, > 0
 * @returns real power [W]
 * @throws  nothing
 * Formula: P(v) = v²·Pz + v·Pi + Pp
 * Source:  common-practice (ZIP load model)
 * Example: zipPowerW({ impedance: { realW: 2000, reactiveVar: 0 }, current: { realW: 0, reactiveVar: 0 }, power: { realW: 100, reactiveVar: 0 } }, 0.9) → 1720
 */
export const zipPowerW = (load: ZipLoad, voltageRatio: number): number =>
  voltageRatio * (voltageRatio * load.impedance.realW + load.current.realW) + load.power.realW;
