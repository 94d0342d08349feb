import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Formula, Note } from '../../src/rules';
import { FORMULAS, groupOf } from '../../src/topics/registry';
import { isBound } from '../support/isBound';

/** Laws that hold for every formula but those of air, on seeded inputs. */
const OTHERS = FORMULAS.filter((formula) => groupOf(formula) !== 'air');
const SEED = { seed: 20_250_611, numRuns: 200 };

type Inputs = Record<string, unknown>;

/** Any inputs within the ranges of the record; lists as long as those of its first example. */
function anyInputs({ record }: Formula): fc.Arbitrary<Inputs> {
  const example = record.examples[0]?.inputs ?? {};
  return fc.record(
    Object.fromEntries(
      Object.entries(record.inputs).map(([key, note]) => {
        const like = example[key];
        const one = anyValue(note);
        return [key, Array.isArray(like) ? fc.array(one, { minLength: like.length, maxLength: like.length }) : one];
      }),
    ),
  );
}

function anyValue(note: Note): fc.Arbitrary<unknown> {
  if ('choices' in note) return fc.constantFrom(...note.choices);
  if (note.unit === 'count') return fc.integer({ min: Math.ceil(note.min), max: Math.floor(note.max) });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  return fc.oneof(
    share.map((part) => note.min + part * (note.max - note.min)),
    share.map((part) => note.min + part ** 4 * (note.max - note.min)),
  );
}

describe.each(OTHERS.map((formula) => [formula.record.id, formula] as const))('%s', (_id, formula) => {
  test('within its ranges it answers with a number in the range of its result, or says which bound stands against it', () => {
    const { record, run } = formula;
    const { min, max } = 'choices' in record.result ? { min: 0, max: 0 } : record.result;
    fc.assert(
      fc.property(anyInputs(formula), (inputs) => {
        const outcome = run(inputs);
        if (!outcome.ok) return outcome.refusal.code === 'ampacity-not-held' || isBound(record, outcome.refusal);
        return Number.isFinite(outcome.value) && outcome.value >= min - 1e-9 * (1 + Math.abs(min)) && outcome.value <= max * (1 + 1e-9);
      }),
      SEED,
    );
  });

  test('the same inputs give the same answer, and are left as they were', () => {
    fc.assert(
      fc.property(anyInputs(formula), (inputs) => {
        const before = structuredClone(inputs);
        const once = formula.run(inputs);
        expect(formula.run(inputs)).toEqual(once);
        expect(inputs).toEqual(before);
      }),
      { ...SEED, numRuns: 20 },
    );
  });
});

