import { type WaveFactors, type WaveShape, waveformFactors } from '../../../engine/index.ts';

export const shapeKinds = [
  'sine',
  'square',
  'triangle',
  'half-wave',
  'full-wave',
  'truncated-cosine',
] as const;
export type ShapeKind = (typeof shapeKinds)[number];
export type Coupling = 'all' | 'ac';

/** What the learner has set. */
export interface MeterSetting {
  readonly shape: ShapeKind;
  /** width of a rectifier's pulse, as a share of the half period */
  readonly widthRatio: number;
  readonly rmsA: number;
  readonly coupling: Coupling;
}

export interface MeterAnswer {
  readonly peakA: number;
  readonly readingA: number;
  /** reading by true value, less 1; negative: the meter shows too little */
  readonly errorRatio: number;
  readonly crestFactor: number;
}

export const firstMeterSetting: MeterSetting = {
  shape: 'truncated-cosine',
  widthRatio: 0.3,
  rmsA: 10,
  coupling: 'all',
};

export function waveShapeOf({ shape, widthRatio }: Pick<MeterSetting, 'shape' | 'widthRatio'>): WaveShape {
  return shape === 'truncated-cosine' ? { kind: shape, widthRatio } : { kind: shape };
}

/** What an average-responding meter, scaled for sine waves, shows of a current whose true r.m.s. value is given. */
export function meterAnswer(setting: MeterSetting): MeterAnswer {
  const shape = waveShapeOf(setting);
  const whole: WaveFactors = waveformFactors(shape);
  const seen = waveformFactors(shape, { acCoupled: setting.coupling === 'ac' });
  const ratio = (seen.averagingMeterRatio * seen.rms) / whole.rms;
  return {
    peakA: whole.crestFactor * setting.rmsA,
    readingA: ratio * setting.rmsA,
    errorRatio: ratio - 1,
    crestFactor: whole.crestFactor,
  };
}

/** A shape of peak 1 at a moment [periods]. */
export function waveAt(shape: WaveShape, periods: number): number {
  const phase = periods - Math.floor(periods);
  const sine = Math.sin(2 * Math.PI * phase);
  switch (shape.kind) {
    case 'sine':
      return sine;
    case 'square':
      return phase < 0.5 ? 1 : -1;
    case 'triangle':
      return phase < 0.25 ? 4 * phase : phase < 0.75 ? 2 - 4 * phase : 4 * phase - 4;
    case 'half-wave':
      return Math.max(0, sine);
    case 'full-wave':
      return Math.abs(sine);
    case 'pulse':
      return phase < shape.dutyRatio ? 1 : 0;
    case 'truncated-cosine': {
      // A half sine of the given width in the middle of each half period.
      const inHalf = (2 * phase) % 1;
      const fromMiddle = (inHalf - 0.5) / shape.widthRatio;
      if (Math.abs(fromMiddle) >= 0.5) return 0;
      return (phase < 0.5 ? 1 : -1) * Math.cos(Math.PI * fromMiddle);
    }
  }
}
