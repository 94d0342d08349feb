import { toSI } from '../../../units';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';
import { rValue } from './filmResistances';
import { airTemperature, filmR } from './wallTemperature';

export const DRY_SIDES = ['inside', 'outside'] as const;

export interface LeastInsulationInputs {
  insideC: number;
  outsideC: number;
  /** Of the air on the side that is to stay dry. */
  dewPointC: number;
  insideR: number;
  outsideR: number;
  /** Inside for warm moist exhaust in the cold, outside for a cold duct in a moist room. */
  side: (typeof DRY_SIDES)[number];
}

/**
 * Least resistance of wall and insulation in m²·K/W that keeps the surface on one side at the dew point of its
 * air; 0 where the bare wall stays dry. A value that nobody would build means: give the duct a slope and a drain.
 */
export function leastInsulation(inputs: LeastInsulationInputs): Outcome {
  const reason = findOutOfRange(leastInsulationRecord, inputs) ?? findFog(inputs);
  if (reason !== null) return { ok: false, reason };
  const { insideC, outsideC, dewPointC, insideR, outsideR, side } = inputs;
  const isInside = side === 'inside';
  const [moist, other, film] = isInside ? [insideC, outsideC, insideR] : [outsideC, insideC, outsideR];
  return { ok: true, value: Math.max(0, (film * (moist - other)) / (moist - dewPointC) - insideR - outsideR) };
}

const also = 'the dew point lies below the air';

function findFog({ insideC, outsideC, dewPointC, side }: LeastInsulationInputs): string | null {
  const moist = side === 'inside' ? insideC : outsideC;
  return dewPointC < moist ? null : `${also}: dewPointC is ${dewPointC}, the air ${moist} C`;
}

const exhaust = (insideF: number, dewPointF: number): LeastInsulationInputs => ({
  insideC: toSI(insideF, 'F'),
  outsideC: toSI(40, 'F'),
  dewPointC: toSI(dewPointF, 'F'),
  insideR: rValue(0.2),
  outsideR: rValue(0.68),
  side: 'inside',
});

export const leastInsulationRecord: FormulaRecord<LeastInsulationInputs> = {
  id: 'least-insulation',
  title: 'Least insulation against condensation',
  formula: 'R ≥ R_i (t_i − t_o) / (t_i − t_d) − R_i − R_o inside; R ≥ R_o (t_o − t_i) / (t_o − t_d) − R_i − R_o outside',
  inputs: {
    insideC: airTemperature('Air inside'),
    outsideC: airTemperature('Air outside'),
    dewPointC: { text: 'Dew point of the air on the side that is to stay dry', unit: 'C', min: -40, max: 100 },
    insideR: filmR('Film inside'),
    outsideR: filmR('Film outside'),
    side: { text: 'Side that is to stay dry', choices: DRY_SIDES },
  },
  result: { text: 'Resistance of the wall with its insulation', unit: 'm2·K/W', min: 0, max: Number.POSITIVE_INFINITY },
  source: [{ text: 'Algebra from resistances in a row (A-K1 to A-K5)', confidence: 'secondary' }],
  examples: [
    {
      kind: 'regression',
      from: '110 °F, 80 %, in 40 °F: R 0.962 (A-K6)',
      inputs: exhaust(110, 102.4),
      result: rValue(0.962),
      tolerance: rValue(0.001),
    },
    {
      kind: 'regression',
      from: '110 °F, 95 %, in 40 °F: R 7.04 (A-K8)',
      inputs: exhaust(110, 108.23),
      result: rValue(7.03),
      tolerance: rValue(0.03),
    },
  ],
  unprinted: 'No citable publication of the formula is held: it is algebra from the resistances, whose own examples are published.',
  also,
};
