import { formatAngle } from './angle';
import { formatLength, type LengthStyle } from './length';
import { formatQuantity } from './quantity';
import { formatSlope } from './slope';
import type { QuantityKind } from './unitTable';

/** Which units people read: feet, inches and °F, or millimetres and °C. */
export type Units = 'us' | 'metric';

/** Everything that wording needs to turn numbers into text, in one system. SI in, millimetres for lengths. */
export interface Formatter {
  readonly units: Units;
  length: (mm: number, style?: LengthStyle) => string;
  /** Height per length. */
  slope: (ratio: number) => string;
  area: (mm2: number) => string;
  angle: (deg: number) => string;
  temperature: (tempC: number) => string;
  temperatureDifference: (differenceC: number) => string;
  pressure: (pressurePa: number) => string;
  waterFlow: (flowM3s: number) => string;
  airflow: (airflowM3s: number) => string;
  power: (powerW: number) => string;
  current: (currentA: number) => string;
  voltage: (voltageV: number) => string;
  mass: (massKg: number) => string;
  volume: (volumeM3: number) => string;
  speed: (speedMs: number) => string;
  energy: (energyJ: number) => string;
  illuminance: (illuminanceLx: number) => string;
  hardness: (hardnessKgM3: number) => string;
  duration: (durationS: number) => string;
  count: (count: number) => string;
}

/** The formatter of a system; the same object every time, so that it can be compared by identity. */
export const formatterFor = (units: Units): Formatter => FORMATTERS[units];

function createFormatter(units: Units): Formatter {
  const as = (kind: QuantityKind) => (valueSI: number) => formatQuantity(valueSI, kind, units);
  return {
    units,
    length: (mm, style) => formatLength(mm, units, style),
    slope: (ratio) => formatSlope(ratio, units),
    area: (mm2) => formatArea(mm2, units),
    angle: formatAngle,
    temperature: as('temperature'),
    temperatureDifference: as('temperature-difference'),
    pressure: as('pressure'),
    waterFlow: as('water-flow'),
    airflow: as('airflow'),
    power: as('power'),
    current: as('current'),
    voltage: as('voltage'),
    mass: as('mass'),
    volume: as('volume'),
    speed: as('speed'),
    energy: as('energy'),
    illuminance: as('illuminance'),
    hardness: as('hardness'),
    duration: as('duration'),
    count: as('count'),
  };
}

/** An area for people, from mm²: `85 ft²` or `7.9 m²`. */
export const formatArea = (mm2: number, units: Units): string => formatQuantity(mm2 / 1e6, 'area', units);

const FORMATTERS: Readonly<Record<Units, Formatter>> = { us: createFormatter('us'), metric: createFormatter('metric') };
