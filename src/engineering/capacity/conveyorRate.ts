import { toSI } from '../../units';
import { inches } from '../lengths';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

export interface ConveyorInputs {
  speedMS: number;
  rackM: number;
}

/** Racks an hour of a rack conveyor: what a door machine is measured against when the rush outruns it. */
export function conveyorRate(inputs: ConveyorInputs): Outcome {
  const reason = findOutOfRange(conveyorRateRecord, inputs);
  return reason === null ? { ok: true, value: (3600 * inputs.speedMS) / inputs.rackM } : { ok: false, reason };
}

const preface = 'NSF/ANSI 3 listings, preface, 8 March 2025';

export const conveyorRateRecord: FormulaRecord<ConveyorInputs> = {
  id: 'conveyor-rate',
  title: 'Racks an hour of a conveyor',
  formula: 'RPH = CS · 60 / RL, CS in ft/min, RL in ft',
  inputs: {
    speedMS: { text: 'Speed of the conveyor', unit: 'm/s', min: 0, max: 0.2 },
    rackM: { text: 'Length of a rack along it', unit: 'm', min: 0.3, max: 1 },
  },
  result: { text: 'Racks an hour', unit: '1/h', min: 0, max: 2400 },
  source: [{ text: `${preface} (L-C06)`, confidence: 'read' }],
  unprinted: 'The preface prints the rule and no example.',
  examples: [
    {
      kind: 'regression',
      from: '5 ft/min, racks of 20 in: 180 racks/h',
      inputs: { speedMS: toSI(5, 'fpm'), rackM: inches(20) },
      result: 180,
      tolerance: 1e-9,
    },
  ],
};

export interface BeltInputs {
  speedMS: number;
  widthM: number;
  dishM: number;
}

/** Dishes an hour of a belt without racks. */
export function beltRate(inputs: BeltInputs): Outcome {
  const reason = findOutOfRange(beltRateRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  const { speedMS, widthM, dishM } = inputs;
  return { ok: true, value: ((3600 * speedMS) / dishM) * (widthM / DISH_WIDTH) };
}

/** The rule's 120 gives each dish six inches of the width: 60 · 12 · CS / PD rows an hour of CW / 6 dishes. */
const DISH_WIDTH = inches(6);

export const beltRateRecord: FormulaRecord<BeltInputs> = {
  id: 'belt-rate',
  title: 'Dishes an hour of a belt',
  formula: 'D = 120 · CS · CW / PD, CS in ft/min, CW and PD in inches',
  inputs: {
    speedMS: { text: 'Speed of the belt', unit: 'm/s', min: 0, max: 0.2 },
    widthM: { text: 'Width of the belt', unit: 'm', min: 0.2, max: 2 },
    dishM: { text: 'Distance of the pegs, from dish to dish', unit: 'm', min: 0.02, max: 0.5 },
  },
  result: { text: 'Dishes an hour', unit: '1/h', min: 0, max: 500_000 },
  source: [{ text: `${preface} (L-C07)`, confidence: 'read' }],
  unprinted: 'The inputs of the example are a student exercise; its answer is worked out here.',
  examples: [
    {
      kind: 'regression',
      from: '4.6 ft/min, 30 in, 2 in: 8,280 dishes/h (L-C13)',
      inputs: { speedMS: toSI(4.6, 'fpm'), widthM: inches(30), dishM: inches(2) },
      result: 8280,
      tolerance: 1e-6,
    },
  ],
};
