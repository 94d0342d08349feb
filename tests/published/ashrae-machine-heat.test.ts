import { describe, expect, test } from 'vitest';
import { type MachineHeatInputs, machineHeat } from '../../src/topics/air';
import { fromSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const wash = (change: Partial<MachineHeatInputs>) =>
  valueOf(machineHeat({ table: '2001', machine: 'door', sanitizing: 'hot-water', vapourWay: 'none', dishesPerHour: 1000, ...change }));

describe('heat to the room', () => {
  // source: ASHRAE Fundamentals 2001 (SI), ch. 29, Table 5, W to 100 dishes an hour: sensible, latent, total, hooded · read · exact
  test.each([
    ['door', 'chemical', 1000, 50, 110, 160, 50],
    ['door', 'hot-water', 1000, 56, 123, 179, 56],
    ['conveyor', 'chemical', 5000, 41, 97, 138, 44],
    ['conveyor', 'hot-water', 5000, 44, 108, 152, 50],
  ] as const)('%s, %s', (machine, sanitizing, dishesPerHour, sensible, latent, total, hooded) => {
    const by = dishesPerHour / 100;
    const open = wash({ machine, sanitizing, dishesPerHour });
    expectNear(open.sensibleW, sensible * by, 1e-9);
    expectNear(open.latentW, latent * by, 1e-9);
    expectNear(open.sensibleW + open.latentW, total * by, 1e-9);
    expect(wash({ machine, sanitizing, dishesPerHour, vapourWay: 'hood' })).toEqual({ sensibleW: hooded * by, latentW: 0 });
  });

  // regression: 1000 dishes an hour · computed · exact
  test.each([
    ['hot-water', 1790],
    ['chemical', 1600],
  ] as const)('%s: %d W', (sanitizing, total) => {
    const { sensibleW, latentW } = wash({ sanitizing });
    expectNear(sensibleW + latentW, total, 1e-9);
  });

  // memory: ASHRAE Fundamentals 2009-2017, ch. 18, Table 5E, door machine that washes, Btu/h, unchecked · memory · exact
  test.each([
    ['sensible', 1980],
    ['latent', 2790],
  ] as const)('later table, %s: %d Btu/h', (part, printed) => {
    const heat = wash({ table: '2009-2017' });
    expectNear(fromSI(part === 'sensible' ? heat.sensibleW : heat.latentW, 'Btu/h'), printed, 1e-9 * printed);
  });

  // regression: the two tables agree at about 780 dishes an hour, below the range of the first · computed · 25 %
  test('the tables are of one size', () => {
    const [older, newer] = [wash({ dishesPerHour: 950 }), wash({ table: '2009-2017' })];
    expectNear(older.sensibleW + older.latentW, newer.sensibleW + newer.latentW, '25 %');
  });
});
