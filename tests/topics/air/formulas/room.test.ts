import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { machineHeat } from '../../../../src/topics/air/formulas/machineHeat';
import { risingHumidity } from '../../../../src/topics/air/formulas/risingHumidity';
import { humidityAirflow, steadyHumidity, steadyTemperature } from '../../../../src/topics/air/formulas/steadyRoom';
import { FILM_RESISTANCES, rValue } from '../../../../src/topics/air/formulas/support/filmResistances';
import { STANDARD_DENSITY } from '../../../../src/topics/air/formulas/support/standardAir';
import { surfaceMargin } from '../../../../src/topics/air/formulas/surfaceMargin';
import { innerSurface } from '../../../../src/topics/air/formulas/wallTemperature';
import { ductInsulation, MOST_INSULATION_M } from '../../../../src/topics/duct';
import { expectNear } from '../../../support/expectNear';
import { valueOf } from '../../../support/valueOf';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const room = { densityKgM3: STANDARD_DENSITY, supplyRatio: 0.009, airflowM3s: 0.2 };

describe('humidity of a room', () => {
  test('rises toward its steady value and never past it', () => {
    fc.assert(
      fc.property(number(1e-4, 2e-3), number(20, 500), number(0, 20_000), number(10, 5000), (vapourKgS, volumeM3, seconds, later) => {
        const steady = valueOf(steadyHumidity({ ...room, vapourKgS }));
        const at = (t: number) => valueOf(risingHumidity({ ...room, vapourKgS, firstRatio: 0.009, volumeM3, seconds: t }));
        expect(at(0)).toBeCloseTo(0.009, 12);
        expect(at(seconds + later)).toBeGreaterThanOrEqual(at(seconds));
        expect(at(seconds)).toBeLessThanOrEqual(steady * (1 + 1e-12));
        expectNear(at(1e6), steady, '0.001 %');
      }),
      { seed: 3341, numRuns: 200 },
    );
  });

  test('the airflow against humidity is the steady balance turned about', () => {
    fc.assert(
      fc.property(number(1e-4, 2e-3), number(0.05, 2), (vapourKgS, airflowM3s) => {
        const highestRatio = valueOf(steadyHumidity({ ...room, airflowM3s, vapourKgS }));
        expectNear(
          humidityAirflow({ vapourKgS, densityKgM3: room.densityKgM3, supplyRatio: room.supplyRatio, highestRatio }),
          airflowM3s,
          '1e-6 %',
        );
      }),
      { seed: 3342, numRuns: 200 },
    );
  });

  test('supply as moist as the room may be: no airflow is enough, and it refuses', () => {
    const asked = humidityAirflow({ vapourKgS: 1e-3, densityKgM3: 1.2, supplyRatio: 0.01, highestRatio: 0.01 });
    expect(asked).toMatchObject({ ok: false, refusal: { code: 'supply-not-drier', params: { supplyRatio: 0.01, highestRatio: 0.01 } } });
  });

  test('more air: drier and cooler', () => {
    const more = { ...room, airflowM3s: 0.3 };
    expect(valueOf(steadyHumidity({ ...more, vapourKgS: 1e-3 }))).toBeLessThan(valueOf(steadyHumidity({ ...room, vapourKgS: 1e-3 })));
    const warm = { supplyC: 24, sensibleW: 600 };
    expect(valueOf(steadyTemperature({ ...more, ...warm }))).toBeLessThan(valueOf(steadyTemperature({ ...room, ...warm })));
    expect(valueOf(steadyTemperature({ ...room, supplyC: 24, sensibleW: 0 }))).toBe(24);
  });
});

