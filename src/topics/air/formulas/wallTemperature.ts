import { type Entries, type FormulaRecord, type FormulaResult, type FormulaSource, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';
import { rValue } from './support/filmResistances';

export interface WallInputs {
  insideC: number;
  outsideC: number;
  /** Film of the air inside, the wall with its insulation, film of the air outside. */
  insideR: number;
  wallR: number;
  outsideR: number;
}

/** Temperature in °C of the inner surface of a flat wall. Below the dew point of the air inside it runs wet. */
export function innerSurface(inputs: WallInputs): FormulaResult {
  const refusal = findOutOfRange(innerSurfaceRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.insideC - heatFlux(inputs) * inputs.insideR } : { ok: false, refusal };
}

/** W/m² outward. */
const heatFlux = ({ insideC, outsideC, insideR, wallR, outsideR }: WallInputs) => (insideC - outsideC) / (insideR + wallR + outsideR);

const article = 'Where Does the Dew Drop: behind R-7 of R-18, between 32 and 70 °F, 47 °F';
const source: FormulaSource[] = [{ text: 'Resistances in a row', documents: ['thermal-resistances'], confidence: 'secondary' }];

export const filmR = (text: string) => ({ text, unit: 'm2·K/W', min: 0.001, max: 5 }) as const;
export const airTemperature = (text: string) => ({ text, unit: 'C', min: -40, max: 100 }) as const;

const inputs = {
  insideC: airTemperature('Air inside'),
  outsideC: airTemperature('Air outside'),
  insideR: filmR('Film inside'),
  wallR: { text: 'Wall with its insulation', unit: 'm2·K/W', min: 0, max: 20 },
  outsideR: filmR('Film outside'),
} as const;

export const innerSurfaceRecord: FormulaRecord<WallInputs> = {
  id: 'wall-inner-surface',
  title: 'Inner surface of a wall',
  formula: 't_si = t_i − (t_i − t_o) R_i / (R_i + R + R_o)',
  inputs,
  result: { text: 'Temperature of the inner surface', unit: 'C', min: -40, max: 100 },
  source,
  examples: [
    {
      kind: 'source',
      from: `${article}; the other R-11 stands as the inner resistance`,
      inputs: { insideC: toSI(70, 'F'), outsideC: toSI(32, 'F'), insideR: rValue(11), wallR: rValue(6), outsideR: rValue(1) },
      result: toSI(47, 'F'),
      tolerance: toSI(0.5, 'deltaF'),
    },
    {
      kind: 'regression',
      from: 'dish exhaust of 110 °F in an attic of 40 °F, bare: 94.09 °F',
      inputs: { insideC: toSI(110, 'F'), outsideC: toSI(40, 'F'), insideR: rValue(0.2), wallR: 0, outsideR: rValue(0.68) },
      result: toSI(94.09, 'F'),
      tolerance: toSI(0.01, 'deltaF'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 510, formulas: [formula(innerSurfaceRecord, innerSurface)] }];
