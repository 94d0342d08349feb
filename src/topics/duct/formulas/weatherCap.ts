import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

/** Loss coefficient of the open end of a duct: all of its velocity pressure, whatever the shape. A cap comes on top. */
export const DUCT_EXIT_COEFFICIENT = 1;

/** A cap that is well spaced costs 0.20 to 0.25: the larger stands. */
export const WEATHER_CAPS = { none: 0, 'well-spaced': 0.25, 'low-cone': 1 } as const;

export type WeatherCapKind = keyof typeof WEATHER_CAPS;
export const WEATHER_CAP_KINDS = Object.keys(WEATHER_CAPS) as WeatherCapKind[];

export interface WeatherCapInputs {
  cap: WeatherCapKind;
}

/** Loss coefficient of an end with or without a weather cap: the open end and what the cap adds. */
export function weatherCap(inputs: WeatherCapInputs): FormulaResult {
  const refusal = findOutOfRange(weatherCapRecord, inputs);
  return refusal === null ? { ok: true, value: DUCT_EXIT_COEFFICIENT + WEATHER_CAPS[inputs.cap] } : { ok: false, refusal };
}

const guide = 'Fans and Ventilation, A Practical Guide: cap designs A and B';
const exit = 'fluids library, exit of a pipe';

export const weatherCapRecord: FormulaRecord<WeatherCapInputs> = {
  id: 'duct-exit',
  title: 'Loss of an exit',
  formula: 'C = 1.0 + what the cap adds',
  inputs: { cap: { text: 'Weather cap', choices: WEATHER_CAP_KINDS } },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 1, max: 2 },
  source: [
    { text: exit, documents: ['fluids-library'], confidence: 'read' },
    { text: guide, documents: ['fans-guide'], confidence: 'secondary' },
  ],
  examples: [
    { kind: 'source', from: exit, inputs: { cap: 'none' }, result: 1, tolerance: 0 },
    { kind: 'source', from: guide, inputs: { cap: 'well-spaced' }, result: 1.25, tolerance: 0 },
    { kind: 'source', from: `${guide}, counted on top of the open end`, inputs: { cap: 'low-cone' }, result: 2, tolerance: 0 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 340, formulas: [formula(weatherCapRecord, weatherCap)] }];
