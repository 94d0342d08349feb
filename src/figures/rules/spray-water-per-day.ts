import { sprayValveLimit, sprayWater, sprayWaterRecord } from '../../engineering';
import type { Fitting, Table } from '../../plan';
import { toSI } from '../../units';
import { compute } from '../compute';
import { refuse } from '../support/readings';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'spray-water-per-day',
  title: 'Water of the pre-rinse spray in a day, at most',
  group: 'water',
  unit: 'm3',
  derive: ({ plan }) => plan.tables.flatMap((table) => table.fittings.filter(isSpray).map((fitting) => deriveReading(table, fitting))),
};

const isSpray = (fitting: Fitting) => fitting.kind === 'sink' && fitting.spray;

function deriveReading(table: Table, fitting: Fitting): FigureReading {
  const subjects = [fitting.id, table.id];
  const flow = sprayValveLimit({ forceN: STRONG_SPRAY });
  if (!flow.ok) return refuse(subjects, flow.reason);
  return { subjects, ...compute(sprayWaterRecord, sprayWater, { flowM3S: flow.value, openS: OPEN, days: 1 }), note: NOTE };
}

/** A spray of the strongest class, above 8.0 ozf. */
const STRONG_SPRAY = toSI(9 / 16, 'lbf');
/** Usual use is at most this: EPA, WaterSense at Work, 832-F-12-034 (W-EN4). */
const OPEN = toSI(200, 'min');

const NOTE =
  'As if it stood open for 200 min, more than which is unusual (EPA, WaterSense at Work), with a valve of 1.28 gpm, the most that 10 CFR 431.266 allows one made since January 2019. Water at the spray can scald.';
