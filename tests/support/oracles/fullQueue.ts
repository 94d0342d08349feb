/** One station with few places and chance arrivals (M/M/1/K), as queueing texts have it, known from memory. */
export interface FullQueueInputs {
  arrivalsPerH: number;
  serviceS: number;
  /** Places in all, the one in service among them. */
  places: number;
}

/** Part of the arrivals that finds no place left: a drop-off that runs over. */
export const turnedAwayShare = (inputs: FullQueueInputs): number => probabilities(inputs).at(-1) ?? 0;

/** Mean number at that station. */
export const numberAtFullQueue = (inputs: FullQueueInputs): number => probabilities(inputs).reduce((sum, p, n) => sum + n * p, 0);

/** How likely it is that 0, 1, … places are taken: ρⁿ over their sum, counted down from the largest so that nothing overflows. */
function probabilities({ arrivalsPerH, serviceS, places }: FullQueueInputs): number[] {
  const load = (arrivalsPerH * serviceS) / 3600;
  const weights = Array.from({ length: places + 1 }, (_, n) => (load > 1 ? load ** (n - places) : load ** n));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
}
