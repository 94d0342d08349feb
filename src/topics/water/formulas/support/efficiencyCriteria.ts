import type { FormulaSource } from '../../../../rules';
import { toSI } from '../../../../units';

/** What one version of the ENERGY STAR criteria asks of one kind of machine. null: the version asks nothing of the kind, or its value is not known. */
export interface EfficiencyCriterion {
  version: '1.0' | '2.0' | '3.0';
  /** The day it came into force. */
  from: string;
  machine: 'door' | 'undercounter';
  sanitizing: 'hot-water' | 'chemical';
  /** Door closed, tank heater only. */
  idleW: number;
  perRackM3: number;
  washJ: number | null;
  source: FormulaSource;
}

const FIRST: FormulaSource = { text: 'ENERGY STAR 1.0, key product criteria', documents: ['energy-star'], confidence: 'read' };
const SECOND: FormulaSource = { text: 'ENERGY STAR 2.0', documents: ['energy-star'], confidence: 'memory' };
const THIRD: FormulaSource = {
  text: 'ENERGY STAR 3.0; only 0.89 gal is restated, the rest from memory',
  documents: ['energy-star'],
  confidence: 'memory',
};

const gal = (count: number) => toSI(count, 'gal');
const door = (sanitizing: EfficiencyCriterion['sanitizing'], idleW: number, gallons: number, washKwh: number | null) =>
  ({ machine: 'door', sanitizing, idleW, perRackM3: gal(gallons), washJ: washKwh === null ? null : toSI(washKwh, 'kWh') }) as const;
const under = (sanitizing: EfficiencyCriterion['sanitizing'], idleW: number, gallons: number) =>
  ({ machine: 'undercounter', sanitizing, idleW, perRackM3: gal(gallons), washJ: null }) as const;

/** Published criteria that a machine's figures stand beside. A comparison, never a limit of the plan. */
export const EFFICIENCY_CRITERIA: readonly EfficiencyCriterion[] = [
  { version: '1.0', from: '2007-10-11', ...door('hot-water', 1000, 0.95, null), source: FIRST },
  { version: '1.0', from: '2007-10-11', ...door('chemical', 600, 1.18, null), source: FIRST },
  { version: '1.0', from: '2007-10-11', ...under('hot-water', 900, 1), source: FIRST },
  { version: '1.0', from: '2007-10-11', ...under('chemical', 500, 1.7), source: FIRST },
  { version: '2.0', from: '2013-02-01', ...door('hot-water', 700, 0.89, null), source: SECOND },
  { version: '2.0', from: '2013-02-01', ...door('chemical', 600, 1.18, null), source: SECOND },
  { version: '3.0', from: '2021-07-27', ...door('hot-water', 550, 0.89, 0.35), source: THIRD },
  { version: '3.0', from: '2021-07-27', ...door('chemical', 600, 1.18, 0.15), source: THIRD },
];

type Kind = Pick<EfficiencyCriterion, 'machine' | 'sanitizing'>;

/** The newest criterion for a kind of machine; null where none is held. */
export function findEfficiencyCriterion({ machine, sanitizing }: Kind): EfficiencyCriterion | null {
  return EFFICIENCY_CRITERIA.filter((one) => one.machine === machine && one.sanitizing === sanitizing).at(-1) ?? null;
}
