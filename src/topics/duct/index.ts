export { deriveFanPicture, type FanPicture, type FanPicturePoint } from './figures/support/fanPicture';
export { airViscosity } from './formulas/airViscosity';
export { altshulTsal } from './formulas/altshulTsal';
export { bendFactor } from './formulas/bendFactor';
export { churchill } from './formulas/churchill';
export { colebrook } from './formulas/colebrook';
export { ductInsulation, MOST_INSULATION_M } from './formulas/ductInsulation';
export {
  DUCT_FRICTION,
  DUCT_SLOPE,
  DUCT_VELOCITY,
  OUTLET_GRADE,
  OUTLET_INTAKE,
  OUTLET_OPENING,
  OUTLET_PROPERTY,
  OUTLET_ROOF,
  OUTLET_WALL,
  VAPOUR_VELOCITY,
} from './formulas/ductLimits';
export { equivalentDiameter } from './formulas/equivalentDiameter';
export { equivalentLength } from './formulas/equivalentLength';
export { fittingLoss } from './formulas/fittingLoss';
export { FRICTION_METHODS, type FrictionMethod, frictionFactor } from './formulas/frictionFactor';
export { frictionLoss } from './formulas/frictionLoss';
export { haaland } from './formulas/haaland';
export { LAMINAR_LIMIT, laminar } from './formulas/laminar';
export { mitredBend } from './formulas/mitredBend';
export { solveOperatingPoint } from './formulas/operatingPoint';
export { rectangularBend } from './formulas/rectangularBend';
export { rectangularMitre } from './formulas/rectangularMitre';
export { reynolds } from './formulas/reynolds';
export { type RoundedBendInputs, roundedBend } from './formulas/roundedBend';
export { type SectionLoss, sectionLoss } from './formulas/sectionLoss';
export { segmentedBend } from './formulas/segmentedBend';
export { DUCT_ENTRIES } from './formulas/support/ductEntry';
export { type FanPoint, scaleFanCurve } from './formulas/support/fanCurve';
export { DUCT_ROUGHNESS } from './formulas/support/roughness';
export { swameeJain } from './formulas/swameeJain';
export { systemCoefficient, systemPressure } from './formulas/systemCurve';
export { weatherCap } from './formulas/weatherCap';
