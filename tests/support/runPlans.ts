import psychrolib from 'psychrolib';
import type { DataSheet } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import { linePlan, ownDataSheet } from './linePlan';
import { runOf } from './roomPlan';

/** Collar of the direct-vent family on an unturned corner line at the left. */
export const COLLAR = { x: 4318.5, y: 288.5, z: 1930 };

type Step = readonly [dx: number, dy: number, dz: number];
type Duct = Plan['runs'][number]['duct'];

/** A direct-vent line whose run goes from the collar by these steps, of aluminum, with what a case changes of its duct. */
export const runPlan = (steps: readonly Step[], duct: Partial<Duct> = {}, change: (plan: Plan) => void = () => {}): Plan =>
  linePlan({ family: 'direct-vent' }, (plan) => {
    setRun(plan, steps, duct);
    change(plan);
  });

export function setRun(plan: Plan, steps: readonly Step[], duct: Partial<Duct> = {}): void {
  const run = runOf(plan);
  let at = COLLAR;
  run.points = steps.map(([dx, dy, dz]) => {
    at = { x: at.x + dx, y: at.y + dy, z: at.z + dz };
    return at;
  });
  Object.assign(run.duct, { material: 'aluminum', ...duct });
}

type DirectVent = Extract<DataSheet['vent'], { kind: 'direct' }>;

/** The direct-vent family with a fan of one's own. */
export function ventSheet(change: Partial<DirectVent>): DataSheet {
  const sheet = ownDataSheet({});
  return {
    ...sheet,
    connections: [...sheet.connections, { id: 'collar', kind: 'collar', x: 368.5, y: 150, z: 1930, size: 178, note: 'Collar' }],
    vent: {
      kind: 'direct',
      maxEquivalentLength: 15_240,
      elbowAllowance: 3048,
      cordLength: 3048,
      ductDiameter: 178,
      airflow: 0.2,
      fanCurve: [],
      ...change,
    },
  };
}

/** Density of moist air in kg/m³, by PsychroLib. */
export function densityBy(temperatureC: number, relativeHumidity: number, altitudeM: number): number {
  psychrolib.SetUnitSystem(psychrolib.SI);
  const pressure = psychrolib.GetStandardAtmPressure(altitudeM);
  const ratio = psychrolib.GetHumRatioFromRelHum(temperatureC, relativeHumidity, pressure);
  return psychrolib.GetMoistAirDensity(temperatureC, ratio, pressure);
}

/** Friction factor by Colebrook, by repeating it: another way than that of the program. */
export function colebrookBy(reynolds: number, relativeRoughness: number): number {
  let root = 8;
  for (let i = 0; i < 60; i++) root = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 / reynolds) * root);
  return root ** -2;
}

/** Viscosity of air by Sutherland's law with the constants of another document: 1.716·10⁻⁵ at 273.15 K, 110.4 K. From memory. */
export const viscosityBy = (temperatureC: number): number => {
  const kelvin = temperatureC + 273.15;
  return (1.716e-5 * (kelvin / 273.15) ** 1.5 * (273.15 + 110.4)) / (kelvin + 110.4);
};

/** Loss in Pa of a round run by Darcy and Weisbach, from the oracles above; aluminum as in the roughness table (0.0002 ft). */
export function lossBy(run: { airflow: number; diameter: number; length: number; coefficients: number; roughness?: number }): number {
  const [density, viscosity] = [densityBy(35, 0.7, 100), viscosityBy(35)];
  const velocity = run.airflow / ((Math.PI / 4) * run.diameter ** 2);
  const roughness = run.roughness ?? 0.0002 * 0.3048;
  const factor = colebrookBy((density * velocity * run.diameter) / viscosity, roughness / run.diameter);
  return ((factor * run.length) / run.diameter + run.coefficients) * ((density * velocity ** 2) / 2);
}
