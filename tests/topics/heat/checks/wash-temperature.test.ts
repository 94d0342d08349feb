import type { DataSheet } from '../../../../src/catalog';
import type { Settings } from '../../../../src/plan';
import { check } from '../../../../src/topics/heat/checks/wash-temperature';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { sheetPlan } from '../../../support/figurePlans';

const f = (value: number) => toSI(value, 'F');
const washes = (washC: number, sheet: Partial<DataSheet> = {}, units: Settings['units'] = 'us') =>
  sheetPlan({ temperatures: { washC, rinseC: f(180), supplyC: 60 }, ...sheet }, ({ settings }) => void (settings.units = units));
const found = (verdict: 'clear' | 'stop', measured: number, limit: number) => ({ verdict, subjects: ['machine'], measured, limit });
const SINGLE: Partial<DataSheet> = { rinseKind: 'single-temperature' };
const CHEMICAL: Partial<DataSheet> = { sanitizing: 'chemical', rinseKind: 'single-temperature' };

/** FDA Food Code 4-501.110: 165 °F single, 150 °F dual temperature, 120 °F with chemicals. */
describeCheck(check, [
  { name: 'dual, 150 °F', plan: washes(f(150)), expect: [found('clear', f(150), f(150))] },
  {
    name: 'dual, 149 °F',
    plan: washes(f(149)),
    expect: [
      {
        ...found('stop', f(149), f(150)),
        says: 'The data sheet of the machine has its wash at 149 °F and the food code asks for 150 °F: set it higher, or take another machine.',
      },
    ],
  },
  { name: 'single, 165 °F', plan: washes(f(165), SINGLE), expect: [found('clear', f(165), f(165))] },
  { name: 'single, 160 °F', plan: washes(f(160), SINGLE), expect: [found('stop', f(160), f(165))] },
  { name: 'chemicals, 120 °F', plan: washes(f(120), CHEMICAL), expect: [found('clear', f(120), f(120))] },
  { name: 'chemicals, 115 °F', plan: washes(f(115), CHEMICAL), expect: [found('stop', f(115), f(120))] },
  // 66 °C is printed beside 150 °F (65.6 °C): the milder counts.
  { name: 'in °C, 65.6', plan: washes(65.6, {}, 'metric'), expect: [found('clear', 65.6, f(150))] },
]);