/** What an answer does when one input grows and the others stand still. */
const TRENDS: readonly (readonly [id: string, grow: string, shrink: string])[] = [
  ['rack-rate', 'racksPerCycle', 'washS rinseS dwellS loadS'],
  ['practical-rate', 'racksPerH practicalShare', ''],
  ['racks-needed', 'guestsPerH piecesPerGuest', 'piecesPerRack practicalShare'],
  ['racks-of-ware', 'meals piecesPerMeal', 'piecesPerRack'],
  ['racks-on-table', 'lengthM', 'pitchM'],
  ['drying-time', 'racks', 'racksPerH'],
  ['queue-length', 'arrivalsPerH serviceS serviceCv2', ''],
  ['two-station-rate', 'firstPerH secondPerH buffer', ''],
  ['peak-backlog', 'peakPerH peakS', 'servedPerH'],
  ['peak-clearing', 'peakPerH peakS afterPerH', 'servedPerH'],
  ['peak-longest-wait', 'peakPerH peakS', 'servedPerH'],
  ['rack-water', 'perRackM3 racks fillM3 fills', ''],
  ['spray-water', 'flowM3S openS days', ''],
  ['spray-valve-limit', 'forceN', ''],
  ['sink-volume', 'lengthM widthM depthM', ''],
  ['hot-water-demand', 'share', ''],
  ['demand-after-storage', 'demandM3S peakS', 'tankM3'],
  ['instant-demand', 'sinks', ''],
  ['heater-input', 'demandM3S riseK', ''],
  ['pipe-speed', 'flowM3S', 'boreM'],
  ['pipe-loss', 'flowM3S lengthM', 'boreM smoothness'],
  ['pressure-left', 'supplyPa', 'lossPa riseM'],
  ['rinse-flow', 'perRackM3', 'rinseS'],
  ['hardness-mass', 'hardnessKgM3 waterM3', ''],
  ['water-heating', 'waterM3 riseK', 'efficiency'],
  ['machine-energy', 'heatingJ washJ racks idleW idleS', ''],
  ['running-cost', 'waterM3 moneyPerM3 electricityJ moneyPerKwh gasJ moneyPerGasKwh', ''],
  ['booster-power', 'rinseM3S rinseC', 'supplyC'],
  ['rinse-hold', 'perCycleM3 rinseC', 'supplyC boosterW efficiency cycleS'],
  ['held-cycle', 'perCycleM3 rinseC cycleS', 'supplyC boosterW efficiency'],
  ['held-rack-rate', 'supplyC boosterW efficiency racksPerCycle', 'perCycleM3 rinseC cycleS'],
  ['heat-up-time', 'waterM3 toC', 'fromC powerW efficiency'],
  ['first-heat-up', 'tankM3 tankC boosterM3 boosterC', 'supplyC tankW boosterW efficiency'],
  ['recovered-share', 'waterM3 rinseC share', 'supplyC'],
  ['warmed-supply', 'supplyC rinseC share', ''],
  ['heat-units', 'stepS', ''],
  ['drain-flow', 'boreM slope', 'roughness'],
  ['drain-speed', 'boreM slope', 'roughness'],
  ['nominal-size', 'boreM', ''],
  ['least-slope', '', 'sizeM'],
  ['fall-over', 'lengthM slope', ''],
  ['fixture-units-of-flow', 'flowM3S', ''],
  ['receptor-units', 'own', ''],
  ['supply-air-gap', 'openingM', ''],
  ['waste-air-gap', 'pipeM', ''],
  ['dump-storage', 'waterM3 dumpM3S', 'drainM3S'],
  ['grease-interceptor', 'fixtureUnits', ''],
  ['load-current', 'powerW', 'voltageV powerFactor'],
  ['breaker-size', 'currentA', ''],
  ['voltage-drop', 'currentA lengthM resistanceOhmPerM reactanceOhmPerM', ''],
  ['volts-to-ground', 'voltageV', ''],
  ['working-depth', 'voltsToGround', ''],
  ['working-width', 'equipmentM', ''],
  ['working-height', 'equipmentM', ''],
  ['lifting-limit', 'frequency coupling', 'horizontalM travelM angleDeg'],
  ['lifting-index', 'loadKg', 'limitKg'],
  ['frequency-multiplier', 'verticalM', 'liftsPerH'],
  ['grip-multiplier', 'verticalM', ''],
  ['hands-before-ankles', 'containerM', 'verticalM'],
  ['reach-over-depth', 'reachM', 'depthM'],
  ['floor-legs', 'farthestM', ''],
];

const words = (text: string) => text.split(' ').filter((word) => word !== '');

const CASES = TRENDS.flatMap(([id, grow, shrink]) => [
  ...words(grow).map((key) => ({ id, key, sign: 1, verb: 'grows with' })),
  ...words(shrink).map((key) => ({ id, key, sign: -1, verb: 'shrinks with' })),
]);

describe('trends', () => {
  test.each(CASES)('$id $verb $key, or stands still', ({ id, key, sign }) => {
    const formula = OTHERS.find(({ record }) => record.id === id);
    const note = formula?.record.inputs[key];
    if (formula === undefined || note === undefined) throw new Error(`no ${id} with ${key}`);
    let compared = 0;
    fc.assert(
      fc.property(anyInputs(formula), anyValue(note), anyValue(note), (inputs, a, b) => {
        const [low, high] = [Math.min(Number(a), Number(b)), Math.max(Number(a), Number(b))];
        const [less, more] = [formula.run({ ...inputs, [key]: low }), formula.run({ ...inputs, [key]: high })];
        if (!less.ok || !more.ok) return true;
        compared += 1;
        return sign * (more.value - less.value) >= -1e-9 * (Math.abs(less.value) + Math.abs(more.value));
      }),
      SEED,
    );
    expect(compared).toBeGreaterThan(10);
  });

  test('every formula has one, but for those that only look a word up or take a curve alone', () => {
    const lookUps = ['recorded-heat-units', 'branch-units', 'ampacity', 'wire-resistance'];
    const ids = OTHERS.map(({ record }) => record.id);
    expect(ids.filter((id) => !TRENDS.some(([one]) => one === id)).sort()).toEqual(lookUps.sort());
  });
});
