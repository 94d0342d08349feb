import type { Settings } from '../../plan';

type Units = Settings['units'];

/**
 * The food code prints whole °C beside its °F, as 82 °C beside 180 °F (82.2 °C), and both count: whoever works in °C is held to
 * the printed °C where it is the milder one.
 */
export const printedLeast = (leastC: number, units: Units): number => (units === 'us' ? leastC : Math.min(leastC, Math.round(leastC)));
export const printedMost = (mostC: number, units: Units): number => (units === 'us' ? mostC : Math.max(mostC, Math.round(mostC)));

/** The same for the least of a length in mm, beside which a code prints whole millimetres or centimetres: 15 cm beside 6 in. */
export const printedLength = (least: number, printed: number, units: Units): number => (units === 'us' ? least : Math.min(least, printed));
