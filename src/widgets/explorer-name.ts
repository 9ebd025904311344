import type { FunctionComponent } from 'preact';

/** An explorer's file exports one component with the file's name. */
export type ExplorerModule = Readonly<Record<string, FunctionComponent>>;

/** Name of the component and file of an explorer: `time-to-stop` → `TimeToStop`. */
export function explorerName(id: string): string {
  return id.replace(/(^|-)([a-z0-9])/g, (_all, _dash, letter: string) => letter.toUpperCase());
}
