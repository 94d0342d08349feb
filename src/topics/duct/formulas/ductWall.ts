import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';
import { toSI } from '../../../units';
import { airTemperature, FILM_RESISTANCES, filmR } from '../../air';

/** Films of air on both sides of a round duct, and what lies about it. */
export interface DuctLayers {
  diameterM: number;
  insideC: number;
  outsideC: number;
  conductivityWmK: number;
  insideR: number;
  outsideR: number;
}

export interface DuctWallInputs extends DuctLayers {
  /** Of the insulation; 0 for a bare duct. */
  thicknessM: number;
}

/** Temperature in °C of the inner wall of a round duct. Below the dew point of the air in it the wall runs wet. */
export function ductWall(inputs: DuctWallInputs): FormulaResult {
  const refusal = findOutOfRange(ductWallRecord, inputs);
  return refusal === null ? { ok: true, value: innerWall(inputs, inputs.thicknessM) } : { ok: false, refusal };
}

/** The same without its guard. The sheet metal itself keeps nothing. It rises with the thickness on any duct of 50 mm or more. */
export function innerWall(inputs: DuctLayers, thicknessM: number): number {
  const { diameterM, insideC, outsideC, conductivityWmK } = inputs;
  const outerM = diameterM + 2 * thicknessM;
  const inner = inputs.insideR / (Math.PI * diameterM);
  const shell = Math.log(outerM / diameterM) / (2 * Math.PI * conductivityWmK);
  const outer = inputs.outsideR / (Math.PI * outerM);
  return insideC - ((insideC - outsideC) * inner) / (inner + shell + outer);
}

/** Ranges that the formulas of a round duct share. */
export const DUCT_LAYER_NOTES: FormulaRecord<DuctLayers>['inputs'] = {
  diameterM: { text: 'Diameter of the duct', unit: 'm', min: 0.05, max: 3 },
  insideC: airTemperature('Air in the duct'),
  outsideC: airTemperature('Air about the duct'),
  conductivityWmK: { text: 'Conductivity of the insulation', unit: 'W/(m·K)', min: 0.015, max: 0.1 },
  insideR: filmR('Film inside'),
  outsideR: { text: 'Film outside', unit: 'm2·K/W', min: 0.01, max: 0.25 },
};

const films = { insideR: FILM_RESISTANCES['inside-duct'], outsideR: FILM_RESISTANCES['still-air'], conductivityWmK: 0.036 };
const attic = { diameterM: inches(12), insideC: toSI(110, 'F'), outsideC: toSI(40, 'F'), ...films };

export const ductWallRecord: FormulaRecord<DuctWallInputs> = {
  id: 'duct-wall',
  title: 'Inner wall of a duct',
  formula: 't_w = t_i − (t_i − t_o) R_i / (R_i + R_ins + R_o), resistances in a row about a cylinder',
  inputs: { ...DUCT_LAYER_NOTES, thicknessM: { text: 'Thickness of the insulation', unit: 'm', min: 0, max: 0.3 } },
  result: { text: 'Temperature of the inner wall', unit: 'C', min: -40, max: 100 },
  source: [
    { text: 'ht library, cylindrical_heat_transfer: the resistances', documents: ['ht-library'], confidence: 'read' },
    { text: 'Usual film resistances', documents: ['thermal-resistances'], confidence: 'memory' },
  ],
  examples: [
    {
      kind: 'regression',
      from: 'dish exhaust of 110 °F in an attic of 40 °F, bare: 94.09 °F',
      inputs: { ...attic, thicknessM: 0 },
      result: toSI(94.09, 'F'),
      tolerance: toSI(0.01, 'deltaF'),
    },
    {
      kind: 'regression',
      from: 'the same with 1.5 in about it: 34.62 W/m by the ht library, times the film',
      inputs: { ...attic, thicknessM: inches(1.5) },
      result: toSI(110, 'F') - (34.62 * films.insideR) / (Math.PI * inches(12)),
      tolerance: 0.001,
    },
  ],
  unprinted: 'No worked example of a duct’s inner wall is held: the resistances it stands on are tested against the ht library.',
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 520, formulas: [formula(ductWallRecord, ductWall)] }];
