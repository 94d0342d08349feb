/** Sizes of copper wire in the American gauge, from thin to thick. */
export const WIRE_SIZES = ['14', '12', '10', '8', '6', '4', '3', '2', '1', '1/0', '2/0', '3/0', '4/0'] as const;
export type WireSize = (typeof WIRE_SIZES)[number];

/**
 * Area in circular mils: solid-copper table of a textbook source, read (14 AWG restated); 2/0 and 3/0 are not held.
 */
export const CIRCULAR_MILS: Readonly<Partial<Record<WireSize, number>>> = {
  '14': 4110,
  '12': 6530,
  '10': 10_380,
  '8': 16_510,
  '6': 26_250,
  '4': 41_740,
  '3': 52_630,
  '2': 66_370,
  '1': 83_690,
  '1/0': 105_500,
  '4/0': 211_600,
};

/** The size as a number: 14 for 14 AWG, 0 for 1/0, −3 for 4/0. The thicker the less. */
export const gaugeOf = (size: WireSize): number => (size.endsWith('/0') ? 1 - Number.parseInt(size, 10) : Number(size));

/** Sizes whose area is held. */
export const MEASURED_SIZES: readonly WireSize[] = WIRE_SIZES.filter((size) => CIRCULAR_MILS[size] !== undefined);
