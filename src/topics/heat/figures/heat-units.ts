import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
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

/** What is said of it. */
export interface HeatUnitsFigureMessages {
  'heat-units/ask-record': NoParams;
  'heat-units/start-up': NoParams;
}

const say = createMessages<HeatUnitsFigureMessages>();

function deriveReading(placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const record = plateRecordOf(placed);
  if (record === null) return askFor(subjects, say('heat-units/ask-record'), machinePath(placed, 'hookUp', 'plateRecord'));
  return { subjects, ...compute(recordedHeatUnitsRecord, recordedHeatUnits, record), notes: [say('heat-units/start-up')] };
}
