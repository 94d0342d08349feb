import { type Formula, formula } from '../../formula';
import { altshulTsal, altshulTsalRecord } from './altshulTsal';
import { churchill, churchillRecord } from './churchill';
import { colebrook, colebrookRecord } from './colebrook';
import { frictionFactor, frictionFactorRecord } from './frictionFactor';
import { haaland, haalandRecord } from './haaland';
import { laminar, laminarRecord } from './laminar';
import { swameeJain, swameeJainRecord } from './swameeJain';

export { altshulTsal } from './altshulTsal';
export { churchill } from './churchill';
export { colebrook } from './colebrook';
export { FRICTION_METHODS, type FrictionMethod, frictionFactor } from './frictionFactor';
export { haaland } from './haaland';
export { LAMINAR_LIMIT, laminar } from './laminar';
export { swameeJain } from './swameeJain';

/** Friction factors, the yardstick first. */
export const FRICTION_FORMULAS: readonly Formula[] = [
  formula(frictionFactorRecord, frictionFactor),
  formula(colebrookRecord, colebrook),
  formula(haalandRecord, haaland),
  formula(swameeJainRecord, swameeJain),
  formula(altshulTsalRecord, altshulTsal),
  formula(churchillRecord, churchill),
  formula(laminarRecord, laminar),
];
