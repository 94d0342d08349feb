import type { Fitting, Plan, Table } from '../../../../plan';
import { compute, createMessages, type FigureReading, type FormulaResult, type NoParams, refuse, withSources } from '../../../../rules';
import { toSI } from '../../../../units';
import { OLDER_SPRAY_VALVE, SPRAY_OPEN_TIME, sprayValveLimit, sprayValveLimitRecord } from '../../formulas/sprayValveLimit';
import { sprayWater, sprayWaterRecord } from '../../formulas/sprayWater';

/** What is said beside each class of valve. */
export interface SprayUseMessages {
  'spray-use/strong': NoParams;
  'spray-use/middle': NoParams;
  'spray-use/light': NoParams;
  'spray-use/older': NoParams;
  'spray-use/open-time': NoParams;
}

const message = createMessages<SprayUseMessages>();

/** Every pre-rinse sink with a spray, and its table. */
export const spraysOf = ({ tables }: Plan): { table: Table; fitting: Fitting }[] =>
  tables.flatMap((table) =>
    table.fittings.filter((fitting) => fitting.kind === 'sink' && fitting.spray).map((fitting) => ({ table, fitting })),
  );

/** Water of a spray over so many days, by the class of its valve: which one it has only its maker says. The strongest counts. */
export function sprayReadings(subjects: string[], days: number): FigureReading[] {
  return VALVES.map(({ part, flow, governs }) => {
    const valve = flow();
    const own = { part, ...(governs ? { governs } : {}) };
    if (!valve.ok) return { ...own, ...refuse(subjects, valve.refusal) };
    const answer = compute(sprayWaterRecord, sprayWater, { flowM3S: valve.value, openS: SPRAY_OPEN_TIME.max ?? Number.NaN, days });
    const how = withSources(answer.how, ...SPRAY_OPEN_TIME.source, ...sprayValveLimitRecord.source);
    return { subjects, notes: [message(`spray-use/${part}`), message('spray-use/open-time')], ...own, ...answer, how };
  });
}

/** Ounces of force, sixteenths of a pound. */
const newValve = (ounces: number) => (): FormulaResult => sprayValveLimit({ forceN: toSI(ounces / 16, 'lbf') });

const VALVES = [
  // It counts, as the class that may take most.
  { part: 'strong', flow: newValve(9), governs: true },
  { part: 'middle', flow: newValve(8), governs: false },
  { part: 'light', flow: newValve(5), governs: false },
  { part: 'older', flow: (): FormulaResult => ({ ok: true, value: OLDER_SPRAY_VALVE.max ?? Number.NaN }), governs: false },
] as const;
