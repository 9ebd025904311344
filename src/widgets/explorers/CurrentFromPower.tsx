import type { VNode } from 'preact';
import { useCallback, useMemo, useState } from 'preact/hooks';
import { Choice } from '../shared/controls/Choice.tsx';
import { Slider } from '../shared/controls/Slider.tsx';
import { ExplorerFrame } from '../shared/explorer/ExplorerFrame.tsx';
import { useWarmUp } from '../shared/explorer/use-warm-up.ts';
import { PowerPlot } from './current-from-power/PowerPlot.tsx';
import { powerReadouts, powerSummary, powerTable } from './current-from-power/power-words.ts';
import { firstPowerSetting, type PowerSetting, powerAnswer } from './current-from-power/two-loads.ts';
import { fill, plain, volts, watts, words } from './words.ts';

const text = words.power;
const voltageOptions = ([230, 120] as const).map((value) => ({
  value: String(value) as `${typeof value}`,
  label: volts(value),
}));

/** Two loads of the same watts and different power factor: triangles, currents, and heat in the wire. */
export function CurrentFromPower(): VNode {
  const [setting, setSetting] = useState<PowerSetting>(firstPowerSetting);
  const answer = useMemo(() => powerAnswer(setting), [setting]);
  const table = useCallback(() => powerTable(setting, answer), [setting, answer]);
  const change = (part: Partial<PowerSetting>) => setSetting((before) => ({ ...before, ...part }));
  useWarmUp(() => powerAnswer(setting));

  const summary = powerSummary(setting, answer);
  const factor = { min: 0.3, max: 1, step: 0.01 };
  return (
    <ExplorerFrame
      title={text.title}
      plot={<PowerPlot answer={answer} label={fill(text.plot, { summary })} />}
      readouts={powerReadouts(answer)}
      summary={summary}
      table={table}
      controls={
        <>
          <Slider
            label={text.watts}
            value={setting.realPowerW}
            min={100}
            max={3000}
            step={10}
            buttonStep={50}
            text={watts(setting.realPowerW)}
            onChange={(realPowerW) => change({ realPowerW })}
          />
          <Slider
            label={text.powerFactorA}
            value={setting.powerFactorA}
            {...factor}
            text={plain(setting.powerFactorA)}
            onChange={(powerFactorA) => change({ powerFactorA })}
          />
          <Slider
            label={text.powerFactorB}
            value={setting.powerFactorB}
            {...factor}
            text={plain(setting.powerFactorB)}
            onChange={(powerFactorB) => change({ powerFactorB })}
          />
          <Choice
            label={text.voltage}
            value={setting.voltageV === 230 ? '230' : '120'}
            options={voltageOptions}
            onChange={(value) => change({ voltageV: value === '230' ? 230 : 120 })}
          />
        </>
      }
    />
  );
}
