import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/plan';
import { readFigure } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { rule as roomHumiditySteadyFigure, rule } from '../../../../src/topics/air/figures/room-humidity-steady';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { humidityBy, moistRoom, vapourBy } from '../../../support/roomAirPlans';

describeFigure(rule, [
  {
    name: '0.2 m³/s through the room',
    plan: moistRoom({ roomExhaust: 0.2, makeUp: 0.18 }),
    expect: [{ subjects: [], value: humidityBy(vapourBy(0.2, 0.18)), within: 1e-5 }],
  },
  { name: 'hardly any air: saturated', plan: moistRoom({ roomExhaust: 0.01, makeUp: 0.009 }), expect: [{ subjects: [], value: 1 }] },
  {
    name: 'the temperature of the room is not known',
    plan: moistRoom({ roomExhaust: 0.2, makeUp: 0.18, roomC: null }),
    expect: [{ subjects: [], value: null, asks: 'air.roomC' }],
  },
  {
    name: 'pieces a rack not known',
    plan: moistRoom({ roomExhaust: 0.2, makeUp: 0.18 }, ({ demand }) => void (demand.piecesPerRack = null), 'silent-recovery'),
    expect: [{ subjects: [], value: null, asks: 'demand.piecesPerRack' }],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);

describe('the humidity of the room', () => {
  const humidityOf = (plan: Plan) => readFigure(roomHumiditySteadyFigure, deriveScene(plan))[0]?.value ?? Number.NaN;
  const room = (roomExhaust: number, change: (plan: Plan) => void = () => {}) =>
    moistRoom({ roomExhaust, makeUp: 0.9 * roomExhaust }, change, 'silent-recovery');

  it('falls with more air and rises with more dishes and moister make-up air', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), fc.integer({ min: 20, max: 38 }), (exhaust, pieces) => {
        const plain = humidityOf(room(exhaust, ({ demand }) => void (demand.piecesPerRack = pieces)));
        expect(humidityOf(room(exhaust * 1.1, ({ demand }) => void (demand.piecesPerRack = pieces)))).toBeLessThan(plain);
        expect(humidityOf(room(exhaust, ({ demand }) => void (demand.piecesPerRack = pieces + 1)))).toBeGreaterThan(plain);
        const moister = room(exhaust, ({ demand, air }) => {
          demand.piecesPerRack = pieces;
          air.makeUpHumidity = 0.6;
        });
        expect(humidityOf(moister)).toBeGreaterThan(plain);
      }),
      { numRuns: 25 },
    );
  });
});
