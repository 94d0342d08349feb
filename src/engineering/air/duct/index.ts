import { type Formula, formula } from '../../formula';
import { pick } from '../pick';
import { airViscosity, airViscosityRecord } from './airViscosity';
import { ductVelocity, ductVelocityRecord } from './ductVelocity';
import { equivalentDiameter, equivalentDiameterRecord } from './equivalentDiameter';
import { fittingLoss, fittingLossRecord } from './fittingLoss';
import { frictionLoss, frictionLossRecord } from './frictionLoss';
import { hydraulicDiameter, hydraulicDiameterRecord } from './hydraulicDiameter';
import { coefficientOfLength, coefficientOfLengthRecord, lengthOfCoefficient, lengthOfCoefficientRecord } from './lengthOfCoefficient';
import { reynolds, reynoldsRecord } from './reynolds';
import { sectionLoss, sectionLossRecord } from './sectionLoss';
import { velocityPressure, velocityPressureRecord } from './velocityPressure';

export { airViscosity } from './airViscosity';
export { type DuctRun, type DuctSection, type DuctShape, ductLoss, type RunLoss } from './ductLoss';
export { ductVelocity, ductVelocityRecord } from './ductVelocity';
export { equivalentDiameter } from './equivalentDiameter';
export { fittingLoss, fittingLossRecord } from './fittingLoss';
export { frictionLoss, frictionLossRecord } from './frictionLoss';
export { hydraulicDiameter } from './hydraulicDiameter';
export { coefficientOfLength, lengthOfCoefficient } from './lengthOfCoefficient';
export { reynolds } from './reynolds';
export { DUCT_ROUGHNESS, type DuctRoughness } from './roughness';
export { type SectionInputs, type SectionLoss, sectionLoss, sectionLossRecord } from './sectionLoss';
export { velocityPressure } from './velocityPressure';

/** Air in a duct. */
export const DUCT_FORMULAS: readonly Formula[] = [
  formula(airViscosityRecord, airViscosity),
  formula(ductVelocityRecord, ductVelocity),
  formula(reynoldsRecord, reynolds),
  formula(velocityPressureRecord, velocityPressure),
  formula(equivalentDiameterRecord, equivalentDiameter),
  formula(hydraulicDiameterRecord, hydraulicDiameter),
  formula(frictionLossRecord, frictionLoss),
  formula(fittingLossRecord, fittingLoss),
  formula(lengthOfCoefficientRecord, lengthOfCoefficient),
  formula(coefficientOfLengthRecord, coefficientOfLength),
  formula(sectionLossRecord, (inputs) => pick(sectionLoss(inputs), ({ totalPa }) => totalPa)),
];
