import type { VNode } from 'preact';
import { useCallback, useMemo, useState } from 'preact/hooks';
import { Choice } from '../shared/controls/Choice.tsx';
import { Slider } from '../shared/controls/Slider.tsx';
import { ExplorerFrame } from '../shared/explorer/ExplorerFrame.tsx';
import { useWarmUp } from '../shared/explorer/use-warm-up.ts';
import {
  firstMeterSetting,
  type MeterSetting,
  meterAnswer,
  shapeKinds,
} from './meter-and-waveform/meter-answer.ts';
import { meterReadouts, meterSummary, meterTable } from './meter-and-waveform/meter-words.ts';
import { WavePlot } from './meter-and-waveform/WavePlot.tsx';
import { amperes, fill, percent, words } from './words.ts';

const text = words.meter;
const lines = [
  { line: 'plot-line', label: text.wave },
  { line: 'plot-line plot-line-3', label: text.true },
  { line: 'plot-line plot-line-2', label: text.average },
];
const shapeOptions = shapeKinds.map((value) => ({ value, label: text.shapes[value] }));
const couplingOptions = (['all', 'ac'] as const).map((value) => ({ value, label: text.couplings[value] }));

/** What a waveform measures truly, and what an average-responding meter shows of it. */
export function MeterAndWaveform(): VNode {
  const [setting, setSetting] = useState<MeterSetting>(firstMeterSetting);
  const answer = useMemo(() => meterAnswer(setting), [setting]);
  const table = useCallback(() => meterTable(setting), [setting]);
  const change = (part: Partial<MeterSetting>) => setSetting((before) => ({ ...before, ...part }));
  useWarmUp(() => meterAnswer(setting));

  const summary = meterSummary(setting, answer);
  return (
    <ExplorerFrame
      title={text.title}
      plot={<WavePlot setting={setting} answer={answer} label={fill(text.plot, { summary })} />}
      lines={lines}
      readouts={meterReadouts(setting, answer)}
      summary={summary}
      table={table}
      controls={
        <>
          <Choice
            label={text.shape}
            value={setting.shape}
            options={shapeOptions}
            onChange={(shape) => change({ shape })}
          />
          <Slider
            label={text.width}
            value={setting.widthRatio}
            min={0.1}
            max={1}
            step={0.01}
            buttonStep={0.05}
            text={fill(text.widthText, { ratio: percent(setting.widthRatio) })}
            disabled={setting.shape !== 'truncated-cosine'}
            onChange={(widthRatio) => change({ widthRatio })}
          />
          <Slider
            label={text.rms}
            value={setting.rmsA}
            min={1}
            max={40}
            step={0.5}
            text={amperes(setting.rmsA)}
            onChange={(rmsA) => change({ rmsA })}
          />
          <Choice
            label={text.coupling}
            value={setting.coupling}
            options={couplingOptions}
            onChange={(coupling) => change({ coupling })}
          />
        </>
      }
    />
  );
}
