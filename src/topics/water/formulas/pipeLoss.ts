import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';
import { fromSI, isAtMost, toSI } from '../../../units';
import { pipeSpeed } from './pipeSpeed';

/** Hazen and Williams' C by what the pipe is made of (a calculator page). */
export const PIPE_SMOOTHNESS = { copper: 150, plastic: 150, 'new-steel': 140, 'old-steel': 120 } as const;

/** Two ways in which Hazen and Williams are printed; their rounded exponents put them 1.5 % apart, `head` the higher. */
export const PIPE_LOSS_FORMS = ['head', 'psi'] as const;
export type PipeLossForm = (typeof PIPE_LOSS_FORMS)[number];

export interface PipeLossInputs {
  flowM3S: number;
  boreM: number;
  lengthM: number;
  /** Hazen and Williams' C: 150 copper and plastic, 140 new steel, 120 old. */
  smoothness: number;
  form: PipeLossForm;
}

/** Pressure in pascals that friction takes from water in a full pipe, by Hazen and Williams. Fittings count as length. */
export function pipeLoss(inputs: PipeLossInputs): FormulaResult {
  const refusal = findOutOfRange(pipeLossRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const speed = pipeSpeed(inputs);
  if (!speed.ok) return speed;
  if (!isAtMost(speed.value, FASTEST))
    return { ok: false, refusal: createRefusal(pipeLossRecord, 'pipe-too-fast', { speedMs: speed.value, mostMs: FASTEST }) };
  return { ok: true, value: inputs.form === 'head' ? lossByHead(inputs) : lossByPsi(inputs) };
}

const FASTEST = 10;
const also = `the speed is at most ${FASTEST} m/s`;

/** h = 0.2083 (100/C)^1.852 q^1.852 / d^4.8655, feet of water in 100 ft of pipe. */
function lossByHead({ flowM3S, boreM, lengthM, smoothness }: PipeLossInputs): number {
  const q = fromSI(flowM3S, 'gpm');
  const head = (0.2083 * (100 / smoothness) ** 1.852 * q ** 1.852) / (boreM / inches(1)) ** 4.8655;
  return toSI(head / 100, 'ftH2O') * (lengthM / (12 * inches(1)));
}

/** p = 4.52 q^1.85 / (C^1.85 d^4.87), psi in a foot of pipe. */
function lossByPsi({ flowM3S, boreM, lengthM, smoothness }: PipeLossInputs): number {
  const q = fromSI(flowM3S, 'gpm');
  const psi = (4.52 * q ** 1.85) / (smoothness ** 1.85 * (boreM / inches(1)) ** 4.87);
  return toSI(psi, 'psi') * (lengthM / (12 * inches(1)));
}

const page = 'Engineering ToolBox, Hazen-Williams for water: 200 gpm, 3.048 in, C 140';
const steel = { flowM3S: toSI(200, 'gpm'), boreM: inches(3.048), smoothness: 140, form: 'head' } as const;

export const pipeLossRecord: FormulaRecord<PipeLossInputs> = {
  id: 'pipe-loss',
  title: 'Loss in a water pipe',
  formula:
    'h = 0.2083 (100/C)^1.852 q^1.852 / d^4.8655 ft in 100 ft · p = 4.52 q^1.85 / (C^1.85 d^4.87) psi in a foot; q in gpm, d in inches',
  inputs: {
    flowM3S: { text: 'Flow', unit: 'm3/s', min: 0, max: 0.02 },
    boreM: { text: 'Inside diameter', unit: 'm', min: 0.008, max: 0.16 },
    lengthM: { text: 'Length with the allowance for fittings', unit: 'm', min: 0, max: 500 },
    smoothness: { text: 'C: 150 copper and plastic, 140 new steel, 120 old', unit: 'ratio', min: 80, max: 150 },
    form: { text: 'Which of the printed forms', choices: PIPE_LOSS_FORMS },
  },
  result: { text: 'Pressure lost', unit: 'Pa', min: 0, max: 3e8 },
  also,
  source: [
    { text: 'Engineering ToolBox, Hazen-Williams equation for water, head form', documents: ['engineering-toolbox'], confidence: 'read' },
    { text: 'Hazen-Williams in psi, a calculator page', documents: ['calculator-pages'], confidence: 'secondary' },
  ],
  examples: [
    {
      kind: 'source',
      from: `${page}, 100 ft: 9 ft of water`,
      inputs: { ...steel, lengthM: 30.48 },
      result: toSI(9, 'ftH2O'),
      tolerance: toSI(0.09, 'ftH2O'),
    },
    {
      kind: 'source',
      from: `${page}, 30 ft: 2.7 ft of water`,
      inputs: { ...steel, lengthM: 9.144 },
      result: toSI(2.7, 'ftH2O'),
      tolerance: toSI(0.027, 'ftH2O'),
    },
    {
      kind: 'regression',
      from: '10 gpm in 1.025 in, C 150, 100 ft: 2.67 psi',
      inputs: { flowM3S: toSI(10, 'gpm'), boreM: inches(1.025), lengthM: 30.48, smoothness: 150, form: 'psi' },
      result: toSI(2.67, 'psi'),
      tolerance: toSI(0.005, 'psi'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 870, formulas: [formula(pipeLossRecord, pipeLoss)] }];
