import type { VNode } from 'preact';
import { useCallback, useMemo, useState } from 'preact/hooks';
import { formatQuantity } from '../../engine/index.ts';
import { Choice } from '../shared/controls/Choice.tsx';
import { Slider } from '../shared/controls/Slider.tsx';
import { stepped } from '../shared/controls/stepped.ts';
import { ExplorerFrame } from '../shared/explorer/ExplorerFrame.tsx';
import { useWarmUp } from '../shared/explorer/use-warm-up.ts';
import { firstInverterId, inverterModel, inverterOptions } from './equipment.ts';
import { firstSetting, greatestLoadA, type StopSetting, stopAnswer } from './time-to-stop/overload-curve.ts';
import { StopPlot } from './time-to-stop/StopPlot.tsx';
import { stopReadouts, stopSummary, stopTable } from './time-to-stop/stop-words.ts';
import { amperes, celsius, fill, voltAmperes, words } from './words.ts';

const text = words.timeToStop;

/** How long an inverter carries a load, by air, height and what it did before. */
export function TimeToStop(): VNode {
  const [setting, setSetting] = useState<StopSetting>(() =>
    firstSetting(firstInverterId, inverterModel(firstInverterId)),
  );
  const model = inverterModel(setting.inverterId);
  const { datasheet } = model;
  const answer = useMemo(() => stopAnswer(model, setting), [model, setting]);
  const table = useCallback(() => stopTable(model, setting), [model, setting]);
  const change = (part: Partial<StopSetting>) => setSetting((before) => ({ ...before, ...part }));
  useWarmUp(() => stopAnswer(model, setting));

  const lines = useMemo(
    () => [
      { line: 'plot-line', label: text.curve },
      {
        line: 'plot-line plot-thin plot-line-2',
        label: fill(text.reference, { ambient: celsius(datasheet.referenceAmbientC) }),
      },
    ],
    [datasheet],
  );
  const load = { min: 0, max: greatestLoadA(model), step: 0.1 };
  const summary = stopSummary(model, setting, answer);
  return (
    <ExplorerFrame
      title={text.title}
      plot={
        <StopPlot
          model={model}
          answer={answer}
          loadA={setting.loadA}
          label={fill(text.plot, { summary })}
          onLoad={(value) => change({ loadA: stepped({ value, ...load }) })}
        />
      }
      lines={lines}
      readouts={stopReadouts(model, setting, answer)}
      summary={summary}
      table={table}
      controls={
        <>
          <Slider
            label={text.load}
            value={setting.loadA}
            {...load}
            text={fill(text.loadText, {
              current: amperes(setting.loadA),
              power: voltAmperes(setting.loadA * datasheet.acNominalV),
            })}
            onChange={(loadA) => change({ loadA })}
          />
          <Slider
            label={words.controls.ambient}
            value={setting.ambientC}
            min={-10}
            max={60}
            step={1}
            text={celsius(setting.ambientC)}
            onChange={(ambientC) => change({ ambientC })}
          />
          <Slider
            label={text.before}
            value={setting.beforeA}
            min={0}
            max={Math.round(model.continuousA * 10) / 10}
            step={0.1}
            buttonStep={0.5}
            text={setting.beforeA === 0 ? text.beforeNone : amperes(setting.beforeA)}
            onChange={(beforeA) => change({ beforeA })}
          />
          <Slider
            label={words.controls.altitude}
            value={setting.altitudeM}
            min={0}
            max={datasheet.altitude.maxM}
            step={100}
            text={formatQuantity(setting.altitudeM, 'length', { significantDigits: 'as-is', unit: 'm' })}
            onChange={(altitudeM) => change({ altitudeM })}
          />
          <Choice
            label={words.controls.inverter}
            value={setting.inverterId}
            options={inverterOptions}
            onChange={(id) =>
              setSetting({ ...firstSetting(id, inverterModel(id)), ambientC: setting.ambientC })
            }
          />
        </>
      }
    />
  );
}
