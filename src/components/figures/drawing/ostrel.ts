import { parse } from 'yaml';
import sheet from '../../../../content/equipment/inverters/ostrel-29.yaml?raw';
import { inverterSchema } from '../../../course/schema/inverter.ts';
import { type InverterModel, solveHeatNetwork } from '../../../engine/index.ts';

/** The invented unit that the lessons draw and calculate with, so that a drawing cannot differ from the text. */
export const ostrel: InverterModel = solveHeatNetwork(inverterSchema.parse(parse(sheet)));
