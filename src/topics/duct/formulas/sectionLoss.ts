import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  feet,
  findOutOfRange,
  formula,
  inches,
  pick,
} from '../../../rules';
import { toSI } from '../../../units';
import { STANDARD_DENSITY } from '../../air';
import { FRICTION_METHODS, type FrictionMethod, frictionFactor } from './frictionFactor';
import { reynolds } from './reynolds';

export interface SectionInputs {
  airflowM3s: number;
  /** Of a round duct, or of the round one of equal loss. */
  diameterM: number;
  /** True area, on which the fittings' velocity pressure is counted. */
  areaM2: number;
  lengthM: number;
  roughnessM: number;
  /** Sum over the fittings. */
  coefficient: number;
  densityKgM3: number;
  viscosityPas: number;
  method: FrictionMethod;
}

/** What happens along one section of a run. */
export interface SectionLoss {
  velocityMs: number;
  reynolds: number;
  frictionFactor: number;
  velocityPressurePa: number;
  straightPa: number;
  fittingsPa: number;
  totalPa: number;
}

/**
 * Loss of one section of duct: friction of its length and its fittings. A rectangular duct rubs like the round
 * one of equal loss at the same airflow, while its fittings count on its true velocity.
 */
export function sectionLoss(inputs: SectionInputs): FormulaResult<SectionLoss> {
  const refusal = findOutOfRange(sectionLossRecord, inputs) ?? tooFast(inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { diameterM, densityKgM3, viscosityPas, method } = inputs;
  const rubbingMs = inputs.airflowM3s / circle(diameterM);
  const flow = reynolds({ velocityMs: rubbingMs, diameterM, densityKgM3, viscosityPas });
  if (!flow.ok) return flow;
  const factor = frictionFactor({ reynolds: flow.value, relativeRoughness: inputs.roughnessM / diameterM, method });
  if (!factor.ok) return factor;
  return { ok: true, value: sum(inputs, rubbingMs, flow.value, factor.value) };
}

function sum(inputs: SectionInputs, rubbingMs: number, reynoldsNumber: number, factor: number): SectionLoss {
  const velocityMs = inputs.airflowM3s / inputs.areaM2;
  const velocityPressurePa = (inputs.densityKgM3 * velocityMs ** 2) / 2;
  const straightPa = ((factor * inputs.lengthM) / inputs.diameterM) * ((inputs.densityKgM3 * rubbingMs ** 2) / 2);
  const fittingsPa = inputs.coefficient * velocityPressurePa;
  return {
    velocityMs,
    reynolds: reynoldsNumber,
    frictionFactor: factor,
    velocityPressurePa,
    straightPa,
    fittingsPa,
    totalPa: straightPa + fittingsPa,
  };
}

const circle = (diameterM: number) => (Math.PI / 4) * diameterM ** 2;

const MOST_VELOCITY_MS = 60;
const also = `the velocity is at most ${MOST_VELOCITY_MS} m/s`;

const tooFast = ({ airflowM3s, areaM2, diameterM }: SectionInputs) =>
  airflowM3s > MOST_VELOCITY_MS * Math.min(areaM2, circle(diameterM))
    ? createRefusal(sectionLossRecord, 'duct-too-fast', { airflowM3s, areaM2, mostMs: MOST_VELOCITY_MS })
    : null;

const STANDARD = { densityKgM3: STANDARD_DENSITY, viscosityPas: 1.811e-5 };
const handout = 'Course handout of a branch system, run 1-a: 400 cfm, 50 ft of 10 in, 0.09 in/100 ft read from a chart';

export const sectionLossRecord: FormulaRecord<SectionInputs> = {
  id: 'duct-section-loss',
  title: 'Loss of a section of duct',
  formula: 'Δp = f (L/D) ρ V_D² / 2 + ΣC · ρ V² / 2',
  inputs: {
    airflowM3s: { text: 'Airflow', unit: 'm3/s', min: 0.005, max: 60 },
    diameterM: { text: 'Diameter, or that of the round duct of equal loss', unit: 'm', min: 0.05, max: 3.4 },
    areaM2: { text: 'True area', unit: 'm2', min: 0.0015, max: 9 },
    lengthM: { text: 'Length', unit: 'm', min: 0, max: 1000 },
    roughnessM: { text: 'Roughness', unit: 'm', min: 0, max: 0.0025 },
    coefficient: { text: 'Sum of the loss coefficients', unit: 'ratio', min: -5, max: 100 },
    densityKgM3: { text: 'Density of the air', unit: 'kg/m3', min: 0.5, max: 1.6 },
    viscosityPas: { text: 'Viscosity of the air', unit: 'Pa·s', min: 1e-5, max: 3e-5 },
    method: { text: 'Form of the friction factor', choices: FRICTION_METHODS },
  },
  result: { text: 'Pressure loss', unit: 'Pa', min: -15_000, max: 5e7 },
  source: [
    { text: handout, documents: ['duct-design-handout'], confidence: 'read' },
    { text: 'Darcy and Weisbach in inch-pound form', documents: ['darcy-weisbach'], confidence: 'memory' },
  ],
  examples: [
    {
      kind: 'source',
      from: handout,
      inputs: {
        airflowM3s: toSI(400, 'cfm'),
        diameterM: inches(10),
        areaM2: circle(inches(10)),
        lengthM: feet(50),
        roughnessM: feet(0.0005),
        coefficient: 0,
        ...STANDARD,
        method: 'colebrook',
      },
      result: toSI(0.045, 'inH2O'),
      tolerance: 0.08 * toSI(0.045, 'inH2O'),
    },
    {
      kind: 'regression',
      from: 'dish-room run: 500 cfm, 25 ft of 10 in, flanged entry 0.49, two elbows of 0.15, exit 1.0',
      inputs: {
        airflowM3s: toSI(500, 'cfm'),
        diameterM: inches(10),
        areaM2: circle(inches(10)),
        lengthM: feet(25),
        roughnessM: feet(0.0003),
        coefficient: 1.79,
        ...STANDARD,
        method: 'colebrook',
      },
      result: toSI(0.126, 'inH2O'),
      tolerance: 0.003 * toSI(0.126, 'inH2O'),
    },
  ],
  also,
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 280, formulas: [formula(sectionLossRecord, (inputs) => pick(sectionLoss(inputs), ({ totalPa }) => totalPa))] },
];
