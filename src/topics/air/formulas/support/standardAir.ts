import { toSI } from '../../../../units';

/** Density of the trade's standard air, 0.075 lb/ft³: 1.2014 kg/m³. Fan curves and duct charts are drawn for it. */
export const STANDARD_DENSITY = toSI(0.075, 'lb') / toSI(1, 'ft3');

/** Pressure of the standard atmosphere at sea level, Pa. */
export const STANDARD_PRESSURE = 101_325;

export const KELVIN = 273.15;
