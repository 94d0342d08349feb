import { type Formula, formula } from '../../formula';
import { pick } from '../pick';
import { airViscosity, airViscosityRecord } from './airViscosity';
import { ductVelocity, ductVelocityRecord } from './ductVelocity';
import { equivalentDiameter, equivalentDiameterRecord } from './equivalentDiameter';
import { fittingLoss, fittingLossRecord } from './fittingLoss';
import { frictionLoss, frictionLossRecord } from './frictionLoss';
import { reynolds, reynoldsRecord } from './reynolds';
import { sectionLoss, sectionLossRecord } from './sectionLoss';

export { airViscosity } from './airViscosity';
export { ductVelocity, ductVelocityRecord } from './ductVelocity';
export { equivalentDiameter } from './equivalentDiameter';
export { fittingLoss, fittingLossRecord } from './fittingLoss';
export { frictionLoss, frictionLossRecord } from './frictionLoss';
export { reynolds } from './reynolds';
export { DUCT_ROUGHNESS, type DuctRoughness } from './roughness';
export { type SectionInputs, type SectionLoss, sectionLoss, sectionLossRecord } from './sectionLoss';

/** Air in a duct. */
export const DUCT_FORMULAS: readonly Formula[] = [
  formula(airViscosityRecord, airViscosity),
  formula(ductVelocityRecord, ductVelocity),
  formula(reynoldsRecord, reynolds),
  formula(equivalentDiameterRecord, equivalentDiameter),
  formula(frictionLossRecord, frictionLoss),
  formula(fittingLossRecord, fittingLoss),
  formula(sectionLossRecord, (inputs) => pick(sectionLoss(inputs), ({ totalPa }) => totalPa)),
];
