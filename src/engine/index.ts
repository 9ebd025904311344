export * from './ac/index.ts';
export * from './inverter/index.ts';
export * from './quantities/index.ts';
