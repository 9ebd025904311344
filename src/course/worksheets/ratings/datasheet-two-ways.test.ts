import { expect, it } from 'vitest';
import { readInverters } from '../../../content-reader/read-exercises.ts';
import { continuousCurrentA, solveHeatNetwork } from '../../../engine/index.ts';
import { stepOf } from '../step-graph.ts';
import { datasheetTwoWays } from './datasheet-two-ways.ts';

const step = stepOf(datasheetTwoWays, 'siteCurrentA');
const accepted = step.kind === 'numeric' ? (step.tolerance.relative ?? 0) : 0;

it.each(readInverters().map(({ data }) => [data.id, data] as const))(
  'takes the straight line between the two stated ambients as right for %s',
  (_, datasheet) => {
    const model = solveHeatNetwork(datasheet);
    const { referenceAmbientC, hot } = datasheet;
    for (let ambientC = referenceAmbientC; ambientC <= hot.ambientC; ambientC += 1) {
      const way = (ambientC - referenceAmbientC) / (hot.ambientC - referenceAmbientC);
      const line = model.continuousA + way * (model.hotA - model.continuousA);
      // Half of the band is left for the learner's own rounding.
      expect(Math.abs(line / continuousCurrentA({ model, ambientC }) - 1)).toBeLessThan(accepted / 2);
    }
  },
);
