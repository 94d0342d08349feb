import type { Plan } from '../../src/plan';
import { fromSI, toSI } from '../../src/units';
import type { FigureCase } from './figureCases';
import { cycleOf, sheetPlan, versionOf } from './figurePlans';
import { linePlan } from './linePlan';

const subjects = ['machine'];
const temperatures = { washC: toSI(150, 'F'), rinseC: toSI(180, 'F'), supplyC: toSI(110, 'F') };

const rinsePlan = (supplyF: number, powerKw: number, boosterKw: number | null = null): Plan =>
  sheetPlan(
    {
      booster: boosterKw === null ? null : toSI(boosterKw, 'kW'),
      cycle: cycleOf(55, 5),
      rinseWaterL: fromSI(toSI(0.89, 'gal'), 'L'),
      temperatures,
      electrical: versionOf(powerKw, 208, 3, powerKw * 2.78),
    },
    ({ supply }) => void (supply.hotWaterC = toSI(supplyF, 'F')),
  );

const apart = (plan: Plan): Plan => ({
  ...plan,
  machines: plan.machines.map((machine) => ({ ...machine, hookUp: { ...machine.hookUp, boosterPlace: 'apart' as const } })),
});

/**
 * What follows from heating 0.89 gal to 180 °F with 6 kW, 98 % of it in the water, in a cycle of 60 s. By hand, with 8.33 lb
 * a gallon and 3412 Btu a kWh as in form EHD 16-01 of San Joaquin County CA: from 110 °F 0.89 · 70 · 8.33 = 518.96 Btu,
 * 93.12 s; from 140 °F 296.55 Btu, 53.21 s.
 */
export const rinseCases = (from110F: number, from140F: number): FigureCase[] => [
  {
    name: '6 kW, from 110 °F: ready after 93.12 s',
    plan: rinsePlan(110, 6),
    expect: [{ subjects, value: from110F, within: 0.01, notes: /whole rated power .* can be longer\.$/ }],
  },
  { name: '6 kW, from 140 °F: ready after 53.21 s', plan: rinsePlan(140, 6), expect: [{ subjects, value: from140F, within: 0.01 }] },
  {
    name: '6 kW of booster in a machine of 15 kW, from 110 °F',
    plan: rinsePlan(110, 15, 6),
    expect: [{ subjects, value: from110F, within: 0.01, notes: null }],
  },
  {
    name: 'hot water is not known',
    plan: linePlan({}, ({ supply }) => void (supply.hotWaterC = null)),
    expect: [{ subjects, value: null, asks: 'supply.hotWaterC' }],
  },
  {
    name: 'a cold-fed machine asks for the cold water',
    plan: linePlan({ family: 'heat-recovery' }, ({ supply }) => void (supply.coldWaterC = null)),
    expect: [{ subjects, value: null, asks: 'supply.coldWaterC' }],
  },
  {
    name: 'neither the booster nor an electrical version is known',
    plan: sheetPlan({ booster: null }, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.electrical = null;
    }),
    expect: [{ subjects, value: null, asks: 'machines.0.electrical' }],
  },
  {
    name: 'a booster that stands apart, its power not known: the rating of the machine says nothing of it',
    plan: apart(rinsePlan(110, 6)),
    expect: [{ subjects, value: null, asks: 'sheets.0.booster' }],
  },
  { name: 'chemicals need no booster', plan: linePlan({ family: 'chemical-sanitising' }), expect: [] },
];

/** A heater too small for the formulas of a booster. */
export const tinyHeater = (refuses: string): FigureCase => ({
  name: 'a heater of 100 W',
  plan: rinsePlan(110, 0.1),
  expect: [{ subjects, value: null, refuses }],
});
