export { currentRatioOfPowerLimit, startFromPowerLimit } from './apparent-power-limit.ts';
export { codeLetterOf, startFromCodeLetter } from './code-letter.ts';
export { fullLoadFromTable, startFromTable } from './current-from-table.ts';
export { horsepowerOfWatts, wattsOfHorsepower } from './horsepower.ts';
export { startFromMultiple, startFromRuleOfThumb } from './starting-multiple.ts';
export type { MotorSupply, StartingRange } from './starting-range.ts';
