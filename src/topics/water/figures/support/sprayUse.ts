import type { Fitting, Plan, Table } from '../../../../plan';
import { compute, type FigureReading, type FormulaResult, refuse, withSources } from '../../../../rules';
import { toSI } from '../../../../units';
import { OLDER_SPRAY_VALVE, SPRAY_OPEN_TIME, sprayValveLimit, sprayValveLimitRecord } from '../../formulas/sprayValveLimit';
import { sprayWater, sprayWaterRecord } from '../../formulas/sprayWater';

/** Every pre-rinse sink with a spray, and its table. */
export const spraysOf = ({ tables }: Plan): { table: Table; fitting: Fitting }[] =>
  tables.flatMap((table) =>
    table.fittings.filter((fitting) => fitting.kind === 'sink' && fitting.spray).map((fitting) => ({ table, fitting })),
  );

/** Water of a spray over so many days, by the class of its valve: which one it has only its maker says. The strongest counts. */
export function sprayReadings(subjects: string[], days: number): FigureReading[] {
  return VALVES.map(({ part, flow, note, governs }) => {
    const valve = flow();
    const own = { part, ...(governs ? { governs } : {}) };
    if (!valve.ok) return { ...own, ...refuse(subjects, valve.refusal) };
    const answer = compute(sprayWaterRecord, sprayWater, { flowM3S: valve.value, openS: SPRAY_OPEN_TIME.max ?? Number.NaN, days });
    const how = withSources(answer.how, ...SPRAY_OPEN_TIME.source, ...sprayValveLimitRecord.source);
    return { subjects, note: `${note} ${OPEN}`, ...own, ...answer, how };
  });
}

/** Ounces of force, sixteenths of a pound. */
const newValve = (ounces: number) => (): FormulaResult => sprayValveLimit({ forceN: toSI(ounces / 16, 'lbf') });

const VALVES = [
  {
    part: 'strong',
    flow: newValve(9),
    note: 'A new valve with a spray above 8.0 ozf: 1.28 gpm at most. It counts, as the class that may take most.',
    governs: true,
  },
  { part: 'middle', flow: newValve(8), note: 'A new valve with a spray above 5.0, to 8.0 ozf: 1.20 gpm at most.', governs: false },
  { part: 'light', flow: newValve(5), note: 'A new valve with a spray to 5.0 ozf: 1.00 gpm at most.', governs: false },
  {
    part: 'older',
    flow: (): FormulaResult => ({ ok: true, value: OLDER_SPRAY_VALVE.max ?? Number.NaN }),
    note: 'A valve made from 2006 to January 2019: 1.6 gpm at most; before, up to 4.5 gpm.',
    governs: false,
  },
];

const OPEN =
  'As if it stood open for 200 min a day, more than which is unusual (EPA, WaterSense at Work); 10 CFR 431.266 bounds the valves. Water at the spray can scald.';
