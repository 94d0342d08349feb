import type { RecordUnit } from './recordUnit';

/**
 * Why a formula or a rule does not hold, as plain data that survives JSON: its words are put on elsewhere (`refusalSentence`). A value
 * that is no finite number stands as text; a bound that there is not is null.
 */
export type Refusal = { [Code in RefusalCode]: RefusalFacts & { code: Code; params: RefusalParams[Code] } }[RefusalCode];

export interface RefusalFacts {
  /** Id of the record of the formula or rule. */
  formula: string;
  title: string;
  /** The input that is at fault by itself; null where several are together. */
  input: string | null;
  value: number | string | null;
  min: number | null;
  max: number | null;
  unit: RecordUnit | null;
  /** The words that the input may be. */
  choices: readonly string[] | null;
}

export type RefusalCode = keyof RefusalParams;

type None = Readonly<Record<never, never>>;

/** What each refusal tells beside its input: the numbers and names that its words need. */
export interface RefusalParams {
  'out-of-range': None;
  'not-a-choice': None;
  'not-whole': None;
  'below-least': None;
  'not-above-least': None;
  'insulation-not-enough': { insideC: number; dewPointC: number; mostM: number };
  'duct-too-flat': { widthM: number; heightM: number; mostAspect: number };
  'duct-too-fast': { airflowM3s: number; areaM2: number; mostMs: number };
  'fan-curve-too-short': { points: number };
  'fan-curve-out-of-order': { point: number };
  'system-too-free': None;
  'system-too-tight': None;
  'bend-not-known': { heightRatio: number; radiusRatio: number };
  'bend-of-pieces-not-held': None;
  'run-loss-not-known': None;
  'machine-not-in-tables': { machine: string; dishesPerHour: number; table: string };
  'blown-exceeds-taken': { intoCavityM3s: number; totalM3s: number };
  'drawn-exceeds-exhaust': { atMachinesM3s: number; exhaustM3s: number };
  'vapour-boils': { vapourPa: number; pressurePa: number };
  'above-saturation': { humidityRatio: number; temperatureC: number; relativeHumidity: number };
  'wet-bulb-not-between': None;
  'nothing-to-mix': None;
  'supply-not-drier': { supplyRatio: number; highestRatio: number };
  'pile-never-goes': { afterPerH: number; servedPerH: number };
  'queue-without-end': { load: number };
  'cycle-too-short': { cycleS: number; leastS: number };
  'nominal-size-not-held': None;
  'flow-not-held': None;
  'too-few-points': { points: number };
  'record-lengths-differ': { times: number; temperatures: number };
  'record-too-short': { points: number };
  'record-goes-back': { fromS: number; toS: number };
  'lists-differ-in-length': { units: number; flows: number };
  'pipe-too-fast': { speedMs: number; mostMs: number };
  'ampacity-not-held': { size: string; terminal: string };
  'wire-area-not-held': None;
  'breaker-not-held': { currentA: number; neededA: number; mostA: number };
  'wire-not-held': { breakerA: number; size: string; terminal: string };
  'no-wire-held': None;
  'ampacity-differs-from-code': { size: string; terminal: string; valueA: number; heldA: number };
  'ampacity-not-above-thinner': { size: string; terminal: string; valueA: number; thinnerA: number };
  'ampacity-below-cooler': { size: string; terminal: string; valueA: number; coolerA: number };
  'tank-not-held': { mostGallons: number };
  'fixture-table-ends': { mostGallons: number };
  'lifting-limit-zero': None;
  'lifting-too-long': None;
  'machine-not-found': None;
  'no-machine': None;
  'no-rack-in-year': None;
  'no-turning-space': None;
  'peak-fills-day': None;
  'peak-racks-not-known': None;
  'drain-too-far': None;
  'drain-without-trap': None;
  'trap-not-vented': None;
  'level-waste-too-long': None;
  'waste-too-long': None;
  'wall-too-near': { openings: number; walls: 'one' | 'corner' };
  'gap-not-closed-and-sealed': None;
  'gap-not-closed-nor-sealed': None;
  'way-too-narrow': None;
  'narrow-places-too-near': None;
  'narrow-for-too-long': None;
  'half-turn-too-narrow': None;
  'bounds-movable': None;
  'area-too-large': None;
  'pressure-outside-plate': { side: 'low' | 'high' };
  'pressure-outside-rule': { side: 'low' | 'high' };
  'gauge-missing': None;
  'dosing-not-automatic': None;
  'dosing-unnoticed': None;
}

/** A refusal of a formula or rule; what is not said of its input is null. */
export function createRefusal<Code extends RefusalCode>(
  { id, title }: { id: string; title: string },
  code: Code,
  params: RefusalParams[Code],
  about: { input?: string; value?: unknown; min?: number; max?: number; unit?: RecordUnit; choices?: readonly string[] } = {},
): Refusal {
  const facts: RefusalFacts = {
    formula: id,
    title,
    input: about.input ?? null,
    value: 'value' in about ? plainValue(about.value) : null,
    min: finite(about.min),
    max: finite(about.max),
    unit: about.unit ?? null,
    choices: about.choices ?? null,
  };
  return { code, ...facts, params } as Refusal;
}

const plainValue = (value: unknown) => (typeof value === 'number' && Number.isFinite(value) ? value : String(value));

const finite = (bound: number | undefined) => (bound !== undefined && Number.isFinite(bound) ? bound : null);
