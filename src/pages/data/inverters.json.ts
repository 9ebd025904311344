import type { APIRoute } from 'astro';
import { readInverters } from '../../content-reader/read-exercises.ts';

/** All datasheets in SI units: what the explorers compute with. */
export const GET: APIRoute = () =>
  new Response(JSON.stringify(readInverters().map(({ data }) => data)), {
    headers: { 'Content-Type': 'application/json' },
  });
