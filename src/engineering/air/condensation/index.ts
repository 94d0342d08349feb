import { type Formula, formula } from '../../formula';
import { cylinderHeat, cylinderHeatRecord, shellResistance, shellResistanceRecord } from './cylinder';
import { ductInsulation, ductInsulationRecord } from './ductInsulation';
import { ductWall, ductWallRecord } from './ductWall';
import { leastInsulation, leastInsulationRecord } from './leastInsulation';
import { innerSurface, innerSurfaceRecord, outerSurface, outerSurfaceRecord } from './wallTemperature';

export { cylinderHeat, cylinderSurfaces, shellResistance } from './cylinder';
export { ductInsulation, ductInsulationRecord, MOST_INSULATION_M } from './ductInsulation';
export { type DuctLayers, ductWall, ductWallRecord } from './ductWall';
export { FILM_RESISTANCES, FILM_SOURCE, INSULATIONS, type Insulation, rValue } from './filmResistances';
export { leastInsulation } from './leastInsulation';
export { innerSurface, outerSurface } from './wallTemperature';

/** Where vapour turns to water. */
export const CONDENSATION_FORMULAS: readonly Formula[] = [
  formula(innerSurfaceRecord, innerSurface),
  formula(outerSurfaceRecord, outerSurface),
  formula(leastInsulationRecord, leastInsulation),
  formula(shellResistanceRecord, shellResistance),
  formula(cylinderHeatRecord, cylinderHeat),
  formula(ductWallRecord, ductWall),
  formula(ductInsulationRecord, ductInsulation),
];
