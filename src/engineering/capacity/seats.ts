import { toSI } from '../../units';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

export interface SeatsInputs {
  meals: number;
  sittings: number;
  occupancy: number;
}

/** Seats that a dining room needs for its meals. */
export function seatsNeeded(inputs: SeatsInputs): Outcome {
  const reason = findOutOfRange(seatsNeededRecord, inputs);
  return reason === null ? { ok: true, value: inputs.meals / inputs.sittings / inputs.occupancy } : { ok: false, reason };
}

const guide = 'UFC 4-740-12AN §3-2: 600 meals, 2 sittings, 80 %, 15 sf a seat (L-37, L-LT10)';

export const seatsNeededRecord: FormulaRecord<SeatsInputs> = {
  id: 'seats-needed',
  title: 'Seats needed',
  formula: 'seats = meals / sittings / occupancy',
  inputs: {
    meals: { text: 'Meals served', unit: 'count', min: 0, max: 20_000 },
    sittings: { text: 'Sittings', unit: 'count', min: 1, max: 20 },
    occupancy: { text: 'Part of the seats that is taken', unit: 'share', min: 0.3, max: 1 },
  },
  result: { text: 'Seats', unit: 'count', min: 0, max: 70_000 },
  source: [{ text: guide, confidence: 'read' }],
  examples: [
    { kind: 'source', from: `${guide}: 375 seats`, inputs: { meals: 600, sittings: 2, occupancy: 0.8 }, result: 375, tolerance: 1e-9 },
  ],
};

export interface DiningInputs {
  seats: number;
  seatM2: number;
}

/** Area of a dining room in m². */
export function diningArea(inputs: DiningInputs): Outcome {
  const reason = findOutOfRange(diningAreaRecord, inputs);
  return reason === null ? { ok: true, value: inputs.seats * inputs.seatM2 } : { ok: false, reason };
}

export const diningAreaRecord: FormulaRecord<DiningInputs> = {
  id: 'dining-area',
  title: 'Area of the dining room',
  formula: 'A = seats · area of one',
  inputs: {
    seats: { text: 'Seats', unit: 'count', min: 0, max: 70_000 },
    seatM2: { text: 'Area of a seat', unit: 'm2', min: 0.5, max: 5 },
  },
  result: { text: 'Area', unit: 'm2', min: 0, max: 350_000 },
  source: [{ text: guide, confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: `${guide}: 5,625 sf`,
      inputs: { seats: 375, seatM2: toSI(15, 'ft2') },
      result: toSI(5625, 'ft2'),
      tolerance: 1e-9,
    },
  ],
};
