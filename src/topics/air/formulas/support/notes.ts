import { createRefusal, type Refusal } from '../../../../rules';
import { STANDARD_PRESSURE } from './standardAir';

/** Ranges that the formulas of moist air share. */
export const temperature = (text: string) => ({ text, unit: 'C', min: -50, max: 100 }) as const;
export const ratio = (text: string) => ({ text, unit: 'kg/kg', min: 0, max: 1 }) as const;
export const share = (text: string) => ({ text, unit: 'share', min: 0, max: 1 }) as const;
export const airPressure = { text: 'Pressure of the air', unit: 'Pa', min: 60_000, max: 120_000 } as const;
export const vapour = { text: 'Pressure of the vapour', unit: 'Pa', min: 0, max: 120_000 } as const;

export const handbook = (place: string) => `ASHRAE Handbook of Fundamentals 2017, ch. 1, ${place}, as in PsychroLib`;

/** Pressure at 500 m above the sea, where the library has its cases. */
export const AT_500_M = 95_461;
export const SEA_LEVEL = STANDARD_PRESSURE;

export const BELOW_BOILING = 'the vapour has less pressure than the air';

/** Why vapour of such a pressure is more than the air can hold beside it; null when it is not. */
export const findBoiling = (record: { id: string; title: string }, vapourPa: number, pressurePa: number): Refusal | null =>
  vapourPa < pressurePa ? null : createRefusal(record, 'vapour-boils', { vapourPa, pressurePa });
