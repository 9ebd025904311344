import type { APIRoute, GetStaticPaths } from 'astro';
import { type ExerciseData, readExercises } from '../../../content-reader/read-exercises.ts';

/** What an exercise's page fetches once it is awake: ranges, words, inverters. The key is computed, never stored. */
export const getStaticPaths = (() =>
  readExercises().map((data) => ({ params: { slug: data.slug }, props: { data } }))) satisfies GetStaticPaths;

export const GET: APIRoute<{ data: ExerciseData }> = ({ props }) =>
  new Response(JSON.stringify(props.data), { headers: { 'Content-Type': 'application/json' } });
