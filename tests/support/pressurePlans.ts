import type { DataSheet } from '../../src/catalog';
import type { Codes, Plan } from '../../src/plan';
import { fromSI, toSI } from '../../src/units';
import { sheetPlan } from './figurePlans';

export const psi = (value: number): number => toSI(value, 'psi');

export type Plate = readonly [least: number, most: number] | null;

/** So much flow pressure at the stub, a data plate of its own (psi), and the code that counts. */
export function pressurePlan(
  atStub: number,
  plate: Plate,
  code: Codes['rinsePressure'] = 'strictest',
  change: (plan: Plan) => void = () => {},
  sanitizing: DataSheet['sanitizing'] = 'hot-water',
): Plan {
  const rinsePressure = plate === null ? null : { least: psi(plate[0]), most: psi(plate[1]) };
  return sheetPlan({ rinsePressure, sanitizing }, (plan) => {
    plan.supply.flowPressureKpa = fromSI(psi(atStub), 'kPa');
    plan.codes.rinsePressure = code;
    change(plan);
  });
}
