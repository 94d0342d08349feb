import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { PlacedMachine } from '../../../scene';
import { loadCurrent, loadCurrentRecord } from '../formulas/loadCurrent';
import { askVersion, currentInputs, POWER_CAUTION, type Version, versionOf } from './support/power';

export const rule: FigureRule = {
  id: 'load-current',
  order: 680,
  title: 'Current',
  group: 'power',
  unit: 'A',
  derive: (scene) => scene.machines.flatMap(deriveReadings),
};

/** What is said of where it comes from. */
export interface LoadCurrentMessages {
  'load-current/as-heaters': NoParams;
  'load-current/data-sheet': NoParams;
  'load-current/beside': { currentA: number };
}

const say = createMessages<LoadCurrentMessages>();

/**
 * `computed` from the rated power, and `data-sheet`, what the sheet states; the plate on the machine goes before both. While no version
 * is chosen, what is computed for each of them stands beside the question.
 */
function deriveReadings(placed: PlacedMachine): FigureReading[] {
  const version = versionOf(placed);
  if (version === undefined) return [askVersion(placed), ...placed.sheet.electrical.map((one) => deriveVersion(placed, one))];
  const subjects = [placed.machine.id];
  const computed = compute(loadCurrentRecord, loadCurrent, currentInputs(version));
  return [
    { part: 'computed', subjects, ...computed, notes: [say('load-current/as-heaters'), POWER_CAUTION] },
    { part: 'data-sheet', subjects, value: version.currentA, how: null, notes: [say('load-current/data-sheet'), POWER_CAUTION] },
  ];
}

/** To choose by: `208 V three phase 14.5 kW`. */
function deriveVersion({ machine }: PlacedMachine, version: Version): FigureReading {
  const { voltage, phase, powerKw, currentA } = version;
  const part = `${voltage}-V-${phase === 3 ? 'three' : 'single'}-phase-${powerKw}-kW`;
  const answer = compute(loadCurrentRecord, loadCurrent, currentInputs(version));
  return { part, subjects: [machine.id], ...answer, notes: [say('load-current/beside', { currentA }), POWER_CAUTION] };
}
