import { toSI } from '../../../../units';

/** Weight of a US gallon of water as sizing forms take it, and the Btu of a kWh as they round it. */
export const POUNDS_PER_GALLON = 8.33;
export const BTU_PER_KWH = 3412;

/**
 * Heat that raises one cubic metre of water by one kelvin, J/(m³·K): 8.33 lb a gallon, 1 Btu a pound and °F.
 * All sums of heat here take this one value (4.179 MJ); at 80 °C water holds 2 % less in a cubic metre.
 */
export const HEAT_J_PER_M3_K = (toSI(POUNDS_PER_GALLON, 'lb') / toSI(1, 'gal')) * toSI(1, 'Btu/(lb·°F)');
