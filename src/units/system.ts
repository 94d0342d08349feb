/** How lengths and quantities are read on a plan: feet, inches and °F, or millimetres and °C. */
export type Units = 'us' | 'metric';
