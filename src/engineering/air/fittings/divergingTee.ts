import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';
import { betweenAngles, TEE_ANGLES, TEE_NOTES, type TeeInputs } from './convergingTee';

/** Loss coefficient, on the velocity of the stream before it divides, where a branch goes off. */
export function divergingTee(inputs: TeeInputs): Outcome {
  const reason = findOutOfRange(divergingTeeRecord, inputs) ?? betweenAngles(inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: inputs.leg === 'branch' ? branch(inputs) : run(inputs) };
}

function branch(inputs: TeeInputs): number {
  const { flowRatio, diameterRatio, angleDeg } = inputs;
  const speed = flowRatio / diameterRatio ** 2;
  const isSquare = angleDeg === 90;
  // A wide branch at right angles is a case of its own in the source.
  const [square, drawn] = isSquare && diameterRatio > 2 / 3 ? [0.3, 0] : [1, 2];
  return crowding(inputs) * (1 + square * speed ** 2 - drawn * speed * (isSquare ? 0 : Math.cos((angleDeg * Math.PI) / 180)));
}

function crowding({ flowRatio: q, diameterRatio, angleDeg }: TeeInputs): number {
  const area = diameterRatio ** 2;
  if (angleDeg === 90) return area <= 2 / 3 ? 1 : 1 + 0.3 * q ** 2;
  if (area <= 0.35) return q <= 0.4 ? 1.1 - 0.7 * q : 0.85;
  return q <= 0.6 ? 1 - 0.6 * q : 0.6;
}

function run({ flowRatio: q, diameterRatio }: TeeInputs): number {
  const lean = 2 * q - 1;
  const factor = diameterRatio ** 2 <= 0.4 ? 0.4 : q <= 0.5 ? 2 * lean : 0.3 * lean;
  return factor * q ** 2;
}

const library = 'fluids library, diverging tee of TP-410 (A-X11)';
const flowRatio = 0.01583 / (0.01583 + 0.02525);

export const divergingTeeRecord: FormulaRecord<TeeInputs> = {
  id: 'tee-diverging',
  title: 'Loss of a diverging tee',
  formula: 'K_b = G [1 + H (q/β²)² − J (q/β²) cos θ]; K_r = M q²',
  inputs: TEE_NOTES,
  result: { text: 'Loss coefficient on the velocity pressure before the tee', unit: 'ratio', min: -1, max: 130 },
  source: [{ text: 'Flow of Fluids, Technical Paper 410, 2009, with its errata, as in the fluids library (A-X11)', confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: library,
      inputs: { leg: 'branch', flowRatio, diameterRatio: 1, angleDeg: 45 },
      result: 0.4639895627496694,
      tolerance: 1e-12,
    },
    {
      kind: 'source',
      from: library,
      inputs: { leg: 'run', flowRatio, diameterRatio: 1, angleDeg: 45 },
      result: -0.06810067607153049,
      tolerance: 1e-12,
    },
  ],
  also: TEE_ANGLES,
};
