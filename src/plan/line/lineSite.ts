import type { DataSheet } from '../../catalog';
import type { Machine, Plan, Run, Table, Thing } from '../planSchema';
import { STRICTEST, UNKNOWN_THING } from '../siteSchema';

/** 6 in above the floor: Food Code 4-402.12. */
const LEG = 152.4;
/** ¼ in a foot. */
const QUARTER_IN_FT = 1 / 48;

type Site = Pick<Plan, 'air' | 'finish' | 'pipes' | 'tariff' | 'codes'>;

/** Air drawn at the ceiling where no hood and no run draw it: more than 0.70 cfm/ft² of a line's room (IMC 507.3). */
const CEILING_EXHAUST = 0.25;
/** Make-up air a tenth under the exhaust: less than it, and by no more than 20 % (plan reviewers). */
const MADE_UP = 0.9;

/** What an ordinary building gives: invented figures with which a line works, with so much drawn at its machine, m³/s. */
export const createLineSite = (exhaust: number): Site => ({
  air: {
    roomC: 24,
    roomHumidity: 0.5,
    makeUp: Math.round(1000 * MADE_UP * (exhaust || CEILING_EXHAUST)) / 1000,
    makeUpC: 20,
    makeUpHumidity: 0.5,
    roomExhaust: exhaust === 0 ? CEILING_EXHAUST : 0,
    outdoorC: -10,
    ductAirC: 20,
    wallConductance: 0.4,
    ceilingConductance: 0.3,
    elevation: 100_000,
    interlocked: true,
    hoodWaived: null,
  },
  finish: { light: 800, ceilingWashable: true, floorCoved: true, floorSlope: QUARTER_IN_FT, fixedWalls: true },
  pipes: { staticPressure: 414_000, hardness: 0.06, material: 'copper', bore: 19.94, heaterPower: 60_000, storage: 0.4 },
  tariff: { currency: '$', electricity: 0.15, gas: 0.05, water: 3, waterHeatedBy: 'gas', heaterEfficiency: 0.8 },
  codes: STRICTEST,
});

/** Sizes of breakers, and copper wire for them at terminals of 75 °C, American gauge; of sizes whose ampacity is public. */
const CIRCUITS: readonly [breakerA: number, wire: Machine['hookUp']['wire']][] = [
  [15, '14'],
  [20, '12'],
  [30, '10'],
  [40, '8'],
  [50, '8'],
  [60, '6'],
  [80, '3'],
  [100, '3'],
];

/** Waste over an air gap, wires for a load that lasts, signals to contactors. */
export function createHookUp(sheet: DataSheet, variant: DataSheet['electrical'][number] | undefined): Machine['hookUp'] {
  const load = 1.25 * (variant?.currentA ?? 0);
  const [breakerA, wire] = CIRCUITS.find(([amperes]) => amperes >= load) ?? [null, null];
  return {
    water: sheet.waterFeed,
    waste: 'indirect',
    airGap: 102,
    drainBore: 50.8,
    drainSlope: QUARTER_IN_FT,
    drainMaterial: 'cast-iron',
    wasteTrapped: true,
    backflow: 'air-gap',
    supplyGap: 76,
    boosterPlace: sheet.booster === null ? null : 'inside',
    boosterWay: null,
    boosterBelow: null,
    boosterOffWall: null,
    wire,
    markedFor75C: true,
    breakerA,
    wireWay: null,
    ventSignal: sheet.vent.kind === 'recovery' ? 'nothing' : 'contactor',
    rinseAidSignal: 'contactor',
    detergentSignal: 'contactor',
    clearBelow: LEG,
    sealed: true,
    plateRecord: [],
  };
}

/** A rim of 3 in (UFGS 11400N 2.4.2.4), joints sealed. */
export const LINE_MAKE: Table['make'] = { rim: 76.2, scupper: false, clearBelow: 254, sealed: true };

export const LINE_THING: Pick<Thing, 'clearBelow' | 'sealed' | 'basins'> = { ...UNKNOWN_THING, clearBelow: LEG, sealed: true };

export const LINE_WASTE = { trapped: true, vented: true, bore: 101.6, slope: QUARTER_IN_FT, volume: 0.008 };

export const createLineDuct = (airflow: number | null): Run['duct'] => ({
  material: 'stainless',
  sides: null,
  airflow,
  bendRadius: 1.5,
  bendMake: 'smooth',
  insulation: 25,
  insulationKind: 'mineral-fiber',
  sealed: true,
  cap: 'well-spaced',
  exhaustC: 35,
  exhaustHumidity: 0.7,
  lowPointDrain: null,
  intakeDistance: 3658,
  lineDistance: 3658,
  aboveGround: 3658,
  aboveRoof: null,
});
