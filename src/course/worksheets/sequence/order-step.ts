import type { OrderingStep } from '../worksheet.ts';

const rightOrder = ['warning', 'stop', 'wait', 'restart', 'stop-again', 'lockout', 'manual-reset'] as const;

/** The protection sequence, to be put in order. */
export const orderStep = <V extends { order: readonly string[] }>(): OrderingStep<V> => ({
  kind: 'ordering',
  id: 'order',
  needs: [],
  options: ['lockout', 'manual-reset', 'restart', 'stop', 'stop-again', 'wait', 'warning'],
  solve: () => rightOrder,
  source: 'common-practice',
  slips: [
    {
      id: 'reset-by-hand-first',
      solve: () => ['warning', 'stop', 'wait', 'manual-reset', 'restart', 'stop-again', 'lockout'],
    },
    {
      id: 'lockout-at-first-stop',
      solve: () => ['warning', 'stop', 'lockout', 'wait', 'restart', 'stop-again', 'manual-reset'],
    },
    {
      id: 'warning-with-the-stop',
      solve: () => ['stop', 'warning', 'wait', 'restart', 'stop-again', 'lockout', 'manual-reset'],
    },
    {
      id: 'restart-before-wait',
      solve: () => ['warning', 'stop', 'restart', 'wait', 'stop-again', 'lockout', 'manual-reset'],
    },
  ],
});
