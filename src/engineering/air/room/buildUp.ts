import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';

export interface BuildUpInputs {
  /** What is set free, kg/s. */
  sourceKgS: number;
  volumeM3: number;
  /** Air changes an hour. */
  changesPerHour: number;
  seconds: number;
  atFirstKgM3: number;
  supplyKgM3: number;
}

/** Concentration in kg/m³ in a well-mixed room some time after a source begins. Vapour too, where nothing takes it up or condenses. */
export function buildUp(inputs: BuildUpInputs): Outcome {
  const reason = findOutOfRange(buildUpRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  const { sourceKgS, volumeM3, seconds, atFirstKgM3, supplyKgM3 } = inputs;
  const changesPerSecond = inputs.changesPerHour / HOUR;
  const left = Math.exp(-changesPerSecond * seconds);
  const steady = sourceKgS / (changesPerSecond * volumeM3);
  return { ok: true, value: steady * (1 - left) + (atFirstKgM3 - supplyKgM3) * left + supplyKgM3 };
}

export interface PurgeInputs {
  volumeM3: number;
  airflowM3s: number;
  /** Concentration at the end over that at the start, both above the supply's. */
  endRatio: number;
}

/** Seconds until so much of a concentration is left once its source has stopped. */
export function purgeTime(inputs: PurgeInputs): Outcome {
  const reason = findOutOfRange(purgeTimeRecord, inputs);
  return reason === null ? { ok: true, value: -(inputs.volumeM3 / inputs.airflowM3s) * Math.log(inputs.endRatio) } : { ok: false, reason };
}

const HOUR = 3600;
const table = 'Room concentration, public table for a source of 1 an hour into a volume of 1 (A-M3)';
const clean = { sourceKgS: 1 / HOUR, volumeM3: 1, atFirstKgM3: 0, supplyKgM3: 0 };
const volumeM3 = { text: 'Volume of the room', unit: 'm3', min: 1, max: 1e5 } as const;
const concentration = (text: string) => ({ text, unit: 'kg/m3', min: 0, max: 2 }) as const;

export const buildUpRecord: FormulaRecord<BuildUpInputs> = {
  id: 'room-build-up',
  title: 'Rising concentration in a room',
  formula: 'c = G/(n V) (1 − e^(−n t)) + (c₁ − c_s) e^(−n t) + c_s',
  inputs: {
    sourceKgS: { text: 'What is set free', unit: 'kg/s', min: 0, max: 0.1 },
    volumeM3,
    changesPerHour: { text: 'Air changes an hour', unit: '1/h', min: 0.01, max: 200 },
    seconds: { text: 'Time since the beginning', unit: 's', min: 0, max: 1e6 },
    atFirstKgM3: concentration('Concentration at the beginning'),
    supplyKgM3: concentration('Concentration of the supply air'),
  },
  result: { text: 'Concentration', unit: 'kg/m3', min: 0, max: 1e5 },
  source: [{ text: 'Room concentration with a source and ventilation (A-M2)', confidence: 'read' }],
  examples: [
    { kind: 'source', from: table, inputs: { ...clean, changesPerHour: 0.5, seconds: 600 }, result: 0.1599, tolerance: 5e-5 },
    { kind: 'source', from: table, inputs: { ...clean, changesPerHour: 8, seconds: 4800 }, result: 0.125, tolerance: 5e-5 },
  ],
};

export const purgeTimeRecord: FormulaRecord<PurgeInputs> = {
  id: 'purge-time',
  title: 'Time to clear a room',
  formula: 't = (V/Q) ln(c₁/c₂)',
  inputs: {
    volumeM3,
    airflowM3s: { text: 'Airflow through the room', unit: 'm3/s', min: 0.005, max: 100 },
    endRatio: { text: 'What is left, as a part of the first', unit: 'ratio', min: 1e-6, max: 1 },
  },
  result: { text: 'Time', unit: 's', min: 0, max: 3e8 },
  source: [{ text: 'Purge of a diluted room (A-M4)', confidence: 'read' }],
  examples: [
    {
      kind: 'regression',
      from: 'one air change leaves 1/e',
      inputs: { volumeM3: 100, airflowM3s: 0.1, endRatio: Math.exp(-1) },
      result: 1000,
      tolerance: 1e-6,
    },
  ],
  unprinted: 'The equation is published without numbers; it is the other side of the build-up, which is tested against a published table.',
};
