export { type ConverterRunUp, type ConverterSetup, converterRunUp } from './converter-run-up.ts';
export { hardStartKit } from './hard-start-kit.ts';
export { type PhaseCutWave, phaseCutWave } from './phase-cut-wave.ts';
export {
  type RectifierInput,
  rectifierInput,
  singlePhaseRectifier,
  threePhaseRectifier,
} from './rectifier-input.ts';
export { softStarter } from './soft-starter.ts';
export type { StageEnd, Starter } from './starter.ts';
export {
  autotransformerStarter,
  directStarter,
  seriesStarter,
  starDeltaStarter,
} from './stepped-starters.ts';
