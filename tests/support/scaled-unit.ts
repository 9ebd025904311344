import {
  exampleDatasheet,
  type InverterDatasheet,
  type InverterModel,
  type StatedPower,
  solveHeatNetwork,
} from '../../src/engine/inverter/index.ts';

/** The example unit in another size: every power and loss times a factor. Invented. */
export const scaledUnit = (factor: number, changed: Partial<InverterDatasheet> = {}): InverterModel => {
  const power = (stated: StatedPower): StatedPower => ({ ...stated, value: stated.value * factor });
  const { continuous, hot, longDuration, surge, currentLimit, idleLossW } = exampleDatasheet;
  return solveHeatNetwork({
    ...exampleDatasheet,
    continuous: { power: power(continuous.power) },
    hot: { ...hot, power: power(hot.power) },
    longDuration: { ...longDuration, power: power(longDuration.power) },
    surge: { ...surge, power: power(surge.power) },
    currentLimit: { power: power(currentLimit.power) },
    idleLossW: idleLossW * factor,
    ...changed,
  });
};
