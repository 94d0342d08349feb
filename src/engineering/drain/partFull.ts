import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

/** Wetted area and hydraulic radius of a round pipe of diameter 1, filled to a part of its height. */
export function partFull(depth: number): { area: number; radius: number } {
  const angle = 2 * Math.acos(1 - 2 * depth);
  const area = (angle - Math.sin(angle)) / 8;
  return { area, radius: area / (angle / 2) };
}

export interface PartFullInputs {
  depth: number;
}

/** Flow of a sloping round pipe beside its flow when half full. */
export function partFullFlow(inputs: PartFullInputs): Outcome {
  const reason = findOutOfRange(partFullFlowRecord, inputs);
  return reason === null ? { ok: true, value: flowAt(inputs.depth) / flowAt(0.5) } : { ok: false, reason };
}

/** Speed of that flow beside the speed when half full. */
export function partFullSpeed(inputs: PartFullInputs): Outcome {
  const reason = findOutOfRange(partFullSpeedRecord, inputs);
  return reason === null ? { ok: true, value: speedAt(inputs.depth) / speedAt(0.5) } : { ok: false, reason };
}

const speedAt = (depth: number) => partFull(depth).radius ** (2 / 3);
const flowAt = (depth: number) => partFull(depth).area * speedAt(depth);

const appendix = 'NSPC 2009, Appendix K (W-DP6)';
const shared = {
  inputs: { depth: { text: 'Depth of water over inside diameter', unit: 'ratio', min: 0.05, max: 1 } },
  source: [{ text: `${appendix}; Manning's equation gives the same`, confidence: 'read' }],
} satisfies Partial<FormulaRecord<PartFullInputs>>;
const printed = (what: string, depth: number, result: number): FormulaRecord<PartFullInputs>['examples'][number] => ({
  kind: 'source',
  from: `${appendix}: ${what}`,
  inputs: { depth },
  result,
  tolerance: 0.005 * result,
});

export const partFullFlowRecord: FormulaRecord<PartFullInputs> = {
  id: 'part-full-flow',
  title: 'Flow beside half full',
  formula: 'A R^(2/3) over the same when half full',
  result: { text: 'Ratio of flows', unit: 'ratio', min: 0, max: 2.2 },
  ...shared,
  examples: [printed('full, 2.00', 1, 2), printed('three quarters, 1.82', 0.75, 1.82), printed('a quarter, 0.274', 0.25, 0.274)],
};

export const partFullSpeedRecord: FormulaRecord<PartFullInputs> = {
  id: 'part-full-speed',
  title: 'Speed beside half full',
  formula: 'R^(2/3) over the same when half full',
  result: { text: 'Ratio of speeds', unit: 'ratio', min: 0, max: 1.2 },
  ...shared,
  examples: [printed('full, 1.00', 1, 1), printed('three quarters, 1.13', 0.75, 1.13), printed('a quarter, 0.701', 0.25, 0.701)],
};
