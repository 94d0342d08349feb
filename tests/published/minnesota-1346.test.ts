import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { DIFFUSER_DISTANCE, MAKE_UP_TEMPERATURE, machineHeat, ROOM_HUMIDITY } from '../../src/topics/air';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// source: Minn. R. 1346.0507 subp. 1, version of 2015-01-28, relative humidity of at most 65 % · read · exact
test.each([
  [0.65, 'pass'],
  [0.651, 'high'],
])('%d: %s', (humidity, judgement) => expect(judge(ROOM_HUMIDITY, humidity)).toBe(judgement));

// source: Minn. R. 1346.0507 subp. 1, version of 2015-01-28, a machine with its own recovery counts with both heats · read · exact
test('a condensing machine counts as one that nothing covers', () => {
  const machine = { table: '2001', machine: 'door', sanitizing: 'hot-water', dishesPerHour: 1000 } as const;
  const condensing = valueOf(machineHeat({ ...machine, vapourWay: 'condensing' }));
  expect(condensing).toEqual(valueOf(machineHeat({ ...machine, vapourWay: 'none' })));
  expect(condensing.latentW).toBeGreaterThan(0);
});

// source: Minn. R. 1346.0508, at least 50 °F at the diffuser, 12 ft from a hood or directed away · read · exact
test.each([
  ['50 °F', MAKE_UP_TEMPERATURE, toSI(50, 'F'), toSI(49.9, 'F')],
  ['12 ft', DIFFUSER_DISTANCE, 12 * 0.3048, 11.9 * 0.3048],
])('%s', (_name, limit, pass, fail) => expect([pass, fail].map((value) => judge(limit, value))).toEqual(['pass', 'low']));
