import type { VNode } from 'preact';
import { useCallback, useMemo, useRef, useState } from 'preact/hooks';
import { StackedCanvas } from '../shared/chart/StackedCanvas.tsx';
import { StackedPicture } from '../shared/chart/StackedPicture.tsx';
import { Choice } from '../shared/controls/Choice.tsx';
import { Slider } from '../shared/controls/Slider.tsx';
import { ExplorerFrame } from '../shared/explorer/ExplorerFrame.tsx';
import { useWarmUp } from '../shared/explorer/use-warm-up.ts';
import { firstInverterId, inverterModel, inverterOptions } from './equipment.ts';
import { EventList } from './load-timeline/EventList.tsx';
import { PartRow } from './load-timeline/PartRow.tsx';
import {
  addPart,
  changePart,
  loadRange,
  mostParts,
  movePart,
  type PatternPart,
  type PatternSetting,
  type PresetName,
  presetNames,
  presetParts,
  removePart,
} from './load-timeline/pattern.ts';
import { runPattern } from './load-timeline/run-pattern.ts';
import { timelineSpec } from './load-timeline/timeline-spec.ts';
import {
  timelineLines,
  timelineReadouts,
  timelineSummary,
  timelineTable,
} from './load-timeline/timeline-words.ts';
import { celsius, fill, words } from './words.ts';

const text = words.loadTimeline;
const presetOptions = presetNames.map((value) => ({ value, label: text.presets[value] }));
const ownOption = { value: 'own', label: text.presets.own } as const;

function startFrom(preset: PresetName, inverterId: string, ambientC: number): PatternSetting {
  return { preset, inverterId, ambientC, parts: presetParts(preset, inverterModel(inverterId)) };
}

/** A pattern of loads, edited by the learner and run through the inverter: heat, warnings, stops and restarts. */
export function LoadTimeline(): VNode {
  const [setting, setSetting] = useState<PatternSetting>(() => startFrom('cottage', firstInverterId, 30));
  const adder = useRef<HTMLButtonElement>(null);
  const { inverterId, ambientC, preset, parts } = setting;
  const model = inverterModel(inverterId);
  const run = useMemo(() => runPattern(model, setting), [model, setting]);
  const spec = useMemo(() => timelineSpec(run), [run]);
  const table = useCallback(() => timelineTable(model, run), [model, run]);
  useWarmUp(() => timelineSpec(runPattern(model, setting)));

  const setParts = (change: (before: readonly PatternPart[]) => PatternPart[]) =>
    setSetting((before) => ({ ...before, preset: 'own', parts: change(before.parts) }));
  const summary = timelineSummary(model, setting, run);
  const label = fill(text.plot, { summary });
  const range = useMemo(() => loadRange(model), [model]);
  return (
    <ExplorerFrame
      title={text.title}
      plot={
        <div class="timeline-plot">
          <StackedCanvas spec={spec} label={label} />
          <StackedPicture spec={spec} label={label} />
        </div>
      }
      lines={timelineLines}
      readouts={timelineReadouts(run)}
      summary={summary}
      more={<EventList run={run} />}
      table={table}
      controls={
        <>
          <Choice
            label={text.preset}
            value={preset}
            options={preset === 'own' ? [ownOption, ...presetOptions] : presetOptions}
            onChange={(chosen) => {
              if (chosen !== 'own') setSetting(startFrom(chosen, inverterId, ambientC));
            }}
          />
          <Choice
            label={words.controls.inverter}
            value={inverterId}
            options={inverterOptions}
            onChange={(id) => setSetting(startFrom(preset === 'own' ? 'cottage' : preset, id, ambientC))}
          />
          <Slider
            label={words.controls.ambient}
            value={ambientC}
            min={-10}
            max={60}
            step={1}
            text={celsius(ambientC)}
            onChange={(value) => setSetting((before) => ({ ...before, ambientC: value }))}
          />
          <ol class="part-list" aria-label={text.pattern}>
            {parts.map((part, place) => (
              <PartRow
                key={part.id}
                part={part}
                number={place + 1}
                count={parts.length}
                range={range}
                onChange={(change) => setParts((before) => changePart(before, part.id, change))}
                onMove={(by) => setParts((before) => movePart(before, part.id, by))}
                onRemove={() => {
                  setParts((before) => removePart(before, part.id));
                  // The button that had the focus goes away with its part.
                  adder.current?.focus();
                }}
              />
            ))}
          </ol>
          <button
            type="button"
            class="btn part-add"
            ref={adder}
            disabled={parts.length >= mostParts}
            onClick={() => setParts(addPart)}
          >
            {text.add}
          </button>
        </>
      }
    />
  );
}
