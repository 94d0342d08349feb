import type { MachineSheet } from '../../../../catalog';
import { askFor, type FigureReading, type FormulaResult } from '../../../../rules';
import { machinePath, type PlacedMachine } from '../../../../scene';
import { toSI } from '../../../../units';
import { type LoadCurrentInputs, loadCurrent } from '../../formulas/loadCurrent';

/** What must stand beside every figure of power. */
export const POWER_CAUTION =
  'Preliminary: the connection plate inside the control compartment governs, and a licensed electrician decides by local code.';

export type Version = MachineSheet['electrical'][number];

/** The electrical version that the machine is drawn in; undefined while none is chosen. */
export const versionOf = ({ sheet, machine }: PlacedMachine): Version | undefined =>
  sheet.electrical.find((item) => item.id === machine.electrical);

export const askVersion = (placed: PlacedMachine): FigureReading =>
  askFor([placed.machine.id], 'electrical version of the machine', machinePath(placed, 'electrical'));

/** Inputs of the current, from the rated power; the data sheet states no power factor, so that of heaters. */
export const currentInputs = ({ powerKw, voltage, phase }: Version): LoadCurrentInputs => ({
  powerW: toSI(powerKw, 'kW'),
  voltageV: voltage,
  phases: phase === 3 ? 'three' : 'single',
  powerFactor: 1,
});

/** What the circuit must be made for: the greater of the current that the data sheet states and the one computed from its power. */
export function circuitCurrent(version: Version): FormulaResult {
  const computed = loadCurrent(currentInputs(version));
  return computed.ok ? { ok: true, value: Math.max(computed.value, version.currentA) } : computed;
}
