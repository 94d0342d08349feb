import psychrolib from 'psychrolib';
import type { DataSheet } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import { linePlan, ownDataSheet } from './linePlan';

/** 50 racks an hour of 20 pieces: 1000 dishes an hour, 1230 W of latent heat where nothing takes it (ASHRAE Fundamentals 2001). */
const CYCLE: DataSheet['cycle'] = { washS: 45, rinseS: 12, dwellS: 5, loadS: 10 };

type Air = Plan['air'];

const BOX = { x: 0, y: 0, width: 500, depth: 300, zFrom: 1500, zTo: 1900 };

/** 1000 dishes an hour of one that wins back its heat: its sheet states as much as the table has where nothing takes it. */
const STATED = { sensible: 560, latent: 1230 };

/** A machine of 1000 dishes an hour that wins back its heat, or one without a hood, in a room at sea level with such air. */
export const moistRoom = (
  air: Partial<Air>,
  change: (plan: Plan) => void = () => {},
  vent: 'recovery' | 'silent-recovery' | 'hood' = 'recovery',
): Plan =>
  linePlan(
    {
      family: ownDataSheet({
        cycle: CYCLE,
        vent:
          vent === 'hood'
            ? { kind: 'hood' }
            : {
                kind: 'recovery',
                recovered: null,
                listedCondensing: null,
                sensible: null,
                latent: null,
                ...(vent === 'recovery' ? STATED : {}),
                box: BOX,
              },
      }),
    },
    (plan) => {
      plan.hoods = [];
      plan.demand.piecesPerRack = 20;
      Object.assign(plan.air, { elevation: 0, roomC: 24, roomHumidity: 0.5, makeUpC: 20, makeUpHumidity: 0.5, ...air });
      change(plan);
    },
  );

/** 1230 W at 1061 Btu/lb of vapour. */
const VAPOUR = 1230 / (1061 * 2326);
const PRESSURE = 101_325;

const ratioBy = (temperatureC: number, humidity: number) => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  return psychrolib.GetHumRatioFromRelHum(temperatureC, humidity, PRESSURE);
};

/** Vapour to dry air of the moist room's supply, by PsychroLib: make-up air of 20 °C and 50 %, the rest of 24 °C and 50 %. */
function supplyBy(exhaust: number, makeUp: number): number {
  const dry = (temperatureC: number, ratio: number, airflow: number) =>
    airflow / psychrolib.GetMoistAirVolume(temperatureC, ratio, PRESSURE);
  const [fresh, near] = [ratioBy(20, 0.5), ratioBy(24, 0.5)];
  const [a, b] = [dry(20, fresh, makeUp), dry(24, near, exhaust - makeUp)];
  return (a * fresh + b * near) / (a + b);
}

/** Temperature of that supply, by PsychroLib: its enthalpy is that of the two streams. */
function supplyCBy(exhaust: number, makeUp: number): number {
  const stream = (temperatureC: number, airflow: number) => {
    const ratio = ratioBy(temperatureC, 0.5);
    return {
      dry: airflow / psychrolib.GetMoistAirVolume(temperatureC, ratio, PRESSURE),
      enthalpy: psychrolib.GetMoistAirEnthalpy(temperatureC, ratio),
    };
  };
  const [a, b] = [stream(20, makeUp), stream(24, exhaust - makeUp)];
  const enthalpy = (a.dry * a.enthalpy + b.dry * b.enthalpy) / (a.dry + b.dry);
  return psychrolib.GetTDryBulbFromEnthalpyAndHumRatio(enthalpy, supplyBy(exhaust, makeUp));
}

/** Temperature of the moist room after a long while: its dry heat of 560 W in the air that passes, 1006 J/(kg·K) and 1860 for its vapour. */
export function temperatureBy(exhaust: number, makeUp: number): number {
  const density = 1 / psychrolib.GetMoistAirVolume(24, ratioBy(24, 0.5), PRESSURE);
  return supplyCBy(exhaust, makeUp) + STATED.sensible / (density * exhaust * (1006 + 1860 * supplyBy(exhaust, makeUp)));
}

/** Airflow that keeps the moist room at such a humidity, its supply as it is. */
export function airflowBy(humidity: number, exhaust: number, makeUp: number): number {
  const density = 1 / psychrolib.GetMoistAirVolume(24, ratioBy(24, 0.5), PRESSURE);
  return VAPOUR / (density * (ratioBy(24, humidity) - supplyBy(exhaust, makeUp)));
}

/** Vapour to dry air of the moist room after so many seconds in so many cubic metres; without them after a long while. */
export function vapourBy(exhaust: number, makeUp: number, seconds = Number.POSITIVE_INFINITY, volume = 1): number {
  const first = ratioBy(24, 0.5);
  const density = 1 / psychrolib.GetMoistAirVolume(24, first, PRESSURE);
  const steady = supplyBy(exhaust, makeUp) + VAPOUR / (density * exhaust);
  return steady + (first - steady) * Math.exp((-exhaust / volume) * seconds);
}

/** Relative humidity of such vapour at 24 °C. */
export function humidityBy(ratio: number): number {
  const vapour = (PRESSURE * ratio) / (0.621945 + ratio);
  return vapour / psychrolib.GetSatVapPres(24);
}