describe('heat of the machine', () => {
  const machine = { table: '2001', machine: 'door', sanitizing: 'hot-water', dishesPerHour: 1200 } as const;

  test('a hood or a vent takes the vapour; a machine that condenses it counts in full', () => {
    const at = (vapourWay: 'none' | 'hood' | 'direct-vent' | 'condensing') => valueOf(machineHeat({ ...machine, vapourWay }));
    expect(at('hood').latentW).toBe(0);
    expect(at('direct-vent')).toEqual(at('hood'));
    expect(at('condensing')).toEqual(at('none'));
    expect(at('none').latentW).toBeGreaterThan(at('none').sensibleW);
  });

  test.each([
    ['a door machine of few dishes', { dishesPerHour: 949 }],
    ['a door machine of many', { dishesPerHour: 2001 }],
    ['a slow conveyor', { machine: 'conveyor', dishesPerHour: 4000 }],
    ['a conveyor in the later table', { machine: 'conveyor', table: '2009-2017', dishesPerHour: 6000 }],
  ] as const)('refuses %s', (_name, change) => expect(machineHeat({ ...machine, vapourWay: 'none', ...change }).ok).toBe(false));
});

describe('surfaces', () => {
  const wall = fc.record({
    insideC: number(-20, 60),
    outsideC: number(-20, 60),
    insideR: number(0.02, 0.3),
    wallR: number(0, 5),
    outsideR: number(0.02, 0.3),
  });

  test('lie between the airs, and the inner one nearer to the air inside', () => {
    fc.assert(
      fc.property(wall, (one) => {
        const turned = { ...one, insideC: one.outsideC, outsideC: one.insideC, insideR: one.outsideR, outsideR: one.insideR };
        const [inner, outer] = [valueOf(innerSurface(one)), valueOf(innerSurface(turned))];
        const way = Math.sign(one.outsideC - one.insideC);
        expect((inner - one.insideC) * way).toBeGreaterThanOrEqual(-1e-9);
        expect((outer - inner) * way).toBeGreaterThanOrEqual(-1e-9);
        expect((one.outsideC - outer) * way).toBeGreaterThanOrEqual(-1e-9);
      }),
      { seed: 3343, numRuns: 300 },
    );
  });
});

describe('insulation about a duct', () => {
  const duct = {
    diameterM: 0.3,
    insideC: 43,
    outsideC: 4,
    conductivityWmK: 0.036,
    insideR: FILM_RESISTANCES['inside-duct'],
    outsideR: FILM_RESISTANCES['still-air'],
  };

  test('grows with the dew point, is none for dry air, and gives way to a drain', () => {
    const at = (dewPointC: number) => ductInsulation({ ...duct, dewPointC });
    expect(valueOf(at(20))).toBe(0);
    expect(valueOf(at(40))).toBeGreaterThan(valueOf(at(38)));
    expect(valueOf(at(40))).toBeLessThan(MOST_INSULATION_M);
    expect(at(42.9)).toMatchObject({
      ok: false,
      refusal: { code: 'insulation-not-enough', params: { dewPointC: 42.9, mostM: MOST_INSULATION_M } },
    });
  });

  test('puts the inner wall at the dew point', () => {
    const thickness = valueOf(ductInsulation({ ...duct, dewPointC: 40 }));
    const outerM = duct.diameterM + 2 * thickness;
    const shell = Math.log(outerM / duct.diameterM) / (2 * Math.PI * duct.conductivityWmK);
    const films = duct.insideR / (Math.PI * duct.diameterM) + duct.outsideR / (Math.PI * outerM);
    const heat = (duct.insideC - duct.outsideC) / (films + shell);
    expectNear(duct.insideC - (heat * duct.insideR) / (Math.PI * duct.diameterM), 40, 1e-6);
  });
});

describe('whether a wall sweats', () => {
  const wall = { roomC: 28, pressurePa: 101_325, behindC: -5, roomFilmR: 0.12, behindFilmR: 0.03 };
  const margin = (relativeHumidity: number, wallR: number) => valueOf(surfaceMargin({ ...wall, relativeHumidity, wallR }));

  test('a bare sheet sweats, a wall of R-19 does not, and humidity costs margin', () => {
    expect(margin(0.6, 0)).toBeLessThan(0);
    expect(margin(0.6, rValue(19))).toBeGreaterThan(0);
    expect(margin(0.7, 1)).toBeLessThan(margin(0.6, 1));
    expect(margin(1, 20)).toBeLessThan(0);
  });
});
