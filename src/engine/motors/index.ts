export * from './nameplate/index.ts';
export * from './run-up/index.ts';
export * from './shaft-loads/index.ts';
export * from './single-phase/index.ts';
export * from './starters/index.ts';
export * from './tables/index.ts';
export * from './three-phase/index.ts';
