import { type Entries, type FormulaSource, type Limit, limit } from '../../../rules';
import { toSI } from '../../../units';

/** Hot water that one fixture takes in an hour of service, by the demand table of the California county directors. */
export interface FixtureDemand {
  id: string;
  text: string;
  /** As a steady flow. */
  demandM3S: number;
}

const row = (id: string, text: string, gph: number): FixtureDemand => ({ id, text, demandM3S: toSI(gph, 'gph') });

/** By the table of the California directors of environmental health. A dish machine takes what its own sheet says. */
export const FIXTURE_DEMANDS: readonly FixtureDemand[] = [
  row('pre-rinse', 'Pre-rinse, hand spray', 45),
  row('utensil-sink-small', 'Utensil sink of 18 × 18 in, each compartment', 14),
  row('utensil-sink-large', 'Utensil sink of 24 × 24 in, each compartment', 25),
  row('bar-sink', 'Bar sink, each compartment', 6),
  row('hand-sink', 'Hand sink', 5),
  row('preparation-sink', 'Food preparation sink', 5),
  row('janitor-sink', 'Janitor sink or can wash', 15),
  row('shower', 'Employee shower', 20),
];

export const FIXTURE_DEMAND_SOURCE: FormulaSource = {
  text: 'California Conference of Directors of Environmental Health, hot-water demand table',
  documents: ['california-hot-water'],
  confidence: 'read',
};

/** Share of the demand that a storage heater is sized for: three meals a day, moderate use, single-service ware. */
export const STORAGE_SHARES = { heavy: 1, moderate: 0.9, 'single-service': 0.8 } as const;

/** How warm the water of an instantaneous heater must be. */
export const INSTANT_HEATER_WATER: Limit = limit(
  'instant-heater-water',
  'Water of an instantaneous heater',
  'C',
  { min: toSI(120, 'F') },
  FIXTURE_DEMAND_SOURCE,
);

/** What an instantaneous heater must give to each sink at once. */
export const INSTANT_HEATER_FLOW: Limit = limit(
  'instant-heater-flow',
  'Flow of an instantaneous heater to each sink',
  'm3/s',
  { min: toSI(2, 'gpm') },
  FIXTURE_DEMAND_SOURCE,
);

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 300, limits: [INSTANT_HEATER_WATER, INSTANT_HEATER_FLOW] }];
