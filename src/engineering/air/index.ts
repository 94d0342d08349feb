import type { Formula } from '../formula';
import { DUCT_FORMULAS } from './duct';
import { FAN_FORMULAS } from './fan';
import { FITTING_FORMULAS } from './fittings';
import { FRICTION_FORMULAS } from './friction';
import { MOIST_FORMULAS } from './moist';

export * from './duct';
export * from './fan';
export * from './fittings';
export * from './friction';
export * from './moist';
export { KELVIN, STANDARD_DENSITY, STANDARD_PRESSURE } from './standardAir';

/** Every formula of air. */
export const AIR_FORMULAS: readonly Formula[] = [
  ...FRICTION_FORMULAS,
  ...DUCT_FORMULAS,
  ...FITTING_FORMULAS,
  ...FAN_FORMULAS,
  ...MOIST_FORMULAS,
];
