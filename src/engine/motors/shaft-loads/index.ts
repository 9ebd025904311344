export * from './acceleration-time.ts';
export * from './affinity-point.ts';
export * from './compressor-load.ts';
export * from './geared-load.ts';
export * from './pump-load.ts';
export * from './shaft-load.ts';
