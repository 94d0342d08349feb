import { type Formula, formula } from '../../formula';
import { ductInsulation, ductInsulationRecord } from './ductInsulation';
import { ductWall, ductWallRecord } from './ductWall';
import { innerSurface, innerSurfaceRecord } from './wallTemperature';

export { ductInsulation, ductInsulationRecord, MOST_INSULATION_M } from './ductInsulation';
export { type DuctLayers, ductWall, ductWallRecord } from './ductWall';
export { FILM_RESISTANCES, INSULATIONS, type Insulation, rValue } from './filmResistances';
export { innerSurface } from './wallTemperature';

/** Where vapour turns to water. */
export const CONDENSATION_FORMULAS: readonly Formula[] = [
  formula(innerSurfaceRecord, innerSurface),
  formula(ductWallRecord, ductWall),
  formula(ductInsulationRecord, ductInsulation),
];
