import { type InverterDatasheet, type InverterModel, solveHeatNetwork } from '../../engine/index.ts';

/** While the page is built the files are read; in the browser their JSON is fetched, before any explorer wakes. */
async function readDatasheets(): Promise<readonly InverterDatasheet[]> {
  if (import.meta.env.SSR) {
    const { readInverters } = await import('../../content-reader/read-exercises.ts');
    return readInverters().map(({ data }) => data);
  }
  const response = await fetch(`${import.meta.env.BASE_URL.replace(/\/$/, '')}/data/inverters.json`);
  if (!response.ok)
    throw new Error(`inverters.json: expected the datasheets, found status ${response.status}`);
  return response.json();
}

/** The course's inverters. Awaited here, so that an explorer's first render has them, as the server's had. */
export const datasheets: readonly InverterDatasheet[] = await readDatasheets();

/** The inverter an explorer begins with: middle of the range, plain figures. */
export const firstInverterId = 'ostrel-29';

export const inverterOptions = datasheets.map(({ id, name }) => ({ value: id, label: name }));

const models = new Map<string, InverterModel>();

/** The solved model of a datasheet. @throws {RangeError} for an unknown id */
export function inverterModel(id: string): InverterModel {
  const known = models.get(id);
  if (known) return known;
  const datasheet = datasheets.find((candidate) => candidate.id === id);
  if (!datasheet) throw new RangeError(`inverter: expected an id of a datasheet, found "${id}"`);
  const model = solveHeatNetwork(datasheet);
  models.set(id, model);
  return model;
}
