import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';
import { interpolate, type Points } from '../interpolate';

export const TEE_LEGS = ['branch', 'run'] as const;
export type TeeLeg = (typeof TEE_LEGS)[number];

export interface TeeInputs {
  leg: TeeLeg;
  /** Airflow of the branch over that of both together. */
  flowRatio: number;
  /** Diameter of the branch over that of the duct that carries both. */
  diameterRatio: number;
  angleDeg: number;
}

/** Loss coefficient, on the velocity of the joined stream, where a branch comes in. Below 0 the other stream draws it along. */
export function convergingTee(inputs: TeeInputs): Outcome {
  const reason = findOutOfRange(convergingTeeRecord, inputs) ?? betweenAngles(inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: inputs.leg === 'branch' ? branch(inputs) : run(inputs) };
}

function branch({ flowRatio: q, diameterRatio, angleDeg }: TeeInputs): number {
  const area = diameterRatio ** 2;
  const crowding = area <= 0.35 ? 1 : q <= 0.4 ? 0.9 * (1 - q) : 0.55;
  const drawn = (interpolate(DRAWN, angleDeg) / area) * q ** 2;
  return crowding * (1 + (q / area) ** 2 - 2 * (1 - q) ** 2 - drawn);
}

function run({ flowRatio: q, diameterRatio, angleDeg }: TeeInputs): number {
  if (angleDeg === 90) return 1.55 * q - q ** 2;
  return 1 - (1 - q) ** 2 - (interpolate(DRAWN, angleDeg) / diameterRatio ** 2) * q ** 2;
}

/** How far the streams draw each other along, by the angle between them. */
const DRAWN: Points = [
  [30, 1.74],
  [45, 1.41],
  [60, 1],
  [90, 0],
];

/** The source holds the run and the dividing tee only for these angles. */
export const TEE_ANGLES = 'a tee is held for 30 to 60° and for 90°';

export const betweenAngles = ({ angleDeg }: TeeInputs): string | null =>
  angleDeg > 60 && angleDeg < 90 ? `${TEE_ANGLES}: angleDeg is ${angleDeg}` : null;

export const TEE_NOTES: FormulaRecord<TeeInputs>['inputs'] = {
  leg: { text: 'Which of the two streams', choices: TEE_LEGS },
  flowRatio: { text: 'Airflow of the branch over that of both', unit: 'ratio', min: 0, max: 1 },
  diameterRatio: { text: 'Diameter of the branch over that of the joined duct', unit: 'ratio', min: 0.3, max: 1 },
  angleDeg: { text: 'Angle of the branch to the run', unit: 'deg', min: 30, max: 90 },
};

const problem = 'Flow of Fluids (TP-410), problem 7.35: run 300, branch 100, equal tee (A-X12)';
const library = 'fluids library, converging tee of TP-410 (A-X11)';
const tee = (leg: TeeLeg, flowRatio: number): TeeInputs => ({ leg, flowRatio, diameterRatio: 1, angleDeg: 90 });

export const convergingTeeRecord: FormulaRecord<TeeInputs> = {
  id: 'tee-converging',
  title: 'Loss of a converging tee',
  formula: 'K_b = C [1 + (q/β²)² − 2 (1 − q)² − F q²/β²]; K_r = 1 − (1 − q)² − F q²/β², at 90° 1.55 q − q²',
  inputs: TEE_NOTES,
  result: { text: 'Loss coefficient on the joined velocity pressure', unit: 'ratio', min: -20, max: 130 },
  source: [{ text: 'Flow of Fluids, Technical Paper 410, 2009, with its errata, as in the fluids library (A-X11)', confidence: 'read' }],
  examples: [
    { kind: 'source', from: problem, inputs: tee('branch', 0.25), result: -0.0421875, tolerance: 1e-12 },
    { kind: 'source', from: problem, inputs: tee('run', 0.25), result: 0.325, tolerance: 1e-12 },
    {
      kind: 'source',
      from: library,
      inputs: tee('branch', 0.00633 / (0.00633 + 0.018917)),
      result: -0.0404410851362,
      tolerance: 1e-9,
    },
    { kind: 'source', from: library, inputs: tee('run', 0.00633 / (0.00633 + 0.018917)), result: 0.32575847854551254, tolerance: 1e-9 },
  ],
  also: TEE_ANGLES,
};
