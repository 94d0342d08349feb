import type { DataSheet } from '../../../../catalog';
import { type Ask, askFor, createMessages, type FigureReading, type FormulaResult, type Message, type NoParams } from '../../../../rules';
import { machinePath, type PlacedMachine } from '../../../../scene';
import { toSI } from '../../../../units';
import { type LoadCurrentInputs, loadCurrent } from '../../formulas/loadCurrent';

/** What all rules of power have in common. */
export interface PowerMessages {
  'power/caution': NoParams;
  'power/ask-version': NoParams;
  'power/ask-supply': { field: 'voltage' | 'phase' };
}

const say = createMessages<PowerMessages>();

/** What must stand beside every figure of power. */
export const POWER_CAUTION = say('power/caution');

export type Version = DataSheet['electrical'][number];

/** The electrical version that the machine is drawn in; undefined while none is chosen. */
export const versionOf = ({ sheet, machine }: PlacedMachine): Version | undefined =>
  sheet.electrical.find((item) => item.id === machine.electrical);

/** The question for the version. */
export const versionAsk = (placed: PlacedMachine): Ask & { input: Message } => ({
  input: say('power/ask-version'),
  path: machinePath(placed, 'electrical'),
});

/** The question for one side of what the building supplies. */
export const supplyAsk = (field: 'voltage' | 'phase'): Ask & { input: Message } => ({
  input: say('power/ask-supply', { field }),
  path: ['supply', field],
});

/** A figure that waits for the version. */
export function askVersion(placed: PlacedMachine): FigureReading {
  const { input, path } = versionAsk(placed);
  return askFor([placed.machine.id], input, path);
}

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
