import { type Formula, formula } from '../../formula';
import { operatingAirflow, operatingPointRecord } from './operatingPoint';
import { systemCoefficient, systemCoefficientRecord, systemPressure, systemPressureRecord } from './systemCurve';

export { type FanChange, type FanPoint, scaleFanCurve } from './fanCurve';
export { type OperatingPoint, operatingAirflow, operatingPointRecord, solveOperatingPoint } from './operatingPoint';
export { systemCoefficient, systemPressure, systemPressureRecord } from './systemCurve';

/** Fans and what they drive. */
export const FAN_FORMULAS: readonly Formula[] = [
  formula(systemCoefficientRecord, systemCoefficient),
  formula(systemPressureRecord, systemPressure),
  formula(operatingPointRecord, operatingAirflow),
];
