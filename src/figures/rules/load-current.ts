import { loadCurrent, loadCurrentRecord } from '../../engineering';
import type { Appliance } from '../../scene';
import { compute } from '../compute';
import { askVersion, currentInputs, POWER_CAUTION, versionOf } from '../support/power';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'load-current',
  title: 'Current',
  group: 'power',
  unit: 'A',
  derive: (scene) => scene.appliances.flatMap(deriveReadings),
};

/** `computed` from the rated power, and `data-sheet`, what the sheet states; the plate on the machine goes before both. */
function deriveReadings(placed: Appliance): FigureReading[] {
  const version = versionOf(placed);
  if (version === undefined) return [askVersion(placed)];
  const subjects = [placed.machine.id];
  const computed = compute(loadCurrentRecord, loadCurrent, currentInputs(version));
  return [
    { part: 'computed', subjects, ...computed, note: `As for heaters alone, power factor 1; motors draw somewhat more. ${POWER_CAUTION}` },
    { part: 'data-sheet', subjects, value: version.currentA, how: null, note: `As the data sheet states it. ${POWER_CAUTION}` },
  ];
}
