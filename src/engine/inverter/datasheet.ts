/** A rating as printed: watts at a stated power factor, or volt-amperes. */
export interface StatedPower {
  /** number in front of the unit [W or VA], > 0 */
  readonly value: number;
  readonly unit: 'W' | 'VA';
  /** power factor at which the watts are stated, 0 < PF ≤ 1; ignored for VA */
  readonly powerFactor: number;
}

/** What an inverter's datasheet states, in SI units. Every rating is of the AC output. */
export interface InverterDatasheet {
  readonly id: string;
  readonly name: string;
  readonly note?: string;
  /** name of the range the unit is one size of */
  readonly range?: string;
  readonly dcNominalV: 12 | 24 | 48;
  readonly acNominalV: number;
  readonly frequencyHz: 50 | 60;
  /** ambient at which continuous, long-duration and surge ratings hold [°C] */
  readonly referenceAmbientC: number;
  /** for ever, at the reference ambient */
  readonly continuous: { readonly power: StatedPower };
  /** for ever, at a hotter ambient [°C] */
  readonly hot: { readonly power: StatedPower; readonly ambientC: number };
  /** for a time [s], at the reference ambient, starting warm from running at no load */
  readonly longDuration: { readonly power: StatedPower; readonly durationS: number };
  readonly surge: { readonly power: StatedPower; readonly durationS: number };
  /** the most current the output stage gives, stated as power at nominal voltage */
  readonly currentLimit: { readonly power: StatedPower };
  /** time constant of the slow node: the heat sink [s] */
  readonly heatSinkTimeConstantS: number;
  /** loss with nothing connected [W] */
  readonly idleLossW: number;
  /** efficiency at half and at full continuous rating, power factor 1 (0–1) */
  readonly efficiencyHalfRatio: number;
  readonly efficiencyFullRatio: number;
  /** the warning comes at this share of the heat allowed (0–1) */
  readonly warnAtHeatRatio: number;
  /** voltage counts as held from this share of nominal upward (0–1) */
  readonly voltageHeldRatio: number;
  /** mains cycles without held voltage after which the unit stops */
  readonly voltageLostCycles: number;
  /** from a stop to the restart [s] */
  readonly waitS: number;
  /** running time after a restart that clears the count of stops [s] */
  readonly reclaimS: number;
  /** the stop with this number in a row locks the unit out */
  readonly stopsToLockout: number;
  /** current rating lost with height: from a height [m], per 100 m (0–1), up to a height [m] */
  readonly altitude: { readonly fromM: number; readonly lossPer100mRatio: number; readonly maxM: number };
  readonly massKg: number;
  /** price in proportion to the other invented units, no currency */
  readonly costIndex: number;
}
