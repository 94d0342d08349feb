import { DRY_HEAT, VAPOUR_HEAT } from '../enthalpy';

/** Heat in J that warms one cubic metre of moist air by one kelvin. */
export const airHeat = ({ densityKgM3, humidityRatio }: { densityKgM3: number; humidityRatio: number }): number =>
  densityKgM3 * (DRY_HEAT + VAPOUR_HEAT * humidityRatio);

export const vapourHeat = { text: 'Heat that a kg of vapour brings', unit: 'J/kg', min: 2.2e6, max: 2.8e6 } as const;
