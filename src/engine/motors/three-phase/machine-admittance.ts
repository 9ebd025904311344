import { checkedNumber } from '../../ac/checked-number.ts';
import type { Complex } from '../../ac/complex.ts';
import { checkedCircuit, type EquivalentCircuit } from './equivalent-circuit.ts';
import { solvePhase } from './solve-phase.ts';

/**
 * What a source sees of a machine at a slip, as one phase in star: at any speed the machine is a constant impedance,
 * so this is all that a limited source, other loads beside it or a series element before it need to know.
 *
 * @param given.circuit      the machine, see EquivalentCircuit
 * @param given.frequencyHz  supply frequency [Hz], above 0
 * @param given.slipRatio    slip [1]
 * @returns admittance between a line and the star point [S]; for windings in delta three times that of one winding
 * @throws   {RangeError} a value outside its limits
 * Formula:  Y = I_line/(V_line/√3)
 * Valid for: balanced sinusoidal supply, steady state.
 * Source:   derived (equivalent circuit of fitzgerald, ch. 6)
 * Example:  complexMagnitude(machineAdmittance({ circuit: exampleCircuit, frequencyHz: 50, slipRatio: 1 })) * 400 / Math.sqrt(3) → 82.5
 */
export function machineAdmittance(given: {
  circuit: EquivalentCircuit;
  frequencyHz: number;
  slipRatio: number;
}): Complex {
  const circuit = checkedCircuit(given.circuit);
  const frequencyHz = checkedNumber('frequencyHz', given.frequencyHz, { above: 0 });
  const slipRatio = checkedNumber('slipRatio', given.slipRatio);
  const { stator } = solvePhase(circuit, frequencyHz / circuit.referenceFrequencyHz, slipRatio);
  const windings = circuit.connection === 'delta' ? 3 : 1;
  return { re: windings * stator.re, im: windings * stator.im };
}
