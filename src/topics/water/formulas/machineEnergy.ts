import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface MachineEnergyInputs {
  heatingJ: number;
  washJ: number;
  racks: number;
  idleW: number;
  idleS: number;
}

/** Energy in joules of a machine over a day or a year: hot water, washing, and standing ready. */
export function machineEnergy(inputs: MachineEnergyInputs): FormulaResult {
  const refusal = findOutOfRange(machineEnergyRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.heatingJ + inputs.washJ * inputs.racks + inputs.idleW * inputs.idleS };
}

export const machineEnergyRecord: FormulaRecord<MachineEnergyInputs> = {
  id: 'machine-energy',
  title: 'Energy of the machine',
  formula: 'E = heating + wash · racks + idle power · idle time',
  inputs: {
    heatingJ: { text: 'Energy of heating its water', unit: 'J', min: 0, max: 2e13 },
    washJ: { text: 'Energy of washing one rack', unit: 'J', min: 0, max: 1e7 },
    racks: { text: 'Racks in the time that is counted', unit: 'count', min: 0, max: 5e6 },
    idleW: { text: 'Power when idle, door closed', unit: 'W', min: 0, max: 20_000 },
    idleS: { text: 'Time idle', unit: 's', min: 0, max: 3.2e7 },
  },
  result: { text: 'Energy', unit: 'J', min: 0, max: 8e13 },
  source: [
    {
      text: 'Sum of the parts that ENERGY STAR rates: idle power, energy of washing a rack, water',
      documents: ['energy-star', 'arithmetic'],
      confidence: 'geometry',
    },
  ],
  unprinted: 'A sum.',
  examples: [
    {
      kind: 'regression',
      from: '10 kWh of heat, 100 racks at 0.35 kWh, 8 h at 0.55 kW: 49.4 kWh',
      inputs: { heatingJ: toSI(10, 'kWh'), washJ: toSI(0.35, 'kWh'), racks: 100, idleW: 550, idleS: 28_800 },
      result: toSI(49.4, 'kWh'),
      tolerance: 1e-6,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 910, formulas: [formula(machineEnergyRecord, machineEnergy)] }];
