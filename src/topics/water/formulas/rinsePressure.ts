import {
  type Band,
  createRefusal,
  type Entries,
  judge,
  type Limit,
  limit,
  narrow,
  type RuleRecord,
  type Ruling,
  ruling,
} from '../../../rules';
import { toSI } from '../../../units';

/** Which rule bounds the flow pressure of the rinse. `stricter` keeps within both. */
export const RINSE_PRESSURE_RULES = ['stricter', 'food-code', 'older'] as const;
export type RinsePressureRule = (typeof RINSE_PRESSURE_RULES)[number];

const psi = (min: number, max: number) => ({ min: toSI(min, 'psi'), max: toSI(max, 'psi') });

/** Present food code. The rule prints 35 and 200 kPa beside it; the pounds count. */
export const FOOD_CODE_RINSE_PRESSURE: Limit = limit('rinse-pressure', 'Flow pressure of the rinse', 'Pa', psi(5, 30), {
  text: 'FDA Food Code 4-501.113 as WAC 246-215-04560',
  documents: ['fda-food-code', 'wac-246-215'],
  confidence: 'read',
});

/** Older codes, still in force in places. */
export const OLDER_RINSE_PRESSURE: Limit = limit('rinse-pressure-older', 'Flow pressure of the rinse, older rule', 'Pa', psi(15, 25), {
  text: 'A city ordinance; Minnesota Rules 4630.3000 (2015 copy); Army QM 3510 4-6',
  documents: ['army-qm-3510', 'minnesota-4630', 'city-ordinance-rinse'],
  confidence: 'read',
});

/** Static pressure above which a pressure-reducing valve is needed. */
export const STATIC_PRESSURE: Limit = limit(
  'static-pressure',
  'Static pressure without a pressure-reducing valve',
  'Pa',
  { max: toSI(80, 'psi') },
  { text: 'UPC 608.2 (2015), as IAPMO prints it', documents: ['upc'], confidence: 'read' },
  { text: 'IPC 604.8, as a city cites it', documents: ['ipc'], confidence: 'secondary' },
);

/** Flow pressure that a machine may have: the rule's, inside what its data plate states. No plate, no narrower. */
export function rinsePressureBand(rule: RinsePressureRule, plate: Band | null = null): Band {
  return narrow(BANDS[rule], plate ?? { min: null, max: null });
}

const BANDS: Readonly<Record<RinsePressureRule, Band>> = {
  'food-code': FOOD_CODE_RINSE_PRESSURE,
  older: OLDER_RINSE_PRESSURE,
  stricter: narrow(FOOD_CODE_RINSE_PRESSURE, OLDER_RINSE_PRESSURE),
};

export const rinsePressureRule: RuleRecord = {
  id: 'rinse-pressure-in-plate',
  title: 'Flow pressure within the data plate and the rule',
  rule: 'The flow pressure, measured just before or after the rinse valve, lies within the range on the data plate and within the rule.',
  source: FOOD_CODE_RINSE_PRESSURE.source,
};

/** Whether a flow pressure holds, and if not, against which of the two. */
export function judgeRinsePressure(pressurePa: number, rule: RinsePressureRule, plate: Band | null = null): Ruling {
  const byPlate = plate === null ? 'pass' : judge(plate, pressurePa);
  if (byPlate !== 'pass') return ruling(createRefusal(rinsePressureRule, 'pressure-outside-plate', { side: byPlate }));
  const byRule = judge(BANDS[rule], pressurePa);
  return ruling(byRule === 'pass' ? null : createRefusal(rinsePressureRule, 'pressure-outside-rule', { side: byRule }));
}

export const pressureGaugeRule: RuleRecord = {
  id: 'pressure-gauge',
  title: 'Pressure gauge where the plate gives a pressure',
  rule: 'A machine whose data plate gives a flow pressure has a gauge or a gauge valve; one whose plate gives none needs none.',
  source: [{ text: 'CDC Vessel Sanitation Program 2018, 13.16.2.1', documents: ['cdc-vessel-sanitation'], confidence: 'read' }],
};

/** Whether the gauge is there that the data plate calls for. */
export const judgePressureGauge = (plateGivesPressure: boolean, hasGauge: boolean): Ruling =>
  ruling(plateGivesPressure && !hasGauge ? createRefusal(pressureGaugeRule, 'gauge-missing', {}) : null);

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 260, limits: [FOOD_CODE_RINSE_PRESSURE, OLDER_RINSE_PRESSURE, STATIC_PRESSURE] },
  { order: 30, rules: [rinsePressureRule, pressureGaugeRule] },
];
