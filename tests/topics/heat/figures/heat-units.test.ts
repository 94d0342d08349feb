import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/plan';
import { deriveScene } from '../../../../src/scene';
import { rule } from '../../../../src/topics/heat/figures/heat-units';
import { deriveHeatUnitsPicture } from '../../../../src/topics/heat/figures/support/heatUnitsPicture';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

type Reading = readonly [at: number, f: number];

const recordPlan = (readings: readonly Reading[], family = 'recirculating-hot-water'): Plan =>
  linePlan({ family }, ({ machines: [machine] }) => {
    if (machine !== undefined) machine.hookUp.plateRecord = readings.map(([at, f]) => ({ at, tempC: toSI(f, 'F') }));
  });

const subjects = ['machine'];
const HELD_161: readonly Reading[] = [
  [40, 161],
  [43, 161],
  [55, 161],
];

/** “Sanitation History”, slides of 14 Dec 2009: 161 °F for 15 s are 1800, 165 °F and up for 30 s are 10,404. */
describeFigure(rule, [
  { name: '161 °F for 15 s', plan: recordPlan(HELD_161), expect: [{ subjects, value: 1800, within: 0.5, notes: 'start-up' }] },
  {
    name: 'above the cap for 30 s',
    plan: recordPlan([
      [10, 166],
      [40, 180],
    ]),
    expect: [{ subjects, value: 10_404, within: 52 }],
  },
  { name: 'no record', plan: linePlan(), expect: [{ subjects, value: null, asks: 'machines.0.hookUp.plateRecord' }] },
  { name: 'one reading', plan: recordPlan([[10, 166]]), expect: [{ subjects, value: null, refuses: 'has 1 points' }] },
  {
    name: 'a record that goes back in time',
    plan: recordPlan([
      [10, 166],
      [9, 166],
    ]),
    expect: [{ subjects, value: null, refuses: 'goes back' }],
  },
  { name: 'chemicals sanitise without heat', plan: recordPlan(HELD_161, 'chemical-sanitising'), expect: [] },
]);

describe('its picture', () => {
  const pictureOf = (plan: Plan, machine = 'machine') => deriveHeatUnitsPicture(deriveScene(plan), machine);

  it('shows the record and what it has gathered', () => {
    const picture = pictureOf(recordPlan(HELD_161));
    expect(picture?.record).toEqual(HELD_161.map(([at, f]) => ({ at, tempC: toSI(f, 'F') })));
    expect(picture?.total.map(({ at }) => at)).toEqual([40, 43, 55]);
    const units = picture?.total.map((point) => point.units) ?? [];
    expect(units[0]).toBe(0);
    expect(units[1]).toBeCloseTo(360, 0);
    expect(units[2]).toBeCloseTo(1800, 0);
    expect(picture?.needed).toBe(3600);
  });

  it('is none without a record in order', () => {
    expect(pictureOf(linePlan())).toBeNull();
    expect(pictureOf(recordPlan([[1, 150]]))).toBeNull();
    expect(pictureOf(recordPlan(HELD_161), 'nobody')).toBeNull();
    expect(pictureOf(recordPlan(HELD_161, 'chemical-sanitising'))).toBeNull();
  });
});
