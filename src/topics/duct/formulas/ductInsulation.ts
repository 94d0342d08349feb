import {
  bisect,
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  findOutOfRange,
  formula,
  inches,
} from '../../../rules';
import { toSI } from '../../../units';
import { FILM_RESISTANCES } from '../../air';
import { DUCT_LAYER_NOTES, type DuctLayers, innerWall } from './ductWall';

export interface DuctInsulationInputs extends DuctLayers {
  /** Of the air in the duct. */
  dewPointC: number;
}

/** Thicker is not built on a vent duct. */
export const MOST_INSULATION_M = 0.1;

/**
 * Least thickness in metres of insulation about a round exhaust duct that keeps its inner wall at the dew point of
 * the air in it; 0 where the bare wall stays dry. It refuses above 100 mm: there a slope and a drain are the answer.
 */
export function ductInsulation(inputs: DuctInsulationInputs): FormulaResult {
  const refusal = findOutOfRange(ductInsulationRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const above = (thicknessM: number) => innerWall(inputs, thicknessM) - inputs.dewPointC;
  if (above(0) >= 0) return { ok: true, value: 0 };
  if (above(MOST_INSULATION_M) < 0) return { ok: false, refusal: refuseThick(inputs) };
  return { ok: true, value: bisect(above, 0, MOST_INSULATION_M) };
}

const refuseThick = ({ insideC, dewPointC }: DuctInsulationInputs) =>
  createRefusal(ductInsulationRecord, 'insulation-not-enough', { insideC, dewPointC, mostM: MOST_INSULATION_M });

const also = `insulation of at most ${MOST_INSULATION_M} m is enough`;

export const ductInsulationRecord: FormulaRecord<DuctInsulationInputs> = {
  id: 'duct-insulation',
  title: 'Least insulation about a duct',
  formula: 't_wall(s) = t_d, solved for the thickness s; resistances in a row about a cylinder',
  inputs: {
    ...DUCT_LAYER_NOTES,
    dewPointC: { text: 'Dew point of the air in the duct', unit: 'C', min: -40, max: 100 },
  },
  result: { text: 'Thickness', unit: 'm', min: 0, max: MOST_INSULATION_M },
  source: [
    { text: 'ht library, cylindrical_heat_transfer: the resistances', documents: ['ht-library'], confidence: 'read' },
    { text: 'Algebra from resistances in a row', documents: ['thermal-resistances', 'arithmetic'], confidence: 'secondary' },
  ],
  examples: [
    {
      kind: 'regression',
      from: '12 in duct, 110 °F and 80 % in an attic of 40 °F',
      inputs: {
        diameterM: inches(12),
        insideC: toSI(110, 'F'),
        outsideC: toSI(40, 'F'),
        dewPointC: toSI(102.4, 'F'),
        conductivityWmK: 0.036,
        insideR: FILM_RESISTANCES['inside-duct'],
        outsideR: FILM_RESISTANCES['still-air'],
      },
      result: 0.0064,
      tolerance: 5e-5,
    },
  ],
  unprinted:
    'No worked example of duct insulation against condensation is held: the resistances it stands on are tested against the ht library.',
  also,
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 530, formulas: [formula(ductInsulationRecord, ductInsulation)] }];
