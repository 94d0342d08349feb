import { type Formula, formula } from '../../formula';
import { fanAirflow, fanAirflowRecord, fanPowerAtSpeed, fanPowerAtSpeedRecord, fanPressure, fanPressureRecord } from './fanLaws';
import { fanShaftPower, fanShaftPowerRecord } from './fanShaftPower';
import { operatingAirflow, operatingPointRecord } from './operatingPoint';
import { systemCoefficient, systemCoefficientRecord, systemPressure, systemPressureRecord } from './systemCurve';

export { type FanChange, type FanPoint, fanPressureAt, scaleFanCurve } from './fanCurve';
export { fanAirflow, fanPowerAtSpeed, fanPressure } from './fanLaws';
export { fanShaftPower } from './fanShaftPower';
export { type OperatingPoint, operatingAirflow, operatingPointRecord, solveOperatingPoint } from './operatingPoint';
export { systemCoefficient, systemPressure, systemPressureRecord } from './systemCurve';

/** Fans and what they drive. */
export const FAN_FORMULAS: readonly Formula[] = [
  formula(fanAirflowRecord, fanAirflow),
  formula(fanPressureRecord, fanPressure),
  formula(fanPowerAtSpeedRecord, fanPowerAtSpeed),
  formula(fanShaftPowerRecord, fanShaftPower),
  formula(systemCoefficientRecord, systemCoefficient),
  formula(systemPressureRecord, systemPressure),
  formula(operatingPointRecord, operatingAirflow),
];
