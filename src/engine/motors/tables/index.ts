export { apparentPowerLimits } from './apparent-power-limits.ts';
export { type CodeLetterBand, codeLetters } from './code-letters.ts';
export {
  type CurrentTable,
  fullLoadSinglePhase,
  fullLoadThreePhase,
  lockedRotorSinglePhase,
  lockedRotorThreePhase,
} from './nec-currents.ts';
export { type MultipleKind, type StartingMultiple, startingMultiples } from './starting-multiples.ts';
