import { formatAngle } from './angle';
import { formatArea } from './formatArea';
import { formatLength, type LengthOptions } from './formatLength';
import { formatQuantity } from './quantity';
import { formatSlope } from './slope';
import type { Units } from './system';

/** Turns the numbers that the program holds into what people of one system read. */
export interface Formatter {
  readonly units: Units;
  /** mm */
  length: (mm: number, options?: LengthOptions) => string;
  /** Rise over run. */
  slope: (ratio: number) => string;
  angle: (deg: number) => string;
  area: (mm2: number) => string;
  temperature: (c: number) => string;
  /** A difference of temperatures, which has no zero to shift. */
  temperatureDifference: (k: number) => string;
  pressure: (kpa: number) => string;
  /** Small pressure of air, in ducts. */
  draft: (pa: number) => string;
  volume: (l: number) => string;
  /** Flow of water. */
  flow: (m3s: number) => string;
  /** Flow of air. */
  airflow: (m3s: number) => string;
  /** Electric power, in kW either way. */
  power: (kw: number) => string;
  /** Heat given off: Btu/h or kW. */
  heat: (kw: number) => string;
  energy: (kwh: number) => string;
  mass: (kg: number) => string;
  speed: (ms: number) => string;
  illuminance: (lx: number) => string;
  hardness: (mgl: number) => string;
  current: (a: number) => string;
  voltage: (v: number) => string;
  duration: (s: number) => string;
  count: (n: number) => string;
}

/** The formatter of a system: the same object at each call. */
export function formatterFor(units: Units): Formatter {
  return FORMATTERS[units];
}

function createFormatter(units: Units): Formatter {
  return {
    units,
    length: (mm, options) => formatLength(mm, units, options),
    slope: (ratio) => formatSlope(ratio, units),
    angle: formatAngle,
    area: (mm2) => formatArea(mm2, units),
    temperature: (c) => formatQuantity(c, 'temperature', units),
    temperatureDifference: (k) => formatQuantity(k, 'temperatureDifference', units),
    pressure: (kpa) => formatQuantity(kpa, 'pressure', units),
    draft: (pa) => formatQuantity(pa, 'draft', units),
    volume: (l) => formatQuantity(l, 'volume', units),
    flow: (m3s) => formatQuantity(m3s, 'flow', units),
    airflow: (m3s) => formatQuantity(m3s, 'airflow', units),
    power: (kw) => formatQuantity(kw, 'power', units),
    heat: (kw) => formatQuantity(kw, 'heat', units),
    energy: (kwh) => formatQuantity(kwh, 'energy', units),
    mass: (kg) => formatQuantity(kg, 'mass', units),
    speed: (ms) => formatQuantity(ms, 'speed', units),
    illuminance: (lx) => formatQuantity(lx, 'illuminance', units),
    hardness: (mgl) => formatQuantity(mgl, 'hardness', units),
    current: (a) => formatQuantity(a, 'current', units),
    voltage: (v) => formatQuantity(v, 'voltage', units),
    duration: (s) => formatQuantity(s, 'duration', units),
    count: (n) => formatQuantity(n, 'count', units),
  };
}

const FORMATTERS: Readonly<Record<Units, Formatter>> = { us: createFormatter('us'), metric: createFormatter('metric') };
