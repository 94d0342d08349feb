import type { Scene } from '../../../../scene';
import { HEAT_UNITS } from '../../formulas/heatUnits';
import { accumulateRecordedHeatUnits, recordedHeatUnits } from '../../formulas/recordedHeatUnits';
import { plateRecordOf } from './plateRecord';
import { hotRinseMachines } from './rinseHeat';

/** What a picture of the heat units of a cycle shows. Seconds since the start of the cycle, °C, heat-unit equivalents. */
export interface HeatUnitsPicture {
  /** What the thermometer at the plate showed. */
  record: { at: number; tempC: number }[];
  /** Heat units gathered up to each of those times. */
  total: { at: number; units: number }[];
  /** What a cycle must gather. */
  needed: number;
}

/** The picture of a machine's heat units; null where it has no record, where the record is out of order, and where no hot rinse sanitises. */
export function deriveHeatUnitsPicture(scene: Scene, machineId: string): HeatUnitsPicture | null {
  const placed = hotRinseMachines(scene).find(({ machine }) => machine.id === machineId);
  const inputs = placed === undefined ? null : plateRecordOf(placed);
  if (placed === undefined || inputs === null || !recordedHeatUnits(inputs).ok) return null;
  const units = accumulateRecordedHeatUnits(inputs);
  return {
    record: placed.machine.hookUp.plateRecord.map(({ at, tempC }) => ({ at, tempC })),
    total: inputs.atS.map((at, i) => ({ at, units: units[i] ?? 0 })),
    needed: HEAT_UNITS.min ?? 0,
  };
}
