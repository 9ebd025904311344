import { describe, expect, it } from 'vitest';
import { datasheets, firstInverterId, inverterModel } from './equipment.ts';
import { loadRange, presetNames, presetParts } from './load-timeline/pattern.ts';
import { runPattern } from './load-timeline/run-pattern.ts';
import { timelineSummary } from './load-timeline/timeline-words.ts';
import { firstSetting, shortestS, stopAnswer, voltageLostS } from './time-to-stop/overload-curve.ts';
import { stopSummary, stopTable } from './time-to-stop/stop-words.ts';
import { firstVoltsSetting, voltsAnswer } from './volts-under-overload/volts-answer.ts';
import { voltsSummary, voltsTable } from './volts-under-overload/volts-words.ts';

const broken = /NaN|Infinity|undefined|\{/;

describe('every inverter of the course in every explorer', () => {
  it('is known by its id, the first one too', () => {
    expect(datasheets.map(({ id }) => id)).toContain(firstInverterId);
    expect(() => inverterModel('no-such-unit')).toThrow('no-such-unit');
  });

  it.each(datasheets.map(({ id }) => id))('%s: gives sound words at ordinary and extreme settings', (id) => {
    const model = inverterModel(id);
    expect(voltageLostS(model)).toBeGreaterThan(shortestS);
    for (const ambientC of [-10, 25, 60]) {
      for (const loadA of [0, model.continuousA, model.surgeA, model.limitA * 1.3]) {
        for (const beforeA of [0, model.continuousA]) {
          const altitudeM = model.datasheet.altitude.maxM;
          const setting = { ...firstSetting(id, model), ambientC, loadA, beforeA, altitudeM };
          expect(stopSummary(model, setting, stopAnswer(model, setting))).not.toMatch(broken);
          expect(JSON.stringify(stopTable(model, setting).rows)).not.toMatch(broken);
        }
      }
      for (const preset of presetNames) {
        const setting = { inverterId: id, ambientC, preset, parts: presetParts(preset, model) };
        expect(timelineSummary(model, setting, runPattern(model, setting))).not.toMatch(broken);
      }
      const parts = [{ id: 1, loadVa: loadRange(model).max, minutes: 600 }];
      const hardest = { inverterId: id, ambientC, preset: 'own' as const, parts };
      expect(timelineSummary(model, hardest, runPattern(model, hardest))).not.toMatch(broken);
    }
    for (const shares of [
      { impedance: 100, current: 0, power: 0 },
      { impedance: 0, current: 100, power: 0 },
      { impedance: 0, current: 0, power: 100 },
    ]) {
      for (const totalVa of [0, 1e3, 2 * model.limitA * model.datasheet.acNominalV]) {
        const setting = { ...firstVoltsSetting(id, model), shares, totalVa };
        expect(voltsSummary(model, voltsAnswer(model, setting))).not.toMatch(broken);
        expect(JSON.stringify(voltsTable(model, setting).rows)).not.toMatch(broken);
      }
    }
  });
});
