import type { VNode } from 'preact';
import { useCallback, useMemo, useState } from 'preact/hooks';
import { Choice } from '../shared/controls/Choice.tsx';
import { Slider } from '../shared/controls/Slider.tsx';
import { ExplorerFrame } from '../shared/explorer/ExplorerFrame.tsx';
import { useWarmUp } from '../shared/explorer/use-warm-up.ts';
import { firstInverterId, inverterModel, inverterOptions } from './equipment.ts';
import { rebalance, type ShareName } from './volts-under-overload/shares.ts';
import { VoltsPlot } from './volts-under-overload/VoltsPlot.tsx';
import {
  drawCurve,
  firstVoltsSetting,
  greatestTotalVa,
  type VoltsSetting,
  voltsAnswer,
} from './volts-under-overload/volts-answer.ts';
import { voltsReadouts, voltsSummary, voltsTable } from './volts-under-overload/volts-words.ts';
import { amperes, fill, percent, voltAmperes, words } from './words.ts';

const text = words.volts;
const lines = [
  { line: 'plot-line', label: text.draw },
  { line: 'plot-limit', label: text.limit },
];
const shareNames: readonly ShareName[] = ['impedance', 'current', 'power'];

/** Where the voltage settles when the loads ask for more than the inverter can give, and how long it stays on. */
export function VoltsUnderOverload(): VNode {
  const [setting, setSetting] = useState<VoltsSetting>(() =>
    firstVoltsSetting(firstInverterId, inverterModel(firstInverterId)),
  );
  const model = inverterModel(setting.inverterId);
  const answer = useMemo(() => voltsAnswer(model, setting), [model, setting]);
  const table = useCallback(() => voltsTable(model, setting), [model, setting]);
  useWarmUp(() => {
    voltsAnswer(model, setting);
    drawCurve(model, setting);
  });

  const summary = voltsSummary(model, answer);
  return (
    <ExplorerFrame
      title={text.title}
      plot={
        <VoltsPlot model={model} setting={setting} answer={answer} label={fill(text.plot, { summary })} />
      }
      lines={lines}
      readouts={voltsReadouts(answer)}
      summary={summary}
      table={table}
      controls={
        <>
          <Slider
            label={text.total}
            value={setting.totalVa}
            min={0}
            max={greatestTotalVa(model)}
            step={10}
            buttonStep={50}
            text={`${voltAmperes(setting.totalVa)} · ${amperes(setting.totalVa / model.datasheet.acNominalV)}`}
            onChange={(totalVa) => setSetting((before) => ({ ...before, totalVa }))}
          />
          {shareNames.map((name) => (
            <Slider
              key={name}
              label={text[name]}
              value={setting.shares[name]}
              min={0}
              max={100}
              step={1}
              buttonStep={5}
              text={percent(setting.shares[name] / 100)}
              onChange={(value) =>
                setSetting((before) => ({ ...before, shares: rebalance(before.shares, name, value) }))
              }
            />
          ))}
          <Choice
            label={words.controls.inverter}
            value={setting.inverterId}
            options={inverterOptions}
            onChange={(id) =>
              setSetting(({ shares }) => ({ ...firstVoltsSetting(id, inverterModel(id)), shares }))
            }
          />
        </>
      }
    />
  );
}
