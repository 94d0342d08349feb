import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { queueLength, twoStationRate } from '../../src/topics/capacity';
import { AIR_GAP_RULES, drainFlow, dumpStorage, supplyAirGap } from '../../src/topics/drain';
import {
  accumulateHeatUnits,
  boosterPower,
  firstHeatUp,
  heatUnitRate,
  heatUnits,
  heatUpTime,
  heldRackRate,
  recordedHeatUnits,
  rinseHold,
} from '../../src/topics/heat';
import { rackRate } from '../../src/topics/line';
import { breakerSize, designCurrent, loadCurrent } from '../../src/topics/power';
import { pipeLoss, pipeSpeed, rinsePressureBand } from '../../src/topics/water';
import { queueTime } from '../support/oracles/queueTime';
import { valueOf } from '../support/valueOf';

/** What formulas owe each other, and the ends where the answer is known without them. */
const SEED = { seed: 7, numRuns: 100 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const assertHolds = <T>(property: fc.IProperty<T>): void => fc.assert(property, SEED);

describe('rinse hold', () => {
  const cycle = fc.record({ perCycleM3: real(0.002, 0.005), supplyC: real(5, 50), cycleS: real(40, 200) });

  test('begins where the booster of the sizing form is too small', () => {
    assertHolds(
      fc.property(cycle, ({ perCycleM3, supplyC, cycleS }) => {
        const rinseC = 82.2;
        const boosterW = valueOf(boosterPower({ rinseM3S: perCycleM3 / cycleS, supplyC, rinseC, rule: 'electric' }));
        const hold = (share: number) =>
          valueOf(rinseHold({ perCycleM3, supplyC, rinseC, boosterW: share * boosterW, efficiency: 1, cycleS }));
        return hold(1.001) === 0 && hold(0.95) > 0;
      }),
    );
  });

  test('leaves the rated rate when there is none, and follows the booster alone when there is', () => {
    const inputs = { perCycleM3: 0.003, supplyC: 60, rinseC: 82, efficiency: 1, cycleS: 65, racksPerCycle: 1 };
    const rated = valueOf(rackRate({ racksPerCycle: 1, washS: 45, rinseS: 10, dwellS: 5, loadS: 5 }));
    expect(valueOf(heldRackRate({ ...inputs, boosterW: 50_000 }))).toBeCloseTo(rated, 9);
    const slow = valueOf(heldRackRate({ ...inputs, boosterW: 2000 }));
    expect(valueOf(heldRackRate({ ...inputs, boosterW: 4000 }))).toBeCloseTo(2 * slow, 9);
  });

  test('a supply as hot as the rinse needs no booster', () => {
    expect(valueOf(boosterPower({ rinseM3S: 1e-4, supplyC: 82.2, rinseC: 82.2, rule: 'electric-98' }))).toBe(0);
    expect(valueOf(rinseHold({ perCycleM3: 0.003, supplyC: 90, rinseC: 82, boosterW: 500, efficiency: 1, cycleS: 20 }))).toBe(0);
  });
});

describe('heating', () => {
  test('in turn takes as long as both, together as long as the longer', () => {
    const parts = { supplyC: 10, tankM3: 0.06, tankC: 66, tankW: 4000, boosterM3: 0.02, boosterC: 85, boosterW: 9000, efficiency: 0.95 };
    const tank = valueOf(heatUpTime({ waterM3: 0.06, fromC: 10, toC: 66, powerW: 4000, efficiency: 0.95 }));
    const booster = valueOf(heatUpTime({ waterM3: 0.02, fromC: 10, toC: 85, powerW: 9000, efficiency: 0.95 }));
    expect(valueOf(firstHeatUp({ ...parts, order: 'in-turn' }))).toBeCloseTo(tank + booster, 9);
    expect(valueOf(firstHeatUp({ ...parts, order: 'together' }))).toBe(Math.max(tank, booster));
  });
});

describe('heat units', () => {
  const curve = fc.array(real(20, 95), { minLength: 2, maxLength: 12 });

  test('agree with a fine sum over the curve', () => {
    assertHolds(
      fc.property(curve, (tempsC) => {
        const fine = 400;
        let sum = 0;
        for (let i = 1; i < tempsC.length; i++) {
          const [from = 0, to = 0] = [tempsC[i - 1], tempsC[i]];
          for (let k = 0; k < fine; k++) sum += (heatUnitRate(from + ((k + 0.5) / fine) * (to - from)) * 5) / fine;
        }
        expect(valueOf(heatUnits({ tempsC, stepS: 5 })) / sum).toBeCloseTo(1, 2);
      }),
    );
  });

  test('do not care which way the time runs, and add up along the curve', () => {
    assertHolds(
      fc.property(curve, (tempsC) => {
        const there = valueOf(heatUnits({ tempsC, stepS: 3 }));
        const back = valueOf(heatUnits({ tempsC: tempsC.toReversed(), stepS: 3 }));
        expect(back / there).toBeCloseTo(1, 9);
        const sums = accumulateHeatUnits({ tempsC, stepS: 3 });
        expect(sums).toHaveLength(tempsC.length);
        expect(sums[0]).toBe(0);
        expect(sums.every((sum, i) => i === 0 || sum > (sums[i - 1] ?? 0))).toBe(true);
        expect(sums.at(-1)).toBe(there);
      }),
    );
  });

  test('a warmer curve has more, up to the cap', () => {
    expect(valueOf(heatUnits({ tempsC: [60, 70, 60], stepS: 10 }))).toBeLessThan(valueOf(heatUnits({ tempsC: [61, 71, 61], stepS: 10 })));
    expect(heatUnitRate(80)).toBe(heatUnitRate(90));
  });

  test('of a record at even times are those of the curve; at more times along it they are the same', () => {
    assertHolds(
      fc.property(curve, (tempsC) => {
        const atS = tempsC.map((_, i) => 7 * i);
        const even = valueOf(heatUnits({ tempsC, stepS: 7 }));
        expect(valueOf(recordedHeatUnits({ atS, tempsC })) / even).toBeCloseTo(1, 9);
        const half = tempsC.slice(1).map((tempC, i) => ((tempsC[i] ?? 0) + tempC) / 2);
        const finer = tempsC.flatMap((tempC, i) => [tempC, ...half.slice(i, i + 1)]);
        const finerAtS = finer.map((_, i) => 3.5 * i);
        expect(valueOf(recordedHeatUnits({ atS: finerAtS, tempsC: finer })) / even).toBeCloseTo(1, 6);
      }),
    );
  });

  test('a record that is warmer, or takes longer, has more', () => {
    assertHolds(
      fc.property(curve, real(1, 20), real(1, 3), (tempsC, warmer, longer) => {
        const atS = tempsC.map((_, i) => 4 * i);
        const units = valueOf(recordedHeatUnits({ atS, tempsC }));
        const warm = valueOf(recordedHeatUnits({ atS, tempsC: tempsC.map((tempC) => tempC + warmer) }));
        const long = valueOf(recordedHeatUnits({ atS: atS.map((at) => at * longer), tempsC }));
        return warm >= units * (1 - 1e-9) && long >= units * (1 - 1e-9);
      }),
    );
  });

  test('one point is no curve', () => expect(heatUnits({ tempsC: [70], stepS: 1 }).ok).toBe(false));
});

describe('queues', () => {
  const load = fc.record({
    arrivalsPerH: real(1, 59),
    serviceS: fc.constant(60),
    serviceCv2: real(0, 3),
    counts: fc.constant('waiting' as const),
  });

  test("obey Little's law", () => {
    assertHolds(
      fc.property(load, (inputs) => {
        for (const counts of ['waiting', 'present'] as const) {
          const length = valueOf(queueLength({ ...inputs, counts }));
          const time = queueTime({ ...inputs, counts });
          expect((inputs.arrivalsPerH / 3600) * time).toBeCloseTo(length, 9);
        }
      }),
    );
  });

  test('a fixed time of service halves the queue of a chance one', () => {
    assertHolds(
      fc.property(load, (inputs) => {
        const [fixed, chance] = [0, 1].map((serviceCv2) => valueOf(queueLength({ ...inputs, serviceCv2 })));
        expect(2 * (fixed ?? 0)).toBeCloseTo(chance ?? 0, 9);
      }),
    );
  });

  test('two stations give the same when they change places, and never more than the slower', () => {
    assertHolds(
      fc.property(real(1, 300), real(1, 300), fc.integer({ min: 0, max: 30 }), (firstPerH, secondPerH, buffer) => {
        const rate = valueOf(twoStationRate({ firstPerH, secondPerH, buffer }));
        expect(valueOf(twoStationRate({ firstPerH: secondPerH, secondPerH: firstPerH, buffer })) / rate).toBeCloseTo(1, 9);
        expect(rate).toBeLessThanOrEqual(Math.min(firstPerH, secondPerH) * (1 + 1e-12));
      }),
    );
  });

  test.each([1.5, -1])('%s is no number of racks', (count) => {
    expect(twoStationRate({ firstPerH: 1, secondPerH: 1, buffer: count }).ok).toBe(false);
  });
});

describe('water and drain', () => {
  test('both forms of Hazen and Williams agree within 4 % at the speeds of a building', () => {
    assertHolds(
      fc.property(real(0.5, 3), real(0.012, 0.05), real(100, 150), (speed, boreM, smoothness) => {
        const pipe = { flowM3S: speed * (Math.PI / 4) * boreM ** 2, boreM, lengthM: 10, smoothness };
        expect(valueOf(pipeSpeed(pipe))).toBeCloseTo(speed, 9);
        const ratio = valueOf(pipeLoss({ ...pipe, form: 'head' })) / valueOf(pipeLoss({ ...pipe, form: 'psi' }));
        expect(Math.abs(ratio - 1)).toBeLessThan(0.04);
      }),
    );
  });

  test('a drain carries most at nine tenths, and nearly nothing when nearly empty', () => {
    const at = (depth: number) => valueOf(drainFlow({ boreM: 0.0762, slope: 0.01, roughness: 0.012, depth })) / half;
    const half = valueOf(drainFlow({ boreM: 0.0762, slope: 0.01, roughness: 0.012, depth: 0.5 }));
    expect(at(0.94)).toBeGreaterThan(at(1));
    expect(at(0.05)).toBeLessThan(0.01);
  });

  test('a drain that takes nothing stores all, one that keeps up stores nothing', () => {
    expect(valueOf(dumpStorage({ waterM3: 0.05, dumpM3S: 0.002, drainM3S: 0 }))).toBe(0.05);
    expect(valueOf(dumpStorage({ waterM3: 0.05, dumpM3S: 0.002, drainM3S: 0.002 }))).toBe(0);
  });

  test('the stricter rule is never less than another', () => {
    assertHolds(
      fc.property(real(0, 0.15), (openingM) => {
        const gaps = AIR_GAP_RULES.map((rule) => valueOf(supplyAirGap({ openingM, rule })));
        expect(gaps[0]).toBe(Math.max(...gaps));
      }),
    );
    for (const rule of ['food-code', 'older'] as const) {
      const { min, max } = rinsePressureBand('stricter');
      expect(judge(rinsePressureBand(rule), min ?? 0)).toBe('pass');
      expect(judge(rinsePressureBand(rule), max ?? 0)).toBe('pass');
    }
  });
});

describe('power', () => {
  test('three phases take the current of one over √3', () => {
    assertHolds(
      fc.property(real(100, 60_000), real(200, 480), (powerW, voltageV) => {
        const [one, three] = (['single', 'three'] as const).map((phases) =>
          valueOf(loadCurrent({ powerW, voltageV, phases, powerFactor: 1 })),
        );
        expect((one ?? 0) / (three ?? 1)).toBeCloseTo(Math.sqrt(3), 9);
      }),
    );
  });

  test('a breaker carries what it must, and the next smaller would not', () => {
    assertHolds(
      fc.property(real(0.1, 80), fc.constantFrom('continuous' as const, 'not-continuous' as const), (currentA, load) => {
        const size = valueOf(breakerSize({ currentA, load }));
        const needed = designCurrent({ currentA, load });
        expect(size).toBeGreaterThanOrEqual(needed * (1 - 1e-9));
        expect(size === 15 || size - 10 < needed).toBe(true);
      }),
    );
  });

  test('100 A are held without, not with the factor of a continuous load', () => {
    expect(valueOf(breakerSize({ currentA: 100, load: 'not-continuous' }))).toBe(100);
    expect(breakerSize({ currentA: 100, load: 'continuous' })).toMatchObject({
      ok: false,
      refusal: { code: 'breaker-not-held', params: { currentA: 100, neededA: 125, mostA: 100 } },
    });
  });
});
