import { askFor, compute, type FigureReading, type FigureRule } from '../../../rules';
import { machinePath, type PlacedMachine } from '../../../scene';
import { recordedHeatUnits, recordedHeatUnitsRecord } from '../formulas/recordedHeatUnits';
import { plateRecordOf } from './support/plateRecord';
import { hotRinseMachines } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'heat-units',
  order: 400,
  title: 'Heat units of a cycle',
  group: 'heat',
  unit: 'count',
  derive: (scene) => hotRinseMachines(scene).map(deriveReading),
};

function deriveReading(placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const record = plateRecordOf(placed);
  if (record === null) return askFor(subjects, RECORD, machinePath(placed, 'hookUp', 'plateRecord'));
  return { subjects, ...compute(recordedHeatUnitsRecord, recordedHeatUnits, record), note: START_UP };
}

const RECORD = 'temperatures that a thermometer at the plate showed over one cycle';

const START_UP = 'Of the cycle that was recorded; a reading at start-up, by a thermometer that goes through the machine with the plates.';
