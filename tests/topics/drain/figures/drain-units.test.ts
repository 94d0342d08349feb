import type { Codes } from '../../../../src/plan';
import { rule } from '../../../../src/topics/drain/figures/drain-units';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { hookedSheetPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const at = (gpm: number | null, tankGal?: number) =>
  hookedSheetPlan({
    drainFlow: gpm === null ? null : toSI(gpm, 'gpm'),
    ...(tankGal === undefined ? {} : { tank: { volume: toSI(tankGal, 'gal'), heater: 3000 } }),
  });
const coded = (drainUnits: Codes['drainUnits']) => linePlan({}, ({ codes }) => void (codes.drainUnits = drainUnits));

/**
 * One a gallon a minute in Chicago (18-29-709.3, read), two by the IPC (secondary) and the UPC (memory). By the
 * table of an old city code 4 for any, 2 to 30 gal, 6 to 100 gal, of which the larger counts (read). Beside them flows that come and go by the UPC (memory), and the first definition, 7.5 gpm a unit (Redwood City code, read).
 */
const units = (gpm: number, governing: string, row: number | null = 4) =>
  [
    { part: 'ipc', value: 2 * gpm },
    { part: 'upc', value: 2 * gpm },
    { part: 'chicago', value: gpm },
    ...(row === null ? [] : [{ part: 'municipal-old', value: row }]),
    { part: 'upc-intermittent', ...(gpm > 15 ? { value: null, refuses: 'the code itself' } : { value: gpm > 7.5 ? 2 : 1 }) },
    { part: 'cubic-foot', value: gpm / 7.5 },
  ].map((row) => ({ ...row, subjects, notes: row.part === governing ? /Governs:/ : /^(?!.*Governs)/ }));

describeFigure(rule, [
  { name: '20 gpm: 40 units, in Chicago 20', plan: at(20), expect: units(20, 'ipc') },
  { name: 'the family lets out 15 gpm', plan: linePlan(), expect: units(15, 'ipc') },
  { name: 'the Uniform code counts here', plan: coded('upc'), expect: units(15, 'upc') },
  { name: 'Chicago', plan: coded('chicago'), expect: units(15, 'chicago') },
  { name: '7 gpm: one unit as a flow that comes and goes', plan: at(7), expect: units(7, 'ipc') },
  {
    name: '2.5 gpm from a tank of 31 gal: the table of an old city code counts more',
    plan: at(2.5, 31),
    expect: units(2.5, 'municipal-old', 6),
  },
  { name: 'a tank of 100 gal', plan: at(20, 100), expect: units(20, 'ipc', 6) },
  { name: 'a tank of 101 gal is beyond the table', plan: at(20, 101), expect: units(20, 'ipc', null) },
  { name: 'no tank', plan: hookedSheetPlan({ tank: null }), expect: units(15, 'ipc') },
  { name: 'the flow is not known', plan: at(null), expect: [{ subjects, value: null, asks: 'sheets.0.drainFlow' }] },
]);
