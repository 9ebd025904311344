import { course } from './course.ts';
import { dutyAndDay } from './duty-and-day.ts';
import { runUpBench } from './run-up.ts';
import { yearOfHeat } from './year-of-heat.ts';

/** `npm run bench`: figures of the engine and the marking. Ratios are measured in one run; absolute times depend on the machine. */
console.log(`Node ${process.version}`);
yearOfHeat();
dutyAndDay();
await course();
runUpBench();
