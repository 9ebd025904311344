import type { NumericStep } from '../worksheet.ts';
import { fastShare, fastTime, slowShare, slowTime } from './heat-formula.ts';
import {
  partPeak,
  partPeakFormula,
  type RepeatingCycle,
  reachFormula,
  reachRatio,
} from './repeating-cycle.ts';

interface PartValues extends RepeatingCycle {
  busyDemandRatio: number;
  restDemandRatio: number;
  smallReachRatio: number;
  smallPeakRatio: number;
  bigReachRatio: number;
  bigPeakRatio: number;
}

/** How far the small part gets in a settled cycle, and how high it climbs. */
export const smallPartSteps = <V extends PartValues>(): NumericStep<V>[] => [
  {
    kind: 'numeric',
    id: 'smallReachRatio',
    needs: ['inverter', 'busyS', 'restS'],
    solve: (values) => reachRatio(values.inverter.network.fastTimeConstantS, values),
    formula: reachFormula(fastTime),
    tolerance: { relative: 0.01 },
    source: 'gupta-singhal',
    slips: [
      { id: 'busy-for-ever', solve: () => 1 },
      {
        id: 'first-cycle-only',
        solve: ({ inverter, busyS }) => -Math.expm1(-busyS / inverter.network.fastTimeConstantS),
      },
      { id: 'share-of-time', solve: ({ busyS, restS }) => busyS / (busyS + restS) },
    ],
  },
  {
    kind: 'numeric',
    id: 'smallPeakRatio',
    needs: ['inverter', 'busyDemandRatio', 'restDemandRatio', 'smallReachRatio'],
    solve: (values) =>
      partPeak({
        ...values,
        shareRatio: values.inverter.network.fastShareRatio,
        reach: values.smallReachRatio,
      }),
    formula: partPeakFormula(fastShare, 'smallReachRatio'),
    tolerance: { relative: 0.02 },
    source: 'gupta-singhal',
    slips: [
      {
        id: 'share-forgotten',
        solve: (values) => partPeak({ ...values, shareRatio: 1, reach: values.smallReachRatio }),
      },
      {
        id: 'whole-demand-added',
        solve: ({ inverter, busyDemandRatio, restDemandRatio, smallReachRatio }) =>
          inverter.network.fastShareRatio * (restDemandRatio + busyDemandRatio * smallReachRatio),
      },
    ],
  },
];

/** The same for the big part. */
export const bigPartSteps = <V extends PartValues>(): NumericStep<V>[] => [
  {
    kind: 'numeric',
    id: 'bigReachRatio',
    needs: ['inverter', 'busyS', 'restS'],
    solve: (values) => reachRatio(values.inverter.network.slowTimeConstantS, values),
    formula: reachFormula(slowTime),
    tolerance: { relative: 0.02 },
    source: 'gupta-singhal',
    slips: [],
  },
  {
    kind: 'numeric',
    id: 'bigPeakRatio',
    needs: ['inverter', 'busyDemandRatio', 'restDemandRatio', 'bigReachRatio'],
    solve: (values) =>
      partPeak({
        ...values,
        shareRatio: 1 - values.inverter.network.fastShareRatio,
        reach: values.bigReachRatio,
      }),
    formula: partPeakFormula(slowShare, 'bigReachRatio'),
    tolerance: { relative: 0.02 },
    source: 'gupta-singhal',
    slips: [],
  },
];
