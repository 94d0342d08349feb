import type { Formula } from '../formula';
import { CONDENSATION_FORMULAS } from './condensation';
import { DUCT_FORMULAS } from './duct';
import { FAN_FORMULAS } from './fan';
import { FITTING_FORMULAS } from './fittings';
import { FRICTION_FORMULAS } from './friction';
import { GAIN_FORMULAS } from './gain';
import { HOOD_FORMULAS } from './hood';
import { MOIST_FORMULAS } from './moist';
import { ROOM_FORMULAS } from './room';

export * from './condensation';
export * from './duct';
export * from './fan';
export * from './fittings';
export * from './friction';
export * from './gain';
export * from './hood';
export * from './limits';
export * from './moist';
export * from './room';
export { AIR_RULES } from './rules';
export { KELVIN, STANDARD_DENSITY, STANDARD_PRESSURE } from './standardAir';

/** Every formula of air. */
export const AIR_FORMULAS: readonly Formula[] = [
  ...HOOD_FORMULAS,
  ...FRICTION_FORMULAS,
  ...DUCT_FORMULAS,
  ...FITTING_FORMULAS,
  ...FAN_FORMULAS,
  ...MOIST_FORMULAS,
  ...CONDENSATION_FORMULAS,
  ...GAIN_FORMULAS,
  ...ROOM_FORMULAS,
];
