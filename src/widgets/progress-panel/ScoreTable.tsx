import type { VNode } from 'preact';
import words from '../../../content/strings/progress.en.json' with { type: 'json' };
import { bestScoreRatio } from '../../course/progress/best-score.ts';
import type { Progress } from '../../course/progress/progress-types.ts';
import { fill } from '../strings/fill.ts';
import type { KnownExercise } from './ProgressPanel.tsx';

/** Exercises worked so far: how often, and the best share of steps right. */
export function ScoreTable({
  progress,
  exercises,
}: {
  progress: Progress;
  exercises: readonly KnownExercise[];
}): VNode {
  const worked = exercises
    .map((exercise) => ({
      ...exercise,
      attempts: progress.attempts.filter(({ exerciseUid }) => exerciseUid === exercise.uid).length,
      best: bestScoreRatio(progress, exercise.uid),
    }))
    .filter(({ attempts }) => attempts > 0);
  return (
    <table>
      <caption class="visually-hidden">{words['scores-title']}</caption>
      <thead>
        <tr>
          <th scope="col">{words['scores-exercise']}</th>
          <th scope="col" class="num">
            {words['scores-attempts']}
          </th>
          <th scope="col" class="num">
            {words['scores-best']}
          </th>
        </tr>
      </thead>
      <tbody>
        {worked.map(({ uid, title, url, attempts, best }) => (
          <tr key={uid}>
            <th scope="row">
              <a href={url}>{title}</a>
            </th>
            <td class="num">{attempts}</td>
            <td class="num">{fill(words['scores-percent'], { percent: Math.round((best ?? 0) * 100) })}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
