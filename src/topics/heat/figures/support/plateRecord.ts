import type { PlacedMachine } from '../../../../scene';
import type { RecordedHeatUnitInputs } from '../../formulas/recordedHeatUnits';

/** What a plate's own thermometer showed over one cycle, as the formulas take it; null where nothing was written down. */
export function plateRecordOf({ machine }: PlacedMachine): RecordedHeatUnitInputs | null {
  const { plateRecord } = machine.hookUp;
  if (plateRecord.length === 0) return null;
  return { atS: plateRecord.map(({ at }) => at), tempsC: plateRecord.map(({ tempC }) => tempC) };
}
